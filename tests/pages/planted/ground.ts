/** What every part of a planted record is made with. */
import type { Audience, Lot, Passage, Person, Quantity, Trial, Withheld } from "../../../src/facts/types.ts";

export type Pick = <T>(...from: readonly T[]) => T;

/** A word, the narrowest audience it is marked for, and the kind of fact that public withholds, if it is one. */
export interface Word {
  readonly text: string;
  readonly audience: Audience;
  readonly kind?: Withheld;
}

const RANK: readonly Audience[] = ["public", "inspector", "archive"];

export const isWider = (one: Audience, other: Audience): boolean => RANK.indexOf(one) <= RANK.indexOf(other);

export const narrowest = (...all: readonly Audience[]): Audience =>
  RANK[Math.max(...all.map((one) => RANK.indexOf(one)))] ?? "archive";

export interface Base {
  readonly pick: Pick;
  readonly anyone: () => Audience;
  readonly say: (audience: Audience, kind?: Withheld) => string;
}

export interface Ground extends Base {
  readonly lots: readonly Lot[];
  readonly people: readonly Person[];
  readonly trials: readonly Trial[];
}

/** The entry that a fact stands in. */
export interface Of {
  readonly entry: string;
  readonly day: string;
}

export const place = { file: "planted.md", line: 1, column: 1 };
export const day = (at: number): string => `2025-03-${String(at + 10).padStart(2, "0")}`;

export const worded = (quantity: Quantity, typed: string): Quantity => ({ ...quantity, typed });

/** A passage of every audience; all of them link to `linked`, which only the words around may outlive. */
export function prose({ say, anyone }: Base, owner: Audience, linked: readonly string[]): Passage[] {
  return ["public" as const, anyone(), "archive" as const].map((audience, at) => ({
    audience,
    line: at + 1,
    markdown: [
      say(narrowest(owner, audience)),
      ...linked.map((id) => `[${say(narrowest(owner, audience))}](${id}) and ![](../${id})`),
    ].join(" "),
  }));
}
