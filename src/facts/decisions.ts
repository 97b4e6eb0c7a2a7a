/**
 * Who may see each field of a fact. A decision makes what an edition gets of a field; what an edition gets of a fact is made
 * from the decisions on its fields and holds nothing else. A field without a decision does not compile.
 */
import type { FilePath, Passage, Withheld } from "./values.ts";
import { UNNAMED, type Visibility, WITHHELD } from "./visibility.ts";

/** What is shown of a field, by its value, by what the edition may see, and by the fact that it stands in. Undefined leaves it out, where the fact allows that. */
export type Decision<F, K extends keyof F, S = Visibility> = (
  value: Exclude<F[K], undefined>,
  seer: S,
  fact: F,
) => F[K];

export type Decisions<F, S = Visibility> = { readonly [K in keyof F]-?: Decision<F, K, S> };

/** The sets of a {@link Visibility}. */
type Sets = {
  [K in keyof Visibility]: Visibility[K] extends ReadonlySet<string> ? K : never;
}[keyof Visibility];

/**
 * What is shown of `fact`: built field by field. It is `fact` itself where nothing in it differs, so that an edition
 * does not take the room of a second record.
 */
export function redacted<F extends object, S>(fact: F, decisions: Decisions<F, S>, seer: S): F {
  const fields = fact as { readonly [key: string]: unknown };
  const by = decisions as unknown as { readonly [key: string]: (value: unknown, seer: S, fact: F) => unknown };
  const out: { [key: string]: unknown } = {};
  let isSame = true;
  for (const key of Object.keys(fields)) {
    const value = fields[key];
    const decided = value !== undefined && Object.hasOwn(by, key) ? by[key]?.(value, seer, fact) : undefined;
    if (decided !== undefined) out[key] = decided;
    if (decided !== value) isSame = false;
  }
  return isSame ? fact : (out as F);
}

/** Everyone who sees the fact sees it. */
export const show = <T>(value: T): T => value;

/**
 * The fact itself, one of several, by the decisions on its fields. Whatever decides field by field has these decisions as its `fields`,
 * by which tests walk all that an edition may hold.
 */
export const part = <F extends object, S = Visibility>(fields: Decisions<F, S>) =>
  Object.assign((fact: F, seer: S): F => redacted(fact, fields, seer), { fields });

/** A fact that may be hidden as a whole. */
export const partIf = <F extends object, S = Visibility>(
  fields: Decisions<F, S>,
  isShown: (fact: F, seer: S) => boolean,
) =>
  Object.assign((fact: F, seer: S): F | undefined => (isShown(fact, seer) ? redacted(fact, fields, seer) : undefined), {
    fields,
  });

/** A list of facts: those that `isShown`, each by the decisions on its fields. */
export const each = <F extends object, S = Visibility>(
  fields: Decisions<F, S>,
  isShown?: (fact: F, seer: S) => boolean,
) =>
  Object.assign(
    (facts: readonly F[], seer: S): readonly F[] =>
      same(
        facts,
        facts.filter((fact) => isShown?.(fact, seer) ?? true).map((fact) => redacted(fact, fields, seer)),
      ),
    { fields, isShown },
  );

/** A map of facts, by the ids that are shown of them. */
export const eachOf = <F extends { readonly id: string }, S = Visibility>(
  fields: Decisions<F, S>,
  isShown?: (fact: F, seer: S) => boolean,
) =>
  Object.assign(
    (facts: ReadonlyMap<string, F>, seer: S): ReadonlyMap<string, F> =>
      new Map(
        [...facts.values()]
          .filter((fact) => isShown?.(fact, seer) ?? true)
          .map((fact) => redacted(fact, fields, seer))
          .map((fact) => [fact.id, fact]),
      ),
    { fields },
  );

/** `before` itself where `after` holds the same things in the same order. */
export function same<T>(before: readonly T[], after: readonly T[]): readonly T[] {
  return before.length === after.length && before.every((one, at) => one === after[at]) ? before : after;
}

/** A person's id, or the one that stands for it. */
export const person = (id: string, seer: Visibility): string => seer.people.get(id) ?? UNNAMED;

/** The id of a thing that may be hidden; then it is left out. */
export const ifShown =
  (set: Sets) =>
  (id: string, seer: Visibility): string | undefined =>
    seer[set].has(id) ? id : undefined;

/** The id of a thing that may be hidden; then only that there is one is told. */
export const orWithheld =
  (set: Sets) =>
  (id: string, seer: Visibility): string =>
    seer[set].has(id) ? id : WITHHELD;

/** Ids of things that may be hidden; of all that are, only that there are such is told. */
export const eachOrWithheld =
  (set: Sets) =>
  (ids: readonly string[], seer: Visibility): readonly string[] =>
    same(ids, [...new Set(ids.map((id) => (seer[set].has(id) ? id : WITHHELD)))]);

/** Those ids whose things are shown. */
export const onlyShown =
  (set: Sets) =>
  (ids: readonly string[], seer: Visibility): readonly string[] =>
    same(
      ids,
      ids.filter((id) => seer[set].has(id)),
    );

/** What the public edition withholds by default. */
export const where = (kind: Withheld) =>
  withheldAs(kind, <T>(value: T, seer: Visibility): T | undefined => (seer.may(kind) ? value : undefined));

/** The same of a decision that does more than leave the field out, or of one on a whole fact. */
export const withheldAs = <F extends (...given: never[]) => unknown>(kind: Withheld, decide: F) =>
  Object.assign(decide, { withheld: kind });

/** A file that no mark hides. */
export const openFile = (file: FilePath, seer: Visibility): FilePath | undefined =>
  seer.hiddenFiles.has(file) ? undefined : file;

/** Prose: its passages for the edition's readers, without links to what is hidden. */
export const prose =
  (folder: string) =>
  (body: readonly Passage[], seer: Visibility): readonly Passage[] =>
    seer.prose(body, folder);
