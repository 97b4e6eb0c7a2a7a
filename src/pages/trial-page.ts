/** What the page on one trial says. What so few pieces can prove is not reckoned here, and the page does not pretend to. */
import type { PieceFile, PieceVerdict } from "../evidence/types.ts";
import type { FailureMode, Trial } from "../record/types.ts";
import type { Shown } from "./shown.ts";
import { traceIndex } from "./trace-index.ts";
import { PIECE_VERDICTS } from "./verdict-words.ts";
import { counted, dateWords, percent } from "./words.ts";

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
  /** What the pieces' geometry lets be seen, and what was stated when, one sentence each. */
  readonly cautions: readonly string[];
}

export function trialPage(shown: Shown, trial: Trial): TrialPage {
  const pieces = traceIndex(shown).piecesOf.get(trial.id) ?? [];
  const rows = trial.preparations.map(({ id, what }) => row(id, what, pieces.filter(({ piece }) => piece.preparation === id)));
  const rest = pieces.filter(({ piece }) => !trial.preparations.some(({ id }) => id === piece.preparation));
  if (rest.length > 0) rows.push(row("", "no preparation named", rest));
  return { trial, rows, pieces, cautions: cautionsOf(trial, pieces, rows) };
}

function row(id: string, what: string, pieces: readonly PieceFile[]): PreparationRow {
  const count = (holds: (file: PieceFile) => boolean): number => pieces.filter(holds).length;
  return {
    id, what, pieces,
    failures: {
      wood: count(({ test }) => test?.failure === "wood"),
      mixed: count(({ test }) => test?.failure === "mixed"),
      "glue line": count(({ test }) => test?.failure === "glue line"),
    },
    verdicts: Object.fromEntries(PIECE_VERDICTS.map((verdict) => [verdict, count((file) => file.verdict === verdict)])) as { [verdict in PieceVerdict]: number },
  };
}

function cautionsOf(trial: Trial, pieces: readonly PieceFile[], rows: readonly PreparationRow[]): string[] {
  const broken = pieces.filter(({ test }) => test !== undefined);
  const first = broken.map(({ test }) => test?.day ?? "").sort()[0];
  return [
    ...(first !== undefined && trial.stated >= first ? [`The expectation is dated ${dateWords(trial.stated)}; the first piece was broken on ${dateWords(first)}. It may not have been stated beforehand.`] : []),
    ...geometryWords(broken),
    ...(rows.filter((each) => each.pieces.length > 0).length < 2 ? ["Only one preparation has pieces, so there is nothing to compare it with."] : []),
    ...(broken.length < pieces.length ? [`${counted(pieces.length - broken.length, "piece")} of ${pieces.length} not broken yet.`] : []),
    "The table counts what was seen. With so few pieces, like outcomes do not show that preparations are alike, and unlike ones may be chance.",
  ];
}

function geometryWords(broken: readonly PieceFile[]): string[] {
  if (broken.length === 0) return [];
  const shares = broken.flatMap(({ revealing }) => (revealing === undefined ? [] : [revealing]));
  const unknown = broken.length - shares.length;
  const worst = Math.min(...shares);
  return [
    ...(shares.length === 0 ? [] : [
      worst >= 1
        ? "By their geometry the pieces would have shown any glue line weaker than the wood."
        : `By its geometry the least telling piece would have let pass a glue line with ${percent(worst)} of the wood’s own shear strength: a difference between stronger glue lines than that need not show in it.`,
    ]),
    ...(unknown === 0 ? [] : [`For ${counted(unknown, "piece")} it cannot be reckoned what a weak glue line would have done.`]),
  ];
}
