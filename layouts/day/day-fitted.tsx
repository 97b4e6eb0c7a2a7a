import type { JSX } from "preact";
import { Noted } from "../shell/page.tsx";
import { FittedLot } from "../evidence/materials/fitted.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

/** Parts bought in that were fitted on a day. */
export function DayFitted({ site, from, entry: { fitted } }: SheetProps): JSX.Element | null {
  if (fitted.length === 0) return null;
  return (
    <SheetPart title="Fitted">
      <ul class="bare sheet__list">
        {fitted.map(({ where, lot, serial, count, replaces, why, note }) => (
          <li>
            {where}: {count === 1 ? "" : `${count} `}
            <FittedLot id={lot} site={site} from={from} />{" "}
            <span class="quiet">{site.shown.record.lots.get(lot)?.title}</span>
            {serial === undefined ? "" : `, serial number ${serial}`}
            {replaces === undefined ? null : (
              <>
                , in place of <FittedLot id={replaces} site={site} from={from} />
              </>
            )}
            {why === undefined ? "" : `: ${why}`}
            <Noted note={note} />
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}
