/** Finds the facts of an entry that an amendment means, and alters them. */
import { defined } from "../../defined.ts";
import { isOptional } from "../schema/form.ts";
import { entrySchema } from "../../facts/entry/entry-form.ts";
import type { Fault } from "../../facts/reading.ts";
import type { Path } from "../text/yaml.ts";
import * as faults from "./faults.ts";
import { ALONE, ANEW, DATE, KEYED, type Keyed, OF_THE_DAY, PIECES } from "./lists.ts";
import { ALL, type Altered, isSame, mergeInto, STRUCK, strikeFrom } from "./merge.ts";
import { dataOf, textIn, type Tree, treeAt } from "./tree.ts";

/** A fact that is altered: its list, the id or words it is found by, how it stood, how it stands, and each value that changed. */
export interface AlteredFact {
  readonly list?: Keyed;
  readonly word: string;
  readonly key?: string;
  /** Where its form stands in that of an entry. */
  readonly path: Path;
  readonly before: Tree;
  readonly after?: Tree;
  readonly altered: readonly Altered[];
}

type Found = Pick<AlteredFact, "list" | "word" | "key" | "path">;

/** Alters `entry` in place by what `stated` says of it; `report` is told what cannot be. */
export class Alteration {
  readonly facts: AlteredFact[] = [];
  readonly #id: string;
  readonly #report: (at: Tree, fault: Fault) => void;
  readonly #whereIs: (at: Tree) => string;

  readonly #isBroken: (piece: string) => boolean;

  constructor(
    id: string,
    isBroken: (piece: string) => boolean,
    report: (at: Tree, fault: Fault) => void,
    whereIs: (at: Tree) => string,
  ) {
    this.#id = id;
    this.#isBroken = isBroken;
    this.#report = report;
    this.#whereIs = whereIs;
  }

  alter(entry: Tree, stated: Tree): void {
    const date = treeAt(stated, DATE);
    if (date) this.#date(entry, date);
    for (const list of KEYED) {
      const items = treeAt(stated, list.path)?.items;
      if (items) this.#list(treeAt(entry, list.path)?.items ?? [], items, list, list.path);
    }
    for (const { path, word } of ANEW) this.#anew(entry, treeAt(stated, path), path, word);
    for (const { path, word } of ALONE) {
      const said = treeAt(stated, path);
      const before = treeAt(entry, path);
      if (said && before) this.#fact(before, said, { word, path, keys: [] });
      else if (said) this.#report(said, faults.nothingOnScales(this.#id));
    }
  }

  /** Told of the entry, and of each batch and test in it, whose cure it alters. */
  #date(entry: Tree, date: Tree): void {
    const before = treeAt(entry, DATE);
    if (before === undefined || isSame(before, date)) return;
    entry.fields?.set("date", date);
    const altered = [{ path: ["date"], was: dataOf(before), is: dataOf(date), at: date }];
    this.facts.push({ word: "Date", path: [], before, after: date, altered });
    for (const list of OF_THE_DAY) {
      for (const fact of treeAt(entry, list.path)?.items ?? []) {
        const key = textIn(fact, list.keys[0]);
        if (key !== undefined)
          this.facts.push({ list, word: list.word, key, path: [], before: fact, after: fact, altered });
      }
    }
  }

  #list(facts: Tree[], items: readonly Tree[], list: Keyed, path: Path): void {
    const done = new Map<Tree, Tree>();
    for (const stated of items) {
      const fact = this.#find(facts, stated, list, path);
      if (fact === undefined) continue;
      const first = done.get(fact);
      if (first) this.#report(stated, faults.factTwice(textIn(stated, list.keys[0]) ?? "", this.#whereIs(first)));
      else done.set(fact, stated);
      if (!first) this.#keyed(facts, fact, stated, list, path);
    }
  }

  /** The one fact that a stated one means; a piece that was left out is put in. */
  #find(facts: Tree[], stated: Tree, list: Keyed, path: Path): Tree | undefined {
    const key = textIn(stated, list.keys[0]);
    if (key === undefined) return undefined;
    const fits = facts.filter((fact) =>
      list.keys.every((each) => textIn(stated, each) === undefined || textIn(fact, each) === textIn(stated, each)),
    );
    const [fact, ...others] = fits.length > 0 ? fits : facts.filter((one) => textIn(one, list.keys[0]) === key);
    const at = stated.fields?.get(list.keys[0]) ?? stated;
    if (others.length > 0) this.#report(at, faults.severalFacts(list, key));
    else if (fact) return fact;
    else if (list === PIECES && textIn(stated, "procedure") !== undefined) this.#addPiece(facts, stated, key, path);
    else
      this.#report(
        at,
        faults.noSuchFact(
          this.#id,
          list,
          key,
          facts.flatMap((one) => textIn(one, list.keys[0]) ?? []),
        ),
      );
    return undefined;
  }

  #addPiece(facts: Tree[], stated: Tree, key: string, path: Path): void {
    facts.push(stated);
    this.facts.push({
      list: PIECES,
      word: PIECES.word,
      key,
      path: [...path, 0],
      before: stated,
      after: stated,
      altered: [{ path: [], is: dataOf(stated), at: stated }],
    });
  }

  #keyed(facts: Tree[], fact: Tree, stated: Tree, list: Keyed, path: Path): void {
    const key = textIn(fact, list.keys[0]) ?? "";
    if (struckIn(stated).some(({ text }) => text === ALL))
      this.#strike(facts, fact, stated, { list, word: list.word, key, path: [...path, 0] });
    else {
      const fits = list.keys.filter((each) => each === list.keys[0] || textIn(fact, each) === textIn(stated, each));
      this.#fact(fact, stated, { list, word: list.word, key, path: [...path, 0], keys: fits });
    }
    const pieces = stated.fields?.get("pieces")?.items;
    if (pieces) this.#list(piecesOf(fact), pieces, PIECES, [...path, 0, "pieces"]);
  }

  #fact(fact: Tree, stated: Tree, { keys, ...found }: Found & { readonly keys: readonly string[] }): void {
    const { path } = found;
    const before = copy(fact);
    const struck = struckIn(stated).filter((at) => {
      const stays =
        !isOptional(entrySchema, [...path, ...(at.text ?? "").split(".")]) &&
        treeAt(fact, (at.text ?? "").split(".")) !== undefined;
      if (stays) this.#report(at, faults.mustStay(at.text ?? ""));
      return !stays;
    });
    const { altered, missing } = strikeFrom(fact, struck);
    for (const at of missing) this.#report(at, faults.notThere(at.text ?? ""));
    const merged = [...mergeInto(fact, stated, keys), ...altered];
    const broken = found.list === PIECES && this.#isBroken(found.key ?? "");
    const all = broken ? merged.map((one) => putBack(fact, before, one)) : merged;
    if (all.length > 0) this.facts.push({ ...found, before, after: fact, altered: all });
  }

  #strike(
    facts: Tree[],
    fact: Tree,
    stated: Tree,
    found: Found & { readonly list: Keyed; readonly key: string },
  ): void {
    const { list, key } = found;
    if (list.named) return this.#report(stated, faults.staysNamed(list, key));
    if ([...(stated.fields?.keys() ?? [])].some((each) => each !== STRUCK && !list.keys.includes(each)))
      return this.#report(stated, faults.strikesAndStates(key));
    facts.splice(facts.indexOf(fact), 1);
    this.facts.push({ ...found, before: fact, altered: [{ path: [], was: dataOf(fact), at: stated }] });
  }

  #anew(entry: Tree, stated: Tree | undefined, path: Path, word: string): void {
    const before = treeAt(entry, path);
    if (stated === undefined || (before && isSame(before, stated))) return;
    const last = String(path.at(-1));
    let block: Tree | undefined = entry;
    for (const step of path.slice(0, -1)) {
      if (block?.fields?.has(String(step)) === false)
        block.fields.set(String(step), { origin: stated.origin, fields: new Map() });
      block = block?.fields?.get(String(step));
    }
    block?.fields?.set(last, stated);
    this.facts.push({
      word,
      path: path.slice(0, -1),
      before: before ?? stated,
      after: stated,
      altered: [defined({ path: [last], is: dataOf(stated), at: stated, was: before ? dataOf(before) : undefined })],
    });
  }
}

/** What a piece is a piece of, and how it is judged, is fixed when it breaks. */
const FIXED: readonly string[] = ["procedure", "trial", "preparation"];
/** Of what wood it is may be put right for the worse alone. */
const WOOD: readonly string[] = ["lot", "legs", "scraps"];

function putBack(fact: Tree, before: Tree, altered: Altered): Altered {
  const [key] = altered.path;
  if (key !== undefined && WOOD.includes(key)) return { ...altered, worsens: true };
  if (key === undefined || !FIXED.includes(key)) return altered;
  const was = before.fields?.get(key);
  if (was) fact.fields?.set(key, was);
  else fact.fields?.delete(key);
  return { ...altered, fixed: true };
}

function struckIn(stated: Tree): readonly Tree[] {
  return stated.fields?.get(STRUCK)?.items ?? [];
}

function piecesOf(batch: Tree): Tree[] {
  const pieces = batch.fields?.get("pieces")?.items;
  if (pieces) return pieces;
  const items: Tree[] = [];
  batch.fields?.set("pieces", { origin: batch.origin, items });
  return items;
}

function copy(tree: Tree): Tree {
  if (tree.items) return { ...tree, items: tree.items.map(copy) };
  return tree.fields ? { ...tree, fields: new Map([...tree.fields].map(([key, part]) => [key, copy(part)])) } : tree;
}
