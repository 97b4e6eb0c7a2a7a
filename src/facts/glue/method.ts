/**
 * How a glue-up is done, as a procedure tells it and as a session may tell it otherwise. A procedure gives the method
 * and never that it was followed: that a session says.
 */
import type * as z from "zod";
import { type Decisions, show } from "../decisions.ts";
import { block, choice, words } from "../field.ts";
import { factOf } from "../typing.ts";

export const METHOD_SHAPE = {
  surfaces: words("How the surfaces are prepared.", "planed, then scraped along the grain").optional(),
  cleaned: words("How dust is taken off.", "vacuum, then a clean dry cloth").optional(),
  faces: choice(["both", "one"], "Which faces of a joint are wetted with adhesive.").optional(),
  end_grain: choice(["twice", "once"], "How often end grain is wetted.").optional(),
  filler: words("What is stirred in, or none.", "cotton flock").optional(),
  clamps: words("Of what kind the clamps are, and how far apart.", "F-clamps every 80 mm").optional(),
  staples: choice(["left", "pulled"], "What becomes of staples.").optional(),
  scraped: choice(["yes", "no"], "Sides and bottom of the cup are scraped while mixing.").optional(),
  second_cup: choice(["yes", "no"], "The mix is poured into a second cup and mixed again.").optional(),
};

export const methodSchema = block(METHOD_SHAPE);

export interface Method {
  readonly surfaces?: string;
  readonly cleaned?: string;
  readonly faces?: "both" | "one";
  readonly endGrain?: "twice" | "once";
  readonly filler?: string;
  readonly clamps?: string;
  readonly staples?: "left" | "pulled";
  readonly scraped?: "yes" | "no";
  readonly secondCup?: "yes" | "no";
}

export function methodOf(spec: z.output<typeof methodSchema>): Method {
  return factOf<Method>({
    surfaces: spec.surfaces,
    cleaned: spec.cleaned,
    faces: spec.faces,
    endGrain: spec.end_grain,
    filler: spec.filler,
    clamps: spec.clamps,
    staples: spec.staples,
    scraped: spec.scraped,
    secondCup: spec.second_cup,
  });
}

export const methodShown = {
  surfaces: show,
  cleaned: show,
  faces: show,
  endGrain: show,
  filler: show,
  clamps: show,
  staples: show,
  scraped: show,
  secondCup: show,
} satisfies Decisions<Method>;
