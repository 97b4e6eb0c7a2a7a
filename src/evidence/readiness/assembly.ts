/** What the record says of an assembly and all within it. */
import type { Assembly } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import { measurementFile } from "../measures/measurement.ts";
import type { AssemblyFile, HoldPointFile, JointFile, JointState } from "../types.ts";
import { within } from "./within.ts";

interface Gathered {
  readonly joints: ReadonlyMap<string, JointFile>;
  readonly holdPoints: ReadonlyMap<string, HoldPointFile>;
  readonly minutes: ReadonlyMap<string, number>;
}

export function assemblyFile(
  index: RecordIndex,
  assembly: Assembly,
  { joints: files, holdPoints: holds, minutes }: Gathered,
): AssemblyFile {
  const inside = within(index, assembly.id);
  const of = <T>(map: ReadonlyMap<string, readonly T[]>): T[] => inside.flatMap(({ id }) => map.get(id) ?? []);
  const joints = inside.flatMap((one) => one.joints.map((joint) => joint.id));
  const holdPoints = inside.flatMap((one) => one.holdPoints.map((holdPoint) => holdPoint.id));
  return {
    id: assembly.id,
    within: inside.map(({ id }) => id),
    joints,
    jointCounts: countStates(joints, files),
    openItems: of(index.openItemsOf),
    departures: of(index.departuresOf),
    measurements: of(index.measurementsOf).map((one) => measurementFile(index, one)),
    holdPoints,
    nextHoldPoint: holdPoints.find((id) => holds.get(id)?.state !== "passed"),
    minutes: inside.reduce((sum, { id }) => sum + (minutes.get(id) ?? 0), 0),
  };
}

function countStates(
  joints: readonly string[],
  files: ReadonlyMap<string, JointFile>,
): { [state in JointState]: number } {
  const counts = { "not glued": 0, shown: 0, pending: 0, "not shown": 0, quarantined: 0, opened: 0 };
  for (const id of joints) {
    const file = files.get(id);
    if (file) counts[file.state] += 1;
  }
  return counts;
}
