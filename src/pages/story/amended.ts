/** Amendments as pages tell them: on the entry that was amended, on the one that amends it, and on what changed. */
import type { Amendment, Change, Ref } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";

export interface Changed {
  readonly amendment: Amendment;
  readonly change: Change;
}

interface Index {
  readonly ofEntry: ReadonlyMap<string, readonly Amendment[]>;
  readonly ofThing: ReadonlyMap<string, readonly Changed[]>;
}

/** What later entries amend in an entry, the oldest first. */
export function amendmentsTo(shown: Shown, entry: string): readonly Amendment[] {
  return shown.memo.once(shown, indexed).ofEntry.get(entry) ?? [];
}

/** What was changed of a batch, a piece, a departure or an open item. */
export function changesOf(shown: Shown, about: Ref): readonly Changed[] {
  return shown.memo.once(shown, indexed).ofThing.get(keyOf(about)) ?? [];
}

const keyOf = ({ kind, id }: Ref): string => `${kind} ${id}`;

function indexed({ record }: Shown): Index {
  const ofEntry = new Map<string, Amendment[]>();
  const ofThing = new Map<string, Changed[]>();
  for (const amendment of record.entries.flatMap(({ amendments }) => amendments)) {
    ofEntry.set(amendment.entry, [...(ofEntry.get(amendment.entry) ?? []), amendment]);
    for (const change of amendment.changes)
      ofThing.set(keyOf(change.about), [...(ofThing.get(keyOf(change.about)) ?? []), { amendment, change }]);
  }
  return { ofEntry, ofThing };
}
