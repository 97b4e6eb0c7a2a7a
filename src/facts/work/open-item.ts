/** Work put off. */
import type * as z from "zod";
import { type Decisions, orWithheld, show } from "../decisions.ts";
import { type AmendingOf, anew, foundBy } from "../entry/amending.ts";
import { HOLD_KINDS } from "../build/hold-point.ts";
import { audience, block, field, list, words, note } from "../field.ts";
import { idFault, idOf, ownId } from "../id.ts";
import type { Reading } from "../reading.ts";
import { assemblyIn, factOf, type InEntry } from "../typing.ts";
import type { Audience, Day, Path, Placed } from "../values.ts";
import type { Visibility } from "../visibility.ts";

const openItemSchema = block({
  id: ownId("The open item's id.", "O-11"),
  what: words("What is left for later.", "Curved corner block not fitted yet"),
  before: field(
    (typed): Reading<string> => {
      const fault = HOLD_KINDS.some((kind) => kind === typed) ? undefined : idFault(typed, "close-up");
      return fault ? { fault } : { value: typed };
    },
    "an id, or a kind of hold point",
    "What may not happen before it is done: a hold point's id, or next skin, close-up, covering, first load or flight.",
    ["close-up"],
  ).optional(),
  assembly: idOf("assembly", "On which assembly, if not the entry's.", "tailplane").optional(),
  for: audience().optional(),
  note: note(),
});

/** As an entry has them. */
export const openItemsSchema = block({
  raise: list(openItemSchema, "Work put off.").optional(),
  close: list(idOf("open item", "An open item.", "O-08"), "Open items that are done now.").optional(),
});

export interface OpenItem extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly what: string;
  /** A hold point's id, or a kind of hold point: then every one of that kind on the way up from the assembly. */
  readonly before?: string;
  readonly closedIn?: string;
  readonly audience: Audience;
  readonly note?: string;
}

export function openItemOf(spec: z.output<typeof openItemSchema>, path: Path, of: InEntry): OpenItem {
  return factOf<OpenItem>({
    id: spec.id,
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    assembly: assemblyIn(spec.assembly, of),
    what: spec.what,
    before: spec.before,
    closedIn: of.later.closedIn.get(spec.id),
    audience: spec.for ?? "public",
    note: spec.note,
  });
}

export const openItemShown: Decisions<OpenItem> = {
  id: show,
  place: show,
  entry: show,
  day: show,
  assembly: show,
  what: show,
  before: show,
  closedIn: orWithheld("entries"),
  audience: show,
  note: show,
};

export const isOpenItemShown = ({ id: one }: OpenItem, seer: Visibility): boolean => seer.openItems.has(one);

const openItemAmended = foundBy({
  keys: ["id"],
  kind: "open item",
  named: true,
  word: "Open item",
  several: "Open items",
});

export const openItemsAmended: AmendingOf<{ raise: unknown; close: unknown }> = {
  raise: openItemAmended,
  close: anew("Open items closed", "All open items that were done that day, as the list should read."),
};
