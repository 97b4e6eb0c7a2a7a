/** Values that stand in many places of the record. */
import type { Token } from "markdown-it";
import type { Place } from "../problem.ts";

/** Who something is for. Each edition shows its own and all wider ones: public ⊂ inspector ⊂ archive. */
export const AUDIENCES = ["public", "inspector", "archive"] as const;
export type Audience = (typeof AUDIENCES)[number];

/** Whether an edition for `reader` shows what is for `audience`. */
export const sees = (reader: Audience, audience: Audience): boolean =>
  AUDIENCES.indexOf(audience) <= AUDIENCES.indexOf(reader);

export type Dimension =
  | "mass"
  | "length"
  | "area"
  | "volume"
  | "force"
  | "stress"
  | "temperature"
  | "share"
  | "duration"
  | "density"
  | "spread"
  | "angle"
  | "slope"
  | "per length"
  | "thicknesses";

/**
 * A quantity as typed and in the unit used for reckoning: kg, m, m², m³, N, Pa, °C, 1 (a share of one),
 * s, kg/m³, kg/m², rad, slope (rise over length), 1/m, 1 (multiples of the thickness).
 * `step` is the last digit's worth as typed, in the same unit (`42.0 g` → 0.0001 kg); 0 for fractions.
 */
export interface Quantity {
  readonly typed: string;
  readonly value: number;
  readonly unit: string;
  readonly step: number;
}

/** Between which ends something lies, both in the unit of reckoning. */
export interface Ends {
  readonly least: number;
  readonly most: number;
}

/**
 * What was read, weighed or judged: one value, a range, or an estimate. There is no `value` before a rule has said which end it takes
 * (`reckoning/ends`).
 */
export type Noted = Quantity | Between | Estimate;

/** Of `9 to 11 %` either end may be the true one. */
interface Between extends Omit<Quantity, "value">, Ends {}

/** `about 20 °C` proves nothing, and tells against what it is out of. */
interface Estimate extends Omit<Quantity, "value"> {
  readonly about: Ends;
}

/** A sum of money as typed; `currency` is its code by ISO 4217. */
export interface Money {
  readonly typed: string;
  readonly hundredths: number;
  readonly currency: string;
}

/** A closed range such as `8 % to 12 %`; `at least 15 °C` and `at most 70 %` leave one end open. */
export interface Range {
  readonly typed: string;
  readonly least?: number;
  readonly most?: number;
}

/** A tolerance about a nominal value: `±0.5 mm`, or `+0.5 mm −0 mm`. Both are in the unit of reckoning; minus ≤ 0 ≤ plus. */
export interface Tolerance {
  readonly typed: string;
  readonly minus: number;
  readonly plus: number;
}

/** Parts of the first to parts of the second: of resin to hardener, of powder to water. */
export interface MixRatio {
  /** As typed, such as `100 : 83`: parts of the first to parts of the second. */
  readonly typed: string;
  readonly secondOverFirst: number;
  readonly tolerance?: Quantity;
}

/** `YYYY-MM-DD` */
export type Day = string;

/** A time of day on a day in the aircraft's time zone. `epoch` is seconds since 1970-01-01T00:00Z. */
export interface Moment {
  readonly typed: string;
  readonly epoch: number;
}

/** A file beside the record, by its path relative to the record's folder. */
export type FilePath = string;

/** What has an id, and where that id stands. */
export interface Placed {
  readonly id: string;
  readonly place: Place;
}

/** A stretch of a Markdown body for one audience. `line` is where it starts in its file. */
export interface Passage {
  readonly audience: Audience;
  readonly markdown: string;
  readonly line: number;
  /** In place of `markdown`, which then is empty, where an edition leaves out something that the passage names. */
  readonly blocks?: readonly Token[];
}

/** Kinds of fact that the public edition withholds unless the builder lets it show them. */
export const WITHHELD_KINDS = ["names", "suppliers", "certificates", "attachments", "ledgers", "costs"] as const;
export type Withheld = (typeof WITHHELD_KINDS)[number];

export type Kind =
  | "entry"
  | "assembly"
  | "joint"
  | "hold point"
  | "batch"
  | "piece"
  | "lot"
  | "adhesive"
  | "finish"
  | "procedure"
  | "trial"
  | "departure"
  | "open item"
  | "person"
  | "climate log"
  | "earlier hours";

/** A thing in the record, by its kind and id. */
export interface Ref {
  readonly kind: Kind;
  readonly id: string;
}

/** Where a value stands within front matter. */
export type Path = readonly PropertyKey[];

/** What a column of a table of hours can say; every command lists them in its help, so they stand apart from the form. */
export const EARLIER_KEYS = ["span", "who", "task", "time", "assembly", "source"] as const;
