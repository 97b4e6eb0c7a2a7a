import type { JSX } from "preact";
import { shortened, traceDrawing } from "../src/charts/trace.ts";
import type { PlacedBox } from "../src/charts/trace.ts";
import { addressOf, relative } from "../src/pages/address.ts";
import type { Site } from "../src/pages/shown.ts";
import { COLUMNS } from "../src/pages/trace.ts";
import type { Trace, TraceNode } from "../src/pages/trace.ts";
import { isGrave, ShapeAt } from "./mark.tsx";

interface TraceProps {
  readonly site: Site;
  readonly from: string;
  readonly trace: Trace;
  /** Where the same stands as a list. */
  readonly list: string;
}

const HEADS: { readonly [column in (typeof COLUMNS)[number]]: string } = { lot: "Lots", batch: "Batches", joint: "Joints", assembly: "Assemblies", "hold point": "Hold points" };
const LABEL = 14;
const WORD = 12;

/** The drawing scrolls sideways where it is wider than the page; every box is a link. */
export function TraceFigure({ site, from, trace, list }: TraceProps): JSX.Element | null {
  const { nodes, edges, title, says, undrawn } = trace;
  if (edges.length === 0) return null;
  const { width, height, boxes, paths, columns } = traceDrawing(nodes, edges);
  return (
    <figure class="trace">
      <div class="scroll" tabIndex={0} role="region" aria-label={title}>
        <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="group" aria-labelledby="trace-title trace-desc">
          <title id="trace-title">{title}</title>
          <desc id="trace-desc">{says}</desc>
          {[...columns].map(([column, left]) => <text class="trace__head" x={left} y="12" aria-hidden="true">{HEADS[COLUMNS[column] ?? "lot"]}</text>)}
          {paths.map((path, at) => <path class={edges[at]?.gone === true ? "trace__line trace__line--gone" : "trace__line"} d={path} />)}
          {nodes.map((node, at) => <Box site={site} from={from} node={node} box={boxes[at]} />)}
        </svg>
      </div>
      <figcaption>
        <p>{says}{edges.some(({ gone }) => gone) ? " A broken line is glue that was taken out." : ""}</p>
        {undrawn === undefined ? null : <p>Not drawn for want of room: {undrawn}. The gravest are drawn.</p>}
        <p class="screen-only">The same stands in <a href={`#${list}`}>the list below</a>{undrawn === undefined ? "" : ", and there in full"}.</p>
      </figcaption>
    </figure>
  );
}

function Box({ site, from, node, box }: { readonly site: Site; readonly from: string; readonly node: TraceNode; readonly box: PlacedBox | undefined }): JSX.Element | null {
  if (box === undefined) return null;
  const { ref, label, word, mark } = node;
  const { left, top, width, height } = box;
  const text = left + (mark === undefined ? 12 : 38);
  const inside = (
    <>
      <title>{[label, word].filter((words) => words !== "").join(", ")}</title>
      <rect x={left} y={top} width={width} height={height} />
      {mark === undefined ? null : <ShapeAt of={mark} x={left + 10} y={top + 13} />}
      <text class="trace__label" x={text} y={top + (word === "" ? 25 : 17)}>{shortened(label, LABEL)}</text>
      {word === "" ? null : <text class="trace__word" x={text} y={top + 32}>{shortened(word, WORD)}</text>}
    </>
  );
  const name = mark !== undefined && isGrave(mark) ? "trace__box trace__box--grave" : "trace__box";
  const address = addressOf(ref);
  return address === undefined || !site.shown.shows(ref) || address === from ? <g class={`${name} trace__box--here`}>{inside}</g> : <a class={name} href={relative(from, address)}>{inside}</a>;
}
