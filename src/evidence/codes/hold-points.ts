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

export interface NeedValues {
  /** With what was found that is neither met nor a caution. */
  "need/joint": { readonly joint: string; readonly state: string; readonly told: readonly Coded<FindingValues>[] };
  "need/open-item": Noted;
  "need/departure": Noted;
  "need/measure-out": Measured;
  "need/pair-out": Pair;
  "need/pair-one-side": { readonly pair: string; readonly side?: Side };
  "need/seconded": Stands;
  "need/reopened": { readonly day: Day };
  "need/not-signed": { readonly day: Day; readonly remarks?: string };
}

export interface TakeValues {
  "take/glue": NoValues;
  "take/break-pieces": NoValues;
  "take/complete": NoValues;
  "take/rework": NoValues;
  "take/glue-again": NoValues;
  "take/close-item": NoValues;
  "take/acceptance": NoValues;
  "take/mend-measure": NoValues;
  "take/other-side": NoValues;
  "take/look-again": NoValues;
  "take/answer": NoValues;
  "take/second": NoValues;
  /** Of a need that an edition withholds. */
  "take/other-edition": NoValues;
}

export interface ChangeValues {
  "change/glued": OfJoints & { readonly batch: string };
  "change/opened": OfJoints & { readonly why: string };
  "change/recalled": OfJoints & { readonly lot: string; readonly why: string };
  "change/rejected": OfJoints & { readonly batch: string; readonly why: string };
  "change/failed": OfJoints & { readonly piece: string };
  "change/amended": Amended;
  "change/departure": Noted;
  "change/open-item": Noted;
  "change/measure-out": Measured;
  "change/pair-out": Pair;
  "change/joint": { readonly joint: string; readonly state: string };
}
