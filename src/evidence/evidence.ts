/** From the record to what it proves: one pass, a line a step. */
import type { Record } from "../facts/types.ts";
import { assemblyFile } from "./readiness/assembly.ts";
import { coatFiles } from "./coats/coat.ts";
import { batchFile } from "./batch/verdict.ts";
import { recordIndexOf } from "./record-index.ts";
import { holdPointFiles } from "./readiness/hold-point.ts";
import { standingOf } from "./readiness/answering.ts";
import { minutesByAssembly } from "./hours.ts";
import { byKey } from "../reckoning/hours/hours.ts";
import { jointFile } from "./joint.ts";
import { lotFiles, usesOf } from "./lots/lot.ts";
import { pairFiles } from "./measures/pair.ts";
import { pieceFile } from "./piece/verdict.ts";
import { reckonTrials } from "./trials.ts";
import { Seconded } from "./seconded.ts";
import type { BatchFile, Evidence, Finding, JointFile, PieceFile } from "./types.ts";

export function reckon(record: Record): Evidence {
  const index = recordIndexOf(record);
  const seconded = new Seconded(record, (record.before ?? []).map(reckon));
  const batches = mapped(index.batches, (batch) =>
    seconded.batch(
      batchFile(
        index,
        batch,
        batch.pieces.map((piece) => seconded.piece(pieceFile(index, batch, piece))),
      ),
    ),
  );
  const pieces = new Map(
    [...batches.values()].flatMap((file) => file.pieces.map((one): [string, PieceFile] => [one.piece.id, one])),
  );
  const joints = mapped(index.joints, (joint) => seconded.joint(jointFile(index, joint, batches)));
  const pairs = new Map([...pairFiles(index)].map(([id, file]) => [id, seconded.pair(file)] as const));
  const coats = coatFiles(index).map((file) => seconded.coat(file));
  const holdPoints = new Map(
    [...holdPointFiles(index, { joints, batches, pairs, coats })].map(
      ([id, file]) => [id, seconded.holdPoint(file)] as const,
    ),
  );
  const minutes = minutesByAssembly(record);
  const lots = lotFiles(index, usesOf(index, holdPoints.values()), joints);
  return {
    pieces,
    batches,
    joints,
    lots,
    holdPoints,
    assemblies: mapped(record.assemblies, (assembly) =>
      seconded.assembly(assemblyFile(index, assembly, { joints, holdPoints, minutes })),
    ),
    pairs,
    coats,
    departures: index.departures,
    standings: mapped(index.departures, (departure) => seconded.departure(departure, standingOf(index, departure))),
    openItems: index.openItems,
    trials: reckonTrials(record, pieces),
    findings: [
      ...allFindings(batches, joints),
      ...inOrder(lots).flatMap(({ findings }) => findings),
      ...coats.flatMap(({ findings }) => findings),
    ],
  };
}

function mapped<T, U>(map: ReadonlyMap<string, T>, make: (thing: T) => U): Map<string, U> {
  const made = new Map<string, U>();
  for (const [id, thing] of map) made.set(id, make(thing));
  return made;
}

/** Of batches with their pieces, then of joints, each in the order of ids. */
function allFindings(batches: ReadonlyMap<string, BatchFile>, joints: ReadonlyMap<string, JointFile>): Finding[] {
  const found: Finding[] = [];
  for (const { findings, pieces } of inOrder(batches)) {
    found.push(...findings);
    for (const piece of pieces) found.push(...piece.findings);
  }
  for (const { findings } of inOrder(joints)) found.push(...findings);
  return found;
}

const inOrder = <T>(map: ReadonlyMap<string, T>): T[] => [...map].sort(byKey).map(([, thing]) => thing);
