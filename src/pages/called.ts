/** What things are called where a link to them has no words of its own. */
import type { Shown } from "../editions/shown.ts";
import type { Kind, Ref } from "../facts/types.ts";
import { dateShort } from "../words/dates.ts";

/**
 * Of a kind whose ids are words run together: what is said in place of them. Other ids are what readers know a thing
 * by.
 */
const TITLED: Partial<{ readonly [kind in Kind]: (shown: Shown) => ReadonlyMap<string, string> }> = {
  entry: ({ record }) => new Map(record.entries.map(({ id, title, day }) => [id, `${title} (${dateShort(day)})`])),
  assembly: ({ record }) => titles(record.assemblies.values()),
  adhesive: ({ record }) => titles(record.adhesives.values()),
  finish: ({ record }) => titles(record.finishes.values()),
  procedure: ({ record }) => titles(record.procedures.values()),
  trial: ({ record }) => titles(record.trials.values()),
  "climate log": ({ record }) => titles(record.climate),
  "earlier hours": ({ record }) => titles(record.earlier),
};

const titles = (things: Iterable<{ readonly id: string; readonly title: string }>): ReadonlyMap<string, string> =>
  new Map(Array.from(things, ({ id, title }) => [id, title]));

/** The title of a thing that the edition shows, or its id. */
export function called(shown: Shown, { kind, id }: Ref): string {
  const titled = TITLED[kind];
  return (titled && shown.memo.once(shown, titled).get(id)) ?? id;
}
