/** A measurement against its drawing: within its limits or out of them. Equal to a limit is within. */
import { defined } from "../../defined.ts";
import { saidEnds } from "../../facts/quantity/ends.ts";
import { standing } from "../../reckoning/compare.ts";
import type { Ends, Measurement, Range } from "../../facts/types.ts";
import { heldBy } from "../held.ts";
import type { Answered } from "../readiness/answering.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import type { MeasurementFile } from "../types.ts";

export function measurementFile(index: RecordIndex, measurement: Measurement): MeasurementFile {
  const { drawing } = measurement;
  const verdict = verdictOf(measurement);
  const again = verdict === "out" || verdict === "estimated" ? measuredAgain(index, measurement) : undefined;
  return defined({ measurement, off: drawing && furthest(saidEnds(measurement.found), drawing.value), verdict, again });
}

/** By how much the end that is further off is off. */
function furthest({ least, most }: Ends, nominal: number): number {
  const [below, above] = [least - nominal, most - nominal];
  return Math.abs(below) > Math.abs(above) ? below : above;
}

/** The steepest scarf where the drawing gives none: {@link USUAL_SCARF_SOURCE}. */
const USUAL_SCARF = { typed: "1 in 12", most: 1 / 12 };

/** A slope at a joint, of which nothing says what the drawing asks. */
export const isUsualScarf = ({ dimension, joint, limits }: Measurement): boolean =>
  dimension === "slope" && joint !== undefined && limits === undefined;

/** The limits that the drawing gives, or its measure with the tolerance about it; of a scarf the usual slope in their place. */
function limitsOf(measurement: Measurement): Pick<Range, "least" | "most"> | undefined {
  const { drawing, limits, tolerance } = measurement;
  if (limits) return limits;
  if (isUsualScarf(measurement)) return USUAL_SCARF;
  return drawing && tolerance && { least: drawing.value + tolerance.minus, most: drawing.value + tolerance.plus };
}

function verdictOf(measurement: Measurement): MeasurementFile["verdict"] {
  const limits = limitsOf(measurement);
  if (!limits) return "no tolerance";
  const where = standing(measurement.found, limits);
  if (where === "estimate") return "estimated";
  return where === "within" ? "within" : "out";
}

/** A later one of the same against the same limits, that is within them. */
function measuredAgain(index: RecordIndex, out: Measurement): Measurement | undefined {
  const limits = limitsOf(out);
  return (index.measurementsOf.get(out.assembly) ?? []).find((one) => {
    const same = limitsOf(one);
    return (
      takesPlaceOf(index, one, out) &&
      same?.least === limits?.least &&
      same?.most === limits?.most &&
      verdictOf(one) === "within"
    );
  });
}

/**
 * Whether it is a measurement of a later day of the same in the same words, on the same assembly, at the same joint, on
 * the same side of the same pair, of what can have changed between.
 */
export function takesPlaceOf(index: RecordIndex, one: Measurement, before: Measurement): boolean {
  return (
    one.what === before.what &&
    one.assembly === before.assembly &&
    one.joint === before.joint &&
    one.pair === before.pair &&
    one.side === before.side &&
    dayOf(index, one) > dayOf(index, before) &&
    couldBeMended(index, before, one)
  );
}

const dayOf = (index: RecordIndex, { entry }: Measurement): number => lookUp(index.entries, entry).dayStart;

/** What is out in a joint stays in it while that is glued: only one that held nothing, or was opened since, can have been cut again. */
function couldBeMended(index: RecordIndex, out: Measurement, again: Measurement): boolean {
  const joint = out.joint === undefined ? undefined : index.joints.get(out.joint);
  if (joint === undefined) return true;
  const [from, to] = [orderOf(index, out.entry), orderOf(index, again.entry)];
  const opened = (index.reworks.get(joint.id) ?? []).map(({ entry }) => orderOf(index, entry));
  return opened.some((at) => at > from && at <= to) || heldBy(index, joint, to - 1).batches.length === 0;
}

/** `62.0 mm ±0.5 mm`, `at least 12 mm`: what was asked, as typed. */
export function askedOf(measurement: Measurement): string {
  const { drawing, limits, tolerance } = measurement;
  if (isUsualScarf(measurement)) return USUAL_SCARF.typed;
  return [drawing?.typed ?? limits?.typed, tolerance?.typed].filter((text) => text !== undefined).join(" ");
}

/** In which words amendments tell of it. */
export const measurementFact = ({ what }: Pick<Measurement, "what">): string => `Measurement: ${what}`;

export const asAnswered = (one: Measurement): Answered => ({ ...one, fact: measurementFact(one) });
