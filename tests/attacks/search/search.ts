/** Random valid records, each with one random edit: which edits better a verdict, and whether they may. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { alter } from "../alter.ts";
import { type Attack, attacksIn } from "../attack.ts";
import type { Texts, Workbench } from "../workbench.ts";
import { Chance } from "./chance.ts";
import { type Edit, edited, type EditKind, KINDS } from "./edits.ts";
import { bettered, type Verdicts, verdictsOf } from "./verdicts.ts";

const CASES = new URL("../cases/", import.meta.url).pathname;

export interface Found {
  readonly seed: number;
  readonly edit: Omit<Edit, "texts">;
  /** The attack that the record began with. */
  readonly from: string;
  readonly better: readonly string[];
}

export interface Result {
  /** Edits that left a record that builds, by kind. */
  readonly tried: ReadonlyMap<EditKind, number>;
  readonly found: readonly Found[];
}

/** Edits after which every fact is still there. */
const STAYS: ReadonlySet<EditKind> = new Set(["amend", "strike", "reorder"]);

const MOST_TRIES = 40;
/** Edits, one at a time, of one random record: to make it costs more than to edit it. */
const EDITS_OF_ONE = 12;

/** Goes on until so many edits left a record that builds. */
export async function search(
  bench: Workbench,
  runs: number,
  first = 0,
  tell: (found: Found) => void = () => undefined,
): Promise<Result> {
  const seeds = readdirSync(CASES)
    .sort()
    .flatMap((name) => attacksIn(join(CASES, name)))
    .filter(({ expected }) => !(expected[0] ?? "").startsWith("problem"));
  const tried = new Map<EditKind, number>(KINDS.map((kind) => [kind, 0]));
  const found: Found[] = [];
  let ground: Ground | undefined;
  for (let run = first; run < first + runs; run += 1) {
    const seed = Math.floor(run / EDITS_OF_ONE);
    if (ground?.seed !== seed) ground = await groundOf(bench, seeds, seed);
    const one = await tryOne(bench, ground, run);
    if (one === undefined) continue;
    tried.set(one.edit.kind, (tried.get(one.edit.kind) ?? 0) + 1);
    if (one.better.length === 0) continue;
    found.push(one);
    tell(one);
  }
  return { tried, found };
}

/** A random record, what it began with, and what is found of it. */
interface Ground {
  readonly seed: number;
  readonly from: string;
  readonly texts: Texts;
  readonly near: ReadonlySet<string>;
  readonly before: Verdicts;
}

async function groundOf(bench: Workbench, attacks: readonly Attack[], seed: number): Promise<Ground> {
  const chance = new Chance(seed);
  const from = chance.of(attacks);
  if (from === undefined) throw new Error("there are no attacks to begin with");
  const changed = bench.changed((folder) => alter(folder, from.changes));
  const near = new Set([...changed.keys()].filter((file) => isNear(bench, file, changed)));
  const texts = await grown(bench, chance, changed);
  const read = await bench.read(texts);
  if ("problems" in read) throw new Error(`the attack "${from.title}" does not build`);
  return { seed, from: from.title, texts, near, before: verdictsOf(read.record) };
}

async function tryOne(bench: Workbench, ground: Ground, run: number): Promise<Found | undefined> {
  const chance = new Chance(Math.imul(run, 7919) + 104_729);
  const kind = KINDS[run % KINDS.length] ?? "delete";
  for (let i = 0; i < MOST_TRIES; i += 1) {
    const edit = edited(chance, ground.texts, kind, ground.near);
    const read = edit && (await bench.read(edit.texts));
    if (edit === undefined || read === undefined || "problems" in read) continue;
    const { texts: _, ...told } = edit;
    const better = bettered(ground.before, verdictsOf(read.record), STAYS.has(kind) ? "rank" : "claim");
    return { seed: run, edit: told, from: ground.from, better };
  }
  return undefined;
}

/** What the attack changed, and the entry of the gluing. */
const isNear = (bench: Workbench, file: string, changed: Texts): boolean =>
  file.endsWith("-caps.md") || bench.base.get(file) !== changed.get(file);

/** Two records in three with an edit more, so that they are none of those that people thought of. */
async function grown(bench: Workbench, chance: Chance, texts: Texts): Promise<Texts> {
  let grown = texts;
  for (let left = chance.below(3); left > 0; left -= 1) {
    const edit = edited(chance, grown, chance.of(["add", "alter", "alter", "delete"] as const) ?? "alter");
    const read = edit && (await bench.read(edit.texts));
    if (edit !== undefined && read !== undefined && !("problems" in read)) grown = edit.texts;
  }
  return grown;
}
