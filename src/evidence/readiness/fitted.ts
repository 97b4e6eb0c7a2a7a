/** What hold points ask of parts bought in: none of a recalled lot stands in what is looked at, and none was changed since it was signed. */
import type { Recall, Ref } from "../../facts/types.ts";
import { distinct } from "../finding.ts";
import { recalledBy, type Stood } from "../lots/fitted.ts";
import type { RecordIndex } from "../record-index.ts";
import type { Need } from "../types.ts";
import { takes } from "./takes.ts";
import { type Told, told } from "./told.ts";

export function fittedNeed(index: RecordIndex, one: Stood): Need[] {
  const left = { left: one.left, count: one.fitting.count };
  return recalledBy(index, one).map((recall): Need => {
    const { about, values, restsOn } = said(one, recall);
    const takesPart = takes("take/replace-part");
    return {
      about,
      restsOn,
      values: { ...values, ...left },
      code: "need/fitted-recalled",
      takes: takesPart,
      blocks: true,
    };
  });
}

/** Of what was recalled and stood there when it was signed: a need where that was settled since, nothing where it has its own. */
export function fittedThen(index: RecordIndex, fitted: readonly Stood[], at: number): { readonly need?: Need }[] {
  return fitted.flatMap((one) => {
    const isOpen = recalledBy(index, one).length > 0;
    return recalledBy(index, one, at).map((recall): { readonly need?: Need } => {
      const need: Need = {
        ...said(one, recall),
        code: "then/fitted-recalled",
        takes: takes("take/look-again"),
        blocks: true,
      };
      return isOpen ? {} : { need };
    });
  });
}

export function fittedLater(
  index: RecordIndex,
  fitted: readonly Stood[],
  isLater: (fact: { readonly entry: string }) => boolean,
): Told[] {
  return fitted.flatMap((one) => [
    ...recalledBy(index, one)
      .filter(isLater)
      .map((recall) => {
        const { about, values, restsOn } = said(one, recall);
        return told(about, recall, { code: "change/fitted-recalled", values }, restsOn);
      }),
    ...changed(one, isLater),
  ]);
}

function changed({ fitting, replacedBy }: Stood, isLater: (fact: { readonly entry: string }) => boolean): Told[] {
  if (isLater(fitting)) return [];
  return replacedBy.filter(isLater).map((next) => {
    const values = { where: next.where, lot: next.lot, replaced: fitting.lot, day: next.day };
    const lots: Ref[] = [next.lot, fitting.lot].map((id) => ({ kind: "lot", id }));
    return told({ kind: "entry", id: next.entry }, next, { code: "change/fitted", values }, lots);
  });
}

function said({ fitting, replacedBy }: Stood, { day, why, entry }: Recall) {
  const about: Ref = { kind: "lot", id: fitting.lot };
  const entries = [fitting.entry, entry, ...replacedBy.map((next) => next.entry)].map(
    (id): Ref => ({ kind: "entry", id }),
  );
  const restsOn = distinct([about, ...entries, ...replacedBy.map(({ lot }): Ref => ({ kind: "lot", id: lot }))]);
  return { about, values: { where: fitting.where, lot: fitting.lot, day, why }, restsOn };
}
