/** From the pieces of each trial to what they show. A trial's pieces never count for their batch, and its outcomes change no verdict. */
import { defined } from "../defined.ts";
import { exactInterval } from "../reckoning/statistics/exact-interval.ts";
import { exactLowerBound } from "../reckoning/statistics/exact-lower-bound.ts";
import { fisherTable } from "../reckoning/statistics/fisher-table.ts";
import { leastShownEffect } from "../reckoning/statistics/least-shown-effect.ts";
import type { Preparation, Record, Trial } from "../facts/types.ts";
import { indexBy } from "./record-index.ts";
import { cautionsOf, isMixedUp } from "./trial/cautions.ts";
import { conclusionOf } from "./trial/conclusion.ts";
import type { PieceFile } from "./types.ts";
import type { Comparison, PreparationOutcome, TrialFile } from "./types/trial.ts";

export function reckonTrials(record: Record, pieces: ReadonlyMap<string, PieceFile>): Map<string, TrialFile> {
  const ofTrial = indexBy([...pieces.values()], ({ piece }) => piece.trial);
  return new Map([...record.trials].map(([id, trial]) => [id, trialFile(trial, ofTrial.get(id) ?? [])]));
}

function trialFile(trial: Trial, pieces: readonly PieceFile[]): TrialFile {
  const outcomes = trial.preparations.map((preparation) =>
    outcomeOf(
      preparation,
      pieces.filter(({ piece }) => piece.preparation === preparation.id),
    ),
  );
  const comparison = compared(outcomes);
  const named = pieces.filter(({ piece }) => trial.preparations.some(({ id }) => id === piece.preparation));
  return defined({
    trial: trial.id,
    outcomes,
    cautions: cautionsOf({ trial, pieces: named, outcomes, unnamed: pieces.length - named.length }),
    comparison,
    conclusion: conclusionOf(outcomes, comparison, isMixedUp(named)),
    restsOn: [
      { kind: "trial", id: trial.id },
      ...pieces.map(({ piece }) => ({ kind: "piece", id: piece.id }) as const),
    ],
  });
}

function outcomeOf(preparation: Preparation, pieces: readonly PieceFile[]): PreparationOutcome {
  const count = (...verdicts: readonly PieceFile["verdict"][]): number =>
    pieces.filter(({ verdict }) => verdicts.includes(verdict)).length;
  const held = count("pass");
  const failed = count("fail");
  const interval = exactInterval(held, held + failed);
  const atLeast = exactLowerBound(held, held + failed);
  return defined({
    preparation,
    held,
    failed,
    pieces: pieces.map(({ piece }) => piece.id),
    silent: count("inconclusive", "too early"),
    notBroken: count("not broken"),
    interval,
    atLeast,
  });
}

/** One preparation is never compared (there is no least effect of one), nor is one of which no piece shows anything. */
function compared(outcomes: readonly PreparationOutcome[]): Comparison | undefined {
  const telling = outcomes.filter(({ held, failed }) => held + failed > 0);
  const p = fisherTable(telling.map(({ held, failed }) => [held, failed]));
  const least = leastShownEffect(telling.map(({ held, failed }) => held + failed));
  return p === undefined || least === undefined
    ? undefined
    : { preparations: telling.map(({ preparation }) => preparation.id), p, least };
}
