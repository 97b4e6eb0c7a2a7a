/** Two sides held against each other: left and right, the two faces, upper and lower. Of each side the last measurement counts. */
import { defined } from "../../defined.ts";
import { atMost } from "../../reckoning/compare.ts";
import type { Measurement, Side } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import type { PairFile } from "../types.ts";

const FIRST: ReadonlySet<Side> = new Set<Side>(["left", "front", "upper"]);

export function pairFiles(index: RecordIndex): Map<string, PairFile> {
  return new Map([...index.pairs].map(([id, measurements]) => [id, pairFile(id, measurements)]));
}

/** `measurements` in the order of the record. */
export function pairFile(id: string, measurements: readonly Measurement[]): PairFile {
  const isFirst = ({ side }: Measurement): boolean => side !== undefined && FIRST.has(side);
  const first = measurements.findLast(isFirst);
  const second = measurements.findLast((one) => !isFirst(one));
  const stated = measurements.find(({ pairTolerance }) => pairTolerance !== undefined);
  const tolerance = stated?.pairTolerance && { ...stated.pairTolerance, entry: stated.entry };
  const now = [first, second].filter((one) => one !== undefined);
  const difference = first && second && first.found.value - second.found.value;
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
          : atMost(Math.abs(difference), tolerance.value)
            ? "within"
            : "out",
  });
}
