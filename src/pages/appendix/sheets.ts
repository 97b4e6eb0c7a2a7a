/** How the appendix is laid out: on one sheet, or on one for each assembly where the record is long. */
import type { BatchFile, JointFile } from "../../evidence/types.ts";
import type { Kind } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { anchor } from "../address.ts";
import { traceIndex } from "../evidence/trace-index.ts";

/** Joints and batches of one assembly. */
export interface Group {
  readonly assembly: string;
  readonly joints: readonly JointFile[];
  /** In the order they were mixed in. */
  readonly batches: readonly BatchFile[];
}

/** A page of the appendix; without an assembly the first, which holds all that is of no assembly. */
export interface Sheet {
  /** From the site's root. */
  readonly path: string;
  readonly assembly?: string;
  readonly groups: readonly Group[];
  /** Batches of no assembly. */
  readonly loose: readonly BatchFile[];
}

export const FIRST = "appendix.html";
/** More batches than a page of some 3 MB holds. */
export const MOST_ON_A_SHEET = 250;

/** The first sheet, and where there are many batches one for each assembly that has joints or batches. */
export const sheetsOf = (shown: Shown): readonly Sheet[] => shown.memo.once(shown, laidOut);

const isLong = ({ evidence }: Shown): boolean => evidence.batches.size > MOST_ON_A_SHEET;

/** Where its sheets stand: known of a short record before anything is looked up. */
export const sheetPathsOf = (shown: Shown): readonly string[] =>
  isLong(shown) ? sheetsOf(shown).map(({ path }) => path) : [FIRST];

/** Whether the evidence stands on more than one sheet, as that of a long record does. */
export const isOfMany = (shown: Shown): boolean => sheetsOf(shown).length > 1;

function laidOut(shown: Shown): readonly Sheet[] {
  const { groups, loose } = grouped(shown);
  if (!isLong(shown)) return [{ path: FIRST, groups, loose }];
  return [
    { path: FIRST, groups: [], loose },
    ...groups.map((group) => ({
      path: `appendix/${group.assembly}.html`,
      assembly: group.assembly,
      groups: [group],
      loose: [],
    })),
  ];
}

function grouped(shown: Shown): { readonly groups: readonly Group[]; readonly loose: readonly BatchFile[] } {
  const { record, evidence } = shown;
  const index = traceIndex(shown);
  const batches = new Map<string, BatchFile[]>(index.assemblies.map((id) => [id, []]));
  const loose: BatchFile[] = [];
  for (const { id } of index.batches) {
    const file = evidence.batches.get(id);
    if (file !== undefined) (batches.get(assemblyOf(shown, file) ?? "") ?? loose).push(file);
  }
  const groups = index.assemblies.map((assembly) => ({
    assembly,
    joints: (record.assemblies.get(assembly)?.joints ?? []).flatMap(({ id }) => evidence.joints.get(id) ?? []),
    batches: batches.get(assembly) ?? [],
  }));
  return { groups: groups.filter((group) => group.joints.length + group.batches.length > 0), loose };
}

/** That of its first joint, else that of its day. */
function assemblyOf(shown: Shown, { batch }: BatchFile): string | undefined {
  const [joint] = batch.joints.flatMap((id) => shown.evidence.joints.get(id)?.joint ?? []);
  return joint?.assembly ?? traceIndex(shown).entries.get(batch.entry)?.assembly;
}

/** Batches of groups and whatever others, each once, in the order they were mixed in. */
export function asMixed(
  shown: Shown,
  groups: readonly Pick<Group, "batches">[],
  others: readonly BatchFile[] = [],
): readonly BatchFile[] {
  const asked = new Map([...groups.flatMap(({ batches }) => batches), ...others].map((file) => [file.batch.id, file]));
  return traceIndex(shown).batches.flatMap(({ id }) => asked.get(id) ?? []);
}

/**
 * Batches of a sheet, those whose verdict needs to be read first apart from those that are shown or asked for nothing.
 */
export function apart(batches: readonly BatchFile[]): {
  readonly exceptions: readonly BatchFile[];
  readonly rest: readonly BatchFile[];
} {
  const isException = ({ verdict, recalls }: BatchFile): boolean =>
    recalls.length > 0 || verdict === "rejected" || verdict === "not shown" || verdict === "pending";
  return { exceptions: batches.filter(isException), rest: batches.filter((file) => !isException(file)) };
}

/** Where a joint or a batch stands in the appendix: `appendix.html#batch-B-014`. */
export function placeOf(shown: Shown, kind: Kind, id: string): string {
  return `${shown.memo.once(shown, sheetByAnchor).get(anchor(kind, id)) ?? FIRST}#${anchor(kind, id)}`;
}

function sheetByAnchor(shown: Shown): ReadonlyMap<string, string> {
  return new Map(
    sheetsOf(shown).flatMap(({ path, groups }) =>
      groups.flatMap(({ joints, batches }) => [
        ...joints.map(({ joint }) => [anchor("joint", joint.id), path] as const),
        ...batches.map(({ batch }) => [anchor("batch", batch.id), path] as const),
      ]),
    ),
  );
}
