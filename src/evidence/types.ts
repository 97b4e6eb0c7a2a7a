/** What the reckoning says of the record. */
import type {
  Batch,
  Coat,
  Departure,
  HoldPoint,
  Inspection,
  JointSpec,
  Lot,
  OpenItem,
  Piece,
  PieceTest,
  Recall,
  Ref,
  Rejection,
  Rework,
} from "../facts/types.ts";
import type { PartPair } from "../facts/build/adhesive-kind.ts";
import type { RuleId } from "./codes/rules.ts";
import type { FindingCode, Saying } from "./saying.ts";
import type { Cure } from "./types/cure.ts";
import type { Limit } from "./types/source.ts";
import type { MeasurementFile, PairFile } from "./types/measure.ts";
import type { TrialFile } from "./types/trial.ts";
import type { ChangeValues, NeedValues, RemarkValues, TakeValues } from "./codes/hold-points.ts";

export type { MeasurementFile, PairFile };

/**
 * What a finding does to a verdict.
 * `meets`: a limit was checked and held. `caution`: worth a look, changes no verdict.
 * `waits`: what is still to come may settle it. `unproven`: the record cannot show it and waiting will not help.
 * `rejects`: the record shows that a limit was broken.
 */
export type Severity = "meets" | "caution" | "waits" | "unproven" | "rejects";

/** What was found, as a code with its values: `src/words/findings` makes the sentence of it. */
export type Finding = Saying<FindingCode | "withheld"> & {
  readonly rule: RuleId;
  readonly severity: Severity;
  readonly about: Ref;
  /** The limit it was held against, and where that limit comes from. */
  readonly limit?: Limit;
  /** What it rests on, to be linked; an edition that withholds any of it withholds the code and its values. */
  readonly restsOn: readonly Ref[];
};

export type PieceVerdict = "pass" | "fail" | "inconclusive" | "too early" | "not broken";

export interface PieceFile {
  readonly piece: Piece;
  readonly test?: PieceTest;
  readonly verdict: PieceVerdict;
  /** Why, one finding a reason. */
  readonly findings: readonly Finding[];
  /** Overlap over thickness. */
  readonly overlapRatio?: number;
  /** Weakest glue line the piece would still have let pass, as a share of the wood's own shear strength. */
  readonly revealing?: number;
  /** The same, and no more than the load read shows: what the piece can have shown at most. */
  readonly atMost?: number;
  /** Seconds of cure that the record proves between closing and breaking. */
  readonly curedFor?: number;
  readonly cure: Cure;
  /** Shear stress on the glue faces at the noted load, Pa. */
  readonly stress?: number;
}

/**
 * People accept; the program shows. `in no joint`: it went into nothing, so that nothing is asked of it; it stands in no count,
 * nor does one `thrown away`.
 */
export type BatchVerdict = "shown" | "rejected" | "pending" | "not shown" | "in no joint" | "thrown away";

export interface BatchFile {
  readonly batch: Batch;
  readonly verdict: BatchVerdict;
  readonly findings: readonly Finding[];
  readonly pieces: readonly PieceFile[];
  readonly recalls: readonly Recall[];
  readonly rejection?: Rejection;
  /** The second part over the first (hardener over resin, water over powder) as mixed, by the way it was measured. */
  readonly ratio?: {
    readonly by: "mass" | "volume";
    readonly parts: PartPair;
    readonly found: number;
    readonly nominal: number;
    readonly error: number;
    readonly tolerance?: number;
    readonly doubt?: number;
  };
  /** Equilibrium moisture content of wood in the noted climate, share of dry mass. */
  readonly moistureEstimate?: number;
  /** °C */
  readonly dewPoint?: number;
  /** Seconds between mixing and closing. */
  readonly openFor?: number;
  /** Seconds that the data sheet gives at least for that warmth and mass. */
  readonly workingLife?: number;
}

export type JointState = "not glued" | "shown" | "pending" | "not shown" | "quarantined" | "opened";

export interface JointFile {
  readonly joint: JointSpec;
  readonly state: JointState;
  readonly findings: readonly Finding[];
  /** Batches in the joint now, oldest first; and those taken out by rework. */
  readonly batches: readonly string[];
  readonly superseded: readonly string[];
  readonly reworks: readonly Rework[];
  /** Lots in the joint now: adhesive components and timber. */
  readonly lots: readonly string[];
}

export interface LotFile {
  readonly lot: Lot;
  readonly recalls: readonly Recall[];
  /** Whether what was weighed as left in it is what the batches have left. */
  readonly findings: readonly Finding[];
  /** Batches that took adhesive from it or glued parts made from it. */
  readonly batches: readonly string[];
  readonly pieces: readonly string[];
  /** Joints that hold it now, and those it was taken out of. */
  readonly joints: readonly string[];
  readonly formerJoints: readonly string[];
  readonly assemblies: readonly string[];
  readonly holdPoints: readonly string[];
}

/** One coat, and what the record shows of it. */
export interface CoatFile {
  readonly coat: Coat;
  readonly verdict: CoatVerdict;
  readonly findings: readonly Finding[];
  /** When the sheet's time of drying is over, s since 1970-01-01T00:00Z; undefined where it gives none. */
  readonly dryFrom?: number;
  /** The later line by which it was taken off. */
  readonly off?: Coat;
}

export type CoatVerdict = "shown" | "not shown" | "pending" | "rejected";

/**
 * `signed with things open`: something was open when it was signed, or is open now. `reopened`: it was signed with nothing open, and what it
 * rests on has changed since.
 */
export type HoldState = "passed" | "signed with things open" | "reopened" | "ready" | "blocked" | "ahead";

/** How far a departure is accepted, and why no further. */
export type Standing =
  | "not accepted"
  | "accepted by no inspector"
  | "accepted by one who worked on it"
  | "told by the builder"
  | "accepted on a condition"
  | "changed since it was accepted"
  | "accepted";

/** Something that changed after a hold point was signed. */
export type Change = Saying<keyof ChangeValues | "withheld"> & {
  readonly about: Ref;
  readonly restsOn: readonly Ref[];
};

/** What is told of the looks at a hold point, and decides nothing. */
export type Remark = Saying<keyof RemarkValues | "withheld"> & {
  readonly about: Ref;
  readonly restsOn: readonly Ref[];
};

/** One line of what a hold point still needs. `blocks`: something is wrong; otherwise it is only not done yet. */
export type Need = Saying<keyof NeedValues | "withheld"> & {
  readonly about: Ref;
  readonly takes: Saying<keyof TakeValues>;
  readonly blocks: boolean;
  readonly restsOn: readonly Ref[];
};

export interface HoldPointFile {
  readonly holdPoint: HoldPoint;
  readonly state: HoldState;
  readonly joints: readonly string[];
  readonly needs: readonly Need[];
  /** What changed since it was signed, in the order of the record. */
  readonly changes: readonly Change[];
  readonly remarks: readonly Remark[];
  /** The last look, where that is a signature that counts. */
  readonly signed?: Inspection;
  readonly inspections: readonly Inspection[];
}

/** What is gathered here is of the assembly and of all within it. */
export interface AssemblyFile {
  readonly id: string;
  /** This assembly and all within it, parents first. */
  readonly within: readonly string[];
  readonly joints: readonly string[];
  readonly jointCounts: Readonly<{ [state in JointState]: number }>;
  /** Open and closed ones. */
  readonly openItems: readonly OpenItem[];
  readonly departures: readonly Departure[];
  readonly measurements: readonly MeasurementFile[];
  readonly holdPoints: readonly string[];
  /** The first that is not passed, its own before those within. */
  readonly nextHoldPoint?: string;
  readonly minutes: number;
}

export interface Evidence {
  readonly pieces: ReadonlyMap<string, PieceFile>;
  readonly batches: ReadonlyMap<string, BatchFile>;
  readonly joints: ReadonlyMap<string, JointFile>;
  readonly lots: ReadonlyMap<string, LotFile>;
  readonly holdPoints: ReadonlyMap<string, HoldPointFile>;
  readonly assemblies: ReadonlyMap<string, AssemblyFile>;
  readonly pairs: ReadonlyMap<string, PairFile>;
  /** In the order of the record, assembly by assembly. */
  readonly coats: readonly CoatFile[];
  readonly departures: ReadonlyMap<string, Departure>;
  /** How far each departure is accepted. */
  readonly standings: ReadonlyMap<string, Standing>;
  readonly openItems: ReadonlyMap<string, OpenItem>;
  readonly trials: ReadonlyMap<string, TrialFile>;
  /** Every finding of every batch, piece and joint, in the order of ids, then of every coat. */
  readonly findings: readonly Finding[];
}
