/** What was weighed as left in lots of adhesive. */
import { isLotPart } from "../../../facts/build/adhesive-kind.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf, whereIs } from "../context.ts";
import { checkDimension, checkOnceADay, checkReceived, type Lots } from "../lots.ts";

type Line = NonNullable<EntryFile["spec"]["remains"]>[number];

const TWICE = { code: "left-twice", what: "left in", mend: "keep the line that was weighed last that day" } as const;

export function checkRemains(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.remains ?? []).forEach((line, index) => checkLot(context, filed, index, line, lots));
    checkOnceADay(context, filed, "remains", TWICE);
  }
}

function checkLot(context: CheckContext, filed: EntryFile, index: number, { lot: id, amount }: Line, lots: Lots): void {
  const at = ["remains", index, "lot"];
  if (!expectId(context, filed, at, ["lot"], id)) return;
  const lot = lots.get(id);
  if (lot === undefined) return;
  checkReceived(context, filed, at, id, lots);
  if (!isLotPart(lot.spec.material)) {
    report(context, filed, at, {
      code: "wrong-lot",
      message: `${id} is a lot of ${lot.spec.material}`,
      expected: "a lot of resin, hardener, glue or powder",
      found: id,
      mend: "name the lot that was weighed; of timber and plywood `cut` tells what was taken",
    });
    return;
  }
  const came = lot.spec.amount;
  if (came === undefined) return;
  const as = { ...came, at: whereIs(lot, ["amount"]), what: `what came of ${id}` };
  checkDimension(context, filed, ["remains", index, "amount"], amount, as);
}
