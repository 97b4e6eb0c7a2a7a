/** Where work stops until someone has looked. */
import type * as z from "zod";
import { type Decisions, show } from "../decisions.ts";
import { block, choice, list, words } from "../field.ts";
import { idOf, ownId } from "../id.ts";
import { factOf, type SoundFile } from "../typing.ts";
import type { Path, Placed } from "../values.ts";

/** What may not happen before someone has looked, in the order in which it happens. */
export const HOLD_KINDS = ["next skin", "close-up", "covering", "first load", "flight", "return to service"] as const;

export const holdPointSchema = block({
  id: ownId("The hold point's id.", "TP-H1"),
  title: words("What is to be looked at.", "Inside of the box before the last skin"),
  kind: choice(HOLD_KINDS, "What may not happen before someone has looked."),
  joints: list(
    idOf("joint", "A joint.", "TP-J01"),
    "The joints that must be shown; without any all joints of the assembly and of those within it.",
  ).optional(),
});

export type HoldKind = (typeof HOLD_KINDS)[number];

export interface HoldPoint extends Placed {
  readonly title: string;
  readonly kind: HoldKind;
  readonly assembly: string;
  /** The joints that must be shown; without any all joints of the assembly and of those within it. */
  readonly joints?: readonly string[];
}

export function holdPointOf(spec: z.output<typeof holdPointSchema>, path: Path, of: SoundFile<unknown>): HoldPoint {
  return factOf<HoldPoint>({
    id: spec.id,
    place: of.at(path),
    title: spec.title,
    kind: spec.kind,
    assembly: of.id,
    joints: spec.joints,
  });
}

export const holdPointShown: Decisions<HoldPoint> = {
  id: show,
  place: show,
  title: show,
  kind: show,
  assembly: show,
  joints: show,
};
