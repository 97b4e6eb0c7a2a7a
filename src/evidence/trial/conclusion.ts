/** The conclusion of a trial in plain words. It never claims more than the pieces can bear, and says what they could not have shown. */
import { figure, list, percent } from "../../words/figure.ts";
import type { Comparison, PreparationOutcome, StandingRule } from "../types/trial.ts";

/** From what p on a difference is said to be shown: common practice, no source. */
const ALPHA = 0.05;

export const SANDING: StandingRule = {
  says: "Whatever a trial shows, sandpaper is not for smoothing softwood that is to be bonded. Abrading adhesive that has already cured is another matter.",
  source: { text: "FAA AC 43.13-1B, para 1-6", known: "memory" },
};

/** `mixedUp`: the preparations were not bonded from one batch, so that they cannot be told from their batches. */
export function conclusionOf(
  outcomes: readonly PreparationOutcome[],
  comparison: Comparison | undefined,
  mixedUp: boolean,
): string[] {
  const telling = outcomes.filter(({ held, failed }) => held + failed > 0);
  const isUnbroken = outcomes.every(({ silent }) => silent === 0);
  if (telling.length === 0)
    return [
      isUnbroken
        ? "No piece has been broken, so that nothing is shown yet."
        : "No piece that was broken shows anything, so that there is nothing to conclude.",
    ];
  const counts = `Of the pieces that show something, the bond held in ${list(telling.map(countWords))}.`;
  const rest = outcomes
    .filter(({ held, failed, pieces }) => held + failed === 0 && pieces.length > 0)
    .map(({ preparation }) => preparation.id);
  const leftOut =
    rest.length === 0
      ? []
      : [`Of ${list(rest)} no piece shows anything, so that ${rest.length === 1 ? "it is" : "they are"} not compared.`];
  return [counts, ...leftOut, ...(comparison === undefined ? alone(telling) : together(comparison, mixedUp))];
}

const countWords = ({ preparation, held, failed }: PreparationOutcome): string =>
  `${held} of ${held + failed} (${preparation.id})`;

function alone(telling: readonly PreparationOutcome[]): string[] {
  const [one] = telling;
  if (one === undefined || telling.length > 1) return ["So many pieces are not compared by this program."];
  return [
    `That shows, at 95 % confidence, no more than that at least ${percentDown(one.atLeast ?? 0)} of such bonds hold. It is compared with nothing.`,
  ];
}

function together({ p, least, preparations }: Comparison, mixedUp: boolean): string[] {
  return [
    p <= ALPHA ? differs(p, preparations.length, mixedUp) : noDifference(p),
    couldHave(least, preparations.length),
  ];
}

function differs(p: number, preparations: number, mixedUp: boolean): string {
  const chance = `Were the preparations alike, outcomes as far apart as these or further would come about in ${chanceWords(p)} of such trials (Fisher's exact test, p = ${pWords(p)}).`;
  const shows =
    preparations === 2
      ? "That shows a difference between them under the conditions of this trial"
      : "That shows that they are not all alike under the conditions of this trial, not which of them differ";
  const cause = mixedUp ? "it may be one between their batches" : "not its cause";
  return `${chance} ${shows}; ${cause}, and not how it would be with other timber, adhesive or hands.`;
}

const noDifference = (p: number): string =>
  `No difference is shown (Fisher's exact test, p = ${pWords(p)}). That is not to say that there is none.`;

function couldHave({ clearest, effect }: Comparison["least"], preparations: number): string {
  const others = preparations === 2 ? "every bond of the other" : "every bond of the others";
  if (effect === undefined)
    return `So few pieces could not have shown any difference: even had every bond of one preparation failed and ${others} held, p would be ${pWords(clearest)}.`;
  return `So few pieces could have shown only a great difference: even if ${others} were sure to hold, those of one would have to fail in at least ${percentUp(effect)} of cases for four such trials in five to tell them apart.`;
}

/** Rounded down, since more is not shown. */
const percentDown = (share: number): string => `${figure(Math.floor(share * 1000 + 1e-9) / 10, 1)} %`;

/** Rounded up, since less would not have shown. */
const percentUp = (share: number): string => `${Math.min(100, Math.ceil(share * 100 - 1e-9))} %`;

function pWords(p: number): string {
  if (p < 0.0001) return "less than 0.0001";
  const decimals = p < 0.001 ? 5 : p < 0.01 ? 4 : p < 0.1 ? 3 : 2;
  // Never rounded over the level that decides.
  const text = figure(p, decimals);
  return Number(text) <= ALPHA === p <= ALPHA ? text : figure(p, 6);
}

function chanceWords(p: number): string {
  return p < 0.001
    ? `fewer than one in ${Math.floor(1 / p) > 10_000 ? "ten thousand" : "a thousand"}`
    : percent(p, p < 0.01 ? 2 : 1);
}
