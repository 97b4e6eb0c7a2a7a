/** Statistics over test pieces and batches, counted together only where they are alike. */
import { defined } from "../defined.ts";
import { exactInterval } from "../reckoning/statistics/exact-interval.ts";
import { exactLowerBound } from "../reckoning/statistics/exact-lower-bound.ts";
import { byKey, groupBy } from "../reckoning/hours/hours.ts";
import { individualsChart, LEAST_POINTS } from "../reckoning/statistics/individuals-chart.ts";
import { mean } from "../reckoning/statistics/mean.ts";
import { sampleDeviation } from "../reckoning/statistics/sample-deviation.ts";
import { toleranceFactor } from "../reckoning/statistics/tolerance-factor.ts";
import type { Record } from "../facts/types.ts";
import type { BatchFile, Evidence, PieceFile } from "./types.ts";
import type { Alike, BatchSeries, Point, SharePassed, Statistics, StressBound } from "./types/statistics.ts";

const COVERAGE = 0.9;
const CONFIDENCE = 0.95;

/** Over what `record` and `evidence` hold: of an edition, over what it shows. */
export function reckonStatistics(record: Record, evidence: Pick<Evidence, "batches">): Statistics {
  const files = inTime(record, evidence);
  return { shares: shares(files), series: [...ratios(files), ...stresses(files)] };
}

/** In the order in which they were mixed; those without a time come last on their day. */
function inTime(record: Record, { batches }: Pick<Evidence, "batches">): BatchFile[] {
  const timed = record.entries.flatMap((entry) =>
    entry.batches.flatMap((batch) => {
      const file = batches.get(batch.id);
      return file === undefined ? [] : [{ file, at: batch.mixed?.epoch ?? entry.dayEnd }];
    }),
  );
  return timed.sort((a, b) => a.at - b.at).map(({ file }) => file);
}

interface Broken {
  readonly batch: BatchFile;
  readonly piece: PieceFile;
}

const piecesOf = (files: readonly BatchFile[]): Broken[] =>
  files.flatMap((batch) => batch.pieces.map((piece) => ({ batch, piece })));

function alikeOf({ batch, piece: { piece } }: Broken): Alike {
  const { trial, preparation } = piece;
  return defined({ adhesive: batch.batch.adhesive, procedure: piece.procedure, trial, preparation });
}

/** No part holds an empty id, so that none missing sorts before any. */
const keyOf = (...parts: readonly (string | undefined)[]): string => JSON.stringify(parts.map((part) => part ?? ""));

function shares(files: readonly BatchFile[]): SharePassed[] {
  const groups = groupBy(piecesOf(files), (one) => {
    const { adhesive, procedure, trial, preparation } = alikeOf(one);
    return keyOf(adhesive, procedure, trial, preparation);
  });
  return [...groups].sort(byKey).flatMap(([, group]) => [shareOf(alikeOf(group[0]), group)]);
}

function shareOf(alike: Alike, group: readonly Broken[]): SharePassed {
  const count = (...verdicts: readonly PieceFile["verdict"][]): number =>
    group.filter(({ piece }) => verdicts.includes(piece.verdict)).length;
  const passed = count("pass");
  const failed = count("fail");
  const interval = exactInterval(passed, passed + failed);
  const atLeast = exactLowerBound(passed, passed + failed);
  return {
    ...alike,
    passed,
    failed,
    batches: new Set(group.map(({ batch }) => batch.batch.id)).size,
    silent: count("inconclusive", "too early"),
    notBroken: count("not broken"),
    ...(interval === undefined ? {} : { interval }),
    ...(atLeast === undefined ? {} : { atLeast }),
  };
}

function ratios(files: readonly BatchFile[]): BatchSeries[] {
  const mixed = files.flatMap(({ batch, ratio }) =>
    ratio === undefined
      ? []
      : [{ adhesive: batch.adhesive, by: ratio.by, point: { batch: batch.id, day: batch.day, value: ratio.error } }],
  );
  return seriesOf(
    groupBy(mixed, ({ adhesive, by }) => keyOf(adhesive, by)),
    ({ adhesive, by }) => ({ quantity: "ratio error", adhesive, by }),
  );
}

function stresses(files: readonly BatchFile[]): BatchSeries[] {
  const tried = piecesOf(files).filter(({ piece }) => triesTheBond(piece));
  const byBatch = [...groupBy(tried, ({ batch, piece }) => keyOf(batch.batch.id, piece.piece.procedure)).values()];
  const means = byBatch.flatMap((group) => {
    const value = mean(group.flatMap(({ piece }) => piece.stress ?? []));
    if (value === undefined) return [];
    const [{ batch, piece }] = group;
    const { id, day, adhesive } = batch.batch;
    return [{ adhesive, procedure: piece.piece.procedure, point: { batch: id, day, value, pieces: group.length } }];
  });
  return seriesOf(
    groupBy(means, ({ adhesive, procedure }) => keyOf(adhesive, procedure)),
    ({ adhesive, procedure }) => ({ quantity: "stress", adhesive, procedure }),
  );
}

/**
 * Whether the stress at which a piece broke may be counted: full cure, and a shape that its procedure allows. However it broke and however low the
 * stress was: to leave out the low ones would better the rest. Pieces of trials are not the build's.
 */
function triesTheBond({ stress, piece, findings }: PieceFile): boolean {
  const shaped = !findings.some(({ rule, severity }) => rule === "overlap" && severity !== "meets");
  // A failure in the glue line is a failure after any cure, so that its verdict does not say whether it had cured.
  const cured = !findings.some(({ rule, severity }) => rule === "full-cure" && severity !== "meets");
  return stress !== undefined && piece.trial === undefined && shaped && cured;
}

type Head = Omit<BatchSeries, "points" | "chart" | "tolerance">;

function seriesOf<T extends { readonly point: Point }>(
  groups: ReadonlyMap<string, readonly [T, ...T[]]>,
  headOf: (one: T) => Head,
): BatchSeries[] {
  return [...groups].sort(byKey).flatMap(([, group]) => {
    const points = group.map(({ point }) => point);
    const chart = individualsChart(points.map(({ value }) => value));
    if (chart === undefined) return [];
    const head = headOf(group[0]);
    const tolerance = head.quantity === "stress" ? boundOf(points.map(({ value }) => value)) : undefined;
    return [{ ...head, points, chart, ...(tolerance === undefined ? {} : { tolerance }) }];
  });
}

function boundOf(values: readonly number[]): StressBound | undefined {
  const centre = mean(values);
  const deviation = sampleDeviation(values);
  const factor = toleranceFactor(values.length, COVERAGE, CONFIDENCE);
  if (values.length < LEAST_POINTS || centre === undefined || deviation === undefined || factor === undefined)
    return undefined;
  return {
    mean: centre,
    deviation,
    factor,
    bound: centre - factor * deviation,
    coverage: COVERAGE,
    confidence: CONFIDENCE,
  };
}
