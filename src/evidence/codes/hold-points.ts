/** What hold points need, what that takes, and what changed after they were signed. Measures as typed. */
import type { Day, Side } from "../../facts/types.ts";
import type { Coded } from "./coded.ts";
import type { FindingValues } from "./findings.ts";
import type { Amended, Stands } from "./joints.ts";
import type { NoValues } from "./no-values.ts";

interface OfJoints {
  readonly joints: readonly string[];
  readonly day: Day;
}

interface Noted {
  readonly id: string;
  readonly day: Day;
  readonly what: string;
}

interface Measured {
  readonly what: string;
  readonly found: string;
  readonly asked: string;
}

interface Pair {
  readonly pair: string;
  readonly sides: readonly { readonly side?: Side; readonly found: string }[];
  readonly tolerance?: string;
}

interface Fitted {
  readonly where: string;
  readonly lot: string;
  /** Of the recall. */
  readonly day: Day;
  readonly why: string;
}

interface Coated {
  readonly where: string;
  /** The product, and which coat of it. */
  readonly finish: string;
  readonly coat: number;
}

interface CoatsAsked {
  readonly where: string;
  readonly finish: string;
  readonly asked: number;
}

type CoatTold = Coated & {
  readonly verdict: string;
  readonly told: readonly Coded<FindingValues>[];
  /** Departures that were accepted before it was noted or last amended. */
  readonly departures: readonly string[];
};

export interface NeedValues {
  /** With what was found that is neither met nor a caution. */
  "need/joint": { readonly joint: string; readonly state: string; readonly told: readonly Coded<FindingValues>[] };
  /** A part bought in, of a recalled lot, that stands in the assembly: how many were fitted, how many are left. */
  "need/fitted-recalled": Fitted & { readonly count: number; readonly left: number };
  /** With what was found that is neither met nor a caution. */
  "need/coat": CoatTold;
  "need/coats-missing": CoatsAsked & { readonly there: number };
  "need/open-item": Noted;
  "need/departure": Noted;
  /** A name alone, on no paper that is named. */
  "need/departure-told": Noted;
  /** By someone who is no inspector, or who worked on it. */
  "need/departure-role": Noted;
  "need/departure-worked": Noted;
  /** Amended after it was accepted. */
  "need/departure-changed": Noted;
  "need/departure-condition": Noted & { readonly condition: string };
  "need/measure-estimated": Measured;
  /** `beside`: departures noted in the same entry, which the measure does not name. */
  "need/measure-out": Measured & { readonly beside: readonly string[] };
  "need/pair-out": Pair & { readonly beside: readonly string[] };
  /** Departures that were accepted before what names them was noted or last amended. */
  "need/measure-after": Measured & { readonly departures: readonly string[] };
  "need/pair-after": Pair & { readonly departures: readonly string[] };
  "need/pair-estimated": { readonly pair: string };
  "need/pair-one-side": { readonly pair: string; readonly side?: Side };
  "need/seconded": Stands;
  "need/reopened": { readonly day: Day };
  "need/not-signed": { readonly day: Day; readonly remarks?: string };
  /**
   * A signature that does not count: of no inspector, of one who worked on it, or on no paper, by number or as a
   * scan.
   */
  "need/signed-role": { readonly day: Day };
  "need/signed-worked": { readonly day: Day };
  "need/signed-told": { readonly day: Day };
  /** Another hold point that comes first. */
  "need/hold-point": { readonly holdPoint: string; readonly state: string };
  /** One within that need not come first, and that was looked at and not signed. */
  "need/within-not-signed": { readonly holdPoint: string; readonly day: Day };
  /** It flew on that day, and no signature that counts is as old. */
  "need/flown": { readonly day: Day };
  /** It was signed, with something open. */
  "need/signed-open": { readonly day: Day };
  /** What was open when it was signed and was settled only after that. */
  "then/joint": { readonly joint: string };
  "then/cure": { readonly joint: string };
  "then/piece": { readonly piece: string; readonly day: Day };
  "then/fitted-recalled": Fitted;
  "then/coat": Coated;
  "then/coat-drying": Coated;
  "then/coats-missing": CoatsAsked;
  "then/open-item": Noted;
  "then/departure": Noted;
  "then/measure-out": Measured;
  "then/measure-estimated": Measured;
  "then/pair": { readonly pair: string };
  "then/hold-point": { readonly holdPoint: string };
}

export interface TakeValues {
  "take/glue": NoValues;
  "take/break-pieces": NoValues;
  "take/let-cure": NoValues;
  "take/glue-stages": NoValues;
  "take/complete": NoValues;
  "take/rework": NoValues;
  "take/replace-part": NoValues;
  "take/coat-again": NoValues;
  "take/let-dry": NoValues;
  "take/put-on": NoValues;
  "take/glue-again": NoValues;
  "take/close-item": NoValues;
  "take/acceptance": NoValues;
  "take/accept-again": NoValues;
  "take/mend-measure": NoValues;
  "take/other-side": NoValues;
  "take/measure-pair": NoValues;
  "take/measure-estimated": NoValues;
  "take/look-again": NoValues;
  "take/inspector": NoValues;
  "take/paper": NoValues;
  "take/signed-paper": NoValues;
  "take/meet-condition": NoValues;
  "take/pass-first": NoValues;
  "take/answer": NoValues;
  "take/second": NoValues;
  /** Of a need that an edition withholds. */
  "take/other-edition": NoValues;
}

export interface RemarkValues {
  /** Of what it asks for, before it was signed. */
  "remark/amended": Amended;
}

export interface ChangeValues {
  "change/glued": OfJoints & { readonly batch: string };
  "change/opened": OfJoints & { readonly why: string };
  "change/recalled": OfJoints & { readonly lot: string; readonly why: string };
  "change/fitted-recalled": Fitted;
  /** Another part stands where one stood when it was signed. */
  "change/fitted": { readonly where: string; readonly lot: string; readonly replaced: string; readonly day: Day };
  "change/coat-out": CoatTold;
  "change/coat-recalled": Coated & { readonly lot: string; readonly day: Day; readonly why: string };
  "change/coat-off": Coated & { readonly day: Day; readonly how: string };
  "change/rejected": OfJoints & { readonly batch: string; readonly why: string };
  "change/failed": OfJoints & { readonly piece: string };
  "change/amended": Amended;
  "change/departure": Noted;
  "change/open-item": Noted;
  "change/measure-out": Measured;
  "change/pair-out": Pair;
  "change/joint": { readonly joint: string; readonly state: string };
}
