/** Who may answer for work, by a signature or by accepting a departure: an inspector who has not worked on it. */
import type { Departure, Ref } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import type { Standing } from "../types.ts";
import { within } from "./within.ts";

interface Refused {
  readonly because: "role" | "worked";
  /** Where that one worked. */
  readonly restsOn: readonly Ref[];
}

/** Why someone may not answer for work on these assemblies, whenever that one worked there, or on who knows which. */
export function refused(index: RecordIndex, who: string, assemblies: ReadonlySet<string>): Refused | undefined {
  if (index.record.aircraft.people.get(who)?.role !== "inspector") return { because: "role", restsOn: [] };
  const worked = (index.workOf.get(who) ?? []).find(
    ({ assembly }) => assembly === undefined || assemblies.has(assembly),
  );
  return worked && { because: "worked", restsOn: [worked.noted] };
}

/** Worked on, too, is whatever a measurement that names the departure was taken on. */
export function standingOf(
  index: RecordIndex,
  { id, acceptedBy, assembly, reference, condition }: Departure,
): Standing {
  if (acceptedBy === undefined) return "not accepted";
  const measured = (index.measurementsNaming.get(id) ?? []).map((one) => one.assembly);
  const inside = new Set([assembly, ...measured].flatMap((one) => within(index, one)).map((one) => one.id));
  const no = refused(index, acceptedBy, inside);
  if (no) return no.because === "role" ? "accepted by no inspector" : "accepted by one who worked on it";
  if (reference === undefined) return "told by the builder";
  return condition === undefined ? "accepted" : "accepted on a condition";
}
