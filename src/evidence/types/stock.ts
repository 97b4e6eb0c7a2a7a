/** What there should still be of what was bought. */
import type { LotPart } from "../../facts/build/adhesive-kind.ts";
import type { Cut, Day, Lot } from "../../facts/types.ts";
import type { Finding } from "../types.ts";

export interface LotStock {
  readonly lot: Lot;
  /** The unit of reckoning of the amounts: kg or m³, and for timber m or m² as well. */
  readonly unit: string;
  readonly received?: number;
  /** What batches took of adhesive by the record, or what was cut from timber; undefined where nothing says how much anything took. */
  readonly used?: number;
  readonly cuts: readonly Cut[];
  /** Batches that took from it or that parts of it were glued in, and those of them of which it is not known how much: of timber those before the first cut noted. */
  readonly batches: readonly string[];
  readonly unknown: readonly string[];
  /** Received less used, never below nought; undefined where it cannot be known. More than this is not there. */
  readonly left?: number;
  readonly lastDay?: Day;
  readonly life: "good" | "soon" | "past" | "no date";
  readonly recalled: boolean;
}

/** What one adhesive would take for all joints that wait to be glued. Masses in kg. */
export interface AdhesiveNeed {
  readonly adhesive: string;
  readonly mixed: number;
  /** Those that come in lots; undefined where no ratio parts them. */
  readonly parts?: readonly Part[];
}

/** `usable` is what there is in date and not recalled; undefined where some lot's is not known. */
export interface Part {
  readonly part: LotPart;
  readonly needed: number;
  readonly usable?: number;
}

export interface Stock {
  readonly lots: readonly LotStock[];
  /** Joints that wait to be glued, with an area and without one. */
  readonly planned: readonly string[];
  readonly withoutArea: readonly string[];
  /** m² */
  readonly area: number;
  readonly needs: readonly AdhesiveNeed[];
  readonly findings: readonly Finding[];
}
