import type { JSX } from "preact";
import { type TimelineDrawing, timelineDrawing } from "../../src/charts/timeline.ts";
import type { TimelineInput } from "../../src/charts/timeline.ts";
import type { Marked } from "../../src/pages/evidence/marked.ts";
import { relative } from "../../src/pages/address.ts";
import { Strokes } from "./axes.tsx";
import { isGrave } from "./mark.tsx";
import { shapeRef } from "./shapes.tsx";

const SIZES = [
  { part: "wide", width: 960, names: 112 },
  { part: "narrow", width: 400, names: 0 },
] as const;

interface TimelineProps {
  /** Path of the page it stands on. */
  readonly from: string;
  readonly inputs: { readonly [part in (typeof SIZES)[number]["part"]]: TimelineInput };
  readonly title: string;
  /** The id of the words that say what it shows. */
  readonly saidBy: string;
}

type PartProps = Pick<TimelineProps, "from"> & Pick<(typeof SIZES)[number], "part">;

/** Marks are drawn smaller here than beside words. */
const SCALE = 0.7;
const HALF = { width: 10, height: 7 };

type Event = TimelineDrawing["rows"][number]["events"][number];

/** A shape of the marks, its middle at a point; told in words, and a link to what it stands for, where there is a pointer. */
function Placed({ event: { x, y, shape, words, to }, from, part }: { readonly event: Event } & PartProps): JSX.Element {
  const of = shape as Marked;
  const use = (children?: JSX.Element) => (
    <use
      href={shapeRef(of)}
      x={Math.round(x / SCALE - HALF.width)}
      y={Math.round(y / SCALE - HALF.height)}
      class={isGrave(of) ? "mark--attention" : undefined}
    >
      {children}
    </use>
  );
  if (part === "narrow") return use();
  const told = use(<title>{words}</title>);
  // By keyboard all of it is reached in the lists below, where it is told in words.
  return to === undefined ? (
    told
  ) : (
    <a href={relative(from, to)} tabIndex={-1}>
      {told}
    </a>
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

function Drawing({
  inputs,
  from,
  title,
  saidBy,
  part,
  width,
  names,
}: TimelineProps & (typeof SIZES)[number]): JSX.Element {
  const { height, left, right, base, ticks, posts, rows } = timelineDrawing(inputs[part], { width, names });
  return (
    <svg
      class={`chart__${part}`}
      viewBox={`0 0 ${width} ${height}`}
      role={part === "wide" ? "group" : "img"}
      aria-label={title}
      aria-describedby={saidBy}
    >
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
            {row.events.map((event) => (
              <Placed event={event} from={from} part={part} />
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

/** One line of time, drawn; its marks lead to what they stand for, and so do the lists below it. */
export function Timeline(props: TimelineProps): JSX.Element {
  return (
    <div class="timeline">
      {SIZES.map((size) => (
        <Drawing {...props} {...size} />
      ))}
    </div>
  );
}
