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
