/** What was weighed as left in lots of adhesive. */
import { isLotPart } from "../../../facts/build/adhesive-kind.ts";
import { DIMENSIONS } from "../../../facts/quantity/units.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf, whereIs } from "../context.ts";
import { checkReceived, type Lots } from "../lots.ts";

type Line = NonNullable<EntryFile["spec"]["remains"]>[number];

export function checkRemains(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  for (const filed of soundOf(context, "entry")) {
    const here = new Map<string, number>();
    (filed.spec.remains ?? []).forEach((line, index) => {
      checkLot(context, filed, index, line, lots);
      checkOnce(context, filed, index, line, here.get(line.lot));
      here.set(line.lot, here.get(line.lot) ?? index);
    });
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
  if (came === undefined || came.dimension === amount.dimension) return;
  const { name } = DIMENSIONS[came.dimension];
  report(context, filed, ["remains", index, "amount"], {
    code: "wrong-dimension",
    message: `this is ${DIMENSIONS[amount.dimension].name}, but what came of ${id} is ${name}`,
    expected: `${name} with its unit`,
    found: `${amount.typed} here, ${came.typed} at ${whereIs(lot, ["amount"])}`,
    mend: "give both in units of one kind",
  });
}

/** An amendment finds it by its lot, so each lot stands once in an entry. */
function checkOnce(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  { lot, amount }: Line,
  first: number | undefined,
): void {
  if (first === undefined) return;
  const before = filed.spec.remains?.[first]?.amount.typed ?? "";
  report(context, filed, ["remains", index, "lot"], {
    code: "left-twice",
    message: `what was left in ${lot} stands here twice`,
    expected: "each lot once a day",
    found: `${amount.typed} here, ${before} at ${whereIs(filed, ["remains", first])}`,
    mend: "keep the line that was weighed last that day",
  });
}
