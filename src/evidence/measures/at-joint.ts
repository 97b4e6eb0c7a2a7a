/** What was measured at a joint: a scarf that is too steep, or a gap too wide, is in the joint whatever its glue. */
import type { JointSpec, Measurement, Ref } from "../../facts/types.ts";
import { acceptedBefore, standingOf } from "../readiness/answering.ts";
import type { Finder } from "../finding.ts";
import type { RecordIndex } from "../record-index.ts";
import { FROM_RECORD, USUAL_SCARF_SOURCE } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import { asAnswered, askedOf, isUsualScarf, measurementFile } from "./measurement.ts";

/** One that is out is settled by a later one that is within, or by a departure that is accepted. */
export function measuredAt(index: RecordIndex, { id }: JointSpec, find: Finder): Finding[] {
  return (index.measurementsAt.get(id) ?? []).flatMap((one) => {
    const { verdict, again } = measurementFile(index, one);
    if (verdict === "no tolerance" || again !== undefined) return [];
    const limit: Limit = {
      code: "limit/measured",
      values: { asked: askedOf(one), isSlope: one.dimension === "slope" },
      from: isUsualScarf(one) ? USUAL_SCARF_SOURCE : FROM_RECORD,
    };
    const values = { what: one.what, found: one.found.typed };
    const alsoOn: readonly Ref[] = [{ kind: "entry", id: one.entry }];
    if (verdict === "estimated") return [find("joint-measured/estimate", "caution", values, { limit, alsoOn })];
    if (verdict === "within") return [find("joint-measured/within", "meets", values, { limit, alsoOn })];
    return [outAt(index, one, find, { limit, alsoOn })];
  });
}

interface Beside {
  readonly limit: Limit;
  readonly alsoOn: readonly Ref[];
}

function outAt(index: RecordIndex, measurement: Measurement, find: Finder, beside: Beside): Finding {
  const { what, found, departure } = measurement;
  const values = { what, found: found.typed };
  const named = departure === undefined ? undefined : index.departures.get(departure);
  if (named === undefined) return find("joint-measured/out", "unproven", values, beside);
  const answered = [named.entry, ...(named.acceptedIn === undefined ? [] : [named.acceptedIn])];
  const alsoOn: readonly Ref[] = [
    ...beside.alsoOn,
    { kind: "departure", id: named.id },
    ...answered.map((id): Ref => ({ kind: "entry", id })),
  ];
  const all = { ...values, departure: named.id };
  if (acceptedBefore(index, asAnswered(measurement)) !== undefined)
    return find("joint-measured/accepted-before", "unproven", all, { ...beside, alsoOn });
  const isAccepted = standingOf(index, named) === "accepted";
  return find(
    isAccepted ? "joint-measured/accepted" : "joint-measured/not-accepted",
    isAccepted ? "caution" : "unproven",
    all,
    { ...beside, alsoOn },
  );
}
