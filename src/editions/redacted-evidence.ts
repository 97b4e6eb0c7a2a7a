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
import type { TrialFile } from "../evidence/types/trial.ts";
import { holdPointShown } from "../facts/build/hold-point.ts";
import { jointShown } from "../facts/build/joint.ts";
import { lotShown } from "../facts/build/lot.ts";
import { type Decisions, each, onlyShown, part, redacted, same, show } from "../facts/decisions.ts";
import { batchShown } from "../facts/glue/batch.ts";
import { pieceShown } from "../facts/glue/piece.ts";
import { isRecallShown, type Recall, recallShown } from "../facts/glue/recall.ts";
import { rejectionShown } from "../facts/glue/rejection.ts";
import { reworkShown } from "../facts/glue/rework.ts";
import { testShown } from "../facts/glue/test.ts";
import type { Batch, Record, Ref } from "../facts/types.ts";
import type { Visibility } from "../facts/visibility.ts";
import { departureShown, isDepartureShown } from "../facts/work/departure.ts";
import { inspectionShown } from "../facts/work/inspection.ts";
import { isOpenItemShown, openItemShown } from "../facts/work/open-item.ts";
import { cureShown } from "./redacted-cure.ts";
import { isMeasurementFileShown, isPairShown, measurementFileShown, pairShown } from "./redacted-measures.ts";
import { tellsAll } from "./visibility.ts";

/** All that is said of what rests on hidden things: neither its code nor its values. */
const WITHHELD = { code: "withheld", values: {} } as const;
const ELSEWHERE = { code: "take/other-edition", values: {} } as const;

/** What an edition sees of a record, with what of the whole its evidence is decided by. */
interface Ground extends Visibility {
  readonly whole: Evidence;
  /** Whether all that is told of a thing comes from what the edition shows. */
  readonly tells: (ref: Ref) => boolean;
  /** The record as the edition shows it, and its batches by id. */
  readonly record: Record;
  readonly shownBatches: ReadonlyMap<string, Batch>;
}

export function redactedEvidence(
  wholeRecord: Record,
  whole: Evidence,
  record: Record,
  visibility: Visibility,
): Evidence {
  const shownBatches = new Map(record.entries.flatMap((entry) => entry.batches).map((batch) => [batch.id, batch]));
  const tells = (ref: Ref): boolean => tellsAll(visibility, ref, wholeRecord);
  const ground: Ground = { ...visibility, whole, tells, record, shownBatches };
  const pieceFiles = files(pieceFileShown, (id, { pieces }) => pieces.has(id))(whole.pieces, ground);
  return redacted(whole, evidenceShown, { ...ground, pieceFiles });
}

interface GroundWithPieces extends Ground {
  readonly pieceFiles: ReadonlyMap<string, PieceFile>;
}

/** Files by id, of those whose id is in `set`, by the decisions on their fields. */
const files =
  <F extends object, S = Ground>(
    decisions: Decisions<F, S>,
    isShown: (id: string, ground: S) => boolean = () => true,
  ) =>
  (all: ReadonlyMap<string, F>, ground: S): ReadonlyMap<string, F> =>
    new Map(
      [...all].filter(([id]) => isShown(id, ground)).map(([id, file]) => [id, redacted(file, decisions, ground)]),
    );

/** A fact of an entry goes with its entry. */
const isTold = ({ entry }: { readonly entry: string }, { entries }: Visibility): boolean => entries.has(entry);
const ofEntry =
  <F extends { readonly entry: string }>(decisions: Decisions<F>) =>
  (fact: F, ground: Ground): F | undefined =>
    isTold(fact, ground) ? redacted(fact, decisions, ground) : undefined;

/** Findings about hidden things are gone; those that rest on hidden things say only that they do, once however many they are. */
function findings(all: readonly Finding[], ground: Ground): readonly Finding[] {
  const said = new Set<string>();
  return same(
    all,
    all
      .filter(({ about }) => isShown(about, ground))
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

function isShown(ref: Ref, visibility: Visibility): boolean {
  return ref.kind === "piece"
    ? visibility.pieces.has(ref.id)
    : ref.kind === "batch"
      ? visibility.batches.has(ref.id)
      : true;
}

const pieceFileShown: Decisions<PieceFile, Ground> = {
  piece: part(pieceShown),
  test: ofEntry(testShown),
  verdict: show,
  findings,
  overlapRatio: show,
  revealing: show,
  curedFor: withTest,
  cure: (cure, { tells }, { test }) =>
    redacted(cure, cureShown, { test: test === undefined || tells({ kind: "entry", id: test.entry }), tells }),
  stress: withTest,
  // Of a piece that was broken it may be what the load shows.
  atMost: (value, ground, { test }) => (test === undefined || isTold(test, ground) ? value : undefined),
};

/** What was reckoned from a hidden test goes with it; the verdict, as of the whole record, stays. */
function withTest(value: number, ground: Ground, { test }: PieceFile): number | undefined {
  return test !== undefined && isTold(test, ground) ? value : undefined;
}

const batchFileShown: Decisions<BatchFile, GroundWithPieces> = {
  batch: part(batchShown),
  verdict: show,
  findings,
  pieces: (all, ground) =>
    same(
      all,
      all.flatMap(({ piece }) => ground.pieceFiles.get(piece.id) ?? []),
    ),
  recalls: each(recallShown, (recall: Recall, ground) => isTold(recall, ground) && isRecallShown(recall, ground)),
  rejection: ofEntry(rejectionShown),
  ratio: show,
  moistureEstimate: (estimate, ground, file) =>
    findings(file.findings, ground).every(({ rule, code }) => rule !== "wood-moisture" || code !== "withheld")
      ? estimate
      : undefined,
  dewPoint: show,
  openFor: show,
  workingLife: show,
};

const jointFileShown: Decisions<JointFile, Ground> = {
  joint: part(jointShown),
  state: show,
  findings,
  batches: onlyShown("batches"),
  superseded: onlyShown("batches"),
  reworks: each(reworkShown, isTold),
  lots: (ids, ground, { batches, superseded, reworks }) => {
    const putIn = reworks
      .filter((rework) => isTold(rework, ground))
      .flatMap(({ replaced = [] }) => replaced.map((one) => one.with))
      .filter((id) => ground.lots.has(id));
    const glue = [...batches, ...superseded].flatMap((id) => lotsIn(ground.shownBatches.get(id)));
    const used = new Set([...glue, ...putIn]);
    return same(
      ids,
      ids.filter((id) => used.has(id)),
    );
  },
};

/** Where a lot was used, through shown batches alone. */
const lotFileShown: Decisions<LotFile, Ground> = {
  lot: part(lotShown),
  recalls: each(recallShown, isTold),
  batches: onlyShown("batches"),
  pieces: onlyShown("pieces"),
  joints: (_, ground, file) => jointsOf(file, ground),
  formerJoints: (ids, ground, file) => through(ids, file, ground),
  assemblies: (ids, ground, file) => reached(ids, ground.whole.assemblies, file, ground),
  holdPoints: (ids, ground, file) => reached(ids, ground.whole.holdPoints, file, ground),
};

function jointsOf(file: LotFile, ground: Ground): readonly string[] {
  return through(file.joints, file, ground);
}

/** Joints that a shown batch, in them now or before, or a shown rework leads to. */
function through(ids: readonly string[], { batches, lot }: LotFile, ground: Ground): readonly string[] {
  const among = new Set(batches.filter((id) => ground.batches.has(id)));
  const isReached = (id: string): boolean => {
    const { batches: now = [], superseded = [], reworks = [] } = ground.whole.joints.get(id) ?? {};
    const isPutIn = reworks.some(
      (rework) => isTold(rework, ground) && (rework.replaced ?? []).some((one) => one.with === lot.id),
    );
    return isPutIn || [...now, ...superseded].some((batch) => among.has(batch));
  };
  return same(ids, ids.filter(isReached));
}

function reached(
  ids: readonly string[],
  holding: ReadonlyMap<string, { readonly joints: readonly string[] }>,
  file: LotFile,
  ground: Ground,
): readonly string[] {
  const joints = new Set(jointsOf(file, ground));
  return same(
    ids,
    ids.filter((id) => holding.get(id)?.joints.some((joint) => joints.has(joint)) ?? false),
  );
}

const holdPointFileShown: Decisions<HoldPointFile, Ground> = {
  holdPoint: part(holdPointShown),
  state: show,
  joints: show,
  needs,
  changes,
  remarks: (all, { tells }) => all.filter((one) => tells(one.about) && one.restsOn.every(tells)),
  signed: ofEntry(inspectionShown),
  inspections: each(inspectionShown, isTold),
};

const assemblyFileShown: Decisions<AssemblyFile, Ground> = {
  id: show,
  within: show,
  joints: show,
  jointCounts: show,
  openItems: each(openItemShown, isOpenItemShown),
  departures: each(departureShown, isDepartureShown),
  measurements: each(measurementFileShown, isMeasurementFileShown),
  holdPoints: show,
  nextHoldPoint: show,
  minutes: (_, ground, { within }) => minutesIn(ground, new Set(within)),
};

/** What a trial shows is told whole or not at all: with some pieces withheld it would be another trial. */
const trialFileShown: Decisions<TrialFile, Ground> = {
  trial: show,
  outcomes: (outcomes, ground, file) => (isWhole(file, ground) ? outcomes : []),
  cautions: (cautions, ground, file) => (isWhole(file, ground) ? cautions : []),
  comparison: (comparison, ground, file) => (isWhole(file, ground) ? comparison : undefined),
  conclusion: (conclusion, ground, file) => (isWhole(file, ground) ? conclusion : [WITHHELD]),
  restsOn: (restsOn, ground, file) => (isWhole(file, ground) ? restsOn : []),
};

const isWhole = ({ restsOn }: TrialFile, { tells }: Ground): boolean => restsOn.every(tells);

const evidenceShown: Decisions<Evidence, GroundWithPieces> = {
  pieces: (_, { pieceFiles }) => pieceFiles,
  batches: files(batchFileShown, (id, { batches }) => batches.has(id)),
  joints: files(jointFileShown),
  lots: files(lotFileShown, (id, { lots }) => lots.has(id)),
  holdPoints: files(holdPointFileShown),
  assemblies: files(assemblyFileShown),
  pairs: (pairs, ground) =>
    new Map(
      [...pairs]
        .filter(([, pair]) => isPairShown(pair, ground))
        .map(([id, pair]) => [id, redacted(pair, pairShown, ground)]),
    ),
  standings: (all, { departures }) => new Map([...all].filter(([id]) => departures.has(id))),
  departures: files(departureShown, (id, { departures }) => departures.has(id)),
  openItems: files(openItemShown, (id, { openItems }) => openItems.has(id)),
  trials: files(trialFileShown, (id, { trials }) => trials.has(id)),
  findings,
};

function lotsIn(batch: Batch | undefined): string[] {
  if (batch === undefined) return [];
  return [batch.resin?.lot, batch.hardener?.lot, ...batch.timber].filter((id) => id !== undefined);
}

/** Hidden needs become at most one line that blocks and one that does not, after all others, so that neither their number nor their place among them is told. */
function needs(all: readonly Need[], ground: Ground, file: HoldPointFile): readonly Need[] {
  const isOpen = (need: Need): boolean => ground.tells(need.about) && need.restsOn.every(ground.tells);
  const hidden = new Set(all.filter((need) => !isOpen(need)).map(({ blocks }) => blocks));
  const about: Ref = { kind: "hold point", id: file.holdPoint.id };
  const told = [true, false]
    .filter((blocks) => hidden.has(blocks))
    .map((blocks): Need => ({ ...WITHHELD, about, takes: ELSEWHERE, blocks, restsOn: [] }));
  return same(all, [...all.filter(isOpen), ...told]);
}

/** Hidden changes become one line, however many they are. */
function changes(all: readonly Change[], ground: Ground, file: HoldPointFile): readonly Change[] {
  const open = all.filter((change) => ground.tells(change.about) && change.restsOn.every(ground.tells));
  if (open.length === all.length) return all;
  return [...open, { ...WITHHELD, about: { kind: "hold point", id: file.holdPoint.id }, restsOn: [] }];
}

function minutesIn(ground: Ground, within: ReadonlySet<string>): number {
  let sum = 0;
  for (const entry of ground.record.entries)
    for (const line of entry.hours) if (within.has(line.assembly)) sum += line.minutes;
  return sum;
}
