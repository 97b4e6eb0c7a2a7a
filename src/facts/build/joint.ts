/** A glued joint of an assembly. */
import type * as z from "zod";
import { type Decisions, part, show } from "../decisions.ts";
import { block, choice, count, quantity, share, words } from "../field.ts";
import { type Asks, asksOf, asksSchema, asksShown } from "../glue/asks.ts";
import { ownId } from "../id.ts";
import { factOf, maybe, type SoundFile } from "../typing.ts";
import type { Path, Placed, Quantity } from "../values.ts";

export const jointSchema = block({
  id: ownId("The joint's id.", "TP-J01"),
  title: words("Which joint it is.", "Rear spar, upper cap to web"),
  at: block({
    x: share("From the left edge of the drawing.", "31 %"),
    y: share("From the top edge of the drawing.", "42 %"),
  })
    .meta({ description: "Where its mark stands on the assembly's drawing." })
    .optional(),
  area: quantity({ dimension: "area" }, "Area of the glue line.").optional(),
  structure: choice(
    ["primary", "secondary"],
    "Secondary where its failure would not endanger the aircraft; without it primary.",
  ).optional(),
  stages: count("In how many sessions it is glued, where that is more than one.", "3", "stages").optional(),
  drawing: words("Where it stands in the plans.", "sheet 14").optional(),
  asks: asksSchema.meta({ description: "What the drawing asks of its glue-up." }).optional(),
});

export interface JointSpec extends Placed {
  readonly title: string;
  readonly assembly: string;
  /** Where the joint stands on the assembly's drawing, as shares of its width and height from the top left. */
  readonly at?: { readonly x: number; readonly y: number };
  readonly area?: Quantity;
  /** Primary unless the builder says that its failure would not endanger the aircraft. */
  readonly structure?: "primary" | "secondary";
  /** In how many stages it is to be glued, where the plan says so. */
  readonly stages?: number;
  readonly drawing?: string;
  /** What the drawing asks of its glue-up. */
  readonly asks?: Asks;
}

export function jointOf(spec: z.output<typeof jointSchema>, path: Path, of: SoundFile<unknown>): JointSpec {
  return factOf<JointSpec>({
    id: spec.id,
    place: of.at(path),
    title: spec.title,
    assembly: of.id,
    at: spec.at && { x: spec.at.x.value, y: spec.at.y.value },
    area: maybe(spec.area),
    structure: spec.structure,
    stages: spec.stages,
    drawing: spec.drawing,
    asks: asksOf(spec.asks),
  });
}

export const jointShown: Decisions<JointSpec> = {
  id: show,
  place: show,
  title: show,
  assembly: show,
  at: show,
  area: show,
  structure: show,
  stages: show,
  drawing: show,
  asks: part(asksShown),
};
