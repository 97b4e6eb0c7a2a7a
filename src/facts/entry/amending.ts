/** What of an entry can be amended by a later one, and how each is found. */
import type { Kind, Path } from "../values.ts";

/** A list whose facts are found by their keys; each of their values can be amended. */
export interface FoundBy {
  readonly how: "found by";
  /** The first always tells which; the others where the first alone would fit several. */
  readonly keys: readonly [string, ...string[]];
  /** What the first key is the id of, if it is one. */
  readonly kind?: Kind;
  /** Whether the fact has an id that other files may lead to: then it is never struck out as a whole. */
  readonly named: boolean;
  /** The fact in words, with the first key after them; and several of them. */
  readonly word: string;
  readonly several: string;
  /** Whether much of it depends on the day: then it is told one by one where the day is amended. */
  readonly ofTheDay?: boolean;
  /** Lists within it whose facts are found by their keys as well. */
  readonly lists?: { readonly [key: string]: FoundBy };
}

export type Amending =
  | FoundBy
  /** A value, or a list without ids, which is stated anew as a whole. `says` describes that to editors. */
  | { readonly how: "anew"; readonly word: string; readonly says: string }
  /** One block, found by itself; each of its values can be amended. */
  | { readonly how: "alone"; readonly word: string }
  /** The day of all that an entry holds. */
  | { readonly how: "day"; readonly says: string }
  | { readonly how: "within"; readonly parts: { readonly [key: string]: Amending } }
  | { readonly how: "exempt"; readonly because: string };

/** A way of amending for each key of a form: a key without one does not compile. */
export type AmendingOf<Shape> = { readonly [K in keyof Shape]-?: Amending };

export const foundBy = (fact: Omit<FoundBy, "how">): FoundBy => ({ how: "found by", ...fact });
export const anew = (word: string, says: string): Amending => ({ how: "anew", word, says });
export const exempt = (because: string): Amending => ({ how: "exempt", because });
export const TELLS_NOTHING = exempt(
  "no verdict, sum or ledger rests on it; whoever can edit the file corrects it there",
);

/** Every way in `all`, with the path it stands at. */
export function waysIn(all: { readonly [key: string]: Amending }): { readonly path: Path; readonly way: Amending }[] {
  return Object.entries(all).flatMap(([key, way]) =>
    way.how === "within"
      ? waysIn(way.parts).map((inner) => ({ path: [key, ...inner.path], way: inner.way }))
      : [{ path: [key], way }],
  );
}
