/** Hours that someone worked. */
import { DAY_MINUTES } from "../quantity/conversions.ts";
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, person, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, words, worked } from "../field.ts";
import { idOf, plain } from "../id.ts";
import type { InEntry } from "../typing.ts";
import type { Path } from "../values.ts";

export const hoursSchema = block({
  who: plain(idOf("person", "Who worked.", "builder")),
  task: plain(words("At what: one of the aircraft's tasks.", "gluing")),
  time: plain(worked("How long.", "2:45", DAY_MINUTES)),
  assembly: idOf("assembly", "On which assembly, if not the entry's.", "tailplane").optional(),
});

export interface HoursLine {
  readonly place: Place;
  readonly who: string;
  readonly task: string;
  readonly minutes: number;
  readonly typed: string;
  readonly assembly: string;
}

export function hoursOf(spec: z.output<typeof hoursSchema>, path: Path, of: InEntry): HoursLine {
  return {
    place: of.at(path),
    who: spec.who,
    task: spec.task,
    minutes: spec.time.minutes,
    typed: spec.time.typed,
    assembly: spec.assembly ?? of.assembly,
  };
}

export const hoursShown: Decisions<HoursLine> = {
  place: show,
  who: person,
  task: show,
  minutes: show,
  typed: show,
  assembly: show,
};

export const hoursAmended = anew("Hours", "All of that day's lines of hours, as they should read.");
