/** Batches, their components and their test pieces. */
import { DAY_MINUTES } from "../../facts/quantity/conversions.ts";
import { defined } from "../../defined.ts";
import type { Filed } from "../filed.ts";
import type { Spec } from "../../facts/kinds.ts";
import { DIMENSIONS } from "../../facts/quantity/units.ts";
import type { Path } from "../text/yaml.ts";
import { Zone } from "../../facts/time/zone.ts";
import type { Clock } from "../../facts/time/clock.ts";
import type { Day, Material } from "../../facts/types.ts";
import {
  type BatchSpec,
  type CheckContext,
  type EntryFile,
  expectId,
  type PieceSpec,
  report,
  soundOf,
  whereIs,
} from "./context.ts";

export type Lots = ReadonlyMap<string, Filed<Spec<"lot">> & { readonly spec: Spec<"lot"> }>;

export function checkBatches(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  const preparations = new Map(
    soundOf(context, "trial").map(({ id, spec }) => [id, spec.preparations.map((preparation) => preparation.id)]),
  );
  const timeZone = soundOf(context, "aircraft")[0]?.spec.time_zone;
  const zone = timeZone === undefined ? undefined : Zone.of(timeZone);
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.batches ?? []).forEach((batch, index) => {
      const path = ["batches", index];
      expectId(context, filed, [...path, "adhesive"], ["adhesive"], batch.adhesive);
      checkMix(context, filed, path, batch);
      for (const slot of ["resin", "hardener"] as const) checkComponentLot(context, filed, path, batch, slot, lots);
      checkClocks(context, filed, path, batch, zone);
      (batch.timber ?? []).forEach((lot, at) => checkWoodLot(context, filed, [...path, "timber", at], lot, lots));
      (batch.pieces ?? []).forEach((piece, at) =>
        checkPiece(context, filed, [...path, "pieces", at], batch, piece, lots, preparations),
      );
    });
  }
}

function checkMix(context: CheckContext, filed: EntryFile, path: Path, { resin, hardener, scale }: BatchSpec): void {
  const expected = "resin and hardener both by mass, or both by volume";
  for (const [slot, component] of [
    ["resin", resin],
    ["hardener", hardener],
  ] as const) {
    if (component?.mass !== undefined && component.volume !== undefined) {
      report(context, filed, [...path, slot, "volume"], {
        code: "mix-two-ways",
        message: `the ${slot} is given by mass and by volume`,
        expected,
        found: `${component.mass.typed} and ${component.volume.typed}`,
        mend: "keep the one by which the ratio was measured",
      });
      return;
    }
  }
  const way = (component: typeof resin): "mass" | "volume" | undefined =>
    component?.mass ? "mass" : component?.volume ? "volume" : undefined;
  const [first, second] = [way(resin), way(hardener)];
  if (first !== undefined && second !== undefined && first !== second) {
    report(context, filed, [...path, "hardener", second], {
      code: "mix-two-ways",
      message: `the resin is given by ${first} and the hardener by ${second}`,
      expected,
      found: hardener?.[second]?.typed ?? "",
      mend: `give the ${first} of the hardener, or the ${second} of the resin`,
    });
    return;
  }
  const used = first ?? second;
  if (scale !== undefined && used !== undefined && scale.dimension !== used) {
    report(context, filed, [...path, "scale"], {
      code: "wrong-dimension",
      message: `the mix is by ${used}, but this is the step of ${DIMENSIONS[scale.dimension].name}`,
      expected: `${DIMENSIONS[used].name}, such as ${used === "mass" ? "0.1 g" : "1 ml"}`,
      found: scale.typed,
      mend: "write the reading step of what the mix was measured with",
    });
  }
}

function checkComponentLot(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  slot: "resin" | "hardener",
  lots: Lots,
): void {
  const id = batch[slot]?.lot;
  const at = [...path, slot, "lot"];
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
    lot.spec.adhesive !== undefined &&
    lot.spec.adhesive !== batch.adhesive &&
    context.ids.has("adhesive", lot.spec.adhesive)
  ) {
    report(context, filed, at, {
      code: "wrong-lot",
      message: `${id} is ${slot} of ${lot.spec.adhesive}, not of ${batch.adhesive}`,
      expected: `a lot of ${slot} of ${batch.adhesive}`,
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

function checkReceived(context: CheckContext, filed: EntryFile, path: Path, id: string, lots: Lots): void {
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
  if (!mixed || !closed || closed.minutes >= mixed.minutes) return;
  const after = closed.minutes + DAY_MINUTES;
  const past = after < 36 * 60 ? `${Math.floor(after / 60)}:${String(after % 60).padStart(2, "0")}` : undefined;
  const mend = past === undefined ? "correct one of the two times" : `if midnight had passed, write "${past}"`;
  report(context, filed, [...path, "closed"], {
    code: "closed-before-mixed",
    message: "closed before it was mixed",
    expected: `a time after ${mixed.typed}`,
    found: closed.typed,
    mend,
  });
}

/** Reports a time of day that clocks, put forward for summer, passed over. */
export function checkClock(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  clock: Clock | undefined,
  zone: Zone | undefined,
  day: Day = filed.spec.date,
): void {
  if (!clock || !zone || zone.moment(day, clock, "earlier")) return;
  report(context, filed, path, {
    code: "skipped-hour",
    message: "clocks were put forward over this time",
    expected: "a time that clocks showed that day",
    found: clock.typed,
    mend: "write the time that the clock showed",
  });
}

function checkPiece(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  piece: PieceSpec,
  lots: Lots,
  preparations: ReadonlyMap<string, readonly string[]>,
): void {
  const owner = piece.id.slice(0, piece.id.lastIndexOf("/"));
  if (owner !== batch.id) {
    report(context, filed, [...path, "id"], {
      code: "piece-of-other-batch",
      message: `this piece stands in batch ${batch.id} but has another batch's id`,
      expected: `${batch.id}/ and a number`,
      found: piece.id,
      mend: "correct the piece's id, or move the piece to its own batch",
    });
  }
  expectId(context, filed, [...path, "procedure"], ["procedure"], piece.procedure);
  checkWoodLot(context, filed, [...path, "lot"], piece.lot, lots);
  (piece.legs ?? []).forEach(({ lot }, at) => checkWoodLot(context, filed, [...path, "legs", at, "lot"], lot, lots));
  if (piece.trial !== undefined)
    checkTrialPiece(context, filed, path, piece, piece.trial, preparations.get(piece.trial));
  else if (piece.preparation !== undefined && filed.whole) {
    report(context, filed, [...path, "preparation"], {
      code: "preparation-without-trial",
      message: "a preparation belongs to a trial, which is missing",
      expected: "`trial:` beside `preparation:`",
      found: piece.preparation,
      mend: "add `trial:` with the trial's id",
    });
  }
}

function checkTrialPiece(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  piece: PieceSpec,
  trial: string,
  known: readonly string[] | undefined,
): void {
  if (!expectId(context, filed, [...path, "trial"], ["trial"], trial) || known === undefined) return;
  if (piece.preparation !== undefined && known.includes(piece.preparation)) return;
  if (piece.preparation === undefined && !filed.whole) return;
  const at = piece.preparation === undefined ? [...path, "trial"] : [...path, "preparation"];
  const message =
    piece.preparation === undefined
      ? `the piece does not say which preparation of ${trial} it had`
      : `${trial} has no such preparation`;
  report(
    context,
    filed,
    at,
    defined({
      code: "unknown-id",
      message,
      expected: `one of ${known.join(", ")}`,
      found: piece.preparation,
      mend:
        piece.preparation === undefined
          ? `add \`preparation: ${known[0] ?? "…"}\``
          : `use one of these, or add it to the trial`,
    }),
  );
}
