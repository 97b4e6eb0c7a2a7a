/** Amendments with only what an edition shows of them. */
import type { Amendment, Change, Ref, Said } from "../facts/types.ts";
import type { Visibility } from "./visibility.ts";

const NOT_SHOWN = "something this edition does not show";

/**
 * Of the amendments that a shown entry makes, those of shown entries. A change of a hidden thing goes, first text and all,
 * and leaves only that there is one; a hidden thing named in a change becomes words. `person` gives the id that stands for someone.
 */
export function redactedAmendments(
  all: readonly Amendment[],
  visibility: Visibility,
  person: (id: string) => string,
): Amendment[] {
  return all
    .filter(({ entry }) => visibility.entries.has(entry))
    .map((amendment) => {
      const changes = amendment.changes
        .filter((change) => isOpen(change, visibility))
        .map((change) => masked(change, visibility, person));
      return { ...amendment, changes, withheld: changes.length < amendment.changes.length };
    });
}

function isOpen({ about, needs, audience }: Change, visibility: Visibility): boolean {
  return visibility.sees(audience) && isShown(about, visibility) && needs.every((ref) => isShown(ref, visibility));
}

function masked(change: Change, visibility: Visibility, person: (id: string) => string): Change {
  const words = (said: Said): Said =>
    said.map((part) =>
      typeof part === "string"
        ? part
        : part.kind === "person"
          ? { ...part, id: person(part.id) }
          : isShown(part, visibility)
            ? part
            : NOT_SHOWN,
    );
  return { ...change, ...(change.was && { was: words(change.was) }), ...(change.is && { is: words(change.is) }) };
}

function isShown({ kind, id }: Ref, visibility: Visibility): boolean {
  switch (kind) {
    case "entry":
      return visibility.entries.has(id);
    case "batch":
      return visibility.batches.has(id);
    case "piece":
      return visibility.pieces.has(id);
    case "lot":
      return visibility.lots.has(id);
    case "trial":
      return visibility.trials.has(id);
    case "departure":
      return visibility.departures.has(id);
    case "open item":
      return visibility.openItems.has(id);
    default:
      return true;
  }
}
