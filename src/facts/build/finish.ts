/** What is put on: primer, varnish, dope, paint, fabric and tape, by the maker's sheet. */
import type * as z from "zod";
import { type Decisions, part, prose, show, where } from "../decisions.ts";
import { block, choice, count, quantity, range, words } from "../field.ts";
import { file } from "../id.ts";
import { factOf, maybe, type SoundFile } from "../typing.ts";
import type { FilePath, Passage, Placed, Quantity, Range } from "../values.ts";

const FINISH_KINDS = ["primer", "varnish", "dope", "paint", "fabric", "tape"] as const;
export type FinishKind = (typeof FINISH_KINDS)[number];

const time = (description: string, example: string) => quantity({ dimension: "duration", example }, description);

export const finishSchema = block({
  title: words("The product.", "Two-part varnish, clear"),
  kind: choice(FINISH_KINDS, "What it is."),
  sheet: words("Name and revision of the maker's sheet.", "Sheet V-2, revision 1"),
  sheet_file: file("The sheet itself, relative to this file.", "v-2.pdf").optional(),
  temperature: range("temperature", "Of the air when it is put on.", "15 °C to 30 °C", "any").optional(),
  humidity: range("share", "Relative humidity when it is put on.", "at most 70 %").optional(),
  coats: count("The least number of coats.", "2", "coats").optional(),
  recoat: block({
    after: time("No sooner than this after the coat before.", "4 h").optional(),
    within: time("No later than this after the coat before.", "24 h").optional(),
  })
    .meta({ description: "When the next coat may follow." })
    .optional(),
  dry: time("How long it dries before it may be closed in, covered or loaded.", "24 h").optional(),
  shelf_life: time("How long a lot keeps from the day it is received.", "365 d").optional(),
});

interface Recoat {
  readonly after?: Quantity;
  readonly within?: Quantity;
}

const recoatShown: Decisions<Recoat> = { after: show, within: show };

export interface Finish extends Placed {
  readonly title: string;
  readonly kind: FinishKind;
  /** How the maker's sheet is named and dated. */
  readonly sheet: string;
  readonly sheetFile?: FilePath;
  /** Of the air when it is put on, °C. */
  readonly temperature?: Range;
  /** Relative humidity when it is put on, as a share. */
  readonly humidity?: Range;
  /** The least number of coats. */
  readonly coats?: number;
  /** How long after the coat before. */
  readonly recoat?: Recoat;
  /** Before it may be closed in, covered or loaded. */
  readonly dry?: Quantity;
  readonly shelfLife?: Quantity;
  readonly body: readonly Passage[];
}

export function finishOf(filed: SoundFile<z.output<typeof finishSchema>>): Finish {
  const { spec, file: own, id, path, body } = filed;
  return factOf<Finish>({
    id,
    place: { file: own, line: 1, column: 1 },
    title: spec.title,
    kind: spec.kind,
    sheet: spec.sheet,
    sheetFile: spec.sheet_file === undefined ? undefined : path(spec.sheet_file),
    temperature: spec.temperature,
    humidity: spec.humidity,
    coats: spec.coats,
    recoat: spec.recoat && factOf<Recoat>({ after: maybe(spec.recoat.after), within: maybe(spec.recoat.within) }),
    dry: maybe(spec.dry),
    shelfLife: maybe(spec.shelf_life),
    body,
  });
}

export const finishShown: Decisions<Finish> = {
  id: show,
  place: show,
  title: show,
  kind: show,
  sheet: show,
  sheetFile: where("attachments"),
  temperature: show,
  humidity: show,
  coats: show,
  recoat: part(recoatShown),
  dry: show,
  shelfLife: show,
  body: prose("finishes"),
};
