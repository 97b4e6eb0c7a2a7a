/** What the page of charts says: shares passed, and ratio errors and stresses by batch. */
import { defined } from "../../defined.ts";
import type { IndividualsInput, Level } from "../../charts/individuals.ts";
import { reckonStatistics } from "../../evidence/statistics.ts";
import type { BatchSeries, SharePassed } from "../../evidence/types/statistics.ts";
import { PSI } from "../../facts/quantity/conversions.ts";
import { LEAST_POINTS } from "../../reckoning/statistics/individuals-chart.ts";
import type { Day } from "../../facts/types.ts";
import { MADE } from "../../facts/build/adhesive-kind.ts";
import type { Shown } from "../../editions/shown.ts";
import { counted, listed } from "../../words/lists.ts";
import { grouped, percent, signedPercent } from "../../words/numbers.ts";

interface ChartRow {
  readonly batch: string;
  readonly day: Day;
  readonly value: string;
  readonly pieces?: number;
  readonly range: string;
  readonly outside: boolean;
  readonly rangeOutside: boolean;
}

export interface SeriesView {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly values: IndividualsInput;
  readonly ranges: IndividualsInput;
  readonly rows: readonly ChartRow[];
  /** Batches outside the limits, and those that differ more from the one before than the limit of ranges allows. */
  readonly outside: readonly string[];
  readonly jumps: readonly string[];
  readonly tolerance?: string;
}

export interface ChartsView {
  readonly shares: readonly ShareView[];
  readonly ratios: readonly SeriesView[];
  readonly stresses: readonly SeriesView[];
}

export interface ShareView extends SharePassed {
  readonly adhesiveTitle: string;
  readonly procedureTitle: string;
}

export function chartsView(shown: Shown): ChartsView {
  const { shares, series } = reckonStatistics(shown.record, shown.evidence);
  const { adhesives, procedures } = shown.record;
  const of = (quantity: BatchSeries["quantity"]): SeriesView[] =>
    series.filter((one) => one.quantity === quantity).map((one, at) => seriesView(shown, one, at));
  return {
    shares: shares.map((share) => ({
      ...share,
      adhesiveTitle: adhesives.get(share.adhesive)?.title ?? share.adhesive,
      procedureTitle: procedures.get(share.procedure)?.title ?? share.procedure,
    })),
    ratios: of("ratio error"),
    stresses: of("stress"),
  };
}

/** How values of a series are shown: times the factor, in the unit. */
interface Scale {
  readonly factor: number;
  readonly unit: string;
  readonly words: (value: number) => string;
  readonly rangeWords: (value: number) => string;
}

function scaleOf(shown: Shown, { quantity }: BatchSeries): Scale {
  if (quantity === "ratio error")
    return { factor: 100, unit: "%", words: (value) => signedPercent(value), rangeWords: (value) => percent(value, 1) };
  const [factor, unit, decimals] =
    shown.record.aircraft.units === "metric" ? ([1e-6, "MPa", 2] as const) : ([1 / PSI, "psi", 0] as const);
  const words = (value: number): string => `${grouped(value * factor, decimals)} ${unit}`;
  return { factor, unit, words, rangeWords: words };
}

function seriesView(shown: Shown, series: BatchSeries, at: number): SeriesView {
  const scale = scaleOf(shown, series);
  const rows = rowsOf(series, scale);
  const tolerance = toleranceWords(series, scale);
  return defined({
    id: `${series.quantity.replace(" ", "-")}-${at + 1}`,
    title: titleOf(shown, series),
    says: saysOf(shown, series, scale),
    rows,
    values: valuesInput(series, rows, scale),
    ranges: rangesInput(series, rows, scale),
    outside: rows.filter(({ outside }) => outside).map(({ batch }) => batch),
    jumps: rows.filter(({ rangeOutside }) => rangeOutside).map(({ batch }) => batch),
    tolerance,
  });
}

function rowsOf({ points, chart: { ranges, limits } }: BatchSeries, { words, rangeWords }: Scale): ChartRow[] {
  return points.map(({ batch, day, value, pieces }, i) =>
    defined({
      batch,
      day,
      value: words(value),
      range: i === 0 ? "" : rangeWords(ranges[i - 1] ?? 0),
      outside: limits?.outside.includes(i) ?? false,
      rangeOutside: limits?.rangeOutside.includes(i) ?? false,
      pieces,
    }),
  );
}

function valuesInput(
  { points, chart: { centre, limits } }: BatchSeries,
  rows: readonly ChartRow[],
  { factor, unit, words }: Scale,
): IndividualsInput {
  const level = (name: string, value: number, form: Level["form"]): Level => ({
    name: `${name} ${words(value)}`,
    value: value * factor,
    form,
  });
  return {
    unit,
    points: points.map(({ batch, value }, i) => ({
      label: batch,
      value: value * factor,
      marked: rows[i]?.outside ?? false,
    })),
    levels: [
      level("Mean", centre, "centre"),
      ...(limits === undefined
        ? []
        : [level("Upper limit", limits.upper, "limit"), level("Lower limit", limits.lower, "limit")]),
    ],
  };
}

function rangesInput(
  { chart: { ranges, limits } }: BatchSeries,
  rows: readonly ChartRow[],
  { factor, unit, rangeWords }: Scale,
): IndividualsInput {
  const level = (name: string, value: number, form: Level["form"]): Level => ({
    name: `${name} ${rangeWords(value)}`,
    value: value * factor,
    form,
  });
  return {
    unit,
    points: rows
      .slice(1)
      .map(({ batch, rangeOutside }, i) => ({ label: batch, value: (ranges[i] ?? 0) * factor, marked: rangeOutside })),
    levels:
      limits === undefined
        ? []
        : [level("Mean", limits.meanRange, "centre"), level("Limit", limits.rangeUpper, "limit")],
  };
}

function titleOf(shown: Shown, { quantity, adhesive, by, procedure }: BatchSeries): string {
  const glue = shown.record.adhesives.get(adhesive)?.title ?? adhesive;
  if (quantity === "ratio error") return `${glue}, measured by ${by ?? "mass"}`;
  return `${glue}, ${shown.record.procedures.get(procedure ?? "")?.title ?? procedure ?? ""}`;
}

function ratioWords({ record }: Shown, adhesive: string): string {
  const [first, second] = MADE[record.adhesives.get(adhesive)?.kind ?? "two-part"].pair ?? [];
  return `Error of the ratio of ${second} to ${first}`;
}

function saysOf(shown: Shown, series: BatchSeries, { words }: Scale): string {
  const {
    points,
    quantity,
    chart: { centre, limits },
  } = series;
  const what = quantity === "stress" ? "Mean stress on the glue faces at breaking" : ratioWords(shown, series.adhesive);
  const held = `${what}, ${counted(points.length, "batch", "batches")} in the order of mixing; mean ${words(centre)}`;
  const sheet = sheetWords(shown, series);
  if (limits === undefined)
    return `${held}.${sheet} Below ${LEAST_POINTS} batches there are no limits: so few would set them by chance.`;
  const out = limits.outside.map((at) => points[at]?.batch ?? "");
  return `${held}, limits ${words(limits.lower)} and ${words(limits.upper)}. ${out.length === 0 ? "No batch lies outside them." : `Outside them: ${listed(out)}.`}${sheet}`;
}

/** What the data sheet allows, where it is one and the same for all of them. */
function sheetWords({ evidence }: Shown, { quantity, points }: BatchSeries): string {
  const tolerances = new Set(points.map(({ batch }) => evidence.batches.get(batch)?.ratio?.tolerance));
  const [tolerance] = tolerances;
  return quantity === "stress" || tolerances.size > 1 || tolerance === undefined
    ? ""
    : ` The data sheet allows ±${percent(tolerance, 1)}.`;
}

function toleranceWords({ tolerance, points }: BatchSeries, { words }: Scale): string | undefined {
  if (tolerance === undefined) return undefined;
  const { bound, factor, deviation, mean, coverage, confidence } = tolerance;
  return `With ${percent(confidence)} confidence at least ${percent(coverage)} of such batches break at a mean stress above ${words(bound)}: mean ${words(mean)} less ${grouped(factor, 3)} times the deviation of ${words(deviation)}, over ${points.length} batches. That holds if the means of batches are normally distributed, which so few cannot show.`;
}
