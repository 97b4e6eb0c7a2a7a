/** What went out of this phone and is not yet in the record that its page was made of. */
import { nextId } from "../desk/entry/next-id.ts";
import type { Session } from "./session.ts";
import type { Letter, Snapshot } from "./snapshot.ts";

export interface Taken {
  readonly session: string;
  /** Digest of the record that the page was made of then. */
  readonly record: string;
  readonly batches: readonly string[];
  readonly joints: readonly string[];
  readonly pieces: readonly string[];
}

export function takenBy(session: Session): Taken {
  const mixed = session.cups.filter((cup) => cup.mixed !== undefined);
  return {
    session: session.id,
    record: session.record,
    batches: mixed.map(({ id }) => id),
    joints: mixed
      .filter(({ discarded }) => discarded === undefined)
      .flatMap(({ closed }) => closed.map(({ joint }) => joint)),
    pieces: session.breaks.filter(({ failure, left }) => failure !== undefined && !left).map(({ piece }) => piece),
  };
}

/** As given to a phone with a letter of its own. */
export const lettered = (given: Snapshot, letter: Letter): Snapshot => ({
  ...given,
  nextBatch: given.nextByLetter[letter],
});

/** No number is given twice, whatever page it was given by; joints and pieces are asked of a newer record again. */
export function without(given: Snapshot, taken: readonly Taken[], digest: string): Snapshot {
  const ours = taken.filter(({ record }) => record === digest);
  const joints = new Set(ours.flatMap((one) => one.joints));
  const pieces = new Set(ours.flatMap((one) => one.pieces));
  return {
    ...given,
    nextBatch: taken.flatMap(({ batches }) => batches).reduce(after, given.nextBatch),
    assemblies: given.assemblies
      .map((one) => ({ ...one, joints: one.joints.filter(({ id }) => !joints.has(id)) }))
      .filter((one) => one.joints.length > 0),
    due: given.due.filter(({ piece }) => !pieces.has(piece)),
  };
}

/** Whichever comes later of a next id and the one after a taken id, where both count alike. */
function after(next: string, taken: string): string {
  const [, start] = /^(.*?)\d+$/.exec(next) ?? [];
  const [, other, digits = ""] = /^(.*?)(\d+)$/.exec(taken) ?? [];
  if (start === undefined || start !== other) return next;
  return BigInt(digits) < BigInt(next.slice(start.length)) ? next : nextId([taken], next);
}
