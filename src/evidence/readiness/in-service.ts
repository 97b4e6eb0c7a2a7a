/** What holds of an aircraft that has flown: whether it was to fly then, and what was done to it since. */
import type { Batch, Day, HoldPoint, JointSpec, Ref, Rework } from "../../facts/types.ts";
import type { Finder } from "../finding.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";
import type { Finding, HoldPointFile, Need } from "../types.ts";
import type { Looks } from "./looks.ts";
import { insideOf, jointsOf } from "./order.ts";

const RETURN: HoldPoint["kind"] = "return to service";

/** It flew before a signature that counts let it. */
export function flownNeed({ record }: RecordIndex, { id, kind }: HoldPoint, { counted }: Looks): Need[] {
  const { firstFlight } = record.aircraft;
  if (kind !== "flight" || firstFlight === undefined) return [];
  if (counted.some(({ result, day }) => result === "signed" && day <= firstFlight)) return [];
  const about: Ref = { kind: "hold point", id };
  const takes = { code: "take/look-again", values: {} } as const;
  return [{ about, code: "need/flown", values: { day: firstFlight }, takes, blocks: true, restsOn: [about] }];
}

/**
 * Whether a hold point that comes first is open again only by what was done since the first flight: the return to service asks for all of that
 * itself, where it looks at all that the other one does.
 */
export function isAskedByReturn(index: RecordIndex, point: HoldPoint, earlier: HoldPointFile): boolean {
  const { firstFlight } = index.record.aircraft;
  if (point.kind !== RETURN || firstFlight === undefined || earlier.state !== "reopened") return false;
  const own = new Set(insideOf(index, point).map(({ id }) => id));
  if (!insideOf(index, earlier.holdPoint).every(({ id }) => own.has(id))) return false;
  return earlier.changes.every(({ restsOn }) => {
    const days = restsOn.flatMap(({ kind, id }) => (kind === "entry" ? [lookUp(index.entries, id).day] : []));
    return days.length === 0 || days.some((day) => day > firstFlight);
  });
}

interface Touched {
  readonly batches: readonly Batch[];
  readonly reworks: readonly Rework[];
}

/** A joint that was glued or opened after the first flight is told of the return to service that asks for it, or that none does. */
export function inService(
  index: RecordIndex,
  joint: JointSpec,
  { batches, reworks }: Touched,
  find: Finder,
): Finding[] {
  const { firstFlight } = index.record.aircraft;
  const since = [...batches, ...reworks].filter(({ day }) => firstFlight !== undefined && day > firstFlight);
  const [first] = since;
  if (firstFlight === undefined || first === undefined) return [];
  const point = index.memo.once(index, returnsOf).get(joint.id);
  const alsoOn = since.map(({ entry }): Ref => ({ kind: "entry", id: entry }));
  const values: { readonly day: Day } = { day: first.day };
  return point === undefined
    ? [find("in-service/no-hold-point", "caution", values, { alsoOn })]
    : [
        find(
          "in-service/hold-point",
          "meets",
          { ...values, holdPoint: point },
          { alsoOn: [...alsoOn, { kind: "hold point", id: point }] },
        ),
      ];
}

/** By joint, the first hold point of that kind that asks for it. */
function returnsOf(index: RecordIndex): ReadonlyMap<string, string> {
  const points = [...index.holdPoints.values()].filter(({ kind }) => kind === RETURN);
  const pairs = points.flatMap((point) => jointsOf(point, insideOf(index, point)).map((id) => [id, point.id] as const));
  return new Map(pairs.reverse());
}
