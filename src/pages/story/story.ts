/**
 * What many story pages need, gathered once for an edition: entries by assembly, hours as lines, the tree of
 * assemblies.
 */
import { defined } from "../../defined.ts";
import type { Worked } from "../../reckoning/hours/hours.ts";
import type { Assembly, Entry, Record } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";

export interface WorkLine extends Worked {
  readonly who: string;
  readonly task: string;
  /** None where a table from before the record names none. */
  readonly assembly?: string;
}

interface Branch {
  readonly assembly: Assembly;
  readonly depth: number;
}

export interface Story {
  readonly work: readonly WorkLine[];
  /** The assemblies that an entry itself names, by its hours, its batches and as its own. */
  readonly homesOf: ReadonlyMap<string, ReadonlySet<string>>;
  /** Entries that tell of an assembly or of one within it, oldest first. */
  readonly entriesOf: ReadonlyMap<string, readonly Entry[]>;
  /** Hours on an assembly and on those within it. */
  readonly workOf: ReadonlyMap<string, readonly WorkLine[]>;
  readonly children: ReadonlyMap<string, readonly Assembly[]>;
  /** All assemblies, each after its parent. */
  readonly tree: readonly Branch[];
  readonly position: ReadonlyMap<string, number>;
}

/** The story of an edition; reckoned when it is first asked for. */
export const storyOf = (shown: Shown): Story => shown.memo.once(shown, gather);

function gather({ record }: Shown): Story {
  const children = childrenOf(record);
  const upFrom = new Map(
    [...record.assemblies.keys()].map((id) => [id, lineageOf(record, id).map((assembly) => assembly.id)]),
  );
  const jointHome = new Map(
    [...record.assemblies.values()].flatMap(({ id, joints }) => joints.map((joint) => [joint.id, id] as const)),
  );
  const entriesOf = new Map<string, Entry[]>([...record.assemblies.keys()].map((id) => [id, []]));
  const workOf = new Map<string, WorkLine[]>([...record.assemblies.keys()].map((id) => [id, []]));
  const homesOf = new Map<string, ReadonlySet<string>>();
  const work: WorkLine[] = [];
  const add = (line: WorkLine): void => {
    work.push(line);
    for (const id of upFrom.get(line.assembly ?? "") ?? []) workOf.get(id)?.push(line);
  };
  earlierWork(record).forEach(add);
  for (const entry of record.entries) {
    const homes = homesIn(entry, jointHome);
    homesOf.set(entry.id, homes);
    const told = new Set([...homes].flatMap((id) => upFrom.get(id) ?? []));
    for (const id of told) entriesOf.get(id)?.push(entry);
    for (const { who, task, assembly, minutes } of entry.hours) {
      add({ day: entry.day, who, task, assembly, minutes });
    }
  }
  const position = new Map(record.entries.map(({ id }, at) => [id, at]));
  return { work, homesOf, entriesOf, workOf, children, tree: treeOf(record, children), position };
}

/** Hours of tables, oldest first. */
function earlierWork({ earlier }: Record): WorkLine[] {
  const lines = earlier.flatMap((table) =>
    table.lines.map(({ span: { from, to }, who, task, assembly, minutes }) =>
      defined({ day: from, through: from === to ? undefined : to, who, task, assembly, minutes }),
    ),
  );
  return lines.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

function homesIn(entry: Entry, jointHome: ReadonlyMap<string, string>): Set<string> {
  const homes = new Set([entry, ...entry.hours, ...entry.visits].flatMap(({ assembly }) => assembly ?? []));
  for (const joint of entry.batches.flatMap(({ joints }) => joints)) {
    const home = jointHome.get(joint);
    if (home !== undefined) homes.add(home);
  }
  return homes;
}

function childrenOf(record: Record): Map<string, Assembly[]> {
  const children = new Map<string, Assembly[]>();
  for (const assembly of record.assemblies.values()) {
    if (assembly.parent === undefined) continue;
    const siblings = children.get(assembly.parent);
    if (siblings === undefined) children.set(assembly.parent, [assembly]);
    else siblings.push(assembly);
  }
  return children;
}

function treeOf(record: Record, children: ReadonlyMap<string, readonly Assembly[]>): Branch[] {
  const under = (assembly: Assembly, depth: number): Branch[] => [
    { assembly, depth },
    ...(children.get(assembly.id) ?? []).flatMap((child) => under(child, depth + 1)),
  ];
  return [...record.assemblies.values()]
    .filter(({ parent }) => parent === undefined || !record.assemblies.has(parent))
    .flatMap((root) => under(root, 0));
}

/** An assembly and those it stands in, from itself to the outermost. */
export function lineageOf(record: Record, id: string): Assembly[] {
  const lineage: Assembly[] = [];
  for (
    let at = record.assemblies.get(id);
    at !== undefined && lineage.length <= record.assemblies.size;
    at = at.parent === undefined ? undefined : record.assemblies.get(at.parent)
  )
    lineage.push(at);
  return lineage;
}

/** Minutes that an entry notes. */
export function minutesOf(entry: Entry): number {
  return entry.hours.reduce((sum, { minutes }) => sum + minutes, 0);
}
