/** Front matter held against its schema. What is sound in a file with problems is kept, so that the rest of the record can still be checked against it. */
import type * as z from "zod";
import type { Place, Problem } from "../../problem.ts";
import type { Data, FrontMatter, Path } from "../text/yaml.ts";
import { issuesOf, problemsOf, valueAt } from "./issues.ts";

export interface Parsed<S> {
  readonly spec: S | undefined;
  readonly problems: readonly Problem[];
  /** Where the value at a path of `spec` stands in the file. */
  readonly placeOf: (path: Path) => Place;
  readonly typedAt: (path: Path) => string;
  readonly usualFrom: (path: Path) => string | undefined;
}

/** Texts put in the place of required keys that are missing or wrong, only to check the rest. */
export type StandIns = { readonly [key: string]: string };

export function parse<T extends z.ZodType>(
  schema: T,
  front: FrontMatter,
  standIns: StandIns = {},
): Parsed<z.output<T>> {
  const result = schema.safeParse(front.data);
  const { placeOf, typedAt, usualFrom } = front;
  if (result.success) return { spec: result.data, problems: [], placeOf, typedAt, usualFrom };
  const issues = issuesOf(result.error.issues, front.data);
  const problems = issues.flatMap((issue) => problemsOf(issue, schema, front));
  const { spec, original } = salvaged(schema, front.data, issues, standIns);
  return {
    spec,
    problems,
    placeOf: (path) => front.placeOf(original(path)),
    typedAt: (path) => front.typedAt(original(path)),
    usualFrom: (path) => front.usualFrom(original(path)),
  };
}

const ROUNDS = 8;

function salvaged<T extends z.ZodType>(schema: T, data: Data, issues: readonly z.core.$ZodIssue[], standIns: StandIns) {
  const removed = new Set<string>();
  let left: readonly z.core.$ZodIssue[] = issues;
  let pruned = prune(data, removed, standIns);
  for (let round = 0; round < ROUNDS; round++) {
    for (const issue of left) {
      for (const path of faulty(issue)) {
        const cut = cutFor(pruned.data, path);
        if (cut.length === 0) return { spec: undefined, original: pruned.original };
        removed.add(keyOf(pruned.original(cut)));
      }
    }
    pruned = prune(data, removed, standIns);
    const result = schema.safeParse(pruned.data);
    if (result.success) return { spec: result.data, original: pruned.original };
    left = issuesOf(result.error.issues, pruned.data);
  }
  return { spec: undefined, original: pruned.original };
}

function faulty(issue: z.core.$ZodIssue): Path[] {
  return issue.code === "unrecognized_keys" ? issue.keys.map((key) => [...issue.path, key]) : [issue.path];
}

/** What must go so that an issue goes: the value, or the block that lacks it. */
function cutFor(data: Data, path: Path): Path {
  return valueAt(data, path) === undefined ? path.slice(0, -1) : path;
}

function keyOf(path: Path): string {
  return JSON.stringify(path);
}

interface Pruned {
  readonly data: Data;
  /** A path of the pruned data as a path of the whole. */
  readonly original: (path: Path) => Path;
}

function prune(data: Data, removed: ReadonlySet<string>, standIns: StandIns): Pruned {
  const kept = new Map<string, number[]>();
  const copy = (value: Data, path: Path, newPath: Path): Data => {
    if (typeof value === "string") return value;
    if (Array.isArray(value)) {
      const items = value as readonly Data[];
      const indexes = items.map((_, index) => index).filter((index) => !removed.has(keyOf([...path, index])));
      kept.set(keyOf(newPath), indexes);
      return indexes.map((index, now) => copy(items[index] ?? "", [...path, index], [...newPath, now]));
    }
    const entries = Object.entries(value).filter(([key]) => !removed.has(keyOf([...path, key])));
    return Object.fromEntries(entries.map(([key, part]) => [key, copy(part, [...path, key], [...newPath, key])]));
  };
  const pruned = copy(data, [], []);
  const whole = typeof pruned === "object" && !Array.isArray(pruned) ? { ...standIns, ...pruned } : pruned;
  return {
    data: whole,
    original: (path) =>
      path.map((step, depth) =>
        typeof step === "number" ? (kept.get(keyOf(path.slice(0, depth)))?.[step] ?? step) : step,
      ),
  };
}
