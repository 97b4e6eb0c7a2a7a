import type { JSX } from "preact";
import { howWords, productOf } from "../../src/pages/ledgers/coats.ts";
import { WITHHELD } from "../../src/facts/visibility.ts";
import { CoatLots } from "../evidence/materials/coats.tsx";
import { Id } from "../evidence/parts.tsx";
import { Mark } from "../parts/mark.tsx";
import { To } from "../shell/link.tsx";
import { Noted } from "../shell/page.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

/** What was put on on a day: primer, varnish, dope, paint, fabric, tape. */
export function DayCoats({ site, from, entry }: SheetProps): JSX.Element | null {
  const files = site.shown.evidence.coats.filter(({ coat }) => coat.entry === entry.id);
  if (files.length === 0) return null;
  return (
    <SheetPart title="Put on">
      <ul class="bare sheet__list">
        {files.map(({ coat, verdict }) => (
          <li>
            {coat.where}: coat {coat.coat} of{" "}
            <To site={site} from={from} to={{ kind: "finish", id: coat.finish }}>
              {productOf(site.shown, coat)}
            </To>{" "}
            <Mark of={verdict} />{" "}
            <span class="quiet">
              lot <CoatLots coat={coat} site={site} from={from} />
              {[howWords(site.shown, coat), coat.bare === undefined ? "" : `kept bare: ${coat.bare}`]
                .filter((words) => words !== "")
                .map((words) => `; ${words}`)}
              {coat.stripped === undefined ? "" : `; taken off before: ${coat.stripped}`}
              {coat.departure === undefined || coat.departure === WITHHELD ? null : (
                <>
                  ; departure <Id site={site} from={from} kind="departure" id={coat.departure} />
                </>
              )}
            </span>
            <Noted note={coat.note} />
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}
