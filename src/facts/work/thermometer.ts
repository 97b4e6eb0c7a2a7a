/** A reading of a thermometer that keeps the least and the greatest since it was set. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, instant, quantity, note } from "../field.ts";
import type { Instant } from "../time/instant.ts";
import { factOf, type InEntry, quantityOf } from "../typing.ts";
import type { Moment, Path, Quantity } from "../values.ts";

export const thermometerSchema = block({
  from: instant("When it was set."),
  to: instant("When it was read."),
  least: quantity({ dimension: "temperature", sign: "any", example: "16.5 °C" }, "The least that it shows."),
  greatest: quantity({ dimension: "temperature", sign: "any", example: "22 °C" }, "The greatest that it shows."),
  note: note(),
});

export interface Thermometer {
  readonly place: Place;
  readonly entry: string;
  readonly from: Moment;
  readonly to: Moment;
  readonly least: Quantity;
  readonly greatest: Quantity;
  readonly note?: string;
}

/** A time that clocks passed over is a problem, so that none is missing here. */
export function thermometerOf(spec: z.output<typeof thermometerSchema>, path: Path, of: InEntry): Thermometer {
  const moment = ({ day, clock }: Instant, which: "earlier" | "later"): Moment => ({
    typed: `${day} ${clock.typed}`,
    epoch: of.moment(clock, which, day)?.epoch ?? Number.NaN,
  });
  return factOf<Thermometer>({
    place: of.at(path),
    entry: of.entry,
    from: moment(spec.from, "later"),
    to: moment(spec.to, "earlier"),
    least: quantityOf(spec.least),
    greatest: quantityOf(spec.greatest),
    note: spec.note,
  });
}

export const thermometerShown: Decisions<Thermometer> = {
  place: show,
  entry: show,
  from: show,
  to: show,
  least: show,
  greatest: show,
  note: show,
};

export const thermometerAmended = anew(
  "Thermometer",
  "All of that day's readings of the thermometer, as they should read.",
);
