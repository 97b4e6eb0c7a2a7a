/** Measurements and pairs of sides as an edition shows them. */
import type { MeasurementFile, PairFile } from "../evidence/types.ts";
import { type Decisions, each, onlyShown, part, redacted, show } from "../facts/decisions.ts";
import type { Measurement } from "../facts/types.ts";
import type { Visibility } from "../facts/visibility.ts";
import { isTold } from "./ground.ts";
import { measurementShown } from "../facts/work/measurement.ts";

export const measurementFileShown: Decisions<MeasurementFile> = {
  measurement: part(measurementShown),
  off: show,
  verdict: show,
  again: (again, seer) => (isTold(again, seer) ? redacted(again, measurementShown, seer) : undefined),
  stands: onlyShown("entries"),
};

export const isMeasurementFileShown = ({ measurement }: MeasurementFile, seer: Visibility): boolean =>
  isTold(measurement, seer);

const sides = each<Measurement>(measurementShown, isTold);

/** A pair of which a side is shown keeps its verdict; what was reckoned from a hidden side goes with it. */
export const pairShown: Decisions<PairFile> = {
  id: show,
  verdict: show,
  now: sides,
  before: sides,
  tolerance: (tolerance, seer) => (isTold(tolerance, seer) ? tolerance : undefined),
  stands: onlyShown("entries"),
  difference: (difference, seer, { now }) => (now.every((side) => isTold(side, seer)) ? difference : undefined),
};

export const isPairShown = ({ now, before }: PairFile, seer: Visibility): boolean =>
  [...now, ...before].some((side) => isTold(side, seer));
