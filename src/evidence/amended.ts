/** What later entries changed of a thing, as cautions: they decide nothing, since everything is reckoned from the values as amended. */
import type { Amendment, Batch, Change, Record, Ref, Said } from "../facts/types.ts";
import type { Amended } from "./codes/joints.ts";
import type { Finder } from "./finding.ts";
import type { Finding } from "./types.ts";

export interface Changed {
  readonly amendment: Amendment;
  readonly change: Change;
}

const made = new WeakMap<Record, ReadonlyMap<string, readonly Changed[]>>();

/** Of one thing, or of several told of another that holds them. */
export function amendedFindings(record: Record, things: readonly Ref[], find: Finder): Finding[] {
  return things.flatMap((thing) =>
    changesOf(record, thing).map((changed) =>
      find(changed.change.fixed ? "amended/fixed" : "amended/changed", "caution", amendedValues(changed), {
        alsoOn: [thing, ...restsOnChange(changed)],
      }),
    ),
  );
}

/** A batch and its pieces. */
export const glueIn = ({ id, pieces }: Pick<Batch, "id" | "pieces">): Ref[] => [
  { kind: "batch", id },
  ...pieces.map((piece): Ref => ({ kind: "piece", id: piece.id })),
];

/** Pieces of a batch that an amendment declared, each with its day. */
export function declaredLater(record: Record, { pieces }: Pick<Batch, "pieces">) {
  return pieces.flatMap(({ id }) =>
    changesOf(record, { kind: "piece", id })
      .filter(({ change: { fact, value, was } }) => value === undefined && was === undefined && fact === `Piece ${id}`)
      .map((changed) => ({ piece: id, day: changed.amendment.day, restsOn: restsOnChange(changed) })),
  );
}

/** Changes of a thing, in the order of the record, but for those of a value that names somebody. */
export function changesOf(record: Record, about: Ref): Changed[] {
  return (changesIn(record).get(keyOf(about)) ?? []).filter(({ change }) => !namesSomebody(change));
}

/** What a sentence on a change rests on. */
export function restsOnChange({ amendment, change }: Changed): Ref[] {
  return [
    { kind: "entry", id: amendment.entry },
    { kind: "entry", id: amendment.by },
    ...change.needs,
    ...[...refsIn(change.was), ...refsIn(change.is)].filter(({ kind }) => kind !== "person"),
  ];
}

export function amendedValues({ amendment: { day, why }, change: { fact, value, was, is } }: Changed): Amended {
  return { day, why, fact, value, was: was && textOf(was), is: is && textOf(is) };
}

/** Who witnessed a test changes nothing that is reckoned; the entry's page tells it by the name that its edition shows. */
function namesSomebody({ value, was, is }: Change): boolean {
  return value !== undefined && [...refsIn(was), ...refsIn(is)].some(({ kind }) => kind === "person");
}

function changesIn(record: Record): ReadonlyMap<string, readonly Changed[]> {
  const known = made.get(record);
  if (known) return known;
  const index = new Map<string, Changed[]>();
  for (const amendment of record.entries.flatMap((entry) => entry.amendments)) {
    for (const change of amendment.changes)
      index.set(keyOf(change.about), [...(index.get(keyOf(change.about)) ?? []), { amendment, change }]);
  }
  made.set(record, index);
  return index;
}

const keyOf = ({ kind, id }: Ref): string => `${kind} ${id}`;
/** Of a whole fact it is told that somebody stood in it, and not who: editions differ in that. */
const textOf = (said: Said): string =>
  said.map((part) => (typeof part === "string" ? part : part.kind === "person" ? "someone" : part.id)).join("");
const refsIn = (said: Said = []): Ref[] => said.flatMap((part) => (typeof part === "string" ? [] : [part]));
