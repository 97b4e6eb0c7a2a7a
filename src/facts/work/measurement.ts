/** Something measured, and what the drawing asks. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, orWithheld, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, choice, difference, drawn, measured, tolerance, words, note } from "../field.ts";
import { idOf, ownId } from "../id.ts";
import { assemblyIn, factOf, type InEntry, maybe, notedOf } from "../typing.ts";
import type { Dimension, Noted, Path, Quantity, Range, Tolerance } from "../values.ts";

export const measurementSchema = block({
  what: words("What was measured; in the same words where it is measured again.", "Rib 3, height at the front spar"),
  assembly: idOf("assembly", "On which assembly, if not the entry's.", "tailplane").optional(),
  drawing: drawn("What the drawing asks: a measure or its limits.", [
    "62.0 mm",
    "2° 30'",
    "at least 12 mm",
    "at most 3 mm",
    "8 mm to 10 mm",
    "1 in 12",
  ]).optional(),
  tolerance: tolerance().optional(),
  found: measured("What was found.", "62.3 mm"),
  joint: idOf(
    "joint",
    "The joint that it was measured at, such as a scarf before it was glued: what is out there leaves the joint not shown.",
    "FS-J01",
  ).optional(),
  pair: ownId(
    "A word of your own that both sides share: left and right, or the two faces, are then held against each other too.",
    "rib-3-height",
  ).optional(),
  side: choice(
    ["left", "right", "front", "back", "upper", "lower"],
    "Which side of the pair this is; measured again, the last counts.",
  ).optional(),
  pair_tolerance: difference("How far the two sides may differ from each other.", "±0.5 mm").optional(),
  departure: idOf(
    "departure",
    "The departure that stands for it, if it or its pair is out of tolerance.",
    "D-05",
  ).optional(),
  note: note(),
});

export type Side = "left" | "right" | "front" | "back" | "upper" | "lower";

export interface Measurement {
  readonly place: Place;
  readonly entry: string;
  readonly what: string;
  readonly assembly: string;
  readonly dimension: Dimension;
  readonly drawing?: Quantity;
  /** What the drawing asks where it gives limits in place of a measure. */
  readonly limits?: Range;
  readonly tolerance?: Tolerance;
  readonly found: Noted;
  /** A word that two opposite sides share, and which of them this is. Both or neither. */
  readonly pair?: string;
  readonly side?: Side;
  /** How far the sides may differ, to either side; the same wherever it is given for a pair. */
  readonly pairTolerance?: Quantity;
  readonly departure?: string;
  /** The joint that it was measured at. */
  readonly joint?: string;
  readonly note?: string;
}

export function measurementOf(spec: z.output<typeof measurementSchema>, path: Path, of: InEntry): Measurement {
  return factOf<Measurement>({
    place: of.at(path),
    entry: of.entry,
    what: spec.what,
    assembly: assemblyIn(spec.assembly, of),
    dimension: spec.found.dimension,
    drawing: maybe(spec.drawing?.nominal),
    limits: spec.drawing?.limits,
    tolerance: spec.tolerance && {
      typed: spec.tolerance.typed,
      minus: spec.tolerance.minus,
      plus: spec.tolerance.plus,
    },
    found: notedOf(spec.found),
    pair: spec.pair,
    side: spec.side,
    pairTolerance: maybe(spec.pair_tolerance),
    departure: spec.departure,
    joint: spec.joint,
    note: spec.note,
  });
}

export const measurementShown: Decisions<Measurement> = {
  place: show,
  entry: show,
  what: show,
  assembly: show,
  dimension: show,
  drawing: show,
  limits: show,
  tolerance: show,
  found: show,
  pair: show,
  side: show,
  pairTolerance: show,
  departure: orWithheld("departures"),
  joint: show,
  note: show,
};

export const measurementAmended = foundBy({
  keys: ["what", "assembly", "side"],
  named: false,
  word: "Measurement:",
  several: "Measurements",
});
