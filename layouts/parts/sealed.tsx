import type { JSX } from "preact";
import { sealedSince } from "../../src/pages/evidence/sealed.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";

/** Since which seal the entries that a page rests on are unchanged; nothing where no seal is set. */
export function Sealed({
  site,
  entries,
}: {
  readonly site: Site;
  readonly entries: readonly string[];
}): JSX.Element | null {
  const sealed = sealedSince(site.shown, entries);
  if (sealed === undefined) return null;
  if (sealed === "not sealed")
    return <p class="small">Written or changed since the last seal; no seal holds it as it is.</p>;
  const { number, date, days, isLate } = sealed;
  const after = days <= 0 ? "the day of its date" : `${days} ${days === 1 ? "day" : "days"} after its date`;
  return (
    <p class="small">
      Unchanged since seal {number} of <time dateTime={date}>{dateWords(date)}</time>, {after}.
      {isLate ? " Sealed late: that it was written on its date rests on the builder’s word." : ""}
    </p>
  );
}
