/** PDFs of an edition: where each stands, and what it tells. */
import type { HoldPointFile } from "../../evidence/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { anchor } from "../address.ts";
import { holdPoints } from "../evidence/evidence-lists.ts";
import { type Sheet, sheetsOf } from "./sheets.ts";

/** What stands in a PDF: a sheet of the appendix, or one hold point with all that it asks for. */
export type PaperFile = { readonly path: string } & ({ readonly sheet: Sheet } | { readonly holdPoint: HoldPointFile });

/** The public edition has none: its readers have pages, and whoever signs has the inspector's. */
export const papersOf = (shown: Shown): readonly PaperFile[] => shown.memo.once(shown, listed);

export const paperOfHoldPoint = (shown: Shown, id: string): PaperFile | undefined =>
  papersOf(shown).find((one) => "holdPoint" in one && one.holdPoint.holdPoint.id === id);

function listed(shown: Shown): readonly PaperFile[] {
  if (shown.edition === "public") return [];
  const sheets = sheetsOf(shown).map((sheet) => ({
    name: sheet.assembly === undefined ? "evidence" : `evidence-${sheet.assembly}`,
    sheet,
  }));
  const points = holdPoints(shown).map((holdPoint) => ({
    name: anchor("hold point", holdPoint.holdPoint.id),
    holdPoint,
  }));
  const taken = new Set<string>();
  return [...sheets, ...points].map(
    ({ name, ...of }) => ({ ...of, path: `paper/${freeName(name, taken)}.pdf` }) as PaperFile,
  );
}

/** Some disks do not tell upper from lower case. */
function freeName(name: string, taken: Set<string>): string {
  let [free, number] = [name, 1];
  while (taken.has(free.toLowerCase())) free = `${name}--${(number += 1)}`;
  taken.add(free.toLowerCase());
  return free;
}
