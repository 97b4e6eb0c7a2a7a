/** Puts the values that an amendment states into the fact that it amends, and tells each that changes. */
import { defined } from "../../defined.ts";
import type { Data } from "../text/yaml.ts";
import { dataOf, type Tree, usualOf } from "./tree.ts";
import { PIECES } from "./lists.ts";

/** A value that is no longer what it was. `path` is within the fact. */
export interface Altered {
  readonly path: readonly string[];
  readonly was?: Data;
  readonly is?: Data;
  /** Where the amendment says so. */
  readonly at: Tree;
  /** It stays what it was: the piece had been broken. */
  readonly fixed?: boolean;
  /** It may worsen a verdict and never better it: the wood of a piece that had been broken. */
  readonly worsens?: boolean;
}

export const STRUCK = "struck";
export const ALL = "all";

/** `keys` only tell which fact is meant. Pieces of a batch are left to those who know them by their ids. */
export function mergeInto(fact: Tree, stated: Tree, keys: readonly string[]): Altered[] {
  const altered: Altered[] = [];
  for (const [key, value] of stated.fields ?? []) {
    if (keys.includes(key) || key === STRUCK || key === PIECES.path[0]) continue;
    const before = fact.fields?.get(key);
    if (before?.fields && value.fields)
      altered.push(...mergeInto(before, value, []).map((one) => ({ ...one, path: [key, ...one.path] })));
    else if (before === undefined || usualOf(before) !== undefined || !isSame(before, value)) {
      fact.fields?.set(key, value);
      altered.push(defined({ path: [key], is: dataOf(value), at: value, was: before ? dataOf(before) : undefined }));
    }
  }
  return altered;
}

export function isSame(one: Tree, other: Tree): boolean {
  return JSON.stringify(dataOf(one)) === JSON.stringify(dataOf(other));
}

/** Takes values out of a fact; `missing` are those that do not stand there. */
export function strikeFrom(
  fact: Tree,
  struck: readonly Tree[],
): { readonly altered: Altered[]; readonly missing: Tree[] } {
  const altered: Altered[] = [];
  const missing: Tree[] = [];
  for (const at of struck) {
    const path = (at.text ?? "").split(".");
    const was = taken(fact, path);
    if (was === undefined) missing.push(at);
    else altered.push({ path, was: dataOf(was), at });
  }
  return { altered, missing };
}

function taken(fact: Tree, path: readonly string[]): Tree | undefined {
  const [key = "", ...rest] = path;
  const found = fact.fields?.get(key);
  if (found === undefined || key === PIECES.path[0]) return undefined;
  if (rest.length > 0) return taken(found, rest);
  fact.fields?.delete(key);
  return found;
}
