/** Two ledgers that are never mixed: tasks by who did them, and hours by person. Neither is reckoned from the other. */
import { defined } from "../defined.ts";
import { majorPortion, type Portion } from "../reckoning/hours/credit.ts";
import { sumBy, type Worked } from "../reckoning/hours/hours.ts";
import type { BuildTask, Record } from "../facts/types.ts";
import { earlierLinesOf, linesOf } from "./hours.ts";

export interface CreditFile {
  /** Tasks that apply, by assembly in the order of the record; and those that do not. */
  readonly tasks: readonly (BuildTask & { readonly credit: NonNullable<BuildTask["credit"]> })[];
  readonly notApplicable: readonly BuildTask[];
  readonly portion?: Portion;
  /** Minutes of each person. */
  readonly hours: ReadonlyMap<string, number>;
}

export function creditOf(record: Record): CreditFile {
  const all = [...record.assemblies.values()].flatMap(({ tasks }) => tasks);
  const tasks = all.flatMap((task) => (task.credit === undefined ? [] : [{ ...task, credit: task.credit }]));
  const portion = majorPortion(tasks.map(({ credit }) => credit));
  return defined({
    tasks,
    notApplicable: all.filter(({ credit }) => credit === undefined),
    portion,
    hours: sumBy<Worked & { readonly who: string }>([...linesOf(record), ...earlierLinesOf(record)], ({ who }) => who),
  });
}
