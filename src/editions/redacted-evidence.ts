/** Evidence with only what an edition shows in it. Verdicts, states and counts of joints stay those of the whole record. */
import { minutesByAssembly } from "../evidence/hours.ts";
import type { AssemblyFile, Evidence, HoldPointFile } from "../evidence/types.ts";
import type { TrialFile } from "../evidence/types/trial.ts";
import { holdPointShown } from "../facts/build/hold-point.ts";
import { type Decisions, each, part, redacted, show } from "../facts/decisions.ts";
import type { Record, Ref } from "../facts/types.ts";
import type { Visibility } from "../facts/visibility.ts";
import { departureShown, isDepartureShown } from "../facts/work/departure.ts";
import { inspectionShown } from "../facts/work/inspection.ts";
import { isOpenItemShown, openItemShown } from "../facts/work/open-item.ts";
import { type Ground, type GroundWithPieces, isTold, ofEntry } from "./ground.ts";
import { coatFileShown, isCoatFileShown } from "./redacted-coats.ts";
import { changes, findings, needs, WITHHELD } from "./redacted-findings.ts";
import { batchFileShown, jointFileShown, pieceFileShown } from "./redacted-glue.ts";
import { lotFileShown } from "./redacted-lot.ts";
import { isMeasurementFileShown, isPairShown, measurementFileShown, pairShown } from "./redacted-measures.ts";
import { tellsAll } from "./visibility.ts";

export function redactedEvidence(
  wholeRecord: Record,
  whole: Evidence,
  record: Record,
  visibility: Visibility,
): Evidence {
  const shownBatches = new Map(record.entries.flatMap((entry) => entry.batches).map((batch) => [batch.id, batch]));
  const tells = (ref: Ref): boolean => tellsAll(visibility, ref, wholeRecord);
  const minutes = minutesByAssembly(record);
  const ground: Ground = { ...visibility, whole, tells, record, shownBatches, minutes };
  const pieceFiles = files(pieceFileShown, (id, { pieces }) => pieces.has(id))(whole.pieces, ground);
  return redacted(whole, evidenceShown, { ...ground, pieceFiles });
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
  minutes: (_, ground, { within }) => minutesIn(ground, within),
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
  coats: each(coatFileShown, isCoatFileShown),
  standings: (all, { departures }) => new Map([...all].filter(([id]) => departures.has(id))),
  departures: files(departureShown, (id, { departures }) => departures.has(id)),
  openItems: files(openItemShown, (id, { openItems }) => openItems.has(id)),
  trials: files(trialFileShown, (id, { trials }) => trials.has(id)),
  findings,
};

const minutesIn = ({ minutes }: Ground, within: readonly string[]): number =>
  within.reduce((sum, id) => sum + (minutes.get(id) ?? 0), 0);
