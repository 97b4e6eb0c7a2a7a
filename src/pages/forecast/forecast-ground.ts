/** What a forecast stands on. */
import { defined } from "../../defined.ts";
import { isOfDay, type Worked } from "../../reckoning/hours/hours.ts";
import { planOf, type Part, type Plan } from "../../reckoning/hours/plan.ts";
import { wholeWeeks } from "../../reckoning/hours/whole-weeks.ts";
import { addDays } from "../../reckoning/time/calendar.ts";
import type { Day, Record } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { storyOf } from "../story/story.ts";

/** What a forecast is made of. Minutes, of the parts that have a plan alone. */
export interface Ground {
  readonly shown: Shown;
  readonly plan: Plan;
  readonly work: readonly Worked[];
  readonly weeks: readonly Worked[];
}

export function groundOf(shown: Shown): Ground {
  const { record } = shown;
  const all = storyOf(shown).work;
  const plan = planOf(partsOf(record), all);
  const planned = new Set(plan.parts.map(({ id }) => id));
  const work = all.filter(({ assembly }) => planned.has(assembly ?? ""));
  const weeks = wholeWeeks(work.filter(isOfDay), knownFrom(all, record.aircraft.start), record.day) ?? [];
  return { shown, plan, work, weeks };
}

/** The day from which it is known on which day each hour was worked: weeks before it would look idle. */
function knownFrom(work: readonly Worked[], start: Day): Day {
  const last = work.reduce((latest, { through }) => (through !== undefined && through > latest ? through : latest), "");
  const from = addDays(last, 1) ?? start;
  return from > start ? from : start;
}

function partsOf({ assemblies, day }: Record): Part[] {
  return [...assemblies.values()].map(({ id, parent, planned, finished }) =>
    defined({ id, finished: finished !== undefined && finished <= day, parent, planned }),
  );
}
