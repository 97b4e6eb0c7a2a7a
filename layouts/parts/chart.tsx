import { defined } from "../../src/defined.ts";
import type { JSX } from "preact";
import { barsDrawing } from "../../src/charts/bars.ts";
import type { Room } from "../../src/charts/frame.ts";
import { NARROW, WIDE } from "../../src/charts/frame.ts";
import { linesDrawing } from "../../src/charts/lines.ts";
import type { LinesInput } from "../../src/charts/lines.ts";
import type { Chart } from "../../src/pages/forecast/chart.ts";
import { Axes } from "./axes.tsx";
import { ChartTable } from "./chart-table.tsx";

/** Files in `assets/` that a page with charts asks for. */
export const CHART_SCRIPTS = ["charts.js"] as const;

interface SvgProps {
  readonly chart: Chart;
  readonly room: Room;
  /** Tells the wide drawing's names from the narrow one's. */
  readonly part: "wide" | "narrow";
  readonly children?: JSX.Element;
}

function Svg({ chart, room, part, children }: SvgProps): JSX.Element {
  const name = `${chart.id}-${part}`;
  return (
    <svg
      class={`chart__${part}`}
      viewBox={`0 0 ${room.width} ${room.height}`}
      role="img"
      aria-labelledby={`${name}-title ${name}-desc`}
    >
      <title id={`${name}-title`}>{chart.title}</title>
      <desc id={`${name}-desc`}>{chart.says}</desc>
      {children}
    </svg>
  );
}

function inputOf(chart: Chart): LinesInput {
  const points = (values: readonly number[]): (readonly [number, number])[] =>
    chart.days.map((day, at) => [day, values[at] ?? 0]);
  return defined({
    series: chart.series.map(({ name, values }) => ({ name, points: points(values) })),
    against:
      chart.against === undefined ? undefined : { name: chart.against.name, points: points(chart.against.values) },
    from: chart.days[0] ?? 0,
    to: chart.days[chart.days.length - 1] ?? 1,
    filled: chart.filled === true,
    spans: chart.spans,
  });
}

function Lines({ chart, room }: { readonly chart: Chart; readonly room: Room }): JSX.Element {
  const { frame, lines, against, area, bands } = linesDrawing(inputOf(chart), room);
  const named = room.names > 40;
  return (
    <g>
      {bands.map(({ x, width }) => (
        <rect class="band" x={x} y={frame.top} width={width} height={frame.bottom - frame.top} />
      ))}
      <Axes frame={frame} />
      {area === undefined ? null : <path class="area" d={area} />}
      {against === undefined ? null : <path class="against" d={against.path} />}
      {lines.map(({ path, end }, at) => (
        <g class={`series series-${at + 1}`}>
          <path d={path} />
          <circle cx={end.x} cy={end.y} r="3" />
        </g>
      ))}
      {named &&
        [...lines, ...(against === undefined ? [] : [against])].map(({ name, nameAt, end }, at) => (
          <g class={at < lines.length ? `name series-${at + 1}` : "name name--against"}>
            <path class="lead" d={`M${end.x + 4} ${end.y}L${nameAt.x - 3} ${nameAt.y}`} />
            <text x={nameAt.x} y={nameAt.y + 4}>
              {name}
            </text>
          </g>
        ))}
    </g>
  );
}

function Bars({ chart, room }: { readonly chart: Chart; readonly room: Room }): JSX.Element {
  const { frame, stacks, level } = barsDrawing(
    defined({
      weeks: chart.days,
      series: chart.series,
      level: chart.against?.values[0] === undefined ? undefined : chart.against.values[0],
    }),
    room,
  );
  return (
    <g>
      <Axes frame={frame} />
      {stacks.map(({ bars }, at) => (
        <path
          class={`bars series-${at + 1}`}
          d={bars.map(({ x, y, width, height }) => `M${x} ${y}h${width}v${height}h-${width}z`).join("")}
        />
      ))}
      {level === undefined ? null : <path class="against" d={`M${frame.left} ${level}H${frame.right}`} />}
    </g>
  );
}

function Key({ chart }: { readonly chart: Chart }): JSX.Element {
  return (
    <ul class={`chart__key chart__key--${chart.form}`}>
      {chart.series.map(({ name }, at) => (
        <li class={`series-${at + 1}`}>
          <Swatch form={chart.form} />
          {name}
        </li>
      ))}
      {chart.against === undefined ? null : (
        <li class="key--against">
          <Swatch form="lines" />
          {chart.against.name}
        </li>
      )}
      {chart.spans === undefined ? null : (
        <li>
          <svg class="swatch" viewBox="0 0 26 12" width="26" height="12" aria-hidden="true">
            <path class="band" d="M0 0h26v12H0z" />
          </svg>
          No day is known
        </li>
      )}
    </ul>
  );
}

function Swatch({ form }: { readonly form: Chart["form"] }): JSX.Element {
  return (
    <svg class="swatch" viewBox="0 0 26 12" width="26" height="12" aria-hidden="true">
      {form === "lines" ? <path class="swatch__line" d="M0 6h26" /> : <path class="swatch__bar" d="M4 0h18v12H4z" />}
    </svg>
  );
}

/** JSON that can stand in a script element. */
function inScript(value: unknown): string {
  return JSON.stringify(value).replaceAll("<", "\\u003c");
}

/** Weeks shown on narrow screens: bars thinner than that cannot be seen. */
const NARROW_WEEKS = 52;

function forNarrow(chart: Chart): Chart {
  if (chart.form === "lines" || chart.days.length <= NARROW_WEEKS) return chart;
  const last = <T,>(values: readonly T[]): readonly T[] => values.slice(-NARROW_WEEKS);
  return {
    ...chart,
    days: last(chart.days),
    says: `${chart.says} The last ${NARROW_WEEKS} weeks; the table has all.`,
    series: chart.series.map(({ name, values }) => ({ name, values: last(values) })),
  };
}

/** A chart drawn at build time; the script in `assets/charts.js` lays a livelier one over it where it can. */
export function ChartFigure({
  chart,
  heading: Heading = "h3",
}: {
  readonly chart: Chart;
  readonly heading?: "h2" | "h3";
}): JSX.Element {
  const { id, title, says, form, days, series, against, filled, spans } = chart;
  const Drawing = form === "lines" ? Lines : Bars;
  const narrow = forNarrow(chart);
  return (
    <figure class="chart" id={id} data-chart>
      <figcaption>
        <Heading>{title}</Heading>
        <p>{says}</p>
      </figcaption>
      <div class="chart__drawing">
        <Svg chart={chart} room={WIDE} part="wide">
          <Drawing chart={chart} room={WIDE} />
        </Svg>
        <Svg chart={narrow} room={NARROW} part="narrow">
          <Drawing chart={narrow} room={NARROW} />
        </Svg>
      </div>
      <Key chart={chart} />
      <ChartTable chart={chart} />
      <script
        type="application/json"
        dangerouslySetInnerHTML={{ __html: inScript({ title, says, form, days, series, against, filled, spans }) }}
      />
    </figure>
  );
}
