/** Work that differs from the drawing. */
import type * as z from "zod";
import { type Decisions, orWithheld, person, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { audience, block, id, words } from "../field.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Audience, Day, Path, Placed } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const departureSchema = block({
  id: id("The departure's id.", "D-05"),
  what: words("What differs from the drawing.", "Spruce packer added behind the sternpost"),
  why: words("Why.", "Wider glue face"),
  accepted_by: id("Who accepted it that day.", "inspector-1").optional(),
  assembly: id("On which assembly, if not the entry's.", "tailplane").optional(),
  for: audience().optional(),
});

export interface Departure extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly what: string;
  readonly why: string;
  readonly acceptedBy?: string;
  readonly acceptedIn?: string;
  readonly audience: Audience;
}

export function departureOf(spec: z.output<typeof departureSchema>, path: Path, of: InEntry): Departure {
  const accepted =
    spec.accepted_by === undefined ? of.later.accepted.get(spec.id) : { by: spec.accepted_by, entry: of.entry };
  return factOf<Departure>({
    id: spec.id,
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    assembly: spec.assembly ?? of.assembly,
    what: spec.what,
    why: spec.why,
    acceptedBy: accepted?.by,
    acceptedIn: accepted?.entry,
    audience: spec.for ?? "public",
  });
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
  audience: show,
};

export const isDepartureShown = ({ id: one }: Departure, seer: Visibility): boolean => seer.departures.has(one);

export const departureAmended = foundBy({
  keys: ["id"],
  kind: "departure",
  named: true,
  word: "Departure",
  several: "Departures",
});
