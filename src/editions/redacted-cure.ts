/** A cure with only what an edition shows of it. */
import { type Decision, type Decisions, show } from "../facts/decisions.ts";
import type { Cure } from "../evidence/types/cure.ts";
import type { Ref } from "../facts/types.ts";

/** Whether the test that ended it is shown, and whether all is told of a thing that it rests on. */
interface Seen {
  readonly test: boolean;
  readonly tells: (ref: Ref) => boolean;
}

const isOpen = ({ logs }: Cure, { tells }: Seen): boolean => logs.every(tells);
/** What a hidden log tells of warmth goes with the log. */
const withLogs =
  <T>() =>
  (value: T, seen: Seen, cure: Cure): T | undefined =>
    isOpen(cure, seen) ? value : undefined;
/** And when a hidden test broke the piece goes with the test. */
const withTest =
  <T>() =>
  (value: T, seen: Seen, cure: Cure): T | undefined =>
    seen.test && isOpen(cure, seen) ? value : undefined;

const readyBy: Decision<Cure, "readyBy", Seen> = (by, seen, cure) => (isOpen(cure, seen) ? by : "withheld");
const logs: Decision<Cure, "logs", Seen> = (all, seen, cure) => (isOpen(cure, seen) ? all : []);

export const cureShown: Decisions<Cure, Seen> = {
  from: show,
  least: show,
  reference: show,
  referenceFrom: show,
  law: show,
  stated: withLogs(),
  assumed: withLogs(),
  age: withTest(),
  warmth: withTest(),
  readyAt: withLogs(),
  readyBy,
  logs,
};
