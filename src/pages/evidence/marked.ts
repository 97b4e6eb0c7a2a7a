import type {
  BatchVerdict,
  HoldState,
  JointState,
  MeasurementFile,
  PairFile,
  PieceVerdict,
  Severity,
} from "../../evidence/types.ts";

/** Everything that a page marks with a shape. */
export type Marked =
  | BatchVerdict
  | PieceVerdict
  | JointState
  | HoldState
  | MeasurementFile["verdict"]
  | PairFile["verdict"]
  | Severity
  | "signed"
  | "not signed"
  | "departure"
  | "rework"
  | "recall"
  | "raised"
  | "closed";

/** From the worst to what is in order; what is still to be done stands before what is done. */
const WORST_FIRST: readonly Marked[] = [
  "quarantined",
  "rejected",
  "fail",
  "rejects",
  "out",
  "blocked",
  "opened",
  "reopened",
  "signed with things open",
  "recall",
  "not signed",
  "not shown",
  "unproven",
  "inconclusive",
  "too early",
  "estimated",
  "one side",
  "no tolerance",
  "caution",
  "pending",
  "waits",
  "not broken",
  "ready",
  "ahead",
  "not glued",
  "raised",
  "departure",
  "rework",
  "shown",
  "pass",
  "passed",
  "meets",
  "within",
  "signed",
  "closed",
  "in no joint",
  "thrown away",
];

export const severityRank = (of: Marked): number => WORST_FIRST.indexOf(of);
