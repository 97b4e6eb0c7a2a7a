/** Joints that were heated once they were glued, as some sheets ask. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, onlyShown, show } from "../decisions.ts";
import { anew } from "../entry/amending.ts";
import { block, instant, list, note, noted } from "../field.ts";
import { idOf, pieceIdOf, plain } from "../id.ts";
import type { Instant } from "../time/instant.ts";
import { factOf, type InEntry, notedOf } from "../typing.ts";
import type { Moment, Noted, Path } from "../values.ts";

export const postCureSchema = block({
  joints: plain(list(idOf("joint", "A joint.", "TP-J03"), "Which joints were heated.")),
  pieces: list(pieceIdOf("A test piece."), "Which test pieces lay in the heat with them.").optional(),
  temperature: noted(
    { dimension: "temperature", sign: "any", example: "60 °C" },
    "How warm they were, at the joint; from the least to the greatest where it was not even.",
    ["58 to 62 °C"],
  ),
  from: instant("When they had reached it."),
  to: instant("When the heat was taken away."),
  note: note(),
});

export interface PostCure {
  readonly place: Place;
  readonly entry: string;
  readonly joints: readonly string[];
  /** Test pieces that lay in the heat with them. */
  readonly pieces: readonly string[];
  readonly temperature: Noted;
  readonly from: Moment;
  readonly to: Moment;
  readonly note?: string;
}

/** A time that clocks passed over is a problem, so that none is missing here. */
export function postCureOf(spec: z.output<typeof postCureSchema>, path: Path, of: InEntry): PostCure {
  const moment = ({ day, clock }: Instant, which: "earlier" | "later"): Moment => ({
    typed: `${day} ${clock.typed}`,
    epoch: of.moment(clock, which, day)?.epoch ?? Number.NaN,
  });
  return factOf<PostCure>({
    place: of.at(path),
    entry: of.entry,
    joints: spec.joints,
    pieces: spec.pieces ?? [],
    temperature: notedOf(spec.temperature),
    from: moment(spec.from, "later"),
    to: moment(spec.to, "earlier"),
    note: spec.note,
  });
}

export const postCureShown: Decisions<PostCure> = {
  place: show,
  entry: show,
  joints: show,
  pieces: onlyShown("pieces"),
  temperature: show,
  from: show,
  to: show,
  note: show,
};

export const postCureAmended = anew("Joints heated", "All heatings of that day, as they should read.");
