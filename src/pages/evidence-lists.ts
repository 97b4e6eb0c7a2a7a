/** What the lists of open items, departures, measurements and hold points say. */
import type { HoldPointFile, MeasurementFile } from "../evidence/types.ts";
import type { Departure, OpenItem } from "../record/types.ts";
import type { Shown } from "./shown.ts";
import { traceIndex } from "./trace-index.ts";
import { HOLD_KIND } from "./verdict-words.ts";
import { inUnits } from "./words.ts";

/** Still open before closed; the oldest first. */
export function openItems(shown: Shown): OpenItem[] {
  const items = [...shown.evidence.openItems.values()].sort(byDay);
  return [...items.filter(({ closedIn }) => closedIn === undefined), ...items.filter(({ closedIn }) => closedIn !== undefined)];
}

/** Not yet accepted before accepted; the oldest first. */
export function departures(shown: Shown): Departure[] {
  const all = [...shown.evidence.departures.values()].sort(byDay);
  return [...all.filter(({ acceptedBy }) => acceptedBy === undefined), ...all.filter(({ acceptedBy }) => acceptedBy !== undefined)];
}

function byDay(a: { readonly day: string; readonly id: string }, b: { readonly day: string; readonly id: string }): number {
  return a.day < b.day ? -1 : a.day > b.day ? 1 : a.id < b.id ? -1 : 1;
}

/** What an open item must be done before: a hold point of its own, or every one of a kind; undefined where it says neither. */
export function before(shown: Shown, item: OpenItem): { readonly holdPoint: string } | { readonly words: string } | undefined {
  if (item.before === undefined) return undefined;
  if (shown.evidence.holdPoints.has(item.before)) return { holdPoint: item.before };
  return { words: item.before in HOLD_KIND ? HOLD_KIND[item.before as keyof typeof HOLD_KIND] : item.before };
}

export function measurements(shown: Shown): readonly MeasurementFile[] {
  return traceIndex(shown).measurements;
}

/** How far off the drawing, with a sign and in the aircraft's units. */
export function offWords(shown: Shown, { measurement, off }: MeasurementFile): string {
  if (off === undefined) return "";
  const words = inUnits(off, measurement.found.unit, shown.record.aircraft.units);
  return off > 0 && !words.startsWith("0 ") ? `+${words}` : words;
}

const ORDER: { readonly [state in HoldPointFile["state"]]: number } = { reopened: 0, blocked: 1, ready: 2, ahead: 3, passed: 4 };

export function holdPoints(shown: Shown): HoldPointFile[] {
  return [...shown.evidence.holdPoints.values()].sort((a, b) => ORDER[a.state] - ORDER[b.state]);
}
