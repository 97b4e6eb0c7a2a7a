/** What later entries changed of a thing, as cautions: they decide nothing, since everything is reckoned from the values as amended. */
import type { Amendment, Batch, Change, Ref, Said } from "../facts/types.ts";
import type { Amended } from "./codes/joints.ts";
import type { Finder } from "./finding.ts";
import { indexBy, type RecordIndex } from "./record-index.ts";
import type { Finding } from "./types.ts";

export interface Changed {
  readonly amendment: Amendment;
  readonly change: Change;
}

export const amendedFindings = (index: RecordIndex, thing: Ref, find: Finder): Finding[] =>
  changesOf(index, thing).map((changed) => amendedFinding(changed, find));

export function amendedFinding(changed: Changed, find: Finder): Finding {
  const { about } = changed.change;
  return find(codeOf(changed.change), "caution", amendedValues(changed), {
    alsoOn: [about, ...restsOnChange(changed)],
  });
}

function codeOf({ fixed, worsens }: Change) {
  if (fixed) return "amended/fixed";
  return worsens ? "amended/worsens" : "amended/changed";
}

/** A batch and its pieces. */
const glueIn = ({ id, pieces }: Pick<Batch, "id" | "pieces">): Ref[] => [
  { kind: "batch", id },
  ...pieces.map((piece): Ref => ({ kind: "piece", id: piece.id })),
];

/** Pieces of a batch that an amendment declared, each with its day. */
export function declaredLater(index: RecordIndex, { pieces }: Pick<Batch, "pieces">) {
  return pieces.flatMap(({ id }) =>
    changesOf(index, { kind: "piece", id })
      .filter(({ change: { fact, value, was } }) => value === undefined && was === undefined && fact === `Piece ${id}`)
      .map((changed) => ({ piece: id, day: changed.amendment.day, restsOn: restsOnChange(changed) })),
  );
}

/** Changes of a thing, in the order of the record, but for those of a value that names somebody. */
export const changesOf = (index: RecordIndex, about: Ref): readonly Changed[] =>
  index.memo.once(index, changesIn).get(keyOf(about)) ?? NONE;

const NONE: readonly Changed[] = [];

/** Most records, for most of their time, hold no amendment that changes anything. */
export const isNothingChanged = (index: RecordIndex): boolean => index.memo.once(index, changesIn).size === 0;

/** Changes of a batch and of its pieces. */
export const changesOfGlue = (index: RecordIndex, batch: Batch): readonly Changed[] =>
  index.memo.within(index, batch, glueChanged);

const glueChanged = (index: RecordIndex, batch: Batch): readonly Changed[] =>
  glueIn(batch).flatMap((thing) => changesOf(index, thing));

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

function changesIn({ record }: RecordIndex): ReadonlyMap<string, readonly Changed[]> {
  const changes = record.entries
    .flatMap(({ amendments }) => amendments)
    .flatMap((amendment) => amendment.changes.map((change) => ({ amendment, change })))
    .filter(({ change }) => !namesSomebody(change));
  return indexBy(changes, ({ change }) => keyOf(change.about));
}

const keyOf = ({ kind, id }: Ref): string => `${kind} ${id}`;
/** Of a whole fact it is told that somebody stood in it, and not who: editions differ in that. */
const textOf = (said: Said): string =>
  said.map((part) => (typeof part === "string" ? part : part.kind === "person" ? "someone" : part.id)).join("");
/** The things that stand in it. */
export const refsIn = (said: Said = []): Ref[] => said.flatMap((part) => (typeof part === "string" ? [] : [part]));
