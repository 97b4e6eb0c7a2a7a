/** What stands for the whole build: the aircraft, its parts, what is used on it and how it is tested. */
import type { Place } from "../problem.ts";
import type { Audience, Day, FilePath, Passage, Photo, Placed, Quantity, Range } from "./values.ts";

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
  /** From where arms are measured, in words. */
  readonly datum?: string;
  readonly designWeight?: Quantity;
  /** How to visit the workshop, if the builder says so. */
  readonly visit?: string;
  readonly photo?: Photo;
  readonly body: readonly Passage[];
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

/** A task of building, one point. A task without credit does not apply to this aircraft. */
export interface BuildTask extends Placed {
  readonly title: string;
  readonly assembly: string;
  /** Who did how many tenths; they add up to ten. */
  readonly credit?: {
    readonly maker: number;
    readonly paid: number;
    readonly assembly: number;
    readonly fabrication: number;
  };
}

export interface Assembly extends Placed {
  readonly title: string;
  readonly parent?: string;
  readonly planned?: number;
  readonly finished?: Day;
  readonly drawing?: { readonly file: FilePath; readonly alt: string };
  readonly joints: readonly JointSpec[];
  readonly holdPoints: readonly HoldPoint[];
  readonly tasks: readonly BuildTask[];
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
