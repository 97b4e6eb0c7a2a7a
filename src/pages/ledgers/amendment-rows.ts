/** The ledger of amendments: a row for each value that was changed, with what was written first and what stands now. */
import type { Change, Said } from "../../facts/types.ts";
import type { Row } from "./ledger-rows.ts";
import type { Shown } from "../../editions/shown.ts";

/**
 * `what` is null and `value` says `prose` where the text of the day was struck out. `was` is null where nothing was
 * written, `is` where nothing stands any more. `seen_by` is the name of who saw the source. `fixed_when_broken` is
 * yes where the change does not count, because what a piece is was fixed when it broke, and `for the worse` where it
 * can only worsen a verdict.
 */
export function amendmentRows({ record, nameOf }: Shown): Row[] {
  const text = (said: Said | undefined): string | null =>
    said
      ?.map((part) => (typeof part === "string" ? part : part.kind === "person" ? nameOf(part.id) : part.id))
      .join("") ?? null;
  return record.entries.flatMap(({ amendments }) =>
    amendments.flatMap(({ entry, by, day, why, seenBy, prose, changes }) => {
      const of = (change: Partial<Change>): Row => ({
        entry,
        amended_by: by,
        day,
        why,
        about_kind: change.about?.kind ?? "entry",
        about: change.about?.id ?? entry,
        what: change.fact ?? null,
        value: change.value ?? null,
        was: text(change.was),
        is: text(change.is),
        seen_by: seenBy === undefined ? null : nameOf(seenBy),
        fixed_when_broken: change.fixed ? "yes" : change.worsens ? "for the worse" : "no",
      });
      return [...(prose ? [of({ value: "prose" })] : []), ...changes.map(of)];
    }),
  );
}
