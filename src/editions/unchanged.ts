/**
 * `before` itself where `after` says the same, and the lists of `before` that `after` only copied: what an edition
 * leaves as it is must not take the room of a second record. `after` must have been made just now: its lists are exchanged.
 */
export function unchanged<T extends object>(before: T, after: T): T {
  if (before === after) return before;
  const were = before as Record<string, unknown>;
  const are = after as Record<string, unknown>;
  const keys = Object.keys(are);
  let same = keys.length === Object.keys(were).length;
  for (const key of keys) {
    if (are[key] === were[key] && Object.hasOwn(were, key)) continue;
    if (isSameList(were[key], are[key])) are[key] = were[key];
    else same = false;
  }
  return same ? before : after;
}

/** `before` itself where `after` holds the same things in the same order. */
export function unchangedList<T>(before: readonly T[], after: readonly T[]): readonly T[] {
  return isSameList(before, after) ? before : after;
}

function isSameList(before: unknown, after: unknown): boolean {
  return (
    Array.isArray(before) &&
    Array.isArray(after) &&
    before.length === after.length &&
    before.every((one, at) => one === after[at])
  );
}
