import type { JSX } from "preact";
import { quantityWords } from "../../src/words/quantities.ts";
import { To } from "../shell/link.tsx";
import { Noted } from "../shell/page.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

/** What was weighed as left in lots of adhesive. */
export function DayRemains({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.remains.length === 0) return null;
  return (
    <SheetPart title="Weighed as left">
      <ul class="bare sheet__list">
        {entry.remains.map(({ lot, amount, note }) => (
          <li>
            {quantityWords(amount, site.shown.record.aircraft.units)} of{" "}
            <To site={site} from={from} to={{ kind: "lot", id: lot }} />{" "}
            <span class="quiet">{site.shown.record.lots.get(lot)?.title}</span>
            <Noted note={note} />
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}
