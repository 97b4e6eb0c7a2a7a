/** What is asked of a glue-up, and how a procedure says it is done. */
import type { Asks, Method } from "../../../src/facts/types.ts";
import { mm, pc, range } from "../../evidence/quantities.ts";

export const methodWith = (word: () => string): Method => ({
  surfaces: word(),
  cleaned: word(),
  faces: "both",
  endGrain: "twice",
  filler: word(),
  clamps: word(),
  staples: "pulled",
  scraped: "yes",
  secondCup: "yes",
});

const hours = (count: number) => ({ typed: `${count} h`, value: count * 3600, unit: "s", step: 3600 });

export const asksWith = (word: () => string): Asks => ({
  preparedWithin: hours(24),
  openTime: hours(1),
  assemblyTime: hours(2),
  clamped: hours(3),
  mixing: hours(0),
  gap: mm("0.5"),
  moistureDifference: pc("3"),
  fillerMass: pc("5"),
  fillers: [word()],
  pressure: range("0.1 MPa to 2 MPa", 1e5, 2e6),
  resin: range("15 °C to 30 °C", 15, 30),
  faces: "both",
  endGrain: "twice",
  squeezeOut: "all along",
  staples: "pulled",
  waterDrop: "yes",
  overCured: "yes",
  scraped: "yes",
  secondCup: "yes",
});
