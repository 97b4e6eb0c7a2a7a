/** Hours that someone worked, or looked on. */
import { DAY_MINUTES } from "../quantity/conversions.ts";
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, person, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, choice, wholeClock, words, worked, note } from "../field.ts";
import { idOf, idsOf, plain } from "../id.ts";
import { type Clock, PAST_MIDNIGHT } from "../time/clock.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Moment, Path } from "../values.ts";

export const hoursSchema = block({
  who: plain(idsOf("person", "Who worked; several in brackets, each for all of the time.", "builder")),
  task: plain(words("At what: one of the aircraft's tasks.", "gluing")),
  time: plain(worked("How long; or say from when to when.", "2:45", DAY_MINUTES)).optional(),
  from: wholeClock("From when, in place of how long.").optional(),
  to: wholeClock("To when; 24:20 is twenty past midnight.", PAST_MIDNIGHT).optional(),
  hand: choice(["paid", "unpaid"], "Whether a helper's hand was paid.").optional(),
  where: words("Where, if not in the workshop.", "at the machine shop").optional(),
  assembly: idOf("assembly", "On which assembly, if not the entry's.", "tailplane").optional(),
  note: note(),
}).meta({ examples: [{ who: "builder", task: "gluing", time: "2:45" }] });

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
  /** On what; neither the line nor its entry need name a part. */
  readonly assembly?: string;
  readonly note?: string;
}

/** By moments, so that an hour which clocks passed over was not worked; undefined where either is none. */
export function minutesBetween(from: Clock, to: Clock, momentOf: (clock: Clock) => Moment | undefined) {
  const [start, end] = [momentOf(from), momentOf(to)];
  return start && end && (end.epoch - start.epoch) / 60;
}

/** A line without a sound length of time is a problem, so that none is missing here. */
export function hoursOf(spec: HoursSpec, path: Path, of: InEntry): HoursLine[] {
  const { time, from, to } = spec;
  const span = from && to && minutesBetween(from, to, (clock) => of.moment(clock, "earlier"));
  return spec.who.map((who) =>
    factOf<HoursLine>({
      place: of.at(path),
      who,
      task: spec.task,
      minutes: time?.minutes ?? span ?? Number.NaN,
      typed: time?.typed ?? `${from?.typed} to ${to?.typed}`,
      from: from?.typed,
      to: to?.typed,
      hand: spec.hand,
      where: spec.where,
      assembly: spec.assembly ?? of.assembly,
      note: spec.note,
    }),
  );
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
  note: show,
};

export const hoursAmended = anew("Hours", "All of that day's lines of hours, as they should read.");
