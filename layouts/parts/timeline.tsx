import type { JSX } from "preact";
import { type TimelineDrawing, timelineDrawing } from "../../src/charts/timeline.ts";
import type { TimelineInput } from "../../src/charts/timeline.ts";
import type { Marked } from "../../src/pages/evidence/marked.ts";
import { Strokes } from "./axes.tsx";
import { isGrave } from "./mark.tsx";
import { shapeRef } from "./shapes.tsx";

const SIZES = [
  { part: "wide", width: 960, names: 112 },
  { part: "narrow", width: 400, names: 0 },
] as const;

interface TimelineProps {
  readonly inputs: { readonly [part in (typeof SIZES)[number]["part"]]: TimelineInput };
  readonly title: string;
  readonly says: string;
}

/** Marks are drawn smaller here than beside words. */
const SCALE = 0.7;
const HALF = { width: 10, height: 7 };

/** A shape of the marks, its middle at a point; told in words where there is a pointer to ask for them. */
function Placed({
  x,
  y,
  of,
  words,
}: {
  readonly x: number;
  readonly y: number;
  readonly of: Marked;
  readonly words?: string;
}): JSX.Element {
  const placed = {
    href: shapeRef(of),
    x: Math.round(x / SCALE - HALF.width),
    y: Math.round(y / SCALE - HALF.height),
    class: isGrave(of) ? "mark--attention" : undefined,
  };
  return words === undefined ? (
    <use {...placed} />
  ) : (
    <use {...placed}>
      <title>{words}</title>
    </use>
  );
}

function Axis({ base, ticks }: Pick<TimelineDrawing, "base" | "ticks">): JSX.Element {
  return (
    <g class="axes" text-anchor="middle">
      <Strokes
        class="grid grid--year"
        paths={ticks.filter(({ strong }) => strong).map(({ at }) => `M${at} 4V${base + 6}`)}
      />
      <Strokes class="tick" paths={ticks.filter(({ strong }) => !strong).map(({ at }) => `M${at} ${base}v6`)} />
      {ticks.map(({ at, label, strong }) => (
        <text class={strong ? "year" : undefined} x={at} y={base + 20}>
          {label}
        </text>
      ))}
    </g>
  );
}

function Drawing({ inputs, title, says, part, width, names }: TimelineProps & (typeof SIZES)[number]): JSX.Element {
  const { height, left, right, base, ticks, posts, rows } = timelineDrawing(inputs[part], { width, names });
  const name = `timeline-${part}`;
  return (
    <svg
      class={`chart__${part}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${name}-title ${name}-desc`}
    >
      <title id={`${name}-title`}>{title}</title>
      <desc id={`${name}-desc`}>{says}</desc>
      <Axis base={base} ticks={ticks} />
      {rows.map((row) => (
        <g class="row">
          <text
            class="row__name"
            x={names === 0 ? left : left - 8}
            y={row.nameY}
            text-anchor={names === 0 ? "start" : "end"}
          >
            {row.name}
          </text>
          <path class="row__line" d={`M${left} ${row.y + 8}H${right}`} />
          <g transform={`scale(${SCALE})`}>
            {row.events.map(({ x, y, shape, words }) => (
              <Placed x={x} y={y} of={shape as Marked} {...(part === "wide" ? { words } : {})} />
            ))}
          </g>
        </g>
      ))}
      {part === "wide" ? (
        <text class="row__name" x={left - 8} y={base - 2} text-anchor="end">
          Hours a day
        </text>
      ) : null}
      <path class="posts" d={posts.map(({ x, height: tall }) => `M${x} ${base}v-${tall}`).join("")} />
      <path class="base" d={`M${left} ${base}H${right}`} />
    </svg>
  );
}

/** One line of time, drawn; the list below it leads to everything on it. */
export function Timeline(props: TimelineProps): JSX.Element {
  return (
    <div class="timeline">
      {SIZES.map((size) => (
        <Drawing {...props} {...size} />
      ))}
    </div>
  );
}
