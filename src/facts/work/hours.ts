/** Hours that someone worked, or looked on. */
import { DAY_MINUTES, MINUTE_SECONDS } from "../quantity/conversions.ts";
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, person, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, choice, clock, words, worked } from "../field.ts";
import { idOf, idsOf, plain } from "../id.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Path } from "../values.ts";

export const hoursSchema = block({
  who: plain(idsOf("person", "Who worked; several in brackets, each for all of the time.", "builder")),
  task: plain(words("At what: one of the aircraft's tasks.", "gluing")),
  time: plain(worked("How long; or say from when to when.", "2:45", DAY_MINUTES)).optional(),
  from: clock("From when, in place of how long.").optional(),
  to: clock("To when; 24:20 is twenty past midnight.", 36).optional(),
  hand: choice(["paid", "unpaid"], "Whether a helper's hand was paid.").optional(),
  where: words("Where, if not in the workshop.", "at the machine shop").optional(),
  assembly: idOf("assembly", "On which assembly, if not the entry's.", "tailplane").optional(),
}).meta({ examples: ['{ who: builder, task: gluing, time: "2:45" }'] });

type HoursSpec = z.output<typeof hoursSchema>;

/** Of one person: a line of several people is one of these for each. */
export interface HoursLine {
  readonly place: Place;
  readonly who: string;
  readonly task: string;
  readonly minutes: number;
  /** How long, or from when to when, as typed. */
  readonly typed: string;
  readonly from?: string;
  readonly to?: string;
  readonly hand?: "paid" | "unpaid";
  /** Where, if not in the workshop. */
  readonly where?: string;
  readonly assembly: string;
}

/** A line without a sound length of time is a problem, so that none is missing here. */
export function hoursOf(spec: HoursSpec, path: Path, of: InEntry): HoursLine[] {
  const { minutes, typed } = spec.time ?? between(spec, of);
  return spec.who.map((who) =>
    factOf<HoursLine>({
      place: of.at(path),
      who,
      task: spec.task,
      minutes,
      typed,
      from: spec.from?.typed,
      to: spec.to?.typed,
      hand: spec.hand,
      where: spec.where,
      assembly: spec.assembly ?? of.assembly,
    }),
  );
}

/** By the moments, so that an hour which clocks passed over was not worked. */
function between({ from, to }: HoursSpec, of: InEntry): { readonly minutes: number; readonly typed: string } {
  const start = from && of.moment(from, "earlier")?.epoch;
  const end = to && of.moment(to, "earlier")?.epoch;
  return {
    minutes: ((end ?? Number.NaN) - (start ?? Number.NaN)) / MINUTE_SECONDS,
    typed: `${from?.typed ?? ""} to ${to?.typed ?? ""}`,
  };
}

export const hoursShown: Decisions<HoursLine> = {
  place: show,
  who: person,
  task: show,
  minutes: show,
  typed: show,
  from: show,
  to: show,
  hand: show,
  where: show,
  assembly: show,
};

export const hoursAmended = anew("Hours", "All of that day's lines of hours, as they should read.");
