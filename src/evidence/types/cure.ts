/** What the record shows of a piece's cure, and when its least cure is reached. */
import type { CureLaw } from "../../reckoning/cure/cure-rate.ts";
import type { Ref } from "../../facts/types.ts";
import type { WarmthValues } from "../codes/limits.ts";
import type { Saying } from "../saying.ts";
import type { Source } from "./source.ts";

/** Where the temperature of a time comes from: a logger all along, in part, or not at all. */
export type Warmth = "logged" | "logged in part" | "assumed" | "unknown";

/** °C, and where it comes from. */
export type StatedWarmth = Saying<keyof WarmthValues> & { readonly temperature: number };

export interface Cure {
  /** The latest that the joint can have been closed, s since 1970-01-01T00:00Z. */
  readonly from: number;
  /** The least cure asked, s, and the temperature it is counted at, °C. */
  readonly least: number;
  readonly reference: number;
  readonly referenceFrom: Source;
  /** How the rate of cure is taken to depend on temperature. */
  readonly law: CureLaw;
  /** The temperature that the record states for where no logger has readings, and the one taken for what is still ahead. */
  readonly stated?: StatedWarmth;
  readonly assumed?: StatedWarmth;
  /** Until it was broken: the equivalent age at the reference that is shown, s, and by what. Undefined before it is broken. */
  readonly age?: number;
  readonly warmth?: Warmth;
  /**
   * When days and equivalent age both reach the least cure; beyond what is logged the assumed temperature is taken to go on.
   * Undefined where no temperature at all is known; then only the days count.
   */
  readonly readyAt?: number;
  /** By what the temperature until then is known; `withheld` in an edition that does not show what it rests on. */
  readonly readyBy: Warmth | "too cold" | "withheld";
  /** The logs, and the entries with readings of a thermometer, that it rests on. */
  readonly restsOn: readonly Ref[];
}
