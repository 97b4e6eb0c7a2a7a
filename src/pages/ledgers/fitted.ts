/** What pages say of parts bought in: where each stands, and what took its place. */
import { allStood, type Stood } from "../../evidence/lots/fitted.ts";
import type { Fitting, Lot } from "../../facts/types.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import type { Shown } from "../../editions/shown.ts";
import { dateWords } from "../../words/dates.ts";

export interface FittedRow {
  readonly stood: Stood;
  readonly assembly: string;
  /** Undefined where this edition does not show it. */
  readonly lot?: Lot | undefined;
  readonly count: string;
  readonly serial: string;
  /** Its certificate is noted, or that none is. */
  readonly certificate: string;
  /** When it was taken out; nothing while it stands. */
  readonly out: string;
}

/** All that the edition shows, or those that are asked for. */
export function fittedRows(shown: Shown, isAsked: (fitting: Fitting) => boolean = () => true): FittedRow[] {
  const { record } = shown;
  return shown.memo
    .once(shown, stoodOf)
    .filter(({ fitting }) => isAsked(fitting))
    .map((stood) => {
      const { fitting, out } = stood;
      const from = record.lots.get(fitting.lot);
      return {
        stood,
        assembly: record.assemblies.get(fitting.assembly)?.title ?? fitting.assembly,
        lot: from,
        count: String(fitting.count),
        serial: fitting.serial ?? "",
        certificate: from === undefined ? "" : from.certificate === undefined ? "none shown" : "yes",
        out: out === undefined ? "" : dateWords(out.day),
      };
    });
}

export const isWithheld = (lot: string): boolean => lot === WITHHELD;

const stoodOf = ({ record }: Shown): readonly Stood[] => allStood(record.entries);
