/** What was sawn from lots of timber and plywood. */
import { isLotPart } from "../../facts/build/adhesive-kind.ts";
import type { Dimension } from "../../facts/types.ts";
import { checkDimension, checkOnceADay, checkWoodLot, type Lots } from "./lots.ts";
import { type CheckContext, type EntryFile, soundOf, whereIs } from "./context.ts";

type Line = NonNullable<EntryFile["spec"]["cut"]>[number];

/** The kind of unit in which a lot is measured, and where that is seen. */
interface Measured {
  readonly dimension: Dimension;
  readonly typed: string;
  readonly at: string;
  readonly what: string;
}

const TWICE = { code: "cut-twice", what: "cut from", mend: "add the two up in one line" } as const;

export function checkCuts(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  const measured = new Map([...lots].flatMap(([id, filed]) => cameAs(id, filed)));
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.cut ?? []).forEach((line, index) => {
      checkWoodLot(context, filed, ["cut", index, "lot"], line.lot, lots);
      if (!isAdhesive(lots, line.lot)) checkAmount(context, filed, index, line, measured);
    });
    checkOnceADay(context, filed, "cut", TWICE);
  }
}

/** Of such a lot only this is told: nothing is sawn from it. */
function isAdhesive(lots: Lots, id: string): boolean {
  const material = lots.get(id)?.spec.material;
  return material !== undefined && isLotPart(material);
}

function cameAs(id: string, filed: Lots extends ReadonlyMap<string, infer T> ? T : never): [string, Measured][] {
  const { amount } = filed.spec;
  return amount === undefined
    ? []
    : [
        [
          id,
          {
            dimension: amount.dimension,
            typed: amount.typed,
            at: whereIs(filed, ["amount"]),
            what: `what came of ${id}`,
          },
        ],
      ];
}

/** Held against what came or, where that is not noted, against the first cut: amounts of two kinds have no sum. */
function checkAmount(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  { lot, amount }: Line,
  measured: Map<string, Measured>,
): void {
  const { dimension, typed } = amount;
  const as = measured.get(lot);
  if (as === undefined)
    measured.set(lot, {
      dimension,
      typed,
      at: whereIs(filed, ["cut", index, "amount"]),
      what: `what was cut from ${lot} before`,
    });
  else checkDimension(context, filed, ["cut", index, "amount"], amount, as);
}
