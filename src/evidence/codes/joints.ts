/** What is found of joints, and of what was amended or rejected. */
import type { Day } from "../../facts/types.ts";
import type { Coded } from "./coded.ts";
import type { WarmthValues } from "./limits.ts";
import type { NoValues } from "./no-values.ts";

interface Glued {
  readonly batch: string;
  readonly day: Day;
  readonly verdict: string;
}

/** Before the batch that cures last had cured; `shown` where the record says by when it had. */
interface TooSoon {
  readonly batch: string;
  readonly day: Day;
  readonly until?: string;
}

interface Because {
  readonly day: Day;
  readonly why: string;
}

/** Without `was` it was not written down; without `is` it is struck out. */
export interface Amended extends Because {
  readonly fact: string;
  readonly value?: string;
  readonly was?: string;
  readonly is?: string;
}

/** What it would be by the amendments of `entries`, and what it stays without someone who saw their source. */
export interface Stands {
  readonly as: string;
  readonly stands: string;
  readonly entries: readonly string[];
  /** Whether someone did see it: then it is the wood of a piece that had been broken. */
  readonly broken: boolean;
}

/** As typed. */
interface MeasuredAt {
  readonly what: string;
  readonly found: string;
}

export interface JointValues {
  /** The day it was first glued or opened after the first flight. */
  "in-service/hold-point": { readonly day: Day; readonly holdPoint: string };
  "in-service/no-hold-point": { readonly day: Day };
  "joint-measured/estimate": MeasuredAt;
  "joint-measured/within": MeasuredAt;
  "joint-measured/out": MeasuredAt;
  /** By the departure that it names. */
  "joint-measured/accepted": MeasuredAt & { readonly departure: string };
  /** Before it was noted or last amended. */
  "joint-measured/accepted-before": MeasuredAt & { readonly departure: string };
  "joint-measured/not-accepted": MeasuredAt & { readonly departure: string };
  /** Without `stages` all of it. */
  "joint-glued/reworked": Because & { readonly stages?: readonly number[] };
  "joint-glued/never": NoValues;
  "joint-glued/not-again": NoValues;
  "joint-glued/batch": Glued;
  /** Wood in it that none of its batches names, and that none of their pieces tried. */
  "joint-glued/wood-lacking": { readonly lots: readonly string[] };
  /** By number, those that hold no batch, of all. */
  "joint-stages/to-come": { readonly stages: readonly number[]; readonly of: number };
  "joint-stages/left-out": { readonly stages: readonly number[]; readonly of: number; readonly day: Day };
  /** Batches that are of no stage. */
  "joint-stages/unsaid": { readonly batches: readonly string[] };
  "joint-stages/not-said-complete": { readonly of: number };
  "joint-stages/complete": { readonly of: number; readonly day: Day };
  /** `until`: `2025-03-14 09:00`; `assumed` where no logger or thermometer shows it. */
  "joint-cure/reached": {
    readonly batch: string;
    readonly until: string;
    readonly assumed?: Coded<WarmthValues> | "days";
  };
  /** Without `until` nothing says when. */
  "joint-cure/waits": { readonly batch: string; readonly until?: string };
  /** s, of so much asked. */
  "joint-cure/not-shown": { readonly batch: string; readonly shown: number; readonly asked: number };
  "joint-cure/signed": TooSoon & { readonly holdPoint: string; readonly kind: string };
  "joint-cure/reworked": TooSoon & { readonly joints: readonly string[] };
  /** Without `part` the aircraft stood on the scales. */
  "joint-cure/weighed": TooSoon & { readonly part?: string };
  "joint-quarantine/batch": Glued;
  "joint-quarantine/recalled": Because & { readonly lot: string; readonly batches: readonly string[] };
  /** Timber that came in with glue that was taken out, and that no rework says was replaced. */
  "joint-quarantine/left-in": Because & { readonly lot: string; readonly batches: readonly string[] };
  /** A recalled lot that a rework put in, and that no batch names. */
  "joint-quarantine/put-in": Because & { readonly lot: string; readonly put: Day };
  "builders-rejection/rejected": Because;
  "amended/changed": Amended;
  "amended/fixed": Amended;
  /** The wood of a piece that had been broken. */
  "amended/worsens": Amended;
  "seconded/stands": Stands;
}
