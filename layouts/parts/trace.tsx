import type { JSX } from "preact";
import { shortened, traceDrawing } from "../../src/charts/trace.ts";
import type { PlacedBox, TraceDrawing } from "../../src/charts/trace.ts";
import { stackedTrace } from "../../src/charts/trace-stack.ts";
import { addressOf, relative } from "../../src/pages/address.ts";
import type { Site } from "../../src/editions/shown.ts";
import { COLUMNS } from "../../src/pages/evidence/trace.ts";
import type { Trace, TraceNode } from "../../src/pages/evidence/trace.ts";
import { isGrave, ShapeAt } from "./mark.tsx";

interface TraceProps {
  readonly site: Site;
  readonly from: string;
  readonly trace: Trace;
  /** Where the same stands as a list. */
  readonly list: string;
}

const HEADS: { readonly [column in (typeof COLUMNS)[number]]: string } = {
  lot: "Lots",
  batch: "Batches",
  joint: "Joints",
  assembly: "Assemblies",
  "hold point": "Hold points",
};
const LABEL = 14;
const WORD = 12;

/** From left to right where there is room, from top to bottom on a phone; every box is a link. */
export function TraceFigure({ site, from, trace, list }: TraceProps): JSX.Element | null {
  const { edges, says, undrawn } = trace;
  if (edges.length === 0) return null;
  const drawing = traceDrawing(trace.nodes, edges);
  return (
    <figure class="trace">
      <Across site={site} from={from} trace={trace} drawing={drawing} />
      <Down site={site} from={from} trace={trace} drawing={drawing} />
      <figcaption>
        <p>
          {says}
          {edges.some(({ gone }) => gone) ? " A broken line is glue that was taken out." : ""}
        </p>
        {undrawn === undefined ? null : <p>Not drawn for want of room: {undrawn}. The gravest are drawn.</p>}
        <p class="screen-only">
          The same stands in <a href={`#${list}`}>the list below</a>
          {undrawn === undefined ? "" : ", and there in full"}.
        </p>
      </figcaption>
    </figure>
  );
}

interface DrawnProps extends Omit<TraceProps, "list"> {
  readonly drawing: TraceDrawing;
}

function Across({ site, from, trace, drawing }: DrawnProps): JSX.Element {
  const { nodes, edges, title, says } = trace;
  const { width, height, boxes, paths, columns } = drawing;
  return (
    <section class="scroll trace__across" tabIndex={0} aria-label={title}>
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role="group"
        aria-labelledby="trace-title trace-desc"
      >
        <title id="trace-title">{title}</title>
        <desc id="trace-desc">{says}</desc>
        {[...columns].map(([column, left]) => (
          <text class="trace__head" x={left} y="12" aria-hidden="true">
            {HEADS[COLUMNS[column] ?? "lot"]}
          </text>
        ))}
        <Lines edges={edges} paths={paths} />
        {nodes.map((node, at) => (
          <Box site={site} from={from} node={node} box={boxes[at]} />
        ))}
      </svg>
    </section>
  );
}

function Down({ site, from, trace, drawing }: DrawnProps): JSX.Element {
  const { nodes, edges, title, says } = trace;
  const { width, height, boxes, paths, heads } = stackedTrace(
    nodes,
    edges,
    drawing.boxes.map(({ top }) => top),
  );
  return (
    <svg
      class="trace__down"
      viewBox={`0 0 ${width} ${height}`}
      role="group"
      aria-labelledby="trace-down-title trace-down-desc"
    >
      <title id="trace-down-title">{title}</title>
      <desc id="trace-down-desc">{says}</desc>
      {[...heads].map(([column, foot]) => (
        <text class="trace__head" x="2" y={foot} aria-hidden="true">
          {HEADS[COLUMNS[column] ?? "lot"]}
        </text>
      ))}
      <Lines edges={edges} paths={paths} />
      {nodes.map((node, at) => (
        <Box site={site} from={from} node={node} box={boxes[at]} />
      ))}
    </svg>
  );
}

function Lines({ edges, paths }: Pick<Trace, "edges"> & { readonly paths: readonly string[] }): JSX.Element {
  return (
    <>
      {paths.map((path, at) => (
        <path class={edges[at]?.gone === true ? "trace__line trace__line--gone" : "trace__line"} d={path} />
      ))}
    </>
  );
}

function Box({
  site,
  from,
  node,
  box,
}: {
  readonly site: Site;
  readonly from: string;
  readonly node: TraceNode;
  readonly box: PlacedBox | undefined;
}): JSX.Element | null {
  if (box === undefined) return null;
  const { ref, label, word, mark } = node;
  const { left, top, width, height } = box;
  const text = left + (mark === undefined ? 12 : 38);
  const inside = (
    <>
      <title>{[label, word].filter((words) => words !== "").join(", ")}</title>
      <rect x={left} y={top} width={width} height={height} />
      {mark === undefined ? null : <ShapeAt of={mark} x={left + 10} y={top + 13} />}
      <text class="trace__label" x={text} y={top + (word === "" ? 25 : 17)}>
        {shortened(label, LABEL, width)}
      </text>
      {word === "" ? null : (
        <text class="trace__word" x={text} y={top + 32}>
          {shortened(word, WORD, width)}
        </text>
      )}
    </>
  );
  const name = mark !== undefined && isGrave(mark) ? "trace__box trace__box--grave" : "trace__box";
  const address = addressOf(ref);
  return address === undefined || !site.shown.shows(ref) || address === from ? (
    <g class={`${name} trace__box--here`}>{inside}</g>
  ) : (
    <a class={name} href={relative(from, address)}>
      {inside}
    </a>
  );
}
