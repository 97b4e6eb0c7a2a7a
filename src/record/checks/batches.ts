/** Batches: their mix and their times. */
import { saidEnds } from "../../facts/quantity/ends.ts";
import { LOT_PARTS, partsNoted } from "../../facts/build/adhesive-kind.ts";
import type { Path } from "../text/yaml.ts";
import type { Clock } from "../../facts/time/clock.ts";
import { Zone } from "../../facts/time/zone.ts";
import { type BatchSpec, type CheckContext, type EntryFile, expectId, report, soundOf } from "./context.ts";
import { checkClock, isBefore, pastMidnight } from "./days.ts";
import { checkComponentLot, checkWoodLot, type Lots } from "./lots.ts";
import { type Amount, checkComponents } from "./materials/components.ts";
import { checkPiece } from "./pieces.ts";

export function checkBatches(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  const preparations = new Map(
    soundOf(context, "trial").map(({ id, spec }) => [id, spec.preparations.map((preparation) => preparation.id)]),
  );
  const kinds = new Map(soundOf(context, "adhesive").map(({ id, spec }) => [id, spec.kind ?? "two-part"]));
  const timeZone = soundOf(context, "aircraft")[0]?.spec.time_zone;
  const zone = timeZone === undefined ? undefined : Zone.of(timeZone);
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.batches ?? []).forEach((batch, index) => {
      const path = ["batches", index];
      checkAdhesive(context, filed, path, batch);
      checkComponents(context, filed, path, batch, kinds.get(batch.adhesive ?? ""));
      for (const part of LOT_PARTS) {
        const one = { adhesive: batch.adhesive, lot: batch[part]?.lot };
        checkComponentLot(context, filed, [...path, part, "lot"], one, part, lots);
      }
      checkClocks(context, filed, path, batch, zone);
      checkLeft(context, filed, path, batch);
      (batch.timber ?? []).forEach((lot, at) => checkWoodLot(context, filed, [...path, "timber", at], lot, lots));
      (batch.pieces ?? []).forEach((piece, at) => {
        checkPiece(context, filed, [...path, "pieces", at], batch, piece, lots, preparations);
        checkGlued(context, filed, [...path, "pieces", at, "glued"], batch, piece.glued, zone);
      });
    });
  }
}

/** Nothing says of what it was, or something is said twice: in `mix` and beside it. */
function checkAdhesive(context: CheckContext, filed: EntryFile, path: Path, { id, adhesive, mix }: BatchSpec): void {
  expectId(context, filed, [...path, "adhesive"], ["adhesive"], adhesive);
  if (adhesive === undefined && filed.whole)
    report(context, filed, path, {
      code: "missing-key",
      message: `nothing says of which adhesive ${id} was mixed, and none is in use`,
      expected: "`adhesive`, or `in_use` in this entry or an earlier one",
      mend: "add `adhesive: …`, with what is so in your build",
    });
  for (const [key, said] of Object.entries(mix ?? {}))
    report(context, filed, [...path, "mix", key], {
      code: "mix-said-twice",
      message: `\`mix\` gives what stands beside it as \`${key === "at" ? "mixed" : key}\` too`,
      expected: "each of them once",
      found: said.typed,
      mend: "keep one of the two",
    });
}

/** What was left of a cup, or all of it thrown away: held against what is said to have been mixed and used. */
function checkLeft(context: CheckContext, filed: EntryFile, path: Path, batch: BatchSpec): void {
  const { waste, discarded } = batch;
  const amounts = partsNoted<Amount>(batch).map(({ noted }) =>
    waste?.dimension === "mass" ? noted.mass : noted.volume,
  );
  const mixed =
    amounts.length === 0
      ? Number.NaN
      : amounts.reduce((sum, amount) => sum + (amount ? saidEnds(amount).most : Number.NaN), 0);
  if (waste !== undefined && saidEnds(waste).least > mixed * (1 + 1e-9))
    report(context, filed, [...path, "waste"], {
      code: "more-waste-than-mix",
      message: "more was left over than was mixed",
      expected: `no more than ${amounts.map((amount) => amount?.typed ?? "").join(" and ")} together`,
      found: waste.typed,
      mend: "correct what was left, or what was mixed",
    });
  if (discarded === undefined) return;
  const used = (["joints", "pieces", "timber", "waste"] as const).filter((key) => {
    const said = batch[key];
    return Array.isArray(said) ? said.length > 0 : said !== undefined;
  });
  if (used.length === 0) return;
  report(context, filed, [...path, "discarded"], {
    code: "thrown-away-and-used",
    message: `${batch.id} is said to be thrown away whole, and has ${used.join(", ")}`,
    expected: "no joints, pieces, timber or waste of a batch that is `discarded`",
    found: discarded,
    mend: `take \`discarded\` away if any of it was used; if none was, take away ${used.join(", ")}`,
  });
}

function checkClocks(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  { mixed, closed }: BatchSpec,
  zone: Zone | undefined,
): void {
  for (const [key, clock] of [
    ["mixed", mixed],
    ["closed", closed],
  ] as const)
    checkClock(context, filed, [...path, key], clock, zone);
  const { date: day } = filed.spec;
  if (!mixed || !closed || !isBefore({ day, clock: closed }, { day, clock: mixed }, zone)) return;
  report(context, filed, [...path, "closed"], {
    code: "closed-before-mixed",
    message: "closed before it was mixed",
    expected: `a time after ${mixed.typed}`,
    found: closed.typed,
    mend: pastMidnight(mixed, closed),
  });
}

function checkGlued(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  { mixed }: BatchSpec,
  glued: Clock | undefined,
  zone: Zone | undefined,
): void {
  checkClock(context, filed, path, glued, zone);
  const { date: day } = filed.spec;
  if (!mixed || !glued || !isBefore({ day, clock: glued }, { day, clock: mixed }, zone)) return;
  report(context, filed, path, {
    code: "glued-before-mixed",
    message: "glued before its cup was mixed",
    expected: `a time after ${mixed.typed}`,
    found: glued.typed,
    mend: pastMidnight(mixed, glued),
  });
}
