/** A batch of adhesive. */
import type * as z from "zod";
import { type Decisions, each, onlyShown, part, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, clock, either, eitherNoted, list, noted, notedShare, shortly, words, note } from "../field.ts";
import { idOf, ownId } from "../id.ts";
import { PAST_MIDNIGHT } from "../time/clock.ts";
import { factOf, type InEntry, maybe, maybeNoted } from "../typing.ts";
import type { Day, Moment, Noted, Path, Placed, Quantity } from "../values.ts";
import { type ByDefault, byDefaultOf, byDefaultShown, isByDefaultShown } from "./by-default.ts";
import {
  type Component,
  componentOf,
  componentSchema,
  componentShown,
  type Water,
  waterOf,
  waterSchema,
  waterShown,
} from "./component.ts";
import { type GlueUp, glueUpInWords, glueUpOf, glueUpSchema, glueUpShown } from "./glue-up.ts";
import {
  isPieceShown,
  type Piece,
  pieceAmended,
  pieceOf,
  pieceSchema,
  pieceShown,
  severalPiecesSchema,
} from "./piece.ts";

const amountOf = (part: string, such: readonly [string, string]) =>
  eitherNoted(["mass", "volume"], `How much ${part}.`, such).optional();

export const batchSchema = block({
  id: ownId("The batch's id.", "B-014"),
  adhesive: idOf("adhesive", "Which adhesive was mixed; without it the one in use.", "epoxy-a").optional(),
  mix: block({
    at: clock("When mixing began or, of an adhesive that is not mixed, when it was first spread.").optional(),
    resin: amountOf("resin", ["42.0 g", "40 ml"]),
    hardener: amountOf("hardener", ["35.1 g", "34 ml"]),
    glue: amountOf("glue, of an adhesive of one part", ["8 g", "8 ml"]),
    powder: amountOf("powder", ["50 g", "80 ml"]),
    water: amountOf("water", ["30 g", "30 ml"]),
  })
    .meta({ description: "`mixed` and the amount of each part in one line, where the lots are those in use." })
    .optional(),
  mixed: clock("When mixing began or, of an adhesive that is not mixed, when it was first spread.").optional(),
  closed: clock("When the last joint was closed; 24:20 is twenty past midnight.", PAST_MIDNIGHT).optional(),
  scale: either(["mass", "volume"], "Reading step of the scale or the measure.", ["0.1 g", "1 ml"]).optional(),
  resin: componentSchema("resin", "R-3").optional(),
  hardener: componentSchema("hardener", "H-3").optional(),
  glue: componentSchema("glue, of an adhesive of one part", "G-1").optional(),
  powder: componentSchema("powder", "U-1").optional(),
  water: waterSchema().optional(),
  shop: block({
    temperature: noted({ dimension: "temperature", sign: "any" }, "Of the air.", ["19 to 21 °C"]).optional(),
    humidity: notedShare("Relative humidity of the air.", "52 %", ["48 to 55 %"]).optional(),
    surface: noted(
      { dimension: "temperature", sign: "any", example: "18 °C" },
      "Of the surfaces that were glued.",
    ).optional(),
    wood: noted({ dimension: "temperature", sign: "any", example: "17.5 °C" }, "Of the wood within.").optional(),
  })
    .meta({ description: "How warm and damp it was at the bench." })
    .optional(),
  moisture: notedShare("Moisture of the wood, by a meter.", "10.5 %", ["9 to 11 %"]).optional(),
  timber: list(
    idOf("lot", "A timber or plywood lot.", "S-2"),
    "The lots that the glued parts were made from.",
  ).optional(),
  joints: list(idOf("joint", "A joint.", "TP-J03"), "The joints it went into.").optional(),
  glue_up: shortly(glueUpSchema.meta({ description: "How it was glued up." }), glueUpInWords).optional(),
  pieces: shortly(
    list(
      pieceSchema,
      "The test pieces made from it; where all but their ids is the same, { ids: [B-014/1, B-014/2], procedure: three-leg }.",
    ),
    severalPiecesSchema,
  ).optional(),
  waste: eitherNoted(["mass", "volume"], "What was left in the cup and on brushes, measured as the mix was.", [
    "12 g",
    "10 ml",
  ]).optional(),
  discarded: words("Why the whole cup was thrown away.", "It went hot before the brush was in it").optional(),
  note: note(),
});

export interface Batch extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly adhesive: string;
  readonly resin?: Component;
  readonly hardener?: Component;
  /** Of an adhesive of one part. */
  readonly glue?: Component;
  readonly powder?: Component;
  readonly water?: Water;
  /** Reading step of the scale (mass) or the measure (volume). */
  readonly scale?: Quantity;
  /** When mixing began or, where nothing is mixed, spreading. */
  readonly mixed?: Moment;
  readonly closed?: Moment;
  readonly temperature?: Noted;
  readonly humidity?: Noted;
  /** Temperature of the surfaces that were glued. */
  readonly surface?: Noted;
  /** Temperature of the wood within. */
  readonly wood?: Noted;
  /** Wood moisture as read by a meter. */
  readonly moisture?: Noted;
  readonly joints: readonly string[];
  /** Timber and plywood lots that the glued parts were made from. */
  readonly timber: readonly string[];
  /** What was done and seen from the surfaces to the clamps. */
  readonly glueUp?: GlueUp;
  readonly pieces: readonly Piece[];
  /** What was mixed and never spread. */
  readonly waste?: Noted;
  /** Why the whole cup was thrown away. */
  readonly discarded?: string;
  /** What of all this was typed nowhere here, and was in use then. */
  readonly byDefault?: readonly ByDefault[];
  readonly note?: string;
}

export function batchOf(spec: z.output<typeof batchSchema>, path: Path, of: InEntry): Batch {
  return factOf<Batch>({
    id: spec.id,
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    adhesive: spec.adhesive ?? "",
    resin: componentOf(spec.resin),
    hardener: componentOf(spec.hardener),
    glue: componentOf(spec.glue),
    powder: componentOf(spec.powder),
    water: waterOf(spec.water),
    scale: maybe(spec.scale),
    mixed: spec.mixed && of.moment(spec.mixed, "earlier"),
    closed: spec.closed && of.moment(spec.closed, "later"),
    temperature: maybeNoted(spec.shop?.temperature),
    humidity: maybeNoted(spec.shop?.humidity),
    surface: maybeNoted(spec.shop?.surface),
    wood: maybeNoted(spec.shop?.wood),
    moisture: maybeNoted(spec.moisture),
    joints: spec.joints ?? [],
    timber: spec.timber ?? [],
    glueUp: spec.glue_up && glueUpOf(spec.glue_up, of),
    pieces: (spec.pieces ?? []).map((piece, at) => pieceOf(piece, [...path, "pieces", at], spec.id, of)),
    waste: maybeNoted(spec.waste),
    discarded: spec.discarded,
    byDefault: byDefaultOf(spec, path, of),
    note: spec.note,
  });
}

export const batchShown: Decisions<Batch> = {
  id: show,
  place: show,
  entry: show,
  day: show,
  adhesive: show,
  resin: part(componentShown),
  hardener: part(componentShown),
  glue: part(componentShown),
  powder: part(componentShown),
  water: part(waterShown),
  scale: show,
  mixed: show,
  closed: show,
  temperature: show,
  humidity: show,
  surface: show,
  wood: show,
  moisture: show,
  joints: show,
  timber: onlyShown("lots"),
  glueUp: part(glueUpShown),
  pieces: each(pieceShown, isPieceShown),
  waste: show,
  discarded: show,
  byDefault: each(byDefaultShown, isByDefaultShown),
  note: show,
};

export const batchAmended = foundBy({
  keys: ["id"],
  kind: "batch",
  named: true,
  word: "Batch",
  several: "Batches",
  ofTheDay: true,
  lists: { pieces: pieceAmended },
});
