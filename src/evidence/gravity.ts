import type {
  BatchVerdict,
  CoatVerdict,
  HoldState,
  JointState,
  MeasurementFile,
  PairFile,
  PieceVerdict,
  Standing,
} from "./types.ts";

/** How grave each of a kind's verdicts is against its others. The type asks for every one, so that none can pass for the best. */
export type Gravity<T extends string> = { readonly [verdict in T]: number };

/** Of those given the one that is gravest. */
export function gravest<T extends string>(gravity: Gravity<T>, one: T, others: readonly T[]): T {
  return others.reduce((a, b) => (gravity[b] > gravity[a] ? b : a), one);
}

/** A glue line that failed has failed however early; one broken too early proves nothing more. */
export const PIECE: Gravity<PieceVerdict> = { fail: 4, "not broken": 3, "too early": 2, inconclusive: 1, pass: 0 };

export const BATCH: Gravity<BatchVerdict> = {
  rejected: 5,
  "not shown": 4,
  pending: 3,
  "thrown away": 2,
  "in no joint": 1,
  shown: 0,
};
export const JOINT: Gravity<JointState> = {
  quarantined: 5,
  "not shown": 4,
  opened: 3,
  "not glued": 2,
  pending: 1,
  shown: 0,
};
export const HOLD: Gravity<HoldState> = {
  blocked: 5,
  "signed with things open": 4,
  reopened: 3,
  ahead: 2,
  ready: 1,
  passed: 0,
};
export const MEASURE: Gravity<MeasurementFile["verdict"]> = { out: 3, "no tolerance": 2, estimated: 1, within: 0 };
export const PAIR: Gravity<PairFile["verdict"]> = { out: 4, "one side": 3, estimated: 2, "no tolerance": 1, within: 0 };
export const COAT: Gravity<CoatVerdict> = { rejected: 3, "not shown": 2, pending: 1, shown: 0 };

export const DEPARTURE: Gravity<Standing> = {
  "not accepted": 6,
  "accepted by no inspector": 5,
  "accepted by one who worked on it": 4,
  "told by the builder": 3,
  "accepted on a condition": 2,
  "changed since it was accepted": 1,
  accepted: 0,
};
