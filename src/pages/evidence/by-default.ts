/** What stands by default, and since which day it was in use. */
import type { Shown } from "../../editions/shown.ts";
import type { Batch, ByDefault } from "../../facts/types.ts";
import { dateWords } from "../../words/dates.ts";
import { traceIndex } from "./trace-index.ts";

/** `, by default from 7 December 2024`; nothing where it was typed. */
export function byDefault(shown: Shown, batch: Batch | undefined, what: ByDefault["what"], piece?: string): string {
  const found = batch?.byDefault?.find((one) => one.what === what && one.piece === piece);
  const from = found && traceIndex(shown).entries.get(found.entry);
  return from === undefined ? "" : `, by default from ${dateWords(from.day)}`;
}

/** The entries that say what was in use, beside the batch's own: what it is rests on them too. */
export const entriesOf = ({ entry, byDefault: taken = [] }: Batch): string[] => [
  ...new Set([entry, ...taken.map((one) => one.entry)]),
];
