import { DAY_MS } from "../../facts/quantity/conversions.ts";
import type { SealedSince, Shown } from "../../editions/shown.ts";
import type { Day } from "../../facts/types.ts";

export interface Sealed extends SealedSince {
  /** From the date of what was sealed to the day of the seal. */
  readonly days: number;
  readonly isLate: boolean;
}

/**
 * Common practice, no source: a logbook is written up within the month. A later seal says little of what was known on
 * the day.
 */
const LATE_DAYS = 31;

/**
 * Since which seal all of some entries are unchanged: the latest of their seals, counted from the latest of their days.
 * Undefined where no seal is set, none of the entries is shown, or the list of seals is not whole.
 */
export function sealedSince(shown: Shown, entries: readonly string[]): Sealed | "not sealed" | undefined {
  const since = shown.seal?.since;
  if (since === undefined) return undefined;
  const dayOf = shown.memo.once(shown, daysOf);
  const last = entries
    .flatMap((id) => dayOf.get(id) ?? [])
    .sort()
    .at(-1);
  if (last === undefined) return undefined;
  const each = entries.map((id) => since.get(id));
  let latest: SealedSince | undefined;
  for (const one of each) {
    if (one === undefined) return "not sealed";
    if (latest === undefined || one.number > latest.number) latest = one;
  }
  if (latest === undefined) return undefined;
  const count = Math.round((Date.parse(latest.date) - Date.parse(last)) / DAY_MS);
  return { ...latest, days: count, isLate: count > LATE_DAYS };
}

const daysOf = ({ record }: Shown): ReadonlyMap<string, Day> => new Map(record.entries.map(({ id, day }) => [id, day]));
