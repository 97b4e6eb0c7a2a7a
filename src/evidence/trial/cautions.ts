/** What has to be said of a trial before anything else: first whether its pieces could show a weak glue line at all. */
import { count, list, percent } from "../../words/figure.ts";
import type { Trial } from "../../facts/types.ts";
import type { PieceFile } from "../types.ts";
import type { PreparationOutcome } from "../types/trial.ts";

export interface Seen {
  readonly trial: Trial;
  readonly pieces: readonly PieceFile[];
  readonly outcomes: readonly PreparationOutcome[];
  /** Pieces of the trial that name none of its preparations. */
  readonly unnamed: number;
}

export function cautionsOf(seen: Seen): string[] {
  return [blind(seen), shapeless(seen), held(seen), batches(seen), only(seen), unnamed(seen), waiting(seen)].filter(
    (caution) => caution !== undefined,
  );
}

/** A shape that its procedure does not allow, or that is not noted: the overlap rule says so of each piece. */
const isOff = ({ findings }: PieceFile): boolean =>
  findings.some(({ rule, severity }) => rule === "overlap" && severity !== "meets");

/** Of such a shape that the wood gives way before a weak glue line would. */
const isBlind = (file: PieceFile): boolean => isOff(file) && (file.revealing ?? 1) < 1;

function blind({ pieces }: Seen): string | undefined {
  const found = pieces.filter(isBlind);
  if (found.length === 0) return undefined;
  const least = Math.min(...found.map(({ revealing }) => revealing ?? 1));
  const could =
    found.length === pieces.length
      ? "None of the pieces could"
      : `${found.length} of ${count(pieces.length, "piece")} could not`;
  return `${could} by ${found.length === 1 ? "its" : "their"} shape reveal a weak glue line: by statics a glue line with only ${percent(Math.ceil(least * 100 - 1e-9) / 100, 0)} of the wood's own shear strength would have passed.`;
}

function shapeless({ pieces }: Seen): string | undefined {
  const found = pieces.filter((file) => isOff(file) && !isBlind(file));
  if (found.length === 0) return undefined;
  return `Of ${found.length} of ${count(pieces.length, "piece")} the shape is not noted, or not one that the procedure allows: breaking in the wood, such a piece shows nothing.`;
}

/** What "held" means at most, by the least telling of the pieces that held. */
function held({ pieces }: Seen): string | undefined {
  const shares = pieces
    .filter(({ verdict }) => verdict === "pass")
    .flatMap(({ revealing }) => (revealing === undefined ? [] : [revealing]));
  const least = Math.min(...shares);
  if (least >= 1) return undefined;
  const share = percent(Math.floor(least * 100 + 1e-9) / 100, 0);
  return `That a bond held says no more than that its glue line had at least ${share} of the wood's own shear strength: by its shape the least telling of the pieces that held shows nothing above that.`;
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

function batches({ pieces }: Seen): string | undefined {
  const ids = batchesOf(pieces);
  if (ids.length < 2) return undefined;
  if (!isMixedUp(pieces))
    return `The pieces come from ${ids.length} batches, ${list(ids)}, each with every preparation; they are counted together here.`;
  return `The preparations were not bonded from one batch but from ${list(ids)}: a difference between preparations may be one between batches.`;
}

function only({ outcomes, trial }: Seen): string | undefined {
  if (trial.preparations.length < 2) return "There is only one preparation, so that nothing is compared.";
  const [used, ...others] = outcomes.filter(({ pieces }) => pieces.length > 0);
  return used && others.length === 0
    ? `Only ${used.preparation.id} has pieces, so that nothing is compared.`
    : undefined;
}

const unnamed = (seen: Seen): string | undefined =>
  seen.unnamed === 0
    ? undefined
    : `${count(seen.unnamed, "piece")} of the trial ${seen.unnamed === 1 ? "names" : "name"} none of its preparations and ${seen.unnamed === 1 ? "is" : "are"} left out.`;

function waiting({ outcomes }: Seen): string | undefined {
  const left = outcomes.reduce((sum, { notBroken }) => sum + notBroken, 0);
  return left === 0
    ? undefined
    : `${count(left, "piece")} ${left === 1 ? "is" : "are"} not broken yet: what follows is how it stands now.`;
}
