/** Evidence with only what an edition shows in it. Verdicts, states and counts of joints stay those of the whole record. */
import type {
  AssemblyFile,
  BatchFile,
  Change,
  Evidence,
  Finding,
  HoldPointFile,
  JointFile,
  LotFile,
  Need,
  PieceFile,
} from "../evidence/types.ts";
import type { Batch, Lot, Record, Ref } from "../record/types.ts";
import type { TrialFile } from "../evidence/types/trial.ts";
import { unchanged, unchangedList } from "./unchanged.ts";
import { tellsAll, type Veil } from "./veil.ts";
import { veiledCure } from "./veiled-cure.ts";
import { veiledMeasurement, veiledPairs } from "./veiled-measures.ts";
import type { VeiledRecord } from "./veiled-record.ts";

export const RESTS_ON_HIDDEN = "Rests on something this edition does not show.";
export const NEEDS_HIDDEN = "Ask for the edition made for the inspector.";

interface Ground {
  readonly veil: Veil;
  readonly whole: Evidence;
  readonly facts: VeiledRecord["facts"];
  readonly tells: (ref: Ref) => boolean;
  /** The record as the edition shows it, and its batches by id. */
  readonly record: Record;
  readonly batches: ReadonlyMap<string, Batch>;
}

export function veiledEvidence(wholeRecord: Record, whole: Evidence, veiled: VeiledRecord, veil: Veil): Evidence {
  const { facts, record } = veiled;
  const batches = new Map(record.entries.flatMap((entry) => entry.batches).map((batch) => [batch.id, batch]));
  const ground: Ground = { veil, whole, facts, batches, record, tells: (ref) => tellsAll(veil, ref, wholeRecord) };
  const pieces = kept(whole.pieces, veil.pieces, (file) => pieceFile(file, ground));
  const lots = new Map(
    [...record.lots.values()].flatMap((lot) => {
      const file = whole.lots.get(lot.id);
      return file === undefined ? [] : [[lot.id, lotFile(file, lot, ground)] as const];
    }),
  );
  return {
    pieces,
    lots,
    batches: kept(whole.batches, veil.batches, (file) => batchFile(file, ground, pieces)),
    joints: kept(whole.joints, undefined, (file) => jointFile(file, ground)),
    holdPoints: kept(whole.holdPoints, undefined, (file) => holdPointFile(file, ground)),
    assemblies: kept(whole.assemblies, undefined, (file) => assemblyFile(file, ground)),
    pairs: veiledPairs(whole.pairs, veil, facts),
    departures: kept(whole.departures, veil.departures, facts.departure),
    openItems: kept(whole.openItems, veil.openItems, facts.openItem),
    trials: kept(whole.trials, veil.trials, (file) => trialFile(file, ground)),
    findings: findings(whole.findings, ground),
  };
}

/** Findings about hidden things are gone; those that rest on hidden things say only that they do, once however many they are. */
function findings(all: readonly Finding[], ground: Ground): readonly Finding[] {
  const said = new Set<string>();
  return unchangedList(
    all,
    all
      .filter(({ about }) => isShown(about, ground.veil))
      .map((finding) => veiledFinding(finding, ground))
      .filter((finding) => {
        if (finding.sentence !== RESTS_ON_HIDDEN) return true;
        const key = `${finding.about.kind} ${finding.about.id} ${finding.rule} ${finding.severity}`;
        if (said.has(key)) return false;
        said.add(key);
        return true;
      }),
  );
}

function veiledFinding(finding: Finding, ground: Ground): Finding {
  const { rule, severity, about } = finding;
  const open = ground.tells(about) && finding.restsOn.every(ground.tells);
  return open ? finding : { rule, severity, about, sentence: RESTS_ON_HIDDEN, restsOn: [] };
}

/** What a trial shows is told whole or not at all: with some pieces withheld it would be another trial. */
function trialFile(file: TrialFile, ground: Ground): TrialFile {
  if (file.restsOn.every(ground.tells)) return file;
  return { trial: file.trial, outcomes: [], cautions: [], conclusion: [RESTS_ON_HIDDEN], restsOn: [] };
}

function isShown(ref: Ref, veil: Veil): boolean {
  return ref.kind === "piece" ? veil.pieces.has(ref.id) : ref.kind === "batch" ? veil.batches.has(ref.id) : true;
}

/** What was reckoned from a hidden test goes with it; the verdict, as of the whole record, stays. */
function pieceFile(file: PieceFile, ground: Ground): PieceFile {
  const { test, curedFor, stress, ...rest } = file;
  const cure = veiledCure(
    file.cure,
    test === undefined || ground.tells({ kind: "entry", id: test.entry }),
    ground.tells,
  );
  const base = { ...rest, cure, piece: ground.facts.piece(file.piece), findings: findings(file.findings, ground) };
  if (test === undefined || !ground.veil.entries.has(test.entry)) return base;
  return {
    ...base,
    test: ground.facts.test(test),
    ...(curedFor === undefined ? {} : { curedFor }),
    ...(stress === undefined ? {} : { stress }),
  };
}

function batchFile(file: BatchFile, ground: Ground, pieces: ReadonlyMap<string, PieceFile>): BatchFile {
  const { rejection, moistureEstimate, ...rest } = file;
  const said = findings(file.findings, ground);
  const estimateTells = said.every(({ rule, sentence }) => rule !== "wood-moisture" || sentence !== RESTS_ON_HIDDEN);
  return {
    ...rest,
    ...(moistureEstimate !== undefined && estimateTells ? { moistureEstimate } : {}),
    batch: ground.facts.batch(file.batch),
    findings: said,
    pieces: file.pieces.flatMap(({ piece }) => pieces.get(piece.id) ?? []),
    recalls: file.recalls.filter((recall) => ground.veil.entries.has(recall.entry) && ground.veil.lots.has(recall.lot)),
    ...(rejection !== undefined && ground.veil.entries.has(rejection.entry) ? { rejection } : {}),
  };
}

function jointFile(file: JointFile, ground: Ground): JointFile {
  const batches = file.batches.filter((id) => ground.veil.batches.has(id));
  const used = new Set(batches.flatMap((id) => lotsIn(ground.batches.get(id))));
  return {
    ...file,
    batches,
    findings: findings(file.findings, ground),
    superseded: file.superseded.filter((id) => ground.veil.batches.has(id)),
    reworks: file.reworks.filter((rework) => ground.veil.entries.has(rework.entry)),
    lots: file.lots.filter((id) => used.has(id)),
  };
}

/** Where a lot was used, through shown batches alone. */
function lotFile(file: LotFile, lot: Lot, ground: Ground): LotFile {
  const batches = file.batches.filter((id) => ground.veil.batches.has(id));
  const among = new Set(batches);
  const through = (ids: readonly string[], by: "batches" | "superseded"): string[] =>
    ids.filter((id) => ground.whole.joints.get(id)?.[by].some((batch) => among.has(batch)) ?? false);
  const joints = through(file.joints, "batches");
  const reached = new Set(joints);
  return {
    lot,
    batches,
    joints,
    recalls: file.recalls.filter((recall) => ground.veil.entries.has(recall.entry)),
    pieces: file.pieces.filter((id) => ground.veil.pieces.has(id)),
    formerJoints: through(file.formerJoints, "superseded"),
    assemblies: file.assemblies.filter(
      (id) => ground.whole.assemblies.get(id)?.joints.some((joint) => reached.has(joint)) ?? false,
    ),
    holdPoints: file.holdPoints.filter(
      (id) => ground.whole.holdPoints.get(id)?.joints.some((joint) => reached.has(joint)) ?? false,
    ),
  };
}

function lotsIn(batch: Batch | undefined): string[] {
  if (batch === undefined) return [];
  return [batch.resin?.lot, batch.hardener?.lot, ...batch.timber].filter((id) => id !== undefined);
}

function holdPointFile(file: HoldPointFile, ground: Ground): HoldPointFile {
  const { signed, ...rest } = file;
  const open = ground.veil.entries;
  return {
    ...rest,
    needs: needs(file, ground),
    changes: changes(file, ground),
    inspections: file.inspections.filter((each) => open.has(each.entry)).map(ground.facts.inspection),
    ...(signed !== undefined && open.has(signed.entry) ? { signed: ground.facts.inspection(signed) } : {}),
  };
}

/** Hidden needs become at most one line that blocks and one that does not, after all others, so that neither their number nor their place among them is told. */
function needs(file: HoldPointFile, ground: Ground): Need[] {
  const isOpen = (need: Need): boolean => ground.tells(need.about) && need.restsOn.every(ground.tells);
  const hidden = new Set(file.needs.filter((need) => !isOpen(need)).map(({ blocks }) => blocks));
  const about: Ref = { kind: "hold point", id: file.holdPoint.id };
  const told = [true, false]
    .filter((blocks) => hidden.has(blocks))
    .map((blocks): Need => ({ about, sentence: RESTS_ON_HIDDEN, needs: NEEDS_HIDDEN, blocks, restsOn: [] }));
  return [...file.needs.filter(isOpen), ...told];
}

/** Hidden changes become one line, however many they are. */
function changes(file: HoldPointFile, ground: Ground): Change[] {
  const open = file.changes.filter((change) => ground.tells(change.about) && change.restsOn.every(ground.tells));
  if (open.length === file.changes.length) return open;
  return [...open, { about: { kind: "hold point", id: file.holdPoint.id }, sentence: RESTS_ON_HIDDEN, restsOn: [] }];
}

function assemblyFile(file: AssemblyFile, ground: Ground): AssemblyFile {
  const { veil, facts } = ground;
  const within = new Set(file.within);
  return {
    ...file,
    openItems: file.openItems.filter(({ id }) => veil.openItems.has(id)).map(facts.openItem),
    departures: file.departures.filter(({ id }) => veil.departures.has(id)).map(facts.departure),
    measurements: file.measurements
      .filter(({ measurement }) => veil.entries.has(measurement.entry))
      .map((each) => veiledMeasurement(each, veil, facts)),
    minutes: minutesIn(ground, within),
  };
}

function minutesIn(ground: Ground, within: ReadonlySet<string>): number {
  let sum = 0;
  for (const entry of ground.record.entries)
    for (const line of entry.hours) if (within.has(line.assembly)) sum += line.minutes;
  return sum;
}

function kept<T extends object>(
  map: ReadonlyMap<string, T>,
  ids: ReadonlySet<string> | undefined,
  make: (thing: T) => T,
): ReadonlyMap<string, T> {
  const out = new Map<string, T>();
  for (const [id, thing] of map) if (ids === undefined || ids.has(id)) out.set(id, unchanged(thing, make(thing)));
  return out;
}
