/** Measurements: their kinds of unit, and pairs that are held against each other across entries. */
import { DIMENSIONS } from "../../facts/quantity/units.ts";
import type { Dimension } from "../../facts/types.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf, whereIs } from "./context.ts";

type Line = NonNullable<EntryFile["spec"]["measurements"]>[number];

interface Measured {
  readonly filed: EntryFile;
  readonly index: number;
  readonly line: Line;
}

const OTHER_SIDE = {
  left: "right",
  right: "left",
  front: "back",
  back: "front",
  upper: "lower",
  lower: "upper",
} as const;

export function checkMeasurements(context: CheckContext): void {
  const pairs = new Map<string, Measured[]>();
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.measurements ?? []).forEach((line, index) => {
      checkLine(context, { filed, index, line });
      if (line.pair === undefined || line.side === undefined) return;
      const before = pairs.get(line.pair) ?? [];
      checkPair(context, { filed, index, line }, before);
      pairs.set(line.pair, [...before, { filed, index, line }]);
    });
  }
}

function checkLine(context: CheckContext, { filed, index, line }: Measured): void {
  const path = ["measurements", index];
  expectId(context, filed, [...path, "assembly"], ["assembly"], line.assembly);
  expectId(context, filed, [...path, "joint"], ["joint"], line.joint);
  expectId(context, filed, [...path, "departure"], ["departure"], line.departure);
  const { name, example } = DIMENSIONS[line.found.dimension];
  for (const key of ["drawing", "tolerance", "pair_tolerance"] as const) {
    const other = line[key];
    if (other === undefined || other.dimension === line.found.dimension) continue;
    report(context, filed, [...path, key], {
      code: "wrong-dimension",
      message: `this is ${DIMENSIONS[other.dimension].name}, but what was found is ${name}`,
      expected: `${name} with its unit, such as ${key === "drawing" ? "" : "±"}${example}`,
      found: other.typed,
      mend: "give both in units of one kind",
    });
  }
  if (line.tolerance !== undefined && line.drawing === undefined && filed.whole) {
    report(context, filed, [...path, "tolerance"], {
      code: "tolerance-without-drawing",
      message: "a tolerance is about the drawing's measure, which is missing",
      expected: "`drawing:` beside `tolerance:`",
      found: line.tolerance.typed,
      mend: "add `drawing:` with the measure that the drawing asks",
    });
  }
  if (line.tolerance !== undefined && line.drawing?.limits !== undefined) {
    report(context, filed, [...path, "tolerance"], {
      code: "limits-with-tolerance",
      message: "limits have no tolerance",
      expected: "a measure with a tolerance, or limits alone",
      found: `${line.drawing.typed}, ${line.tolerance.typed}`,
      mend: "take the tolerance away, or write the measure that the drawing asks",
    });
  }
  checkSide(context, { filed, index, line });
}

/** `pair` and `side` belong together, and a tolerance of the pair to both. */
function checkSide(context: CheckContext, { filed, index, line: { pair, side, pair_tolerance } }: Measured): void {
  if (!filed.whole) return;
  const lacks = (key: string, message: string, mend: string): void =>
    report(context, filed, ["measurements", index, key], {
      code: "no-pair",
      message,
      expected: "`pair:` with a word that both sides share, and `side:`",
      mend,
    });
  if (pair !== undefined && side === undefined)
    lacks("pair", "of this pair it is not said which side was measured", "add `side: left` or whichever it is");
  if (side !== undefined && pair === undefined)
    lacks("side", "this side belongs to no pair", "add `pair:` with a word of your own that the other side has too");
  if (pair_tolerance !== undefined && pair === undefined)
    lacks("pair_tolerance", "this tolerance belongs to no pair", "add `pair:` and `side:`");
}

function checkPair(context: CheckContext, now: Measured, before: readonly Measured[]): void {
  const { filed, index, line } = now;
  const [first] = before;
  if (!first || line.side === undefined || first.line.side === undefined) return;
  const path = ["measurements", index];
  const at = (one: Measured): string => whereIs(one.filed, ["measurements", one.index]);
  const other = OTHER_SIDE[first.line.side];
  if (line.side !== first.line.side && line.side !== other) {
    report(context, filed, [...path, "side"], {
      code: "not-opposite",
      message: `${line.side} is not the other side of ${first.line.side}`,
      expected: `${first.line.side} or ${other}`,
      found: `${line.side} here, ${first.line.side} at ${at(first)}`,
      mend: "correct the side, or give it a pair of its own",
    });
  }
  if (line.found.dimension !== first.line.found.dimension) {
    report(context, filed, [...path, "found"], {
      code: "wrong-dimension",
      message: `this is ${nameOf(line.found.dimension)}, but the pair ${line.pair} is measured as ${nameOf(first.line.found.dimension)}`,
      expected: `${nameOf(first.line.found.dimension)} with its unit`,
      found: `${line.found.typed} here, ${first.line.found.typed} at ${at(first)}`,
      mend: "give both in units of one kind, or give it a pair of its own",
    });
  }
  const twice = before.find((one) => one.filed === filed && one.line.side === line.side);
  if (twice) {
    report(context, filed, [...path, "side"], {
      code: "measured-twice",
      message: `the ${line.side} side of ${line.pair} is measured twice on one day`,
      found: `${line.found.typed} here, ${twice.line.found.typed} at ${at(twice)}`,
      mend: "keep the measure that counts, and tell of the other in the prose",
    });
  }
  const stated = before.find((one) => one.line.pair_tolerance !== undefined);
  if (
    stated?.line.pair_tolerance &&
    line.pair_tolerance &&
    stated.line.pair_tolerance.value !== line.pair_tolerance.value
  ) {
    report(context, filed, [...path, "pair_tolerance"], {
      code: "two-tolerances",
      message: `the pair ${line.pair} has two tolerances`,
      expected: stated.line.pair_tolerance.typed,
      found: `${line.pair_tolerance.typed} here, ${stated.line.pair_tolerance.typed} at ${at(stated)}`,
      mend: "write the same in both places, or take one away",
    });
  }
}

function nameOf(dimension: Dimension): string {
  return DIMENSIONS[dimension].name;
}
