/** How much of which lot: what was cut from stock, and what was weighed as left. */
import type { JSX } from "preact";
import { quantityWords, timberInUnits } from "../../src/words/quantities.ts";
import { To } from "../shell/link.tsx";
import { Noted } from "../shell/page.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

export function DayCuts({ site, from, entry }: SheetProps): JSX.Element | null {
  const { units } = site.shown.record.aircraft;
  const lines = entry.cuts.map(({ lot, amount, note }) => {
    return { lot, note, words: quantityWords(amount, units, timberInUnits) };
  });
  return <LotAmounts title="Cut from stock" lines={lines} site={site} from={from} />;
}

export function DayRemains({ site, from, entry }: SheetProps): JSX.Element | null {
  const { units } = site.shown.record.aircraft;
  const lines = entry.remains.map(({ lot, amount, note }) => ({ lot, note, words: quantityWords(amount, units) }));
  return <LotAmounts title="Weighed as left" lines={lines} site={site} from={from} />;
}

interface AmountsProps extends Pick<SheetProps, "site" | "from"> {
  readonly title: string;
  readonly lines: readonly { readonly lot: string; readonly words: string; readonly note?: string | undefined }[];
}

function LotAmounts({ title, lines, site, from }: AmountsProps): JSX.Element | null {
  if (lines.length === 0) return null;
  return (
    <SheetPart title={title}>
      <ul class="bare sheet__list">
        {lines.map(({ lot, words, note }) => (
          <li>
            {words} of <To site={site} from={from} to={{ kind: "lot", id: lot }} />{" "}
            <span class="quiet">{site.shown.record.lots.get(lot)?.title}</span>
            <Noted note={note} />
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}
