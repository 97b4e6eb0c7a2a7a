import type { JSX } from "preact";
import { timelineDrawing } from "../src/charts/timeline.ts";
import type { TimelineInput } from "../src/charts/timeline.ts";
import type { Marked } from "../src/pages/marked.ts";
import { markClass, shapeOf } from "./mark.tsx";

interface TimelineProps {
  readonly input: TimelineInput;
  readonly title: string;
  readonly says: string;
}

const SIZES = [
  { part: "wide", width: 960, names: 112 },
  { part: "narrow", width: 400, names: 0 },
] as const;

/** A shape of the marks, its middle at a point. */
function Placed({ x, y, of, words }: { readonly x: number; readonly y: number; readonly of: Marked; readonly words: string }): JSX.Element {
  const { solid, line } = shapeOf(of);
  return (
    <g class={markClass(of)} transform={`translate(${x - 7} ${y - 5}) scale(.7)`}>
      <title>{words}</title>
      {line === undefined ? null : <path class="mark__line" d={line} />}
      {solid === undefined ? null : <path class="mark__solid" d={solid} />}
    </g>
  );
}

function Drawing({ input, title, says, part, width, names }: TimelineProps & typeof SIZES[number]): JSX.Element {
  const { height, left, right, base, ticks, posts, rows } = timelineDrawing(input, { width, names });
  const name = `timeline-${part}`;
  return (
    <svg class={`chart__${part}`} viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={`${name}-title ${name}-desc`}>
      <title id={`${name}-title`}>{title}</title>
      <desc id={`${name}-desc`}>{says}</desc>
      <g class="axes">
        {ticks.map(({ at, label, strong }) => (
          <>
            <path class={strong ? "grid grid--year" : "tick"} d={strong ? `M${at} 4V${base + 6}` : `M${at} ${base}v6`} />
            <text class={strong ? "year" : undefined} x={at} y={base + 20} text-anchor="middle">{label}</text>
          </>
        ))}
      </g>
      {rows.map((row) => (
        <g class="row">
          <text class="row__name" x={names === 0 ? left : left - 8} y={row.nameY} text-anchor={names === 0 ? "start" : "end"}>{row.name}</text>
          <path class="row__line" d={`M${left} ${row.y + 8}H${right}`} />
          {row.events.map(({ x, y, shape, words }) => <Placed x={x} y={y} of={shape as Marked} words={words} />)}
        </g>
      ))}
      {part === "wide" ? <text class="row__name" x={left - 8} y={base - 2} text-anchor="end">Hours a day</text> : null}
      <path class="posts" d={posts.map(({ x, height: tall }) => `M${x} ${base}v-${tall}`).join("")} />
      <path class="base" d={`M${left} ${base}H${right}`} />
    </svg>
  );
}

/** One line of time, drawn; the list below it leads to everything on it. */
export function Timeline(props: TimelineProps): JSX.Element {
  return <div class="timeline">{SIZES.map((size) => <Drawing {...props} {...size} />)}</div>;
}
