import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { Noted } from "../shell/page.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

/** What was weighed on a day. */
export function DayWeights({ site, from, entry: { weighed, scales } }: SheetProps): JSX.Element | null {
  if (weighed.length === 0 && scales === undefined) return null;
  const { units } = site.shown.record.aircraft;
  return (
    <SheetPart title="Weighed">
      <ul class="bare sheet__list">
        {weighed.map(({ part, mass, arm, note }) => (
          <li>
            {part}: {quantityWords(mass, units)}
            {arm === undefined ? null : <span class="quiet"> (arm {quantityWords(arm, units)})</span>}
            <Noted note={note} />
          </li>
        ))}
        {scales === undefined ? null : (
          <li>
            {scales.what ?? "On its scales"}: left {quantityWords(scales.left, units)}, right{" "}
            {quantityWords(scales.right, units)}, {scales.at} {quantityWords(scales.third, units)}
          </li>
        )}
      </ul>
      <p class="small">
        <a href={relative(from, "weight.html")}>All that was weighed</a>
      </p>
    </SheetPart>
  );
}
