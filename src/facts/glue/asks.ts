/** What is asked of a glue-up: by the adhesive's sheet, by a procedure, or by the drawing of a joint. */
import type * as z from "zod";
import { type Decisions, show } from "../decisions.ts";
import { block, choice, list, quantity, range, share, words } from "../field.ts";
import { factOf, maybe } from "../typing.ts";
import type { Quantity, Range } from "../values.ts";

const time = (description: string, example: string) => quantity({ dimension: "duration", example }, description);
const yes = (description: string) => choice(["yes"], description).optional();

export const asksSchema = block({
  prepared_within: time("At most so long from finished surfaces to the last one spread.", "24 h").optional(),
  open_time: time("At most so long from the first face spread to the last joint closed.", "20 min").optional(),
  assembly_time: time("At most so long from the first face spread to the last clamp tight.", "40 min").optional(),
  clamped: time("At least so long under clamps.", "12 h").optional(),
  mixing: time("At least so long mixed.", "2 min").optional(),
  gap: quantity({ dimension: "length", example: "0.5 mm" }, "The greatest gap at most.").optional(),
  moisture_difference: share("Two parts may differ in moisture by this at most.", "3 %").optional(),
  filler_mass: share("At most so much filler, of the mass of the mix.", "5 %").optional(),
  fillers: list(words("A filler that is allowed.", "cotton flock"), "Fillers that are allowed; none is.").optional(),
  pressure: range("stress", "Pressure on the joint.", "0.1 MPa to 0.7 MPa").optional(),
  resin: range("temperature", "Warmth of the resin.", "18 °C to 25 °C", "any").optional(),
  faces: choice(["both"], "Both faces are wetted.").optional(),
  end_grain: choice(["twice"], "End grain is wetted twice.").optional(),
  squeeze_out: choice(["all along"], "Adhesive is squeezed out all along, and there is no dry spot.").optional(),
  staples: choice(["pulled"], "Staples are pulled.").optional(),
  water_drop: yes("A drop of water spreads on each lot of plywood that day."),
  over_cured: yes("Cured adhesive that is bonded again is washed and abraded."),
  scraped: yes("Sides and bottom of the cup are scraped while mixing."),
  second_cup: yes("The mix is poured into a second cup and mixed again."),
});

export interface Asks {
  readonly preparedWithin?: Quantity;
  readonly openTime?: Quantity;
  readonly assemblyTime?: Quantity;
  readonly clamped?: Quantity;
  readonly mixing?: Quantity;
  readonly gap?: Quantity;
  readonly moistureDifference?: Quantity;
  readonly fillerMass?: Quantity;
  readonly fillers?: readonly string[];
  readonly pressure?: Range;
  readonly resin?: Range;
  readonly faces?: "both";
  readonly endGrain?: "twice";
  readonly squeezeOut?: "all along";
  readonly staples?: "pulled";
  readonly waterDrop?: "yes";
  readonly overCured?: "yes";
  readonly scraped?: "yes";
  readonly secondCup?: "yes";
}

/** What can be asked of a glue-up, by the key of what asks. */
export type Ask = keyof Asks;

export function asksOf(spec: z.output<typeof asksSchema> | undefined): Asks | undefined {
  return (
    spec &&
    factOf<Asks>({
      preparedWithin: maybe(spec.prepared_within),
      openTime: maybe(spec.open_time),
      assemblyTime: maybe(spec.assembly_time),
      clamped: maybe(spec.clamped),
      mixing: maybe(spec.mixing),
      gap: maybe(spec.gap),
      moistureDifference: maybe(spec.moisture_difference),
      fillerMass: maybe(spec.filler_mass),
      fillers: spec.fillers,
      pressure: spec.pressure,
      resin: spec.resin,
      faces: spec.faces,
      endGrain: spec.end_grain,
      squeezeOut: spec.squeeze_out,
      staples: spec.staples,
      waterDrop: spec.water_drop,
      overCured: spec.over_cured,
      scraped: spec.scraped,
      secondCup: spec.second_cup,
    })
  );
}

export const asksShown: Decisions<Asks> = {
  preparedWithin: show,
  openTime: show,
  assemblyTime: show,
  clamped: show,
  mixing: show,
  gap: show,
  moistureDifference: show,
  fillerMass: show,
  fillers: show,
  pressure: show,
  resin: show,
  faces: show,
  endGrain: show,
  squeezeOut: show,
  staples: show,
  waterDrop: show,
  overCured: show,
  scraped: show,
  secondCup: show,
};
