/** The aircraft on three scales. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import type { Amending } from "../entry/amending.ts";
import { block, quantity, words } from "../field.ts";
import { factOf, type InEntry, quantityOf } from "../typing.ts";
import type { Day, Path, Quantity } from "../values.ts";
import { arm } from "./arm.ts";

export const scalesSchema = block({
  what: words("What stood on the scales, and how.", "Whole aircraft, empty, level on its wheels").optional(),
  left: quantity(
    { dimension: "mass", example: "151.2 kg" },
    "What the scale under the left main wheel read, less its tare.",
  ),
  right: quantity(
    { dimension: "mass", example: "150.8 kg" },
    "What the scale under the right main wheel read, less its tare.",
  ),
  nose: quantity(
    { dimension: "mass", sign: "not negative", example: "61.0 kg" },
    "What the scale under the nose wheel read, less its tare.",
  ).optional(),
  tail: quantity(
    { dimension: "mass", sign: "not negative", example: "24.6 kg" },
    "Or what the scale under the tail wheel read, less its tare.",
  ).optional(),
  mains: arm("Where the main wheels stand, from", "1120 mm"),
  wheelbase: quantity(
    { dimension: "length", example: "4180 mm" },
    "From the main wheels to the nose or tail wheel, level.",
  ),
});

/** The aircraft, or what there is of it, on three scales; readings less tare. */
export interface OnScales {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly what?: string;
  readonly left: Quantity;
  readonly right: Quantity;
  readonly third: Quantity;
  readonly at: "nose" | "tail";
  /** Arm of the main wheels from the aircraft's datum, behind it positive. */
  readonly mains: Quantity;
  readonly wheelbase: Quantity;
}

export function scalesOf(spec: z.output<typeof scalesSchema>, path: Path, of: InEntry): OnScales | undefined {
  const third = spec.nose ?? spec.tail;
  return (
    third &&
    factOf<OnScales>({
      place: of.at(path),
      entry: of.entry,
      day: of.day,
      what: spec.what,
      left: quantityOf(spec.left),
      right: quantityOf(spec.right),
      third: quantityOf(third),
      at: spec.nose === undefined ? "tail" : "nose",
      mains: quantityOf(spec.mains),
      wheelbase: quantityOf(spec.wheelbase),
    })
  );
}

export const scalesShown: Decisions<OnScales> = {
  place: show,
  entry: show,
  day: show,
  what: show,
  left: show,
  right: show,
  third: show,
  at: show,
  mains: show,
  wheelbase: show,
};

export const scalesAmended: Amending = { how: "alone", word: "On the scales" };
