/** Batches: their mix and their times. */
import { DIMENSIONS } from "../../facts/quantity/units.ts";
import type { Path } from "../text/yaml.ts";
import type { Clock } from "../../facts/time/clock.ts";
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
      checkAdhesive(context, filed, path, batch);
      checkMix(context, filed, path, batch);
      for (const slot of ["resin", "hardener"] as const) {
        const part = { adhesive: batch.adhesive, lot: batch[slot]?.lot };
        checkComponentLot(context, filed, [...path, slot, "lot"], part, slot, lots);
      }
      checkClocks(context, filed, path, batch, zone);
      checkLeft(context, filed, path, batch);
      (batch.timber ?? []).forEach((lot, at) => checkWoodLot(context, filed, [...path, "timber", at], lot, lots));
      (batch.pieces ?? []).forEach((piece, at) =>
        checkPiece(context, filed, [...path, "pieces", at], batch, piece, lots, preparations),
      );
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

function checkMix(context: CheckContext, filed: EntryFile, path: Path, batch: BatchSpec): void {
  const { resin, hardener } = batch;
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
  if (used === undefined) return;
  for (const key of ["scale", "waste"] as const) checkMeasure(context, filed, path, batch, key, used);
}

/** What must be in the measure of the mix. */
const MEASURES = {
  scale: {
    of: "the step of ",
    such: { mass: "0.1 g", volume: "1 ml" },
    mend: "write the reading step of what the mix was measured with",
  },
  waste: {
    of: "",
    such: { mass: "12 g", volume: "10 ml" },
    mend: "measure what was left as the mix was measured, or tell of it in the prose",
  },
} as const;

function checkMeasure(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  key: keyof typeof MEASURES,
  used: "mass" | "volume",
): void {
  const given = batch[key];
  if (given === undefined || given.dimension === used) return;
  const { of, such, mend } = MEASURES[key];
  report(context, filed, [...path, key], {
    code: "wrong-dimension",
    message: `the mix is by ${used}, but this is ${of}${DIMENSIONS[given.dimension].name}`,
    expected: `${DIMENSIONS[used].name}, such as ${such[used]}`,
    found: given.typed,
    mend,
  });
}

/** What was left of a cup, or all of it thrown away: held against what is said to have been mixed and used. */
function checkLeft(context: CheckContext, filed: EntryFile, path: Path, batch: BatchSpec): void {
  const { resin, hardener, waste, discarded } = batch;
  const amounts = [resin, hardener].map((part) => (waste?.dimension === "mass" ? part?.mass : part?.volume));
  const mixed = amounts.reduce((sum, amount) => sum + (amount?.value ?? Number.NaN), 0);
  if (waste !== undefined && waste.value > mixed * (1 + 1e-9))
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
  if (!mixed || !closed || isInOrder(filed, mixed, closed, zone)) return;
  report(context, filed, [...path, "closed"], {
    code: "closed-before-mixed",
    message: "closed before it was mixed",
    expected: `a time after ${mixed.typed}`,
    found: closed.typed,
    mend: pastMidnight(mixed, closed),
  });
}

/** By clocks; where an offset is said, by moments. */
function isInOrder(filed: EntryFile, mixed: Clock, closed: Clock, zone: Zone | undefined): boolean {
  if (mixed.offset === undefined && closed.offset === undefined) return closed.minutes >= mixed.minutes;
  const [from, to] = [mixed, closed].map((clock) => zone?.moment(filed.spec.date, clock, "earlier")?.epoch);
  return from === undefined || to === undefined || to >= from;
}
