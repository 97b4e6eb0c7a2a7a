/** History of a part: what the record tells of an assembly or a joint by date, from timber to signature. */
import { lotsOf } from "../../evidence/batch/lots.ts";
import type { Entry, Lot, Ref } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "../evidence/trace-index.ts";
import { storyOf } from "../story/story.ts";
import { type HistoryLine, linesOf } from "./history-lines.ts";

/** One day of a part: lots that came, or an entry with what it brought. */
export interface HistoryDay {
  readonly day: string;
  readonly lots: readonly Lot[];
  readonly entry?: Entry;
  /** Whether the entry is told at length: it is of the part itself and not only of something within it. */
  readonly isOwn: boolean;
  readonly lines: readonly HistoryLine[];
}

/** So many days that a page of them comes fast; more are told on pages after it. */
export const MOST_DAYS = 56;

/** The address of the history of a part; a history in several pages has its first there, and the others below. */
export function historyPath({ kind, id }: Ref, page = 1): string {
  return page === 1 ? `history/${kind}/${id}.html` : `history/${kind}/${id}/${page}.html`;
}

export const assemblyHistory = (shown: Shown, id: string): readonly HistoryDay[] => shown.memo.within(shown, id, made);

function made(shown: Shown, id: string): HistoryDay[] {
  const { record, evidence } = shown;
  const { entriesOf, homesOf } = storyOf(shown);
  const within = new Set(evidence.assemblies.get(id)?.within);
  const joints = [...within].flatMap((one) => record.assemblies.get(one)?.joints ?? []);
  const lots = new Set([
    ...joints.flatMap((joint) => lotsInJoint(shown, joint.id)),
    ...record.entries.flatMap(({ fitted }) =>
      fitted.flatMap(({ lot, assembly }) => (within.has(assembly) ? [lot] : [])),
    ),
    ...evidence.coats.flatMap(({ coat }) => (within.has(coat.assembly) ? coat.lots : [])),
  ]);
  const told = new Set(entriesOf.get(id));
  for (const { entry } of recallsOf(shown, lots)) if (!told.has(entry)) told.add(entry);
  const days = [...told].map((entry): HistoryDay => {
    const isOwn = homesOf.get(entry.id)?.has(id) === true;
    return { day: entry.day, lots: [], entry, isOwn, lines: linesOf(shown, entry) };
  });
  return inOrder(shown, lots, days);
}

export function jointHistory(shown: Shown, id: string): HistoryDay[] {
  const days = (linesOfJoints(shown).get(id) ?? []).map(({ entry, lines }): HistoryDay => {
    return { day: entry.day, lots: [], entry, isOwn: lines.some(({ isWork }) => isWork), lines };
  });
  return inOrder(shown, new Set(lotsInJoint(shown, id)), days);
}

function inOrder({ record }: Shown, lots: ReadonlySet<string>, days: readonly HistoryDay[]): HistoryDay[] {
  const came = new Map<string, Lot[]>();
  for (const id of lots) {
    const lot = record.lots.get(id);
    if (lot !== undefined) came.set(lot.received, [...(came.get(lot.received) ?? []), lot]);
  }
  const arrivals = [...came].map(([day, all]): HistoryDay => ({ day, lots: all, isOwn: false, lines: [] }));
  return [...arrivals, ...days].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

/** All that are or were in it. */
function lotsInJoint({ evidence }: Shown, id: string): string[] {
  const file = evidence.joints.get(id);
  if (file === undefined) return [];
  const batches = [...file.batches, ...file.superseded].flatMap((batch) => evidence.batches.get(batch) ?? []);
  return [...new Set([...batches.flatMap(lotsOf), ...file.lots])];
}

function recallsOf(shown: Shown, lots: ReadonlySet<string>): { readonly entry: Entry }[] {
  const { entries } = traceIndex(shown);
  return [...lots].flatMap((id) =>
    (shown.evidence.lots.get(id)?.recalls ?? []).flatMap((recall) => {
      const entry = entries.get(recall.entry);
      return entry === undefined ? [] : [{ entry }];
    }),
  );
}

interface OfJoint {
  readonly entry: Entry;
  readonly lines: readonly HistoryLine[];
}

/** By joint the entries that brought something to it, with that alone. */
const linesOfJoints = (shown: Shown): ReadonlyMap<string, readonly OfJoint[]> => shown.memo.once(shown, byJoint);

function byJoint(shown: Shown): ReadonlyMap<string, readonly OfJoint[]> {
  const all = new Map<string, OfJoint[]>();
  for (const entry of shown.record.entries) {
    const here = new Map<string, HistoryLine[]>();
    for (const line of linesOf(shown, entry))
      for (const joint of new Set(line.joints)) here.set(joint, [...(here.get(joint) ?? []), line]);
    for (const [joint, lines] of here) all.set(joint, [...(all.get(joint) ?? []), { entry, lines }]);
  }
  return all;
}
