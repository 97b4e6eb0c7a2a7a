/** What the page on one trial says: its pieces as this edition shows them, and what was concluded from all of them. */
import { SANDING } from "../../evidence/trial/conclusion.ts";
import type { PieceFile, PieceVerdict } from "../../evidence/types.ts";
import type { PreparationOutcome } from "../../evidence/types/trial.ts";
import { toldSource, type ToldSource } from "../../words/findings/told.ts";
import type { Interval } from "../../reckoning/statistics/exact-interval.ts";
import { FAILURE_MODES } from "../../facts/glue/test.ts";
import type { FailureMode, Trial } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "./trace-index.ts";
import { PIECE_VERDICTS } from "./verdict-words.ts";
import { percent } from "../../words/numbers.ts";

export interface PreparationRow {
  readonly id: string;
  readonly what: string;
  readonly pieces: readonly PieceFile[];
  readonly failures: Readonly<{ [mode in FailureMode]: number }>;
  readonly verdicts: Readonly<{ [verdict in PieceVerdict]: number }>;
}

export interface TrialPage {
  readonly trial: Trial;
  readonly rows: readonly PreparationRow[];
  readonly pieces: readonly PieceFile[];
  /** What must be said first, a sentence each. */
  readonly cautions: readonly string[];
  /** Outcomes with their exact bounds; none where this edition does not show all of the pieces. */
  readonly outcomes: readonly PreparationOutcome[];
  readonly conclusion: readonly string[];
  /** A rule that stands whatever the trial shows. */
  readonly standing: { readonly says: string; readonly source: ToldSource };
}

export function trialPage(shown: Shown, trial: Trial): TrialPage {
  const pieces = traceIndex(shown).piecesOf.get(trial.id) ?? [];
  const rows = trial.preparations.map(({ id, what }) =>
    row(
      id,
      what,
      pieces.filter(({ piece }) => piece.preparation === id),
    ),
  );
  const rest = pieces.filter(({ piece }) => !trial.preparations.some(({ id }) => id === piece.preparation));
  if (rest.length > 0) rows.push(row("", "no preparation named", rest));
  const { cautions = [], outcomes = [], conclusion = [] } = shown.evidence.trials.get(trial.id) ?? {};
  const { say } = shown;
  return {
    trial,
    rows,
    pieces,
    outcomes,
    cautions: cautions.map(say),
    conclusion: conclusion.map(say),
    standing: { says: say(SANDING), source: toldSource(say, SANDING.source) },
  };
}

function row(id: string, what: string, pieces: readonly PieceFile[]): PreparationRow {
  const count = (holds: (file: PieceFile) => boolean): number => pieces.filter(holds).length;
  return {
    id,
    what,
    pieces,
    failures: Object.fromEntries(FAILURE_MODES.map((mode) => [mode, count(({ test }) => test?.failure === mode)])) as {
      [mode in FailureMode]: number;
    },
    verdicts: Object.fromEntries(
      PIECE_VERDICTS.map((verdict) => [verdict, count((file) => file.verdict === verdict)]),
    ) as { [verdict in PieceVerdict]: number },
  };
}

/** `62.5 % to 100 %`, each end rounded outwards. */
export function intervalWords({ lower, upper }: Interval): string {
  return `${boundWords(lower)} to ${percent(Math.ceil(upper * 1000 - 1e-9) / 1000, 1)}`;
}

/** A lower bound, rounded down, since more is not shown. */
export function boundWords(share: number): string {
  return percent(Math.floor(share * 1000 + 1e-9) / 1000, 1);
}
