/** An adhesive, by its data sheet. */
import type * as z from "zod";
import { defined } from "../../defined.ts";
import { type Decisions, part, prose, show, where } from "../decisions.ts";
import { block, choice, list, plusMinusShare, quantity, range, ratio, words } from "../field.ts";
import { type Asks, asksOf, asksSchema, asksShown } from "../glue/asks.ts";
import { file } from "../id.ts";
import { factOf, maybe, quantityOf, type SoundFile } from "../typing.ts";
import { ADHESIVE_KINDS, type AdhesiveKind, type AdhesivePart, partsNoted } from "./adhesive-kind.ts";
import type { FilePath, MixRatio, Passage, Placed, Quantity, Range } from "../values.ts";

const mix = (words: string, example: string) =>
  block({
    ratio: ratio(`Resin to hardener, or powder to water, ${words}.`, example),
    tolerance: plusMinusShare("How far the ratio may be off, as the data sheet has it.").optional(),
  });

const densityOf = (what: string, example: string) =>
  quantity({ dimension: "density", example }, `Density of the ${what}.`).optional();

export const adhesiveSchema = block({
  title: words("The adhesive.", "Epoxy A, two parts"),
  kind: choice(
    ADHESIVE_KINDS,
    "What it is made of: two parts mixed (as without this line), one part, powder and water, or two parts of which each goes on a face of its own.",
  ).optional(),
  sheet: words("Name and revision of the maker's data sheet.", "Data sheet EA-7, revision 3, May 2022"),
  sheet_file: file("The data sheet itself, relative to this file.", "ea-7-rev-3.pdf").optional(),
  by_mass: mix("by mass", "100 : 83").meta({ description: "The sheet's mixing ratio by mass." }).optional(),
  by_volume: mix("by volume", "1 : 1").meta({ description: "The sheet's mixing ratio by volume." }).optional(),
  density: block({
    resin: densityOf("resin", "1.16 g/cm³"),
    hardener: densityOf("hardener", "0.97 g/cm³"),
    glue: densityOf("glue", "1.1 g/cm³"),
    powder: densityOf("powder as it lies in the measure", "0.6 g/cm³"),
    water: densityOf("water", "1 g/cm³"),
  })
    .meta({
      description: "What each part weighs, so that what was measured by volume can be held against a ratio by mass.",
    })
    .optional(),
  working_life: list(
    block({
      temperature: quantity({ dimension: "temperature", sign: "any", example: "20 °C" }, "At this temperature"),
      mass: quantity({ dimension: "mass", example: "100 g" }, "and with this much mixed at once").optional(),
      time: quantity(
        { dimension: "duration", example: "45 min" },
        "it may be worked this long, from mixing or, where nothing is mixed, from spreading.",
      ),
    }),
    "The sheet's working life, a line for each temperature and mass.",
  ).optional(),
  temperature: range("temperature", "Shop temperature while gluing and curing.", "15 °C to 30 °C", "any").optional(),
  humidity: range("share", "Relative humidity while gluing.", "at most 70 %").optional(),
  cure: list(
    block({
      temperature: quantity({ dimension: "temperature", sign: "any", example: "20 °C" }, "At this temperature"),
      time: quantity({ dimension: "duration", example: "7 d" }, "it is cured after this time."),
    }),
    "The sheet's cure times, a line for each temperature.",
  ).optional(),
  service: quantity(
    { dimension: "temperature", sign: "any", example: "60 °C" },
    "The greatest temperature it may see once it is cured.",
  ).optional(),
  post_cure: block({
    temperature: range("temperature", "How warm the joint is kept,", "55 °C to 65 °C", "any"),
    time: quantity({ dimension: "duration", example: "4 h" }, "and at least for how long."),
  })
    .meta({ description: "Heating that the sheet asks for once it is glued." })
    .optional(),
  storage: range("temperature", "Temperature at which its parts are kept.", "10 °C to 25 °C", "any").optional(),
  shelf_life: quantity(
    { dimension: "duration", example: "730 d" },
    "How long a lot keeps from the day it is received.",
  ).optional(),
  wood_moisture: range("share", "Moisture of the wood to be glued.", "8 % to 12 %").optional(),
  spread: quantity({ dimension: "spread" }, "How much is spread on the joint.").optional(),
  asks: asksSchema.meta({ description: "What the sheet asks of the glue-up." }).optional(),
});

export interface Adhesive extends Placed {
  readonly title: string;
  /** How the maker's data sheet is named and dated. */
  readonly sheet: string;
  readonly sheetFile?: FilePath;
  readonly kind: AdhesiveKind;
  /** The second part over the first by mass (hardener over resin, water over powder), and the tolerance of that ratio as a share (0.05 = ±5 %). */
  readonly byMass?: MixRatio;
  readonly byVolume?: MixRatio;
  readonly density?: { readonly [part in AdhesivePart]?: Quantity };
  readonly workingLife: readonly {
    readonly temperature: Quantity;
    readonly mass?: Quantity;
    readonly time: Quantity;
  }[];
  /** Shop temperature while gluing and curing, °C. */
  readonly temperature?: Range;
  /** Relative humidity as a share. */
  readonly humidity?: Range;
  readonly cure: readonly { readonly temperature: Quantity; readonly time: Quantity }[];
  /** The greatest temperature it may see once it is cured, °C. */
  readonly service?: Quantity;
  /** Heating that the sheet asks for once it is glued. */
  readonly postCure?: { readonly temperature: Range; readonly time: Quantity };
  /** Temperature at which its parts are kept, °C. */
  readonly storage?: Range;
  readonly shelfLife?: Quantity;
  /** Wood moisture as a share of dry mass. */
  readonly woodMoisture?: Range;
  readonly spread?: Quantity;
  /** What the sheet asks of the glue-up. */
  readonly asks?: Asks;
  readonly body: readonly Passage[];
}

export function adhesiveOf(filed: SoundFile<z.output<typeof adhesiveSchema>>): Adhesive {
  const { spec, file, id: own, path } = filed;
  const ratio = (mix: { ratio: MixRatio; tolerance?: Quantity | undefined } | undefined): MixRatio | undefined =>
    mix && defined({ ...mix.ratio, tolerance: maybe(mix.tolerance) });
  return factOf<Adhesive>({
    id: own,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    kind: spec.kind ?? "two-part",
    sheet: spec.sheet,
    sheetFile: spec.sheet_file === undefined ? undefined : path(spec.sheet_file),
    byMass: ratio(spec.by_mass),
    byVolume: ratio(spec.by_volume),
    density: spec.density && densities(spec.density),
    workingLife: (spec.working_life ?? []).map(({ temperature, mass, time }) =>
      defined({ temperature: quantityOf(temperature), mass: maybe(mass), time: quantityOf(time) }),
    ),
    temperature: spec.temperature,
    humidity: spec.humidity,
    cure: (spec.cure ?? []).map((row) => ({ temperature: quantityOf(row.temperature), time: quantityOf(row.time) })),
    service: maybe(spec.service),
    postCure: spec.post_cure && { temperature: spec.post_cure.temperature, time: quantityOf(spec.post_cure.time) },
    storage: spec.storage,
    shelfLife: maybe(spec.shelf_life),
    woodMoisture: spec.wood_moisture,
    spread: maybe(spec.spread),
    asks: asksOf(spec.asks),
    body: filed.body,
  });
}

function densities(spec: NonNullable<z.output<typeof adhesiveSchema>["density"]>): NonNullable<Adhesive["density"]> {
  return Object.fromEntries(partsNoted(spec).map(({ part, noted }) => [part, quantityOf(noted)]));
}

export const adhesiveShown: Decisions<Adhesive> = {
  id: show,
  place: show,
  title: show,
  kind: show,
  sheet: show,
  sheetFile: where("attachments"),
  byMass: show,
  byVolume: show,
  density: show,
  workingLife: show,
  temperature: show,
  humidity: show,
  cure: show,
  service: show,
  postCure: show,
  storage: show,
  shelfLife: show,
  woodMoisture: show,
  spread: show,
  asks: part(asksShown),
  body: prose("adhesives"),
};
