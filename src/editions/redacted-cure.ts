/** A cure with only what an edition shows of it. */
import { type Decision, type Decisions, show } from "../facts/decisions.ts";
import type { Cure } from "../evidence/types/cure.ts";
import type { Ref } from "../facts/types.ts";

/** Whether the test that ended it is shown, and whether all is told of a thing that it rests on. */
interface Seen {
  readonly test: boolean;
  readonly tells: (ref: Ref) => boolean;
}

const isOpen = ({ restsOn }: Cure, { tells }: Seen): boolean => restsOn.every(tells);
/** What a hidden log, or a thermometer in a hidden entry, tells of warmth goes with it. */
const withClimate =
  <T>() =>
  (value: T, seen: Seen, cure: Cure): T | undefined =>
    isOpen(cure, seen) ? value : undefined;
/** And when a hidden test broke the piece goes with the test. */
const withTest =
  <T>() =>
  (value: T, seen: Seen, cure: Cure): T | undefined =>
    seen.test && isOpen(cure, seen) ? value : undefined;

const readyBy: Decision<Cure, "readyBy", Seen> = (by, seen, cure) => (isOpen(cure, seen) ? by : "withheld");
const restsOn: Decision<Cure, "restsOn", Seen> = (all, seen, cure) => (isOpen(cure, seen) ? all : []);

export const cureShown: Decisions<Cure, Seen> = {
  from: show,
  least: show,
  reference: show,
  referenceFrom: show,
  law: show,
  stated: withClimate(),
  assumed: withClimate(),
  age: withTest(),
  warmth: withTest(),
  readyAt: withClimate(),
  readyBy,
  restsOn,
};
