/** Amendments with only what an edition shows of them. */
import type { Amendment, Change, Ref, Said } from "../record/types.ts";
import type { Veil } from "./veil.ts";

export const NOT_SHOWN = "something this edition does not show";

/**
 * Of the amendments that a shown entry makes, those of shown entries. A change of a hidden thing goes, first text and all,
 * and leaves only that there is one; a hidden thing named in a change becomes words. `person` gives the id that stands for someone.
 */
export function veiledAmendments(all: readonly Amendment[], veil: Veil, person: (id: string) => string): Amendment[] {
  return all
    .filter(({ entry }) => veil.entries.has(entry))
    .map((amendment) => {
      const changes = amendment.changes
        .filter((change) => isOpen(change, veil))
        .map((change) => masked(change, veil, person));
      return { ...amendment, changes, withheld: changes.length < amendment.changes.length };
    });
}

function isOpen({ about, needs, audience }: Change, veil: Veil): boolean {
  return veil.sees(audience) && isShown(about, veil) && needs.every((ref) => isShown(ref, veil));
}

function masked(change: Change, veil: Veil, person: (id: string) => string): Change {
  const words = (said: Said): Said =>
    said.map((part) =>
      typeof part === "string"
        ? part
        : part.kind === "person"
          ? { ...part, id: person(part.id) }
          : isShown(part, veil)
            ? part
            : NOT_SHOWN,
    );
  return { ...change, ...(change.was && { was: words(change.was) }), ...(change.is && { is: words(change.is) }) };
}

function isShown({ kind, id }: Ref, veil: Veil): boolean {
  switch (kind) {
    case "entry":
      return veil.entries.has(id);
    case "batch":
      return veil.batches.has(id);
    case "piece":
      return veil.pieces.has(id);
    case "lot":
      return veil.lots.has(id);
    case "trial":
      return veil.trials.has(id);
    case "departure":
      return veil.departures.has(id);
    case "open item":
      return veil.openItems.has(id);
    default:
      return true;
  }
}
