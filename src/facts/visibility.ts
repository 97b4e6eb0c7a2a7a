/** What one edition may see of a record: the sets and questions by which every field is decided. */
import type { Audience, FilePath, Kind, Passage, Ref, Withheld } from "./values.ts";

/** Stands for a person whom the edition does not name; no id can be this. */
export const UNNAMED = "?";
/** Stands for an entry, or another thing, that the edition does not show; no id can be this. */
export const WITHHELD = "?";

export interface Visibility {
  readonly edition: Audience;
  /** Whether something marked for this audience is shown. */
  readonly sees: (audience: Audience) => boolean;
  /** Whether a kind of fact is shown that public withholds by default. */
  readonly may: (kind: Withheld) => boolean;
  /** Passages as the edition shows them, of a file in this folder of the record. */
  readonly prose: (body: readonly Passage[], folder: string) => readonly Passage[];
  readonly entries: ReadonlySet<string>;
  readonly batches: ReadonlySet<string>;
  readonly pieces: ReadonlySet<string>;
  readonly lots: ReadonlySet<string>;
  readonly trials: ReadonlySet<string>;
  readonly logs: ReadonlySet<string>;
  /** Tables of earlier hours. */
  readonly earlier: ReadonlySet<string>;
  readonly departures: ReadonlySet<string>;
  readonly openItems: ReadonlySet<string>;
  /** Files that stand in the record and that the edition must not name. */
  readonly hiddenFiles: ReadonlySet<FilePath>;
  /** Pieces that are shown, but whose test was noted where the edition does not look. */
  readonly blindPieces: ReadonlySet<string>;
  /** Ids of people in the record to the ids that stand for them in the edition. */
  readonly people: ReadonlyMap<string, string>;
}

type Seer = Omit<Visibility, "prose">;

const always = (): boolean => true;

/** What no edition hides is shown always; a person by the name that `people` has for the edition. */
const SHOWN: { readonly [kind in Kind]: (id: string, seer: Seer) => boolean } = {
  entry: (id, { entries }) => entries.has(id),
  batch: (id, { batches }) => batches.has(id),
  piece: (id, { pieces }) => pieces.has(id),
  lot: (id, { lots }) => lots.has(id),
  trial: (id, { trials }) => trials.has(id),
  departure: (id, { departures }) => departures.has(id),
  "open item": (id, { openItems }) => openItems.has(id),
  "climate log": (id, { logs }) => logs.has(id),
  "earlier hours": (id, { earlier }) => earlier.has(id),
  assembly: always,
  joint: always,
  "hold point": always,
  adhesive: always,
  finish: always,
  procedure: always,
  person: always,
};

/** Whether the edition shows a thing at all. */
export const isShown = ({ kind, id }: Ref, seer: Seer): boolean => SHOWN[kind](id, seer);
