import { defined } from "../../src/defined.ts";
import type { JSX } from "preact";
import { type BarsDrawing, type BarsInput, barsDrawing } from "../../src/charts/bars.ts";
import { NARROW, WIDE } from "../../src/charts/frame.ts";
import { type LinesDrawing, type LinesInput, linesDrawing } from "../../src/charts/lines.ts";
import type { Chart } from "../../src/pages/forecast/chart.ts";
import { dayText } from "../../src/reckoning/time/calendar.ts";
import { Axes } from "./axes.tsx";
import { ChartTable } from "./chart-table.tsx";

/** Files in `assets/` that a page with charts asks for. */
export const CHART_SCRIPTS = ["charts.js"] as const;

interface View {
  readonly part: "wide" | "narrow";
  /** What of the chart it draws: all of it, or one year. */
  readonly chart: Chart;
  /** Of the chart's days the first that it draws. */
  readonly first: number;
  readonly year?: string;
  readonly drawing: (LinesDrawing | BarsDrawing) & { readonly names: boolean };
}

/** One drawing on a wide page; on a phone one for each year where bars would be too thin to be seen. */
function viewsOf(chart: Chart): View[] {
  if (chart.form === "lines")
    return ([WIDE, NARROW] as const).map((room) => ({
      part: room === WIDE ? "wide" : "narrow",
      chart,
      first: 0,
      drawing: { ...linesDrawing(inputOf(chart), room), names: room.names > 40 },
    }));
  const whole = barsDrawing(weeksOf(chart), WIDE);
  const years = yearsOf(chart);
  const room = years.length > 1 ? { ...NARROW, height: YEAR_HEIGHT } : NARROW;
  return [
    { part: "wide", chart, first: 0, drawing: { ...whole, names: false } },
    ...years.map(({ year, first, part }) =>
      defined({
        part: "narrow" as const,
        chart: part,
        first,
        year: years.length > 1 ? year : undefined,
        drawing: { ...barsDrawing({ ...weeksOf(part), most: whole.domain.most }, room), names: false },
      }),
    ),
  ];
}

const YEAR_HEIGHT = 190;

/** Weeks shown in one narrow drawing: bars thinner than that cannot be seen. */
const NARROW_WEEKS = 53;

/** A chart of bars by the years in which its weeks begin. */
function yearsOf(chart: Chart): { readonly year: string; readonly first: number; readonly part: Chart }[] {
  const years = chart.days.map((day) => dayText(day).slice(0, 4));
  if (years.length <= NARROW_WEEKS) return [{ year: years[0] ?? "", first: 0, part: chart }];
  return [...new Set(years)].map((year) => {
    const [first, end] = [years.indexOf(year), years.lastIndexOf(year) + 1];
    const within = <T,>(values: readonly T[]): readonly T[] => values.slice(first, end);
    const series = chart.series.map(({ name, values }) => ({ name, values: within(values) }));
    return { year, first, part: { ...chart, days: within(chart.days), series } };
  });
}

const weeksOf = ({ days, series, against }: Chart): BarsInput => {
  const level = against?.values[0];
  return defined({ weeks: days, series, level });
};

function Svg({ id, title, view }: { readonly id: string; readonly title: string; readonly view: View }): JSX.Element {
  const { part, drawing, year } = view;
  const { width, height } = drawing.frame;
  return (
    <svg
      class={`chart__${part}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={year === undefined ? title : `${title}, ${year}`}
      aria-describedby={`${id}-says`}
    >
      {"lines" in drawing ? <Lines drawing={drawing} /> : <Bars drawing={drawing} year={year} />}
    </svg>
  );
}

/** Of all that these charts tell. */
const UNIT = "hours";

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

function Lines({ drawing }: { readonly drawing: LinesDrawing & { readonly names: boolean } }): JSX.Element {
  const { frame, lines, against, area, bands, names } = drawing;
  return (
    <g>
      {bands.map(({ x, width }) => (
        <rect class="band" x={x} y={frame.top} width={width} height={frame.bottom - frame.top} />
      ))}
      <Axes frame={frame} unit={UNIT} />
      {area === undefined ? null : <path class="area" d={area} />}
      {against === undefined ? null : <path class="against" d={against.path} />}
      {lines.map(({ path, end }, at) => (
        <g class={`series series-${at + 1}`}>
          <path d={path} />
          <circle cx={end.x} cy={end.y} r="3" />
        </g>
      ))}
      {names &&
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

interface BarsProps {
  readonly drawing: BarsDrawing;
  readonly year: string | undefined;
}

function Bars({ drawing: { frame, stacks, level }, year }: BarsProps): JSX.Element {
  return (
    <g>
      <Axes frame={frame} unit={UNIT} />
      {year === undefined ? null : (
        <text class="chart__year" x={frame.right} y={frame.top - 13} text-anchor="end">
          {year}
        </text>
      )}
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

/** The first day, and from each to the next; values that are all alike as one: what a browser is told is short. */
const steps = (days: readonly number[]): number[] => days.map((day, at) => day - (days[at - 1] ?? 0));
const once = (values: readonly number[]): readonly number[] =>
  values.every((value) => value === values[0]) ? values.slice(0, 1) : values;

function factsOf({ form, days, series, against }: Chart, views: readonly View[]): object {
  return {
    form,
    steps: steps(days),
    series: series.map(({ name, values }) => [name, once(values)]),
    against: against && [against.name, once(against.values)],
    views: views.map(({ first, chart, drawing: { frame, domain } }) => [
      first,
      first + chart.days.length,
      [frame.width, frame.height],
      [frame.left, frame.top, frame.right, frame.bottom].map(Math.round),
      [domain.from, domain.to, domain.most],
    ]),
  };
}

/** A chart drawn at build time; the script in `assets/charts.js` tells its figures where somebody points at it, and changes nothing else. */
export function ChartFigure({
  chart,
  heading: Heading = "h3",
}: {
  readonly chart: Chart;
  readonly heading?: "h2" | "h3";
}): JSX.Element {
  const { id, title, says } = chart;
  const views = viewsOf(chart);
  return (
    <figure class="chart" id={id} data-chart>
      <figcaption>
        <Heading>{title}</Heading>
        <p id={`${id}-says`}>{says}</p>
      </figcaption>
      <div class="chart__drawing">
        {views.map((view) => (
          <Svg id={id} title={title} view={view} />
        ))}
      </div>
      <Key chart={chart} />
      <ChartTable chart={chart} />
      <script type="application/json" dangerouslySetInnerHTML={{ __html: inScript(factsOf(chart, views)) }} />
    </figure>
  );
}
