/** What the flags of `take` say, as answers to its questions. */
import { defined } from "../../defined.ts";
import type { Answers } from "../../desk/question.ts";
import { AGAIN, ASIDE } from "../../desk/take/sheet/take-sheet.ts";
import type { Said } from "../../desk/take/take.ts";
import { folded } from "../../record/earlier/cells.ts";
import type { Pairs, TakeFlags } from "./take-flags.ts";

export function saidBy(flags: TakeFlags): Said {
  const { column, merged, personIs, taskIs, assemblyIs, photosOf, source, nearestMinute, setAside, again, ...single } =
    flags;
  const keyed = (pairs: Pairs = [], key: (word: string) => string): Answers =>
    Object.fromEntries(pairs.map(([word, value]) => [key(word), value]));
  const tables = {
    ...keyed(column, (word) => word),
    ...keyed(merged, (word) => `below ${word}`),
    ...keyed(personIs, (word) => `person ${folded(word)}`),
    ...keyed(taskIs, (word) => `task ${folded(word)}`),
    ...keyed(assemblyIs, (word) => `assembly ${folded(word)}`),
    ...defined({
      ...single,
      everySource: source,
      rounding: nearestMinute,
      aside: setAside === true ? ASIDE : undefined,
      again: again === true ? AGAIN : undefined,
    }),
  } as Answers;
  return { tables, photographs: keyed(photosOf, (word) => word) };
}
