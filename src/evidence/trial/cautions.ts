/** What has to be said of a trial before anything else: first whether its pieces could show a weak glue line at all. */
import type { Trial } from "../../facts/types.ts";
import type { PieceFile } from "../types.ts";
import type { Caution, PreparationOutcome } from "../types/trial.ts";

export interface Seen {
  readonly trial: Trial;
  readonly pieces: readonly PieceFile[];
  readonly outcomes: readonly PreparationOutcome[];
  /** Pieces of the trial that name none of its preparations. */
  readonly unnamed: number;
}

export function cautionsOf(seen: Seen): Caution[] {
  return [blind(seen), shapeless(seen), held(seen), batches(seen), only(seen), unnamed(seen), waiting(seen)].filter(
    (caution) => caution !== undefined,
  );
}

/** A shape that its procedure does not allow, or that is not noted: the overlap rule says so of each piece. */
const isOff = ({ findings }: PieceFile): boolean =>
  findings.some(({ rule, severity }) => rule === "overlap" && severity !== "meets");

/** Of such a shape that the wood gives way before a weak glue line would. */
const isBlind = (file: PieceFile): boolean => isOff(file) && (file.revealing ?? 1) < 1;

function blind({ pieces }: Seen): Caution | undefined {
  const found = pieces.filter(isBlind);
  if (found.length === 0) return undefined;
  const share = Math.min(...found.map(({ revealing }) => revealing ?? 1));
  return { code: "caution/blind", values: { blind: found.length, pieces: pieces.length, share } };
}

function shapeless({ pieces }: Seen): Caution | undefined {
  const found = pieces.filter((file) => isOff(file) && !isBlind(file));
  return found.length === 0
    ? undefined
    : { code: "caution/shapeless", values: { shapeless: found.length, pieces: pieces.length } };
}

/** What "held" means at most, by the least telling of the pieces that held. */
function held({ pieces }: Seen): Caution | undefined {
  const shares = pieces
    .filter(({ verdict }) => verdict === "pass")
    .flatMap(({ atMost }) => (atMost === undefined ? [] : [atMost]));
  const share = Math.min(...shares);
  return share >= 1 ? undefined : { code: "caution/held", values: { share } };
}

const batchesOf = (pieces: readonly PieceFile[]): string[] =>
  [...new Set(pieces.map(({ piece }) => piece.batch))].sort();

/** Whether a difference between preparations may be one between batches: not each has every preparation, so that there are several. */
export function isMixedUp(pieces: readonly PieceFile[]): boolean {
  const made = (batch: string): number =>
    new Set(pieces.filter(({ piece }) => piece.batch === batch).map(({ piece }) => piece.preparation)).size;
  const preparations = new Set(pieces.map(({ piece }) => piece.preparation)).size;
  return batchesOf(pieces).some((batch) => made(batch) < preparations);
}

function batches({ pieces }: Seen): Caution | undefined {
  const values = { batches: batchesOf(pieces) };
  if (values.batches.length < 2) return undefined;
  return { code: isMixedUp(pieces) ? "caution/mixed-up" : "caution/batches", values };
}

function only({ outcomes, trial }: Seen): Caution | undefined {
  if (trial.preparations.length < 2) return { code: "caution/one-preparation", values: {} };
  const [used, ...others] = outcomes.filter(({ pieces }) => pieces.length > 0);
  return used && others.length === 0
    ? { code: "caution/one-with-pieces", values: { preparation: used.preparation.id } }
    : undefined;
}

const unnamed = (seen: Seen): Caution | undefined =>
  seen.unnamed === 0 ? undefined : { code: "caution/unnamed", values: { pieces: seen.unnamed } };

function waiting({ outcomes }: Seen): Caution | undefined {
  const pieces = outcomes.reduce((sum, { notBroken }) => sum + notBroken, 0);
  return pieces === 0 ? undefined : { code: "caution/waiting", values: { pieces } };
}
