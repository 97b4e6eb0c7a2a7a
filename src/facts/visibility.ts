/** What one edition may see of a record: the sets and questions by which every field is decided. */
import type { Withheld } from "./build/aircraft.ts";
import type { Audience, FilePath, Passage, Ref } from "./values.ts";

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
  readonly departures: ReadonlySet<string>;
  readonly openItems: ReadonlySet<string>;
  /** Files that stand in the record and that the edition must not name. */
  readonly hiddenFiles: ReadonlySet<FilePath>;
  /** Pieces that are shown, but whose test was noted where the edition does not look. */
  readonly blindPieces: ReadonlySet<string>;
  /** Ids of people in the record to the ids that stand for them in the edition. */
  readonly people: ReadonlyMap<string, string>;
}

/** Whether the edition shows a thing at all. */
export function isShown({ kind, id }: Ref, seer: Omit<Visibility, "prose">): boolean {
  switch (kind) {
    case "entry":
      return seer.entries.has(id);
    case "batch":
      return seer.batches.has(id);
    case "piece":
      return seer.pieces.has(id);
    case "lot":
      return seer.lots.has(id);
    case "trial":
      return seer.trials.has(id);
    case "departure":
      return seer.departures.has(id);
    case "open item":
      return seer.openItems.has(id);
    default:
      return true;
  }
}
