/**
 * Two sides held against each other: left and right, the two faces, upper and lower. Of each side all counts that no
 * later measurement of the same took the place of; an estimate takes none.
 */
import { defined } from "../../defined.ts";
import { atMost } from "../../reckoning/compare.ts";
import { isEstimate, saidEnds } from "../../facts/quantity/ends.ts";
import type { Ends, Measurement, Ref, Side } from "../../facts/types.ts";
import { isAnswered } from "../readiness/answering.ts";
import type { RecordIndex } from "../record-index.ts";
import type { ChangeValues } from "../codes/hold-points.ts";
import type { PairFile } from "../types.ts";
import { asAnswered, takesPlaceOf } from "./measurement.ts";

const FIRST: ReadonlySet<Side> = new Set<Side>(["left", "front", "upper"]);

export function pairFiles(index: RecordIndex): Map<string, PairFile> {
  return new Map([...index.pairs].map(([id, measurements]) => [id, pairFile(index, id, measurements)]));
}

/** `measurements` in the order of the record. */
export function pairFile(index: RecordIndex, id: string, measurements: readonly Measurement[]): PairFile {
  const standing = measurements.filter(
    (one) => !measurements.some((again) => !isEstimate(again.found) && takesPlaceOf(index, again, one)),
  );
  const isFirst = ({ side }: Measurement): boolean => side !== undefined && FIRST.has(side);
  const firsts = standing.filter(isFirst);
  const seconds = standing.filter((one) => !isFirst(one));
  const stated = measurements.find(({ pairTolerance }) => pairTolerance !== undefined);
  const tolerance = stated?.pairTolerance && { ...stated.pairTolerance, entry: stated.entry };
  const now = [...firsts, ...seconds];
  const difference = furthest(
    firsts.flatMap((one) => seconds.map((other) => furthestApart(saidEnds(one.found), saidEnds(other.found)))),
  );
  return defined({
    id,
    now,
    before: measurements.filter((one) => !now.includes(one)),
    tolerance,
    difference,
    verdict:
      difference === undefined
        ? "one side"
        : tolerance === undefined
          ? "no tolerance"
          : !atMost(Math.abs(difference), tolerance.value)
            ? "out"
            : now.some(({ found }) => isEstimate(found))
              ? "estimated"
              : "within",
  });
}

const furthest = (differences: readonly number[]): number | undefined =>
  differences.length === 0 ? undefined : differences.reduce((far, one) => (Math.abs(one) > Math.abs(far) ? one : far));

/** The most by which they can differ. */
function furthestApart(one: Ends, other: Ends): number {
  const [under, over] = [one.least - other.most, one.most - other.least];
  return Math.abs(under) > Math.abs(over) ? under : over;
}

/** The entries that what is said of a pair rests on. */
export function entriesOf({ now, tolerance }: PairFile): Ref[] {
  return [...now.map(({ entry }) => entry), ...(tolerance ? [tolerance.entry] : [])].map((id) => ({
    kind: "entry",
    id,
  }));
}

/** What was found on both sides and how far they may differ. */
export function pairValues({ id, now, tolerance }: PairFile): ChangeValues["change/pair-out"] {
  const sides = now.map(({ side, found }) => ({ side, found: found.typed }));
  return { pair: id, sides, tolerance: tolerance?.typed };
}

/** Departures that what counts of its sides names. */
export const departuresOf = ({ now }: PairFile): string[] => [
  ...new Set(now.flatMap(({ departure }) => departure ?? [])),
];

/** Whether a departure that a side names was accepted before no side, or is open itself. */
export const isPairAnswered = (index: RecordIndex, pair: PairFile, until?: number): boolean =>
  departuresOf(pair).some((departure) =>
    pair.now.every((side) => isAnswered(index, { ...asAnswered(side), departure }, until)),
  );
