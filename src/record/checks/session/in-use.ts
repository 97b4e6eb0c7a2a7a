/** What an entry says is in use: things that there are, of the adhesive, told to everyone. */
import { LOT_PARTS } from "../../../facts/build/adhesive-kind.ts";
import type { Path } from "../../text/yaml.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf } from "../context.ts";
import { checkComponentLot, type Lots } from "../lots.ts";
import { checkPartInUse } from "../materials/components.ts";

export function checkInUse(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  const kinds = new Map(soundOf(context, "adhesive").map(({ id, spec }) => [id, spec.kind ?? "two-part"]));
  let adhesive: string | undefined;
  for (const filed of soundOf(context, "entry")) {
    checkAmendedDay(context, filed);
    const said = filed.spec.in_use;
    if (said === undefined) continue;
    adhesive = said.adhesive ?? (said.ended ? undefined : adhesive);
    if (filed.spec.for !== undefined && filed.spec.for !== "public") report(context, filed, ["in_use"], HIDDEN);
    expectId(context, filed, ["in_use", "adhesive"], ["adhesive"], said.adhesive);
    (said.pieces ?? []).forEach(({ procedure }, at) =>
      expectId(context, filed, ["in_use", "pieces", at, "procedure"], ["procedure"], procedure),
    );
    for (const part of LOT_PARTS) {
      const lot = said[part];
      if (lot === undefined) continue;
      if (adhesive !== undefined) checkPartInUse(context, filed, part, { adhesive, kind: kinds.get(adhesive) });
      if (adhesive === undefined && filed.whole)
        report(context, filed, ["in_use", part], { ...NO_ADHESIVE, found: lot });
      else checkComponentLot(context, filed, ["in_use", part], { adhesive, lot }, part, lots);
    }
  }
}

const HIDDEN = {
  code: "in-use-hidden",
  message: "what is in use is said in an entry that not everyone may read",
  expected: "`in_use` in an entry without `for`",
  mend: "say it in an entry that all may read: batches of other entries will rest on it",
} as const;

const NO_ADHESIVE = {
  code: "in-use-no-adhesive",
  message: "a lot is in use, and no adhesive is",
  expected: "`adhesive` beside it, or in an earlier `in_use`",
  mend: "name the adhesive that it is a part of",
} as const;

/** What was in use on one day need not have been on another. */
function checkAmendedDay(context: CheckContext, filed: EntryFile): void {
  if (filed.spec.date === filed.id.slice(0, 10)) return;
  (filed.spec.batches ?? []).forEach((batch, index) => {
    const at: Path[] = [["adhesive"], ...LOT_PARTS.map((part) => [part, "lot"]), ["scale"]];
    (batch.pieces ?? []).forEach((_, piece) =>
      at.push(...["thickness", "width", "overlap"].map((size) => ["pieces", piece, size])),
    );
    const usual = at.find((path) => filed.usualFrom(["batches", index, ...path]) !== undefined);
    if (usual === undefined) return;
    report(context, filed, ["date"], {
      code: "in-use-on-another-day",
      message: `the day is amended, and ${batch.id} rests on what was in use on the day it was written under`,
      expected: `what ${batch.id} was made with, under \`batches\` of the same amendment`,
      found: `${usual.join(".")}, as in use from ${filed.usualFrom(["batches", index, ...usual]) ?? ""} on`,
      mend: `state beside the day what ${batch.id} was made with`,
    });
  });
}
