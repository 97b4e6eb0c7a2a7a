/**
 * The record once it has been read and found without problems. Everything here may be trusted:
 * ids resolve, files exist, dates are real, quantities carry units. What the builder typed is kept.
 */
import type { Place } from "../problem.ts";

/** Who something is for. Each edition shows its own and all wider ones: public ⊂ inspector ⊂ archive. */
export type Audience = "public" | "inspector" | "archive";

export type Dimension =
  | "mass" | "length" | "area" | "volume" | "force" | "stress" | "temperature"
  | "share" | "duration" | "density" | "spread" | "angle" | "per length" | "thicknesses";

/**
 * A quantity as typed and in the unit used for reckoning: kg, m, m², m³, N, Pa, °C, 1 (a share of one),
 * s, kg/m³, kg/m², rad, 1/m, 1 (multiples of the thickness).
 * `step` is the last digit's worth as typed, in the same unit (`42.0 g` → 0.0001 kg); 0 for fractions.
 */
export interface Quantity {
  readonly typed: string;
  readonly value: number;
  readonly unit: string;
  readonly step: number;
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

/** `YYYY-MM-DD` */
export type Day = string;

/** A time of day on a day in the aircraft's time zone. `epoch` is seconds since 1970-01-01T00:00Z. */
export interface Moment {
  readonly typed: string;
  readonly epoch: number;
}

/** A file beside the record, by its path relative to the record's folder. */
export type FilePath = string;

interface Placed {
  readonly id: string;
  readonly place: Place;
}

export interface Person extends Placed {
  readonly name: string;
  /** The name shown where full names are withheld. */
  readonly publicName: string;
  readonly role: "builder" | "helper" | "inspector" | "visitor";
  readonly audience: Audience;
  readonly authority?: string;
}

export type Withheld = "names" | "suppliers" | "certificates" | "attachments" | "ledgers";

export interface Aircraft {
  readonly place: Place;
  readonly name: string;
  readonly type: string;
  readonly units: "metric" | "imperial";
  readonly timeZone: string;
  readonly start: Day;
  /** Hours the builder means to work each week, in minutes. */
  readonly targetPerWeek?: number;
  readonly people: ReadonlyMap<string, Person>;
  /** The words allowed for `task:`. */
  readonly tasks: readonly string[];
  /** Kinds of fact which the builder lets the public edition show although it is withheld by default. */
  readonly publicShows: readonly Withheld[];
  /** How to visit the workshop, if the builder says so. */
  readonly visit?: string;
  readonly photo?: Photo;
  readonly body: readonly Passage[];
}

/** A stretch of a Markdown body for one audience. `line` is where it starts in its file. */
export interface Passage {
  readonly audience: Audience;
  readonly markdown: string;
  readonly line: number;
}

export interface JointSpec extends Placed {
  readonly title: string;
  readonly assembly: string;
  /** Where the joint stands on the assembly's drawing, as shares of its width and height from the top left. */
  readonly at?: { readonly x: number; readonly y: number };
  readonly area?: Quantity;
  readonly drawing?: string;
}

export type HoldKind = "close-up" | "covering" | "flight";

export interface HoldPoint extends Placed {
  readonly title: string;
  readonly kind: HoldKind;
  readonly assembly: string;
  /** The joints that must be shown; without it all joints of the assembly and of those within it. */
  readonly joints?: readonly string[];
}

export interface Assembly extends Placed {
  readonly title: string;
  readonly parent?: string;
  readonly planned?: number;
  readonly finished?: Day;
  readonly drawing?: { readonly file: FilePath; readonly alt: string };
  readonly joints: readonly JointSpec[];
  readonly holdPoints: readonly HoldPoint[];
  readonly body: readonly Passage[];
}

export interface Adhesive extends Placed {
  readonly title: string;
  /** How the maker's data sheet is named and dated. */
  readonly sheet: string;
  readonly sheetFile?: FilePath;
  /** Hardener over resin by mass, and the tolerance of that ratio as a share (0.05 = ±5 %). */
  readonly byMass?: MixRatio;
  readonly byVolume?: MixRatio;
  readonly density?: { readonly resin: Quantity; readonly hardener: Quantity };
  readonly workingLife: readonly { readonly temperature: Quantity; readonly mass: Quantity; readonly time: Quantity }[];
  /** Shop temperature while gluing and curing, °C. */
  readonly temperature?: Range;
  /** Relative humidity as a share. */
  readonly humidity?: Range;
  readonly cure: readonly { readonly temperature: Quantity; readonly time: Quantity }[];
  readonly shelfLife?: Quantity;
  /** Wood moisture as a share of dry mass. */
  readonly woodMoisture?: Range;
  readonly spread?: Quantity;
  readonly body: readonly Passage[];
}

export interface MixRatio {
  /** As typed, such as `100 : 83`: parts of resin to parts of hardener. */
  readonly typed: string;
  readonly hardenerOverResin: number;
  readonly tolerance?: Quantity;
}

export type PieceForm = "three-leg" | "single-lap" | "block-shear";

export interface Procedure extends Placed {
  readonly title: string;
  readonly form: PieceForm;
  /** Overlap as multiples of the thickness. */
  readonly overlap?: Range;
  /** Pieces asked for from each batch. */
  readonly pieces?: number;
  readonly leastCure?: { readonly time: Quantity; readonly temperature?: Quantity };
  /** The temperature assumed for the cure where none was noted, °C. */
  readonly leastTemperature?: Quantity;
  readonly woodFailure?: Quantity;
  readonly stress?: Quantity;
  /** Strength of the wood the pieces are made of, along the grain; without it the program's default, named as such. */
  readonly wood?: { readonly crushing: Quantity; readonly shear: Quantity };
  readonly body: readonly Passage[];
}

export type Material = "resin" | "hardener" | "timber" | "plywood" | "other";

export interface Lot extends Placed {
  readonly title: string;
  readonly material: Material;
  readonly adhesive?: string;
  readonly number?: string;
  readonly supplier?: string;
  readonly received: Day;
  readonly expiry?: Day;
  readonly certificate?: FilePath;
  readonly amount?: Quantity;
  readonly species?: string;
  readonly moisture?: Quantity;
  readonly grainSlope?: string;
  readonly rings?: Quantity;
  readonly density?: Quantity;
  readonly audience: Audience;
  readonly body: readonly Passage[];
}

export interface HoursLine {
  readonly place: Place;
  readonly who: string;
  readonly task: string;
  readonly minutes: number;
  readonly typed: string;
  readonly assembly: string;
}

/** What one component of a mix was: from which lot and how much, by mass or by volume. */
export interface Component {
  readonly lot?: string;
  readonly mass?: Quantity;
  readonly volume?: Quantity;
}

export interface Piece extends Placed {
  readonly batch: string;
  readonly procedure: string;
  /** The timber lot it was made from. */
  readonly lot?: string;
  readonly thickness?: Quantity;
  readonly width?: Quantity;
  readonly overlap?: Quantity;
  /** A piece made for a trial is judged by the trial and never counts for its batch. */
  readonly trial?: string;
  readonly preparation?: string;
}

export interface Batch extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly adhesive: string;
  readonly resin?: Component;
  readonly hardener?: Component;
  /** Reading step of the scale (mass) or the measure (volume). */
  readonly scale?: Quantity;
  readonly mixed?: Moment;
  readonly closed?: Moment;
  readonly temperature?: Quantity;
  readonly humidity?: Quantity;
  /** Temperature of the surfaces that were glued. */
  readonly surface?: Quantity;
  /** Wood moisture as read by a meter. */
  readonly moisture?: Quantity;
  readonly joints: readonly string[];
  /** Timber and plywood lots that the glued parts were made from. */
  readonly timber: readonly string[];
  readonly pieces: readonly Piece[];
}

export type FailureMode = "wood" | "glue line" | "mixed";

export interface PieceTest {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly piece: string;
  readonly at?: Moment;
  readonly failure: FailureMode;
  readonly woodFailure?: Quantity;
  readonly load?: Quantity;
  readonly photo?: string;
  readonly witness?: string;
  readonly note?: string;
}

export interface Measurement {
  readonly place: Place;
  readonly entry: string;
  readonly what: string;
  readonly assembly: string;
  readonly dimension: Dimension;
  readonly drawing?: Quantity;
  readonly tolerance?: Tolerance;
  readonly found: Quantity;
  readonly departure?: string;
}

export interface Departure extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly what: string;
  readonly why: string;
  readonly acceptedBy?: string;
  readonly acceptedIn?: string;
  readonly audience: Audience;
}

export interface OpenItem extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly what: string;
  /** A hold point's id, or a kind of hold point: then every one of that kind on the way up from the assembly. */
  readonly before?: string;
  readonly closedIn?: string;
  readonly audience: Audience;
}

export interface Photo {
  readonly place: Place;
  readonly file: FilePath;
  readonly alt: string;
  readonly caption?: string;
  readonly audience: Audience;
}

export interface Attachment {
  readonly place: Place;
  readonly file: FilePath;
  readonly title: string;
  readonly audience: Audience;
}

/** A notice that a lot must not be trusted any more. */
export interface Recall {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly lot: string;
  readonly why: string;
  readonly reference?: string;
}

/** Glue taken out of joints. Only batches of the same or a later entry count for them from then on. */
export interface Rework {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly joints: readonly string[];
  readonly why: string;
}

/** The builder's own decision that a batch is not to be trusted, whatever its pieces show. */
export interface Rejection {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly batch: string;
  readonly why: string;
}

/** Someone looked at a hold point. */
export interface Inspection {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly holdPoint: string;
  readonly by: string;
  readonly result: "signed" | "not signed";
  readonly reference?: string;
  readonly scan?: FilePath;
  readonly remarks?: string;
}

export interface Entry extends Placed {
  readonly file: FilePath;
  readonly day: Day;
  /** First and last second of the day in the aircraft's time zone. */
  readonly dayStart: number;
  readonly dayEnd: number;
  readonly title: string;
  readonly assembly: string;
  readonly audience: Audience;
  readonly hours: readonly HoursLine[];
  readonly batches: readonly Batch[];
  readonly tests: readonly PieceTest[];
  readonly measurements: readonly Measurement[];
  readonly departures: readonly Departure[];
  readonly raised: readonly OpenItem[];
  readonly closed: readonly string[];
  readonly photos: readonly Photo[];
  readonly attachments: readonly Attachment[];
  readonly recalls: readonly Recall[];
  readonly reworks: readonly Rework[];
  readonly rejections: readonly Rejection[];
  readonly inspections: readonly Inspection[];
  readonly body: readonly Passage[];
}

/** One way of preparing pieces in a trial. */
export interface Preparation {
  readonly id: string;
  readonly what: string;
}

/** An experiment at the bench. Its pieces name it; its outcomes are their tests. */
export interface Trial extends Placed {
  readonly title: string;
  readonly question: string;
  readonly stated: Day;
  /** What the builder expected, in words, before the pieces were broken. */
  readonly expectation: string;
  readonly preparations: readonly Preparation[];
  readonly audience: Audience;
  readonly body: readonly Passage[];
}

export interface Record {
  readonly aircraft: Aircraft;
  readonly assemblies: ReadonlyMap<string, Assembly>;
  readonly adhesives: ReadonlyMap<string, Adhesive>;
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly lots: ReadonlyMap<string, Lot>;
  readonly trials: ReadonlyMap<string, Trial>;
  /** By day, then by file name. */
  readonly entries: readonly Entry[];
  /** The date of the record: that of its last entry, or the one given. */
  readonly day: Day;
}

export type Kind =
  | "entry" | "assembly" | "joint" | "hold point" | "batch" | "piece" | "lot"
  | "adhesive" | "procedure" | "trial" | "departure" | "open item" | "person";

/** A thing in the record, by its kind and id. */
export interface Ref {
  readonly kind: Kind;
  readonly id: string;
}
