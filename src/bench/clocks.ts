/** Where the clock of the phone went back during a session: from then on it is another, and nobody knows by how much. */
import { type BenchEvent, inOrder } from "./event.ts";

/** Of each tap, how often the clock had gone back by then. */
export function clocksIn(events: readonly BenchEvent[]): ReadonlyMap<string, number> {
  const clocks = new Map<string, number>();
  let [before, clock] = [Number.NEGATIVE_INFINITY, 0];
  for (const { id, instant } of inOrder(events)) {
    if (instant < before) clock += 1;
    before = instant;
    clocks.set(id, clock);
  }
  return clocks;
}

/** The greatest step back between one tap and the next, s. */
export function wentBack(events: readonly BenchEvent[]): number {
  const all = inOrder(events);
  const steps = all.map((event, at) => (all[at - 1]?.instant ?? event.instant) - event.instant);
  return Math.max(0, Math.ceil(Math.max(0, ...steps) / 1000));
}
