/** Lots where they are named: of the right kind, and received by then. */
import type { LotPart } from "../../facts/build/adhesive-kind.ts";
import type { Filed } from "../filed.ts";
import type { Spec } from "../../facts/kinds.ts";
import type { Path } from "../text/yaml.ts";
import { DIMENSIONS } from "../../facts/quantity/units.ts";
import type { Dimension, Material } from "../../facts/types.ts";
import type { ProblemCode } from "../../problems/codes.ts";
import { type CheckContext, type EntryFile, expectId, report, whereIs } from "./context.ts";

export type Lots = ReadonlyMap<string, Filed<Spec<"lot">> & { readonly spec: Spec<"lot"> }>;

export function checkComponentLot(
  context: CheckContext,
  filed: EntryFile,
  at: Path,
  { adhesive, lot: id }: { readonly adhesive: string | undefined; readonly lot: string | undefined },
  slot: LotPart,
  lots: Lots,
): void {
  if (!expectId(context, filed, at, ["lot"], id)) return;
  const lot = lots.get(id);
  if (!lot) return;
  if (lot.spec.material !== slot) {
    report(context, filed, at, {
      code: "wrong-lot",
      message: `${id} is a lot of ${lot.spec.material}`,
      expected: `a lot of ${slot}`,
      found: id,
      mend: `name the lot of ${slot}, or correct \`material\` in ${lot.file}`,
    });
  } else if (
    adhesive !== undefined &&
    lot.spec.adhesive !== undefined &&
    lot.spec.adhesive !== adhesive &&
    context.ids.has("adhesive", lot.spec.adhesive)
  ) {
    report(context, filed, at, {
      code: "wrong-lot",
      message: `${id} is ${slot} of ${lot.spec.adhesive}, not of ${adhesive}`,
      expected: `a lot of ${slot} of ${adhesive}`,
      found: id,
      mend: "write the lot that went into this batch, or the adhesive it belongs to",
    });
  }
  checkReceived(context, filed, at, id, lots);
}

/** What parts are made of, as against what joins them. */
const WOOD: readonly Material[] = ["timber", "plywood", "other"];

export function checkWoodLot(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  id: string | undefined,
  lots: Lots,
): void {
  if (!expectId(context, filed, path, ["lot"], id)) return;
  const lot = lots.get(id);
  if (lot && !WOOD.includes(lot.spec.material)) {
    report(context, filed, path, {
      code: "wrong-lot",
      message: `${id} is a lot of ${lot.spec.material}`,
      expected: "a lot of timber or plywood",
      found: id,
      mend: "write the lot that the parts were made from",
    });
  }
  checkReceived(context, filed, path, id, lots);
}

export function checkReceived(context: CheckContext, filed: EntryFile, path: Path, id: string, lots: Lots): void {
  const lot = lots.get(id);
  if (!lot || lot.spec.received <= filed.spec.date) return;
  report(context, filed, path, {
    code: "not-yet-received",
    message: `${id} had not come yet`,
    expected: `a lot received by ${filed.spec.date}`,
    found: `${id}, received ${lot.spec.received} (${whereIs(lot, ["received"])})`,
    mend: "write the lot that was used, or correct the day it came",
  });
}

interface Measured {
  readonly dimension: Dimension;
  readonly typed: string;
}

/** Amounts of two kinds have no sum. `as`: another of the same lot, where it stands, and what it is. */
export function checkDimension(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  amount: Measured,
  as: Measured & { readonly at: string; readonly what: string },
): void {
  if (as.dimension === amount.dimension) return;
  const { name } = DIMENSIONS[as.dimension];
  report(context, filed, path, {
    code: "wrong-dimension",
    message: `this is ${DIMENSIONS[amount.dimension].name}, but ${as.what} is ${name}`,
    expected: `${name} with its unit`,
    found: `${amount.typed} here, ${as.typed} at ${as.at}`,
    mend: "give both in units of one kind",
  });
}

/** An amendment finds such a line by its lot, so each lot stands once in an entry. */
export function checkOnceADay(
  context: CheckContext,
  filed: EntryFile,
  key: "cut" | "remains",
  { code, what, mend }: { readonly code: ProblemCode; readonly what: string; readonly mend: string },
): void {
  const first = new Map<string, number>();
  (filed.spec[key] ?? []).forEach(({ lot, amount }, index) => {
    const at = first.get(lot);
    if (at === undefined) {
      first.set(lot, index);
      return;
    }
    report(context, filed, [key, index, "lot"], {
      code,
      message: `what was ${what} ${lot} stands here twice`,
      expected: "each lot once a day",
      found: `${amount.typed} here, ${filed.spec[key]?.[at]?.amount.typed ?? ""} at ${whereIs(filed, [key, at])}`,
      mend,
    });
  });
}
