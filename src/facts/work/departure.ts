/** Work that differs from the drawing. */
import type * as z from "zod";
import { type Decisions, orWithheld, person, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { audience, block, words, note } from "../field.ts";
import { idOf, ownId } from "../id.ts";
import { assemblyIn, factOf, type InEntry } from "../typing.ts";
import type { Audience, Day, Path, Placed } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const departureSchema = block({
  id: ownId("The departure's id.", "D-05"),
  what: words("What differs from the drawing.", "Spruce packer added behind the sternpost"),
  why: words("Why.", "Wider glue face"),
  accepted_by: idOf("person", "Who accepted it that day.", "inspector-1").optional(),
  reference: words("Number of the paper on which it was accepted; word of mouth is none.", "letter 4").optional(),
  condition: words("On what condition it was accepted.", "Two more screws at the root").optional(),
  assembly: idOf("assembly", "On which assembly, if not the entry's.", "tailplane").optional(),
  for: audience().optional(),
  note: note(),
});

export type DepartureSpec = z.output<typeof departureSchema>;

export interface Departure extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly what: string;
  readonly why: string;
  readonly acceptedBy?: string;
  readonly acceptedIn?: string;
  /** Number of the paper on which it was accepted: without one the acceptance is the builder's word. */
  readonly reference?: string;
  /** On what condition it was accepted last. */
  readonly condition?: string;
  readonly audience: Audience;
  readonly note?: string;
}

export function departureOf(spec: DepartureSpec, path: Path, of: InEntry): Departure {
  const { accepted_by: by, reference, condition } = spec;
  const own = by === undefined ? undefined : { by, entry: of.entry, reference, condition };
  const accepted = of.later.accepted.get(spec.id) ?? own;
  return factOf<Departure>({
    id: spec.id,
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    assembly: assemblyIn(spec.assembly, of),
    what: spec.what,
    why: spec.why,
    acceptedBy: accepted?.by,
    acceptedIn: accepted?.entry,
    reference: accepted?.reference,
    condition: accepted?.condition,
    audience: spec.for ?? "public",
    note: spec.note,
  });
}

/** What the entry that accepts it says of that goes with the entry. */
function whereAccepted(words: string, seer: Visibility, { acceptedIn }: Departure): string | undefined {
  return acceptedIn === undefined || seer.entries.has(acceptedIn) ? words : undefined;
}

export const departureShown: Decisions<Departure> = {
  id: show,
  place: show,
  entry: show,
  day: show,
  assembly: show,
  what: show,
  why: show,
  acceptedBy: person,
  acceptedIn: orWithheld("entries"),
  reference: whereAccepted,
  condition: whereAccepted,
  audience: show,
  note: show,
};

export const isDepartureShown = ({ id: one }: Departure, seer: Visibility): boolean => seer.departures.has(one);

export const departureAmended = foundBy({
  keys: ["id"],
  kind: "departure",
  named: true,
  word: "Departure",
  several: "Departures",
});
