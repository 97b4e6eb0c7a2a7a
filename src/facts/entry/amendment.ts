/**
 * What a later entry says of one that was written down wrong. The record holds facts as amended; what was written
 * first stands here.
 */
import type { Place } from "../../problem.ts";
import { type Decisions, each, person, same, show } from "../decisions.ts";
import type { Audience, Day, Ref } from "../values.ts";
import { isShown, type Visibility } from "../visibility.ts";

/** Words as typed, with the things of the record that they name. */
export type Said = readonly (string | Ref)[];

/** One value, or one whole fact, that an amendment changes. */
export interface Change {
  /** Where the amending entry says so. */
  readonly place: Place;
  /** The batch, piece, departure or open item that it is about; else the amended entry. */
  readonly about: Ref;
  /**
   * The fact in words, such as `Test of B-014/1`, and which of its values, such as `wood failure`; without one it is
   * the whole fact.
   */
  readonly fact: string;
  readonly value?: string;
  /** What was written; absent where nothing was. */
  readonly was?: Said;
  /** What stands now; absent where it was struck out and nothing put in its place. */
  readonly is?: Said;
  /** Things of which an edition must show every one to show the change at all. */
  readonly needs: readonly Ref[];
  /** The narrower of what the fact was marked for and is. */
  readonly audience: Audience;
  /** It does not count: what a piece is a piece of was fixed when it broke. */
  readonly fixed?: boolean;
  /** It may worsen a verdict and never better it, whoever saw it: the wood of a piece that had been broken. */
  readonly worsens?: boolean;
}

/** Everything that one entry amends in an earlier one. It is for all who may read the earlier one. */
export interface Amendment {
  readonly place: Place;
  /** The entry that is amended, and the one that amends it, on `day`. */
  readonly entry: string;
  readonly by: string;
  readonly day: Day;
  readonly why: string;
  /** Who else saw the source of what is right. */
  readonly seenBy?: string;
  /** Whether the prose of the amended entry is struck out; it stays readable. */
  readonly prose: boolean;
  readonly changes: readonly Change[];
  /** Whether an edition leaves some of the changes out. */
  readonly withheld: boolean;
}

/**
 * Whether it may better a verdict: someone other than a builder, now or before, saw the source of what is right, and it is not of the wood of
 * a piece that had been broken. Of several builders nothing says which one writes.
 */
export function isSeconded(
  { seenBy, changes }: Pick<Amendment, "seenBy" | "changes">,
  people: Iterable<{ readonly id: string; readonly role: string }>,
): boolean {
  const seen = [...people].some(({ id, role }) => id === seenBy && role !== "builder" && role !== "former builder");
  return seen && changes.every(({ worsens }) => worsens !== true);
}

const NOT_SHOWN = "something this edition does not show";

const changeShown: Decisions<Change> = {
  place: show,
  about: show,
  fact: show,
  value: show,
  was: said,
  is: said,
  needs: show,
  audience: show,
  fixed: show,
  worsens: show,
};

/**
 * Of the amendments that a shown entry makes, those of shown entries. A change of a hidden thing goes, first text and
 * all, and leaves only that there is one; a hidden thing named in a change becomes words.
 */
export const amendmentShown: Decisions<Amendment> = {
  place: show,
  entry: show,
  by: show,
  day: show,
  why: show,
  seenBy: person,
  prose: show,
  changes: each(changeShown, isChangeShown),
  withheld: (withheld, seer, { changes }) => withheld || !changes.every((change) => isChangeShown(change, seer)),
};

export const isAmendmentShown = ({ entry }: Amendment, seer: Visibility): boolean => seer.entries.has(entry);

function isChangeShown({ about, needs, audience }: Change, seer: Visibility): boolean {
  return seer.sees(audience) && isShown(about, seer) && needs.every((ref) => isShown(ref, seer));
}

function said(words: Said, seer: Visibility): Said {
  return same(
    words,
    words.map((word) => {
      if (typeof word === "string") return word;
      if (word.kind !== "person") return isShown(word, seer) ? word : NOT_SHOWN;
      const id = person(word.id, seer);
      return id === word.id ? word : { ...word, id };
    }),
  );
}
