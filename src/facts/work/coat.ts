/** A coat put on: it stands there until a later one is said to have been put on after all was taken off. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, eachOrWithheld, orWithheld, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, clock, count, note, noted, notedShare, words } from "../field.ts";
import { idOf, idsOf } from "../id.ts";
import { PAST_MIDNIGHT } from "../time/clock.ts";
import { assemblyIn, factOf, type InEntry, maybeNoted } from "../typing.ts";
import type { Day, Moment, Noted, Path } from "../values.ts";

export const coatSchema = block({
  where: words("Where it was put on; in the same words for each coat there.", "Inside of the left box"),
  finish: idOf("finish", "Which product.", "varnish-1"),
  lot: idsOf("lot", "The lot that it came from; several in brackets, where it is mixed of parts.", "V-1").optional(),
  coat: count("Which coat of it this is there, if not the first.", "2", "coats").optional(),
  assembly: idOf("assembly", "On which assembly, if not the entry's.", "wing").optional(),
  at: clock("When it was put on.").optional(),
  dry: clock("When it was found dry; 24:20 is twenty past midnight.", PAST_MIDNIGHT).optional(),
  shop: block({
    temperature: noted({ dimension: "temperature", sign: "any" }, "Of the air when it was put on.", [
      "19 to 21 °C",
    ]).optional(),
    humidity: notedShare("Relative humidity of the air then.", "52 %", ["48 to 55 %"]).optional(),
  })
    .meta({ description: "How warm and damp it was." })
    .optional(),
  bare: words("What was kept bare for gluing.", "Glue margins, under tape").optional(),
  stripped: words("How all that stood there was taken off before it.", "Sanded back to the wood").optional(),
  departure: idOf(
    "departure",
    "The departure that answers for it, where it is not as the sheet asks.",
    "D-05",
  ).optional(),
  note: note(),
});

export interface Coat {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly where: string;
  readonly finish: string;
  readonly lots: readonly string[];
  /** Which one of that product there, from 1. */
  readonly coat: number;
  readonly at?: Moment;
  /** Where clocks showed that time twice, the second, s. */
  readonly latest?: number;
  readonly dry?: Moment;
  readonly temperature?: Noted;
  readonly humidity?: Noted;
  readonly bare?: string;
  /** How all that stood there was taken off before it. */
  readonly stripped?: string;
  readonly departure?: string;
  readonly note?: string;
}

export function coatOf(spec: z.output<typeof coatSchema>, path: Path, of: InEntry): Coat {
  return factOf<Coat>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    assembly: assemblyIn(spec.assembly, of),
    where: spec.where,
    finish: spec.finish,
    lots: spec.lot ?? [],
    coat: spec.coat ?? 1,
    at: spec.at && of.moment(spec.at, "earlier"),
    latest: spec.at && of.moment(spec.at, "later")?.epoch,
    dry: spec.dry && of.moment(spec.dry, "later"),
    temperature: maybeNoted(spec.shop?.temperature),
    humidity: maybeNoted(spec.shop?.humidity),
    bare: spec.bare,
    stripped: spec.stripped,
    departure: spec.departure,
    note: spec.note,
  });
}

export const coatShown: Decisions<Coat> = {
  place: show,
  entry: show,
  day: show,
  assembly: show,
  where: show,
  finish: show,
  lots: eachOrWithheld("lots"),
  coat: show,
  at: show,
  latest: show,
  dry: show,
  temperature: show,
  humidity: show,
  bare: show,
  stripped: show,
  departure: orWithheld("departures"),
  note: show,
};

export const coatAmended = foundBy({
  keys: ["where", "finish", "coat", "assembly"],
  named: false,
  word: "Coat:",
  several: "Coats",
});
