/** The glue-up itself, from the surfaces to the clamps: what was done and seen, each only where it is said. */
import type * as z from "zod";
import { type Decisions, each, onlyShown, orWithheld, show } from "../decisions.ts";
import { block, choice, clock, day, list, noted, notedShare, words } from "../field.ts";
import { idOf } from "../id.ts";
import { PAST_MIDNIGHT } from "../time/clock.ts";
import { factOf, type InEntry, maybeNoted, notedOf } from "../typing.ts";
import type { Moment, Noted } from "../values.ts";
import { METHOD_SHAPE, type Method, methodOf, methodShown } from "./method.ts";

const lots = (description: string) => list(idOf("lot", "A lot of plywood.", "P-1"), description).optional();

export const glueUpSchema = block({
  by: idOf("procedure", "It was done as this procedure says, but for what is said otherwise here.", "std").optional(),
  prepared: clock("When the surfaces were finished.").optional(),
  prepared_on: day("On which day, where that was an earlier one.").optional(),
  ...METHOD_SHAPE,
  drop: lots("Lots of plywood on which a drop of water spread that day."),
  beaded: lots("Lots of plywood on which a drop of water stood in a bead."),
  over_cured: list(
    choice(["washed", "abraded", "neither"], "What was done to cured adhesive."),
    "What was done to cured adhesive before it was bonded again.",
  ).optional(),
  filler_mass: noted({ dimension: "mass", example: "1.2 g" }, "How much filler.").optional(),
  gap: noted({ dimension: "length", example: "0.2 mm" }, "The greatest gap when it was tried dry.").optional(),
  spread: clock("When the first face was spread.", PAST_MIDNIGHT).optional(),
  spread_to: clock("When the last face was spread.", PAST_MIDNIGHT).optional(),
  on: clock("When the last clamp was tight.", PAST_MIDNIGHT).optional(),
  off: clock("When the first clamp was taken off.", PAST_MIDNIGHT).optional(),
  off_on: day("On which day, where that was a later one.", "2025-03-09").optional(),
  pressure: noted({ dimension: "stress", example: "0.9 MPa" }, "The pressure on the joint.").optional(),
  squeeze_out: choice(["all along", "in part", "none"], "Where adhesive was seen to be squeezed out.").optional(),
  dry_spots: words("Where a joint was seen to be dry.", "upper edge, 30 mm from the root").optional(),
  parts: list(
    block({
      lot: idOf("lot", "Of the part from this lot,", "S-2"),
      moisture: notedShare("the moisture, by a meter.", "10.5 %", ["9 to 11 %"]),
    }),
    "The moisture of each part.",
  ).optional(),
  resin: noted({ dimension: "temperature", sign: "any", example: "20 °C" }, "Warmth of the resin.").optional(),
  mixed_for: noted({ dimension: "duration", example: "2 min" }, "How long it was mixed.").optional(),
});

/** The same in a line of words, spelled out before the record is read. */
export const glueUpInWords = words(
  "In a line: the procedure and when the surfaces were finished, then what was done and seen, with commas between.",
  "std 09:30, spread 14:25 to 14:40, on 14:55, off 18:30, gap 0.2 mm, drop P-1, resin 19 °C, squeeze-out",
);

export interface GlueUp extends Method {
  readonly by?: string;
  /** When the surfaces were finished. */
  readonly prepared?: Moment;
  readonly drop: readonly string[];
  readonly beaded: readonly string[];
  readonly overCured?: readonly ("washed" | "abraded" | "neither")[];
  readonly fillerMass?: Noted;
  readonly gap?: Noted;
  /** When the first and the last face were spread. */
  readonly spread?: Moment;
  readonly spreadTo?: Moment;
  /** When the last clamp was tight, and when the first was taken off. */
  readonly on?: Moment;
  readonly off?: Moment;
  readonly pressure?: Noted;
  readonly squeezeOut?: "all along" | "in part" | "none";
  readonly drySpots?: string;
  readonly parts?: readonly PartMoisture[];
  readonly resin?: Noted;
  readonly mixedFor?: Noted;
}

interface PartMoisture {
  readonly lot: string;
  readonly moisture: Noted;
}

export function glueUpOf(spec: z.output<typeof glueUpSchema>, { moment }: InEntry): GlueUp {
  return factOf<GlueUp>({
    ...whole(methodOf(spec)),
    by: spec.by,
    prepared: spec.prepared && moment(spec.prepared, "earlier", spec.prepared_on),
    drop: spec.drop ?? [],
    beaded: spec.beaded ?? [],
    overCured: spec.over_cured,
    fillerMass: maybeNoted(spec.filler_mass),
    gap: maybeNoted(spec.gap),
    spread: spec.spread && moment(spec.spread, "earlier"),
    spreadTo: spec.spread_to && moment(spec.spread_to, "later"),
    on: spec.on && moment(spec.on, "later"),
    off: spec.off && moment(spec.off, "earlier", spec.off_on),
    pressure: maybeNoted(spec.pressure),
    squeezeOut: spec.squeeze_out,
    drySpots: spec.dry_spots,
    parts: spec.parts?.map(({ lot, moisture }) => ({ lot, moisture: notedOf(moisture) })),
    resin: maybeNoted(spec.resin),
    mixedFor: maybeNoted(spec.mixed_for),
  });
}

/** A method with all its keys, of which some hold nothing. */
const whole = (method: Method) => ({
  surfaces: method.surfaces,
  cleaned: method.cleaned,
  faces: method.faces,
  endGrain: method.endGrain,
  filler: method.filler,
  clamps: method.clamps,
  staples: method.staples,
  scraped: method.scraped,
  secondCup: method.secondCup,
});

const partShown: Decisions<PartMoisture> = { lot: orWithheld("lots"), moisture: show };

export const glueUpShown: Decisions<GlueUp> = {
  ...methodShown,
  by: show,
  prepared: show,
  drop: onlyShown("lots"),
  beaded: onlyShown("lots"),
  overCured: show,
  fillerMass: show,
  gap: show,
  spread: show,
  spreadTo: show,
  on: show,
  off: show,
  pressure: show,
  squeezeOut: show,
  drySpots: show,
  parts: each(partShown),
  resin: show,
  mixedFor: show,
};
