/** What was weighed as left in lots of adhesive, day by day, and what is found of it. */
import type { Shown } from "../../editions/shown.ts";
import type { Remainder } from "../../facts/types.ts";
import { toldFinding, type ToldFinding } from "../../words/findings/told.ts";
import { dateWords } from "../../words/dates.ts";
import { quantityWords } from "../../words/quantities.ts";

interface RemainRow {
  readonly entry: string;
  readonly day: string;
  readonly lot: string;
  readonly left: string;
  readonly note?: string | undefined;
}

export interface Remains {
  readonly rows: readonly RemainRow[];
  readonly findings: readonly ToldFinding[];
}

/** Of the lots for which `isAsked`, in the order of entries. */
export function remainsIn(shown: Shown, isAsked: (lot: string) => boolean = () => true): Remains {
  const { record, evidence } = shown;
  return {
    rows: shown.memo
      .once(shown, allOf)
      .filter(({ lot }) => isAsked(lot))
      .map(({ entry, day, lot, amount, note }) => ({
        entry,
        day: dateWords(day),
        lot,
        left: quantityWords(amount, record.aircraft.units),
        note,
      })),
    findings: [...evidence.lots.values()]
      .filter(({ lot }) => isAsked(lot.id))
      .flatMap(({ findings }) => findings)
      .map((one) => toldFinding(shown.say, one)),
  };
}

const allOf = ({ record }: Shown): readonly Remainder[] => record.entries.flatMap(({ remains }) => remains);
