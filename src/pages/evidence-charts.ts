/** What the page of charts says: shares passed, and ratio errors and stresses by batch. */
import type { IndividualsInput, Level } from "../charts/individuals.ts";
import { reckonStatistics } from "../evidence/statistics.ts";
import type { BatchSeries, SharePassed } from "../evidence/types/statistics.ts";
import type { Day } from "../record/types.ts";
import type { Shown } from "./shown.ts";
import { counted, inUnits, listed, signedPercent } from "./words.ts";

export interface ChartRow {
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
  const of = (quantity: BatchSeries["quantity"]): SeriesView[] => series.filter((one) => one.quantity === quantity).map((one, at) => seriesView(shown, one, at));
  return {
    shares: shares.map((share) => ({ ...share, adhesiveTitle: adhesives.get(share.adhesive)?.title ?? share.adhesive, procedureTitle: procedures.get(share.procedure)?.title ?? share.procedure })),
    ratios: of("ratio error"),
    stresses: of("stress"),
  };
}

type Words = (value: number) => string;

function wordsOf(shown: Shown, { quantity }: BatchSeries): { readonly value: Words; readonly range: Words } {
  if (quantity === "stress") {
    const stress: Words = (value) => inUnits(value, "Pa", shown.record.aircraft.units);
    return { value: stress, range: stress };
  }
  return { value: (value) => signedPercent(value), range: (value) => signedPercent(value).replace("+", "") };
}

function seriesView(shown: Shown, series: BatchSeries, at: number): SeriesView {
  const { points, chart: { centre, ranges, limits } } = series;
  const words = wordsOf(shown, series);
  const rows = points.map(({ batch, day, value, pieces }, i): ChartRow => ({
    batch, day, value: words.value(value), range: i === 0 ? "" : words.range(ranges[i - 1] ?? 0),
    outside: limits?.outside.includes(i) ?? false, rangeOutside: limits?.rangeOutside.includes(i) ?? false,
    ...(pieces === undefined ? {} : { pieces }),
  }));
  const meanLevel: Level = { name: `Mean ${words.value(centre)}`, value: centre, form: "centre" };
  const tolerance = toleranceWords(series, words.value);
  return {
    id: `${series.quantity.replace(" ", "-")}-${at + 1}`, title: titleOf(shown, series), says: saysOf(series, words.value), rows,
    values: { words: words.value, points: rows.map(({ batch, outside }, i) => ({ label: batch, value: points[i]?.value ?? 0, marked: outside })), levels: [meanLevel, ...limitLevels(series, words.value)] },
    ranges: {
      words: words.range,
      points: rows.slice(1).map(({ batch, rangeOutside }, i) => ({ label: batch, value: ranges[i] ?? 0, marked: rangeOutside })),
      levels: limits === undefined ? [] : [{ name: `Mean ${words.range(limits.meanRange)}`, value: limits.meanRange, form: "centre" }, { name: `Limit ${words.range(limits.rangeUpper)}`, value: limits.rangeUpper, form: "limit" }],
    },
    outside: rows.filter(({ outside }) => outside).map(({ batch }) => batch),
    jumps: rows.filter(({ rangeOutside }) => rangeOutside).map(({ batch }) => batch),
    ...(tolerance === undefined ? {} : { tolerance }),
  };
}

function titleOf(shown: Shown, { quantity, adhesive, by, procedure }: BatchSeries): string {
  const glue = shown.record.adhesives.get(adhesive)?.title ?? adhesive;
  if (quantity === "ratio error") return `${glue}, measured by ${by ?? "mass"}`;
  return `${glue}, ${shown.record.procedures.get(procedure ?? "")?.title ?? procedure ?? ""}`;
}

function limitLevels({ chart: { limits } }: BatchSeries, words: Words): Level[] {
  if (limits === undefined) return [];
  return [{ name: `Upper limit ${words(limits.upper)}`, value: limits.upper, form: "limit" }, { name: `Lower limit ${words(limits.lower)}`, value: limits.lower, form: "limit" }];
}

function saysOf({ points, quantity, chart: { centre, limits } }: BatchSeries, words: Words): string {
  const what = quantity === "stress" ? "Mean stress on the glue faces at breaking" : "Error of the ratio of hardener to resin";
  const held = `${what}, ${counted(points.length, "batch", "batches")} in the order of mixing; mean ${words(centre)}`;
  if (limits === undefined) return `${held}. Below 8 batches there are no limits: so few would set them by chance.`;
  const out = limits.outside.map((at) => points[at]?.batch ?? "");
  return `${held}, limits ${words(limits.lower)} and ${words(limits.upper)}. ${out.length === 0 ? "No batch lies outside them." : `Outside them: ${listed(out)}.`}`;
}

function toleranceWords({ tolerance, points }: BatchSeries, words: Words): string | undefined {
  if (tolerance === undefined) return undefined;
  const { bound, factor, deviation, mean } = tolerance;
  return `With 95 % confidence at least 90 % of such batches break at a mean stress above ${words(bound)}: mean ${words(mean)} less ${factor.toFixed(3)} times the deviation of ${words(deviation)}, over ${points.length} batches. That holds if the means of batches are normally distributed, which so few cannot show.`;
}
