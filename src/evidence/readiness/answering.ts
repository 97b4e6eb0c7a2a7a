/** Who may answer for work, by a signature or by accepting a departure: an inspector who has not worked on it. */
import type { Departure, Ref } from "../../facts/types.ts";
import { type Changed, changesOf } from "../amended.ts";
import type { DepartureSpec } from "../../facts/work/departure.ts";
import { orderOf, type RecordIndex } from "../record-index.ts";
import type { Standing } from "../types.ts";
import { isPaper } from "./paper.ts";
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

/** A place in the order of the record after every entry: amendments that lie after a place are passed over. */
const END = Number.POSITIVE_INFINITY;

/** Worked on, too, is whatever a measurement that names the departure was taken on. */
export function standingOf(index: RecordIndex, departure: Departure, until = END): Standing {
  const { id, acceptedBy, assembly, reference, condition } = departure;
  if (acceptedBy === undefined) return "not accepted";
  const measured = (index.measurementsNaming.get(id) ?? []).map((one) => one.assembly);
  const inside = new Set([assembly, ...measured].flatMap((one) => within(index, one)).map((one) => one.id));
  const no = refused(index, acceptedBy, inside);
  if (no) return no.because === "role" ? "accepted by no inspector" : "accepted by one who worked on it";
  if (!isPaper(reference)) return "told by the builder";
  if (condition !== undefined) return "accepted on a condition";
  return isChangedSince(index, departure, until) ? "changed since it was accepted" : "accepted";
}

/** What is accepted of a departure: that this, for that reason, is so there. */
const ACCEPTED: { readonly [key in keyof DepartureSpec]-?: boolean } = {
  id: true,
  what: true,
  why: true,
  assembly: true,
  accepted_by: false,
  reference: false,
  condition: false,
  for: false,
  note: false,
};
/** As amendments name them. */
const BESIDE = new Set<string | undefined>(
  Object.entries(ACCEPTED).flatMap(([key, is]) => (is ? [] : [key.replaceAll("_", " ")])),
);

/** A change of no one value is one of the whole. */
const isOfAccepted = ({ change: { value } }: Changed): boolean => !BESIDE.has(value);

function isChangedSince(index: RecordIndex, { id, acceptedIn }: Departure, until: number): boolean {
  if (acceptedIn === undefined) return false;
  const at = orderOf(index, acceptedIn);
  const changes = changesOf(index, { kind: "departure", id }).filter(isOfAccepted);
  const places = changes.map(({ amendment }) => orderOf(index, amendment.by));
  return places.some((one) => one > at && one <= until);
}

/** What names a departure that is to answer for it, and in which words amendments tell of it. */
export interface Answered {
  readonly entry: string;
  readonly departure?: string;
  readonly fact: string;
}

/**
 * The departure that a thing names, where it was accepted before that thing was noted or last amended: whoever accepted
 * it knew nothing of that.
 */
export function acceptedBefore(
  index: RecordIndex,
  { entry, departure, fact }: Answered,
  until = END,
): string | undefined {
  const named = departure === undefined ? undefined : index.departures.get(departure);
  if (named?.acceptedIn === undefined || standingOf(index, named, until) !== "accepted") return undefined;
  const at = orderOf(index, named.acceptedIn);
  const amended = changesOf(index, { kind: "entry", id: entry }).filter(({ change }) => change.fact === fact);
  const places = [entry, ...amended.map(({ amendment }) => amendment.by)].map((one) => orderOf(index, one));
  return places.some((one) => one > at && one <= until) ? named.id : undefined;
}

/** Whether it names a departure that was not accepted before it: one that answers for it, or that is open itself. */
export const isAnswered = (index: RecordIndex, thing: Answered, until = END): boolean =>
  thing.departure !== undefined && acceptedBefore(index, thing, until) === undefined;
