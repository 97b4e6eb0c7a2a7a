/** What was sawn from lots of timber and plywood. */
import { isLotPart } from "../../facts/build/adhesive-kind.ts";
import { DIMENSIONS } from "../../facts/quantity/units.ts";
import type { Dimension } from "../../facts/types.ts";
import { checkWoodLot, type Lots } from "./lots.ts";
import { type CheckContext, type EntryFile, report, soundOf, whereIs } from "./context.ts";

type Line = NonNullable<EntryFile["spec"]["cut"]>[number];

/** The kind of unit in which a lot is measured, and where that is seen. */
interface Measured {
  readonly dimension: Dimension;
  readonly typed: string;
  readonly at: string;
  readonly what: string;
}

export function checkCuts(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  const measured = new Map([...lots].flatMap(([id, filed]) => cameAs(id, filed)));
  for (const filed of soundOf(context, "entry")) {
    const here = new Map<string, number>();
    (filed.spec.cut ?? []).forEach((line, index) => {
      checkWoodLot(context, filed, ["cut", index, "lot"], line.lot, lots);
      if (!isAdhesive(lots, line.lot)) checkAmount(context, filed, index, line, measured);
      checkOnce(context, filed, index, line, here.get(line.lot));
      here.set(line.lot, here.get(line.lot) ?? index);
    });
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
  if (as === undefined || as.dimension === dimension) return;
  const { name } = DIMENSIONS[as.dimension];
  report(context, filed, ["cut", index, "amount"], {
    code: "wrong-dimension",
    message: `this is ${DIMENSIONS[dimension].name}, but ${as.what} is ${name}`,
    expected: `${name} with its unit`,
    found: `${typed} here, ${as.typed} at ${as.at}`,
    mend: "give both in units of one kind",
  });
}

/** An amendment finds a cut by its lot, so each lot stands once in an entry. */
function checkOnce(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  { lot, amount }: Line,
  first: number | undefined,
): void {
  if (first === undefined) return;
  const before = filed.spec.cut?.[first]?.amount.typed ?? "";
  report(context, filed, ["cut", index, "lot"], {
    code: "cut-twice",
    message: `what was cut from ${lot} stands here twice`,
    expected: "each lot once a day",
    found: `${amount.typed} here, ${before} at ${whereIs(filed, ["cut", first])}`,
    mend: "add the two up in one line",
  });
}
