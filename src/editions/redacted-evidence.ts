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
import type { Batch, Lot, Record, Ref } from "../facts/types.ts";
import type { TrialFile } from "../evidence/types/trial.ts";
import { unchanged, unchangedList } from "./unchanged.ts";
import { tellsAll, type Visibility } from "./visibility.ts";
import { redactedCure } from "./redacted-cure.ts";
import { redactedMeasurement, redactedPairs } from "./redacted-measures.ts";
import type { RedactedRecord } from "./redacted-record.ts";

/** All that is said of what rests on hidden things: neither its code nor its values. */
const WITHHELD = { code: "withheld", values: {} } as const;
const ELSEWHERE = { code: "take/other-edition", values: {} } as const;

interface Ground {
  readonly visibility: Visibility;
  readonly whole: Evidence;
  readonly facts: RedactedRecord["facts"];
  readonly tells: (ref: Ref) => boolean;
  /** The record as the edition shows it, and its batches by id. */
  readonly record: Record;
  readonly batches: ReadonlyMap<string, Batch>;
}

export function redactedEvidence(
  wholeRecord: Record,
  whole: Evidence,
  redacted: RedactedRecord,
  visibility: Visibility,
): Evidence {
  const { facts, record } = redacted;
  const batches = new Map(record.entries.flatMap((entry) => entry.batches).map((batch) => [batch.id, batch]));
  const ground: Ground = {
    visibility,
    whole,
    facts,
    batches,
    record,
    tells: (ref) => tellsAll(visibility, ref, wholeRecord),
  };
  const pieces = kept(whole.pieces, visibility.pieces, (file) => pieceFile(file, ground));
  const lots = new Map(
    [...record.lots.values()].flatMap((lot) => {
      const file = whole.lots.get(lot.id);
      return file === undefined ? [] : [[lot.id, lotFile(file, lot, ground)] as const];
    }),
  );
  return {
    pieces,
    lots,
    batches: kept(whole.batches, visibility.batches, (file) => batchFile(file, ground, pieces)),
    joints: kept(whole.joints, undefined, (file) => jointFile(file, ground)),
    holdPoints: kept(whole.holdPoints, undefined, (file) => holdPointFile(file, ground)),
    assemblies: kept(whole.assemblies, undefined, (file) => assemblyFile(file, ground)),
    pairs: redactedPairs(whole.pairs, visibility, facts),
    departures: kept(whole.departures, visibility.departures, facts.departure),
    openItems: kept(whole.openItems, visibility.openItems, facts.openItem),
    trials: kept(whole.trials, visibility.trials, (file) => trialFile(file, ground)),
    findings: findings(whole.findings, ground),
  };
}

/** Findings about hidden things are gone; those that rest on hidden things say only that they do, once however many they are. */
function findings(all: readonly Finding[], ground: Ground): readonly Finding[] {
  const said = new Set<string>();
  return unchangedList(
    all,
    all
      .filter(({ about }) => isShown(about, ground.visibility))
      .map((finding) => redactedFinding(finding, ground))
      .filter((finding) => {
        if (finding.code !== "withheld") return true;
        const key = `${finding.about.kind} ${finding.about.id} ${finding.rule} ${finding.severity}`;
        if (said.has(key)) return false;
        said.add(key);
        return true;
      }),
  );
}

function redactedFinding(finding: Finding, ground: Ground): Finding {
  const { rule, severity, about } = finding;
  const open = ground.tells(about) && finding.restsOn.every(ground.tells);
  return open ? finding : { ...WITHHELD, rule, severity, about, restsOn: [] };
}

/** What a trial shows is told whole or not at all: with some pieces withheld it would be another trial. */
function trialFile(file: TrialFile, ground: Ground): TrialFile {
  if (file.restsOn.every(ground.tells)) return file;
  return { trial: file.trial, outcomes: [], cautions: [], conclusion: [WITHHELD], restsOn: [] };
}

function isShown(ref: Ref, visibility: Visibility): boolean {
  return ref.kind === "piece"
    ? visibility.pieces.has(ref.id)
    : ref.kind === "batch"
      ? visibility.batches.has(ref.id)
      : true;
}

/** What was reckoned from a hidden test goes with it; the verdict, as of the whole record, stays. */
function pieceFile(file: PieceFile, ground: Ground): PieceFile {
  const { test, curedFor, stress, ...rest } = file;
  const cure = redactedCure(
    file.cure,
    test === undefined || ground.tells({ kind: "entry", id: test.entry }),
    ground.tells,
  );
  const base = { ...rest, cure, piece: ground.facts.piece(file.piece), findings: findings(file.findings, ground) };
  if (test === undefined || !ground.visibility.entries.has(test.entry)) return base;
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
  const estimateTells = said.every(({ rule, code }) => rule !== "wood-moisture" || code !== "withheld");
  return {
    ...rest,
    ...(moistureEstimate !== undefined && estimateTells ? { moistureEstimate } : {}),
    batch: ground.facts.batch(file.batch),
    findings: said,
    pieces: file.pieces.flatMap(({ piece }) => pieces.get(piece.id) ?? []),
    recalls: file.recalls.filter(
      (recall) => ground.visibility.entries.has(recall.entry) && ground.visibility.lots.has(recall.lot),
    ),
    ...(rejection !== undefined && ground.visibility.entries.has(rejection.entry) ? { rejection } : {}),
  };
}

function jointFile(file: JointFile, ground: Ground): JointFile {
  const batches = file.batches.filter((id) => ground.visibility.batches.has(id));
  const used = new Set(batches.flatMap((id) => lotsIn(ground.batches.get(id))));
  return {
    ...file,
    batches,
    findings: findings(file.findings, ground),
    superseded: file.superseded.filter((id) => ground.visibility.batches.has(id)),
    reworks: file.reworks.filter((rework) => ground.visibility.entries.has(rework.entry)),
    lots: file.lots.filter((id) => used.has(id)),
  };
}

/** Where a lot was used, through shown batches alone. */
function lotFile(file: LotFile, lot: Lot, ground: Ground): LotFile {
  const batches = file.batches.filter((id) => ground.visibility.batches.has(id));
  const among = new Set(batches);
  const through = (ids: readonly string[], by: "batches" | "superseded"): string[] =>
    ids.filter((id) => ground.whole.joints.get(id)?.[by].some((batch) => among.has(batch)) ?? false);
  const joints = through(file.joints, "batches");
  const reached = new Set(joints);
  return {
    lot,
    batches,
    joints,
    recalls: file.recalls.filter((recall) => ground.visibility.entries.has(recall.entry)),
    pieces: file.pieces.filter((id) => ground.visibility.pieces.has(id)),
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
  const open = ground.visibility.entries;
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
    .map((blocks): Need => ({ ...WITHHELD, about, takes: ELSEWHERE, blocks, restsOn: [] }));
  return [...file.needs.filter(isOpen), ...told];
}

/** Hidden changes become one line, however many they are. */
function changes(file: HoldPointFile, ground: Ground): Change[] {
  const open = file.changes.filter((change) => ground.tells(change.about) && change.restsOn.every(ground.tells));
  if (open.length === file.changes.length) return open;
  return [...open, { ...WITHHELD, about: { kind: "hold point", id: file.holdPoint.id }, restsOn: [] }];
}

function assemblyFile(file: AssemblyFile, ground: Ground): AssemblyFile {
  const { visibility, facts } = ground;
  const within = new Set(file.within);
  return {
    ...file,
    openItems: file.openItems.filter(({ id }) => visibility.openItems.has(id)).map(facts.openItem),
    departures: file.departures.filter(({ id }) => visibility.departures.has(id)).map(facts.departure),
    measurements: file.measurements
      .filter(({ measurement }) => visibility.entries.has(measurement.entry))
      .map((each) => redactedMeasurement(each, visibility, facts)),
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
