/** How test pieces are made and judged. */
import type * as z from "zod";
import { defined } from "../../defined.ts";
import { type Decisions, part, prose, show } from "../decisions.ts";
import { block, choice, count, quantity, range, share, words } from "../field.ts";
import { type Asks, asksOf, asksSchema, asksShown } from "../glue/asks.ts";
import { type Method, methodOf, methodSchema, methodShown } from "../glue/method.ts";
import { factOf, maybe, quantityOf, type SoundFile } from "../typing.ts";
import type { Passage, Placed, Quantity, Range } from "../values.ts";

export const procedureSchema = block({
  title: words("What the procedure is called.", "Three-leg piece, quarter inch"),
  form: choice(
    ["three-leg", "single-lap", "block-shear", "glue-up"],
    "The form of the test piece; glue-up where it says how joints are glued, and not how pieces are made.",
  ),
  method: methodSchema.meta({ description: "How a glue-up is done: never that it was." }).optional(),
  asks: asksSchema.meta({ description: "What it asks of a glue-up." }).optional(),
  overlap: range("thicknesses", "Overlap as multiples of the thickness.", "2 to 3 thicknesses").optional(),
  pieces: count("How many pieces each batch must have.", "3").optional(),
  least_cure: block({
    time: quantity({ dimension: "duration", example: "3 d" }, "The least time before a piece is broken."),
    temperature: quantity(
      { dimension: "temperature", sign: "any", example: "20 °C" },
      "The temperature that this time holds for.",
    ).optional(),
  })
    .meta({ description: "How long a piece cures at least before it is broken." })
    .optional(),
  least_temperature: quantity(
    { dimension: "temperature", sign: "any", example: "15 °C" },
    "The temperature assumed where none was noted.",
  ).optional(),
  wood_failure: share("The least percentage of wood failure.", "75 %").optional(),
  face_ply: choice(["counts"], "A break in the face veneer of plywood counts as one in the wood.").optional(),
  stress: quantity({ dimension: "stress" }, "The least shear stress a piece must bear.").optional(),
  wood: block({
    crushing: quantity(
      { dimension: "stress", example: "5610 psi" },
      "Strength of the wood in compression along the grain.",
    ),
    shear: quantity({ dimension: "stress", example: "1150 psi" }, "Strength of the wood in shear along the grain."),
  })
    .meta({ description: "Strengths of the wood that the pieces are made of, along the grain." })
    .optional(),
});

export interface Procedure extends Placed {
  readonly title: string;
  readonly form: "three-leg" | "single-lap" | "block-shear" | "glue-up";
  /** How a glue-up is done: never that it was. */
  readonly method?: Method;
  /** What it asks of a glue-up. */
  readonly asks?: Asks;
  /** Overlap as multiples of the thickness. */
  readonly overlap?: Range;
  /** Pieces asked for from each batch. */
  readonly pieces?: number;
  readonly leastCure?: { readonly time: Quantity; readonly temperature?: Quantity };
  /** The temperature assumed for the cure where none was noted, °C. */
  readonly leastTemperature?: Quantity;
  readonly woodFailure?: Quantity;
  /** Whether a break in the face veneer of plywood counts as one in the wood. */
  readonly facePlyCounts?: boolean;
  readonly stress?: Quantity;
  /** Strength of the wood the pieces are made of, along the grain; without it the program's default, named as such. */
  readonly wood?: { readonly crushing: Quantity; readonly shear: Quantity };
  readonly body: readonly Passage[];
}

export function procedureOf({ spec, file, id: own, body }: SoundFile<z.output<typeof procedureSchema>>): Procedure {
  return factOf<Procedure>({
    id: own,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    form: spec.form,
    method: spec.method && methodOf(spec.method),
    asks: asksOf(spec.asks),
    overlap: spec.overlap,
    pieces: spec.pieces,
    leastCure:
      spec.least_cure &&
      defined({ time: quantityOf(spec.least_cure.time), temperature: maybe(spec.least_cure.temperature) }),
    leastTemperature: maybe(spec.least_temperature),
    woodFailure: maybe(spec.wood_failure),
    facePlyCounts: spec.face_ply && true,
    stress: maybe(spec.stress),
    wood: spec.wood && { crushing: quantityOf(spec.wood.crushing), shear: quantityOf(spec.wood.shear) },
    body,
  });
}

export const procedureShown: Decisions<Procedure> = {
  id: show,
  place: show,
  title: show,
  form: show,
  method: part<Method>(methodShown),
  asks: part(asksShown),
  overlap: show,
  pieces: show,
  leastCure: show,
  leastTemperature: show,
  woodFailure: show,
  facePlyCounts: show,
  stress: show,
  wood: show,
  body: prose("procedures"),
};
