/** A part weighed on the way. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, list, quantity, words, note } from "../field.ts";
import { idOf } from "../id.ts";
import { assemblyIn, factOf, type InEntry, maybe, quantityOf } from "../typing.ts";
import type { Day, Path, Quantity } from "../values.ts";
import { arm } from "./arm.ts";

export const weighingSchema = block({
  part: words(
    "What was weighed; in the same words where it is weighed again, and then the last counts.",
    "Left wing panel, skinned",
  ),
  mass: quantity({ dimension: "mass", example: "18.4 kg" }, "What it weighs."),
  arm: arm("Where its own centre of gravity will lie, from", "1240 mm").optional(),
  assembly: idOf("assembly", "Of which assembly, if not the entry's.", "wing").optional(),
  instead_of: list(
    words("A part weighed before.", "Left wing panel, bare"),
    "Parts weighed before that are in this one, and no longer count by themselves.",
  ).optional(),
  note: note(),
});

/** A part weighed on the way. One of the same words weighed later takes its place. */
export interface Weighing {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly part: string;
  readonly mass: Quantity;
  /** From the aircraft's datum, behind it positive. */
  readonly arm?: Quantity;
  /** Parts weighed before that are in this one. */
  readonly insteadOf: readonly string[];
  readonly note?: string;
}

export function weighingOf(spec: z.output<typeof weighingSchema>, path: Path, of: InEntry): Weighing {
  return factOf<Weighing>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    assembly: assemblyIn(spec.assembly, of),
    part: spec.part,
    mass: quantityOf(spec.mass),
    arm: maybe(spec.arm),
    insteadOf: spec.instead_of ?? [],
    note: spec.note,
  });
}

export const weighingShown: Decisions<Weighing> = {
  place: show,
  entry: show,
  day: show,
  assembly: show,
  part: show,
  mass: show,
  arm: show,
  insteadOf: show,
  note: show,
};

export const weighingAmended = foundBy({
  keys: ["part", "assembly"],
  named: false,
  word: "Weighing:",
  several: "Weighings",
});
