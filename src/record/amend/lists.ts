/** Which facts of an entry can be amended, as their forms say, and where they stand. */
import type { FoundBy } from "../../facts/entry/amending.ts";
import { waysIn } from "../../facts/entry/amending.ts";
import { entryAmended } from "../../facts/entry/entry-form.ts";
import { pieceAmended } from "../../facts/glue/piece.ts";
import type { Path } from "../../facts/values.ts";

/** A list whose facts are found by their keys. */
export interface Keyed extends FoundBy {
  readonly path: Path;
}

const WAYS = waysIn(entryAmended);

export const PIECES: Keyed = { ...pieceAmended, path: ["pieces"] };

/** Those of which much depends on the day come first. */
export const KEYED: readonly Keyed[] = WAYS.flatMap(({ path, way }) =>
  way.how === "found by" ? [{ ...way, path }] : [],
).sort((a, b) => Number(b.ofTheDay ?? false) - Number(a.ofTheDay ?? false));

/** Facts of which much depends on the day: they are told one by one where it is amended. */
export const OF_THE_DAY: readonly Keyed[] = KEYED.filter(({ ofTheDay }) => ofTheDay === true);

/** Values, and lists without ids, which are stated anew as a whole. */
export const ANEW: readonly { readonly path: Path; readonly word: string }[] = WAYS.flatMap(({ path, way }) =>
  way.how === "anew" ? [{ path, word: way.word }] : [],
);

/** Blocks that are found by themselves. */
export const ALONE: readonly { readonly path: Path; readonly word: string }[] = WAYS.flatMap(({ path, way }) =>
  way.how === "alone" ? [{ path, word: way.word }] : [],
);

/** The day of all that an entry holds. */
export const DATE: Path = ["date"];
