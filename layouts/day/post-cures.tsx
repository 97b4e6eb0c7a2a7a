/** Joints that were heated after gluing. */
import type { JSX } from "preact";
import { hourWords } from "../../src/words/dates.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { ToEach } from "../shell/link.tsx";
import { Noted } from "../shell/page.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

export function PostCures({ site, from: page, entry }: SheetProps): JSX.Element | null {
  if (entry.postCures.length === 0) return null;
  const { units } = site.shown.record.aircraft;
  return (
    <SheetPart title="Heated after gluing">
      <ul class="bare sheet__list">
        {entry.postCures.map(({ joints, pieces, temperature, from, to, note }) => (
          <li>
            <ToEach site={site} from={page} to={joints.map((id) => ({ kind: "joint", id }))} /> :{" "}
            {quantityWords(temperature, units)}{" "}
            <span class="quiet">
              from {hourWords(from.typed)} to {hourWords(to.typed)}
            </span>
            {pieces.length === 0 ? null : (
              <>
                , with <ToEach site={site} from={page} to={pieces.map((id) => ({ kind: "piece", id }))} />
              </>
            )}
            <Noted note={note} />
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}
