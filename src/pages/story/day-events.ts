/** What a day's entry brought besides its story, as marks for a timeline and a list. */
import type { Entry, FilePath, Ref } from "../../facts/types.ts";
import type { Marked } from "../evidence/marked.ts";
import type { Shown } from "../../editions/shown.ts";
import { batchMark, stagesOpened } from "../evidence/verdict-words.ts";
import { counted } from "../../words/lists.ts";

export type Row = "Batches" | "Pieces broken" | "Departures" | "Open items" | "Taken out" | "Put on" | "Inspections";

export const ROWS: readonly Row[] = [
  "Inspections",
  "Taken out",
  "Open items",
  "Departures",
  "Pieces broken",
  "Put on",
  "Batches",
];

export interface Happening {
  readonly row: Row;
  readonly mark: Marked;
  /** The word beside the mark. */
  readonly word: string;
  readonly what: string;
  readonly about: Ref;
  /** What the fact itself says of it: why, or by whom. */
  readonly says?: string;
  /** The paper that it stands on. */
  readonly scan?: FilePath;
  /** Pieces of a trial stand with it and on no part's line of time. */
  readonly isOfTrial?: boolean;
}

/** A day as it is told on the page of an assembly. */
export interface Told {
  readonly entry: Entry;
  readonly minutes: number;
  readonly dayEvents: readonly Happening[];
}

/**
 * In the order of the rows of an entry; pieces of one batch with one verdict said together. Reckoned once for an
 * edition: every assembly around an entry tells of it.
 */
export function dayEvents({ id }: Entry, shown: Shown): readonly Happening[] {
  return shown.memo.once(shown, eventsOfEntries).get(id) ?? [];
}

function eventsOfEntries(shown: Shown): ReadonlyMap<string, readonly Happening[]> {
  return new Map(
    shown.record.entries.map((entry) => [
      entry.id,
      gathered([
        ...glued(entry, shown),
        ...broken(entry, shown),
        ...putOn(entry, shown),
        ...said(entry, shown),
        ...takenOut(entry),
        ...inspected(entry, shown),
      ]),
    ]),
  );
}

function glued(entry: Entry, { evidence }: Shown): Happening[] {
  return entry.batches.map(({ id }) => {
    const { mark, word } = batchMark(evidence.batches.get(id));
    return { row: "Batches", mark, word, what: `Batch ${id}`, about: { kind: "batch", id } };
  });
}

function broken(entry: Entry, { evidence }: Shown): Happening[] {
  return entry.tests.map(({ piece }) => {
    const file = evidence.pieces.get(piece);
    const verdict = file?.verdict ?? "inconclusive";
    return {
      ...(file?.piece.trial !== undefined && { isOfTrial: true }),
      row: "Pieces broken",
      mark: verdict,
      word: verdict,
      what: `Piece ${piece}`,
      about: { kind: "piece", id: piece },
    };
  });
}

/** Coats of one product with one verdict said together. */
function putOn({ id }: Entry, { evidence, record }: Shown): Happening[] {
  const files = evidence.coats.filter(({ coat }) => coat.entry === id);
  const groups = new Set(files.map(({ coat, verdict }) => `${coat.finish} ${verdict}`));
  return [...groups].flatMap((group) => {
    const alike = files.filter(({ coat, verdict }) => `${coat.finish} ${verdict}` === group);
    const [first] = alike;
    if (first === undefined) return [];
    const { coat, verdict } = first;
    const title = record.finishes.get(coat.finish)?.title ?? coat.finish;
    const what = alike.length === 1 ? `Coat ${coat.coat} of ${title}` : `${counted(alike.length, "coat")} of ${title}`;
    return [{ row: "Put on", mark: verdict, word: verdict, what, about: { kind: "finish", id: coat.finish } }];
  });
}

function said(entry: Entry, { evidence: { openItems } }: Shown): Happening[] {
  const item = (id: string) => ({ what: id, about: { kind: "open item", id } as const });
  return [
    ...entry.departures.map(({ id }) => ({
      ...marked("Departures", "departure"),
      what: id,
      about: { kind: "departure", id } as const,
    })),
    ...entry.raised.map(({ id }) => ({ ...marked("Open items", "raised"), ...item(id) })),
    ...entry.closed.filter((id) => openItems.has(id)).map((id) => ({ ...marked("Open items", "closed"), ...item(id) })),
  ];
}

function takenOut({ recalls, rejections, reworks }: Entry): Happening[] {
  return [
    ...recalls.map(({ lot, why }) => ({
      ...marked("Taken out", "recall", "recalled"),
      what: `Lot ${lot}`,
      about: { kind: "lot", id: lot } as const,
      says: why,
    })),
    ...rejections.map(({ batch, why }) => ({
      ...marked("Taken out", "rejected", "rejected by the builder"),
      what: `Batch ${batch}`,
      about: { kind: "batch", id: batch } as const,
      says: why,
    })),
    ...reworks.flatMap(({ joints, stages, why }) =>
      joints.map((id) => ({
        ...marked("Taken out", "rework", "glue taken out"),
        what: `Joint ${id}${stages === undefined ? "" : stagesOpened(stages)}`,
        about: { kind: "joint", id } as const,
        says: why,
      })),
    ),
  ];
}

const marked = (row: Row, mark: Marked, word: string = mark): Pick<Happening, "row" | "mark" | "word"> => ({
  row,
  mark,
  word,
});

function inspected(entry: Entry, { evidence, nameOf }: Shown): Happening[] {
  return entry.inspections.map(({ holdPoint, result, by, reference, remarks, scan }) => ({
    ...(scan !== undefined && { scan }),
    row: "Inspections",
    mark: result,
    word: result,
    what: evidence.holdPoints.get(holdPoint)?.holdPoint.title ?? holdPoint,
    about: { kind: "hold point", id: holdPoint },
    says: [nameOf(by), ...[reference, remarks].flatMap((one) => one ?? [])].join(", "),
  }));
}

/** Pieces of one batch with one verdict said together: `3 pieces of B-014`. Everything else as it is. */
function gathered(all: readonly Happening[]): Happening[] {
  const groups = new Map<Happening | string, Happening[]>();
  const batchOf = (piece: string): string => piece.slice(0, piece.lastIndexOf("/"));
  for (const one of all) {
    const key = one.row === "Pieces broken" ? `${batchOf(one.about.id)} ${one.mark} ${one.isOfTrial}` : one;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined || group.length === 1) return group;
    return [
      {
        ...first,
        what: `${counted(group.length, "piece")} of ${batchOf(first.about.id)}`,
        about: { kind: "batch" as const, id: batchOf(first.about.id) },
      },
    ];
  });
}
