/** Entries with the amendments that later entries make to them. */
import { placed, type Problem } from "../../problem.ts";
import type { Draft, Filed } from "../filed.ts";
import { type Spec, SCHEMAS } from "../../facts/kinds.ts";
import type { Fault } from "../../facts/reading.ts";
import { parse } from "../schema/parse.ts";
import type { Amendment, Audience } from "../../facts/types.ts";
import { Alteration } from "./alter.ts";
import { changesOf } from "./changes.ts";
import * as faults from "./faults.ts";
import { ALONE, ANEW, DATE, KEYED } from "./lists.ts";
import { frontOf, textIn, type Tree, treeAt, treeOf } from "./tree.ts";

export interface Amended {
  /** Facts as amended; an entry's prose and the rest of its file as they are. */
  readonly draft: Draft;
  /** By the entries that make them. */
  readonly amendments: ReadonlyMap<string, readonly Amendment[]>;
  readonly problems: readonly Problem[];
}

/** Whether what the entry `by` says of `entry` is put into it. */
type Counts = (by: string, entry: string) => boolean;

type EntryFile = Filed<Spec<"entry">>;

/**
 * Puts every amendment into the entry that it amends, in the order of the record. What comes after (checks, reckoning) sees the facts as amended,
 * on the day they were first written down for or its amended one, each at the place where it was typed last.
 */
export function amend(draft: Draft, counts: Counts = () => true): Amended {
  const amender = new Amender(draft, counts);
  for (const filed of draft.files.entry) amender.read(filed);
  return amender.amended();
}

const RANK: { readonly [audience in Audience]: number } = { public: 0, inspector: 1, archive: 2 };

class Amender {
  readonly #draft: Draft;
  readonly #counts: Counts;
  /** By piece, the day of the first entry that holds a test of it as first written. */
  readonly #brokenOn = new Map<string, string>();
  readonly #entries: ReadonlyMap<string, EntryFile>;
  readonly #trees = new Map<string, Tree>();
  readonly #amendments = new Map<string, Amendment[]>();
  readonly #problems: Problem[] = [];

  constructor(draft: Draft, counts: Counts) {
    this.#draft = draft;
    this.#counts = counts;
    for (const { id, spec } of [...draft.files.entry].reverse())
      for (const test of spec?.tests ?? []) this.#brokenOn.set(test.piece, id.slice(0, 10));
    this.#entries = new Map(draft.files.entry.map((filed) => [filed.id, filed]));
  }

  read(filed: EntryFile): void {
    const { data, front } = filed;
    if (typeof data === "string" || !("amends" in data)) return;
    const seen = new Map<string, Tree>();
    for (const stated of treeAt(treeOf(front, data, []), ["amends"])?.items ?? []) this.#one(filed, stated, seen);
  }

  amended(): Amended {
    const unsound: string[] = [];
    const entry = this.#draft.files.entry.map((filed) => {
      const tree = this.#trees.get(filed.id);
      if (tree === undefined) return filed;
      const made = this.#again(filed, tree);
      if (!made.whole && filed.whole) unsound.push(filed.source.text);
      return made;
    });
    const { files, ...rest } = this.#draft;
    entry.sort((a, b) => (placeInTime(a) < placeInTime(b) ? -1 : 1));
    return {
      draft: { ...rest, files: { ...files, entry }, unsound: [...rest.unsound, ...unsound] },
      amendments: this.#amendments,
      problems: this.#problems,
    };
  }

  #one(filed: EntryFile, stated: Tree, seen: Map<string, Tree>): void {
    const id = textIn(stated, "entry");
    const at = stated.fields?.get("entry");
    if (id === undefined || at === undefined || !this.#counts(filed.id, id)) return;
    const target = this.#entries.get(id);
    const first = seen.get(id);
    const fault = first ? faults.entryTwice(id, whereIs(first)) : this.#targetFault(filed, id, target);
    seen.set(id, first ?? stated);
    if (fault || target === undefined) return fault && this.#report(at, fault);
    const tree = this.#trees.get(id) ?? treeOf(target.front, target.data, []);
    this.#trees.set(id, tree);
    const before = this.#problems.length;
    const date = stated.fields?.get("date");
    const own = filed.id.slice(0, 10);
    if (date?.text !== undefined && date.text > own) this.#report(date, faults.dayToCome(date.text, own));
    const alteration = new Alteration(
      id,
      (piece) => this.#isBroken(piece, own),
      (place, problem) => this.#report(place, problem),
      whereIs,
    );
    alteration.alter(tree, stated);
    const prose = textIn(stated, "prose") !== undefined || !statesFacts(stated);
    if (alteration.facts.length === 0 && !prose && this.#problems.length === before)
      this.#report(at, faults.nothingChanged(id));
    const made: Amendment = {
      place: placeOf(stated),
      entry: id,
      by: filed.id,
      day: own,
      why: textIn(stated, "why") ?? "",
      ...seenBy(stated),
      prose,
      changes: changesOf(alteration.facts, id, placeOf),
      withheld: false,
    };
    this.#amendments.set(filed.id, [...(this.#amendments.get(filed.id) ?? []), made]);
  }

  /** Whether a test of the piece was written down on that day or before it, be it struck out since. */
  #isBroken(piece: string, day: string): boolean {
    const broken = this.#brokenOn.get(piece);
    return broken !== undefined && broken <= day;
  }

  #targetFault(filed: EntryFile, id: string, target: EntryFile | undefined): Fault | undefined {
    if (id === filed.id) return faults.ownEntry(id);
    if (target === undefined)
      return faults.unknownEntry(
        id,
        [...this.#entries.keys()].filter((known) => known < filed.id),
      );
    if (id > filed.id) return faults.laterEntry(id, filed.id);
    const [own, its] = [audienceOf(filed), audienceOf(target)];
    return RANK[own] > RANK[its] ? faults.hiddenFromReaders(id, own, its) : undefined;
  }

  /** The amended entry held against its schema once more; what was said of it before is not said again. */
  #again(filed: EntryFile, tree: Tree): EntryFile {
    const front = frontOf(tree);
    const parsed = parse(SCHEMAS.entry, front, { date: filed.id.slice(0, 10), title: "-" });
    const told = new Set([...this.#draft.problems, ...this.#problems].map(spotOf));
    const fresh = parsed.problems.filter((problem) => !told.has(spotOf(problem)));
    this.#problems.push(...fresh);
    return {
      ...filed,
      front,
      data: front.data,
      spec: parsed.spec,
      whole: filed.whole && parsed.problems.length === 0,
      at: parsed.placeOf,
      rawAt: front.placeOf,
      typedAt: parsed.typedAt,
      usualFrom: parsed.usualFrom,
    };
  }

  #report(at: Tree, fault: Fault): void {
    this.#problems.push(
      placed(placeOf(at), fault, at.text === undefined ? "" : at.origin.front.typedAt(at.origin.path)),
    );
  }
}

/** Compares as entries follow each other: by day, as amended, and then by file name. */
export function placeInTime({ id, file, spec, at }: EntryFile): string {
  const isAmended = spec !== undefined && at(DATE).file !== file;
  return `${isAmended ? spec.date : id.slice(0, 10)} ${id}`;
}

function seenBy(stated: Tree): Pick<Amendment, "seenBy"> {
  const person = textIn(stated, "seen_by");
  return person === undefined ? {} : { seenBy: person };
}

function statesFacts(stated: Tree): boolean {
  return [DATE, ...[...KEYED, ...ANEW, ...ALONE].map(({ path }) => path)].some(
    (path) => treeAt(stated, path) !== undefined,
  );
}

function audienceOf({ data }: EntryFile): Audience {
  const typed = typeof data === "object" && "for" in data ? data["for"] : undefined;
  return typed === "inspector" || typed === "archive" ? typed : "public";
}

const placeOf = ({ origin: { front, path } }: Tree) => front.placeOf(path);
const spotOf = ({ file, line, column }: Problem): string => `${file}:${line}:${column}`;

function whereIs(tree: Tree): string {
  const { file, line } = placeOf(tree);
  return `${file}:${line}`;
}
