/** The conclusion of a trial. It never claims more than the pieces can bear, and says what they could not have shown. */
import type { Comparison, Conclusion, PreparationOutcome, StandingRule } from "../types/trial.ts";

/** From what p on a difference is said to be shown: common practice, no source. */
const ALPHA = 0.05;

export const SANDING: StandingRule = {
  code: "standing/sanding",
  values: {},
  source: { code: "source/ac-43-13-sanding", values: {}, known: "seen" },
};

/** `mixedUp`: the preparations were not bonded from one batch, so that they cannot be told from their batches. */
export function conclusionOf(
  outcomes: readonly PreparationOutcome[],
  comparison: Comparison | undefined,
  mixedUp: boolean,
): Conclusion[] {
  const telling = outcomes.filter(({ held, failed }) => held + failed > 0);
  const isUnbroken = outcomes.every(({ silent }) => silent === 0);
  if (telling.length === 0)
    return [{ code: isUnbroken ? "conclusion/nothing-broken" : "conclusion/nothing-shown", values: {} }];
  const counts = telling.map(({ preparation, held, failed }) => ({
    preparation: preparation.id,
    held,
    of: held + failed,
  }));
  const rest = outcomes
    .filter(({ held, failed, pieces }) => held + failed === 0 && pieces.length > 0)
    .map(({ preparation }) => preparation.id);
  return [
    { code: "conclusion/held", values: { counts } },
    ...(rest.length === 0 ? [] : [{ code: "conclusion/left-out", values: { preparations: rest } } as const]),
    ...(comparison === undefined ? [alone(telling)] : together(comparison, mixedUp)),
  ];
}

function alone(telling: readonly PreparationOutcome[]): Conclusion {
  const [one] = telling;
  return one === undefined || telling.length > 1
    ? { code: "conclusion/too-many", values: {} }
    : { code: "conclusion/alone", values: { atLeast: one.atLeast ?? 0 } };
}

function together({ p, least: { clearest, effect }, preparations: { length } }: Comparison, mixedUp: boolean) {
  return [
    p <= ALPHA
      ? ({ code: "conclusion/differs", values: { p, alpha: ALPHA, preparations: length, mixedUp } } as const)
      : ({ code: "conclusion/no-difference", values: { p, alpha: ALPHA } } as const),
    { code: "conclusion/could-have", values: { preparations: length, alpha: ALPHA, clearest, effect } } as const,
  ];
}
