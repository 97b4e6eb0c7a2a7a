/** Batches: their mix and their times. */
import { DIMENSIONS } from "../../facts/quantity/units.ts";
import type { Path } from "../text/yaml.ts";
import { Zone } from "../../facts/time/zone.ts";
import { type BatchSpec, type CheckContext, type EntryFile, expectId, report, soundOf } from "./context.ts";
import { checkClock, pastMidnight } from "./days.ts";
import { checkComponentLot, checkWoodLot, type Lots } from "./lots.ts";
import { checkPiece } from "./pieces.ts";

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
  report(context, filed, [...path, "closed"], {
    code: "closed-before-mixed",
    message: "closed before it was mixed",
    expected: `a time after ${mixed.typed}`,
    found: closed.typed,
    mend: pastMidnight(mixed, closed),
  });
}
