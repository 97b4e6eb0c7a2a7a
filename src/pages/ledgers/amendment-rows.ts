/** The ledger of amendments: a row for each value that was changed, with what was written first and what stands now. */
import type { Amendment, Change, Said } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { type Ledger, ledger, told, typed } from "./column.ts";

interface Amended {
  readonly amendment: Amendment;
  /** Empty where the text of the day was struck out. */
  readonly change: Partial<Change>;
}

const textOf = (said: Said | undefined, { nameOf }: Shown): string | undefined =>
  said?.map((part) => (typeof part === "string" ? part : part.kind === "person" ? nameOf(part.id) : part.id)).join("");

export const AMENDMENTS: Ledger = ledger<Amended>(
  "amendments",
  "One value that a later entry changed.",
  ({ record }) =>
    record.entries.flatMap(({ amendments }) =>
      amendments.flatMap((amendment) => [
        ...(amendment.prose ? [{ amendment, change: { value: "prose" } }] : []),
        ...amendment.changes.map((change) => ({ amendment, change })),
      ]),
    ),
  [
    typed("entry", "entry: amends[].entry", ({ amendment }) => amendment.entry),
    told("amended_by", "Id of the entry that amends it.", ({ amendment }) => amendment.by),
    told("day", "The day of the entry that amends it.", ({ amendment }) => amendment.day, "day"),
    typed("why", "entry: amends[].why", ({ amendment }) => amendment.why),
    told("about_kind", "The kind of thing that the change is about.", ({ change }) => change.about?.kind ?? "entry"),
    told("about", "The id of that thing.", ({ amendment, change }) => change.about?.id ?? amendment.entry),
    told(
      "what",
      "The fact that was changed; empty where the text of the day was struck out.",
      ({ change }) => change.fact,
    ),
    told(
      "value",
      "Which of its values; `prose` where the text of the day was struck out.",
      ({ change }) => change.value,
    ),
    told("was", "What was written first; empty where nothing was.", ({ change }, shown) => textOf(change.was, shown)),
    told("is", "What stands now; empty where nothing does.", ({ change }, shown) => textOf(change.is, shown)),
    typed("seen_by", "entry: amends[].seen_by", ({ amendment: { seenBy } }, { nameOf }) =>
      seenBy === undefined ? undefined : nameOf(seenBy),
    ),
    told(
      "fixed_when_broken",
      "yes: it does not count, since what a piece is was fixed when it broke; `for the worse`: it can only worsen a verdict.",
      ({ change }) => (change.fixed ? "yes" : change.worsens ? "for the worse" : "no"),
    ),
  ],
);
