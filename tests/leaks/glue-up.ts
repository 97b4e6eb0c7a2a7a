/** A glue-up of which everything is said. */
import type { Value } from "./files.ts";

type Say = (what: string) => string;
type Measure = (what: string, unit: string, whole?: number) => string;

/** Two coats at one place, the second after all was taken off elsewhere: of a lot and under a departure that may be hidden. */
export function coats(lot: string, departure: string, say: Say, number: Measure): Value[] {
  const where = say("where something was put on");
  return [
    {
      where,
      finish: "clear",
      lot,
      at: "10:00",
      dry: "11:30",
      shop: { temperature: number("warmth when it was put on", "°C", 18), humidity: number("damp then", "%", 48) },
      bare: say("what was kept bare"),
      departure,
      note: say("note on a coat"),
    },
    { where, finish: "clear", lot, coat: "2", at: "14:00", stripped: say("how it was taken off") },
  ];
}

/** What was done and seen, of a lot that may be hidden. */
export const glueUp = (lot: string, say: Say, number: Measure): Value => ({
  by: "std",
  prepared: "09:30",
  surfaces: say("how surfaces were prepared"),
  cleaned: say("how they were cleaned"),
  faces: "both",
  end_grain: "twice",
  filler: say("what was stirred in"),
  clamps: say("what clamps"),
  staples: "pulled",
  scraped: "yes",
  second_cup: "yes",
  drop: [lot],
  beaded: [lot],
  over_cured: ["washed"],
  filler_mass: number("mass of the filler", "g", 1),
  gap: number("greatest gap", "mm", 1),
  spread: "14:05",
  spread_to: "14:15",
  on: "14:25",
  off: "18:00",
  pressure: number("pressure", "MPa", 1),
  squeeze_out: "in part",
  dry_spots: say("where it was dry"),
  parts: [{ lot, moisture: number("moisture of a part", "%", 10) }],
  resin: number("warmth of the resin", "°C", 19),
  mixed_for: number("how long it was mixed", "min", 3),
});

/** What a thermometer showed that day, and a joint that was heated. */
export const warmth = (
  day: string,
  say: Say,
  number: Measure,
  { joint, pieces }: { readonly joint: string; readonly pieces: readonly string[] },
): { readonly [key: string]: Value } => ({
  thermometer: [
    {
      from: `${day} 08:00`,
      to: `${day} 20:00`,
      least: number("least on the thermometer", "°C", 18),
      greatest: number("greatest on the thermometer", "°C", 22),
      note: say("note on a thermometer"),
    },
  ],
  post_cures: [
    {
      joints: [joint],
      pieces: [...pieces],
      temperature: number("how warm a joint was", "°C", 61),
      from: `${day} 18:00`,
      to: `${day} 22:00`,
      note: say("note on a heating"),
    },
  ],
});
