/** What was delivered at once. */
import type * as z from "zod";
import { type Decisions, part, prose, show, where } from "../decisions.ts";
import { audience, block, choice, day, either, money, quantity, range, share, slope, words } from "../field.ts";
import { file, idOf } from "../id.ts";
import { factOf, maybe, type SoundFile } from "../typing.ts";
import type { Audience, Day, FilePath, Money, Passage, Placed, Quantity, Range } from "../values.ts";
import { LOT_PARTS } from "./adhesive-kind.ts";
import type { Visibility } from "../visibility.ts";

/** What glues, what is glued, what is put on, and parts that are bought in: fittings, cables, instruments, what belongs to the engine. */
const MATERIALS = [...LOT_PARTS, "timber", "plywood", "part", "finish", "other"] as const;

export const lotSchema = block({
  title: words("What was delivered.", "Spruce planks, 25 mm"),
  material: choice(MATERIALS, "What it is."),
  adhesive: idOf("adhesive", "The adhesive that resin, hardener, glue or powder belongs to.", "epoxy-a").optional(),
  finish: idOf("finish", "The product that a lot of finish is of.", "varnish-1").optional(),
  number: words("The maker's lot number.", "40217").optional(),
  supplier: words("Who delivered it.", "A timber merchant").optional(),
  received: day("The day it came.", "2024-11-02"),
  expiry: day("The last day it may be used.", "2026-11-01").optional(),
  certificate: file("Its certificate, relative to this file.", "s-2.pdf").optional(),
  amount: either(["mass", "volume", "length", "area"], "How much came.", ["2 kg", "1 l", "24 m"]).optional(),
  cost: money("What it cost; for the archive alone, unless `public_shows` has costs.").optional(),
  for: audience().optional(),
  species: words("The species of wood.", "Sitka spruce").optional(),
  thickness: quantity(
    { dimension: "length", example: "3 mm" },
    "Thickness of the sheet of plywood, or of the plank.",
  ).optional(),
  moisture: share("Moisture when it came.", "11.2 %").optional(),
  grain_slope: slope().optional(),
  rings: quantity({ dimension: "per length" }, "Growth rings.").optional(),
  density: quantity({ dimension: "density", example: "430 kg/m³" }, "Its density.").optional(),
  asked: block({
    grain_slope: slope().optional(),
    rings: range("per length", "Growth rings.", "at least 6 /in").optional(),
    density: range("density", "Its density.", "at least 360 kg/m³").optional(),
    moisture: range("share", "Moisture when it came.", "8 % to 14 %").optional(),
  })
    .meta({ description: "What the drawings ask of timber." })
    .optional(),
});

/** What the drawings ask of the timber of a lot; the slope is the steepest. */
interface TimberAsked {
  readonly grainSlope?: string;
  readonly rings?: Range;
  readonly density?: Range;
  readonly moisture?: Range;
}

const timberAskedShown: Decisions<TimberAsked> = { grainSlope: show, rings: show, density: show, moisture: show };

export type Material = (typeof MATERIALS)[number];

export interface Lot extends Placed {
  readonly title: string;
  readonly material: Material;
  readonly adhesive?: string;
  readonly finish?: string;
  readonly number?: string;
  readonly supplier?: string;
  readonly received: Day;
  readonly expiry?: Day;
  readonly certificate?: FilePath;
  readonly amount?: Quantity;
  readonly cost?: Money;
  readonly species?: string;
  /** Of the sheet of plywood, or of the plank, m. */
  readonly thickness?: Quantity;
  readonly moisture?: Quantity;
  readonly grainSlope?: string;
  readonly rings?: Quantity;
  readonly density?: Quantity;
  readonly asked?: TimberAsked;
  readonly audience: Audience;
  readonly body: readonly Passage[];
}

export function lotOf({ spec, file, id: own, body, path }: SoundFile<z.output<typeof lotSchema>>): Lot {
  return factOf<Lot>({
    id: own,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    material: spec.material,
    adhesive: spec.adhesive,
    finish: spec.finish,
    number: spec.number,
    supplier: spec.supplier,
    received: spec.received,
    expiry: spec.expiry,
    certificate: spec.certificate === undefined ? undefined : path(spec.certificate),
    amount: maybe(spec.amount),
    cost: spec.cost,
    species: spec.species,
    thickness: maybe(spec.thickness),
    moisture: maybe(spec.moisture),
    grainSlope: spec.grain_slope,
    rings: maybe(spec.rings),
    density: maybe(spec.density),
    asked: spec.asked && timberAskedOf(spec.asked),
    audience: spec.for ?? "public",
    body,
  });
}

const timberAskedOf = (asked: NonNullable<z.output<typeof lotSchema>["asked"]>): TimberAsked =>
  factOf<TimberAsked>({
    grainSlope: asked.grain_slope,
    rings: asked.rings,
    density: asked.density,
    moisture: asked.moisture,
  });

export const lotShown: Decisions<Lot> = {
  id: show,
  place: show,
  title: show,
  material: show,
  adhesive: show,
  finish: show,
  number: show,
  supplier: where("suppliers"),
  received: show,
  expiry: show,
  certificate: where("certificates"),
  amount: show,
  cost: where("costs"),
  species: show,
  thickness: show,
  moisture: show,
  grainSlope: show,
  rings: show,
  density: show,
  asked: part(timberAskedShown),
  audience: show,
  body: prose("lots"),
};

export const isLotShown = ({ id: one }: Lot, seer: Visibility): boolean => seer.lots.has(one);
