/**
 * `amends:` in an entry's front matter: what it says of an earlier entry that was written down wrong.
 *
 * Corrections stand below the entry they correct, apart from the facts of the amending entry's own day, so that neither can be taken for the other.
 * A fact is found by its id, or by the words it was written down under. Only the values stated are changed; all others, and the day where no `date` is stated, stay as they were.
 * A list without ids (hours, joints, timber, closed items) is stated anew as a whole. `struck` names values that are taken back with nothing in their place.
 */
import * as z from "zod";
import { choice, day, id, list, words } from "../field.ts";

export interface Amendable {
  readonly hours: z.ZodObject;
  readonly cut: z.ZodObject;
  readonly batch: z.ZodObject;
  readonly piece: z.ZodObject;
  readonly test: z.ZodObject;
  readonly measurement: z.ZodObject;
  readonly weighing: z.ZodObject;
  readonly scales: z.ZodObject;
  readonly departure: z.ZodObject;
  readonly acceptance: z.ZodObject;
  readonly openItem: z.ZodObject;
  readonly recall: z.ZodObject;
  readonly rework: z.ZodObject;
  readonly rejection: z.ZodObject;
  readonly inspection: z.ZodObject;
}

export function amendmentSchema(parts: Amendable) {
  const some = (what: string, part: z.ZodObject, ...keys: string[]) =>
    list(partly(part, keys), `${what} that were written down wrong: which, and what is right.`).optional();
  const batch = partly(parts.batch, ["id"]).safeExtend({ pieces: some("Pieces", parts.piece, "id") });
  return z.strictObject({
    entry: id("The earlier entry that is amended.", "2025-03-08-caps"),
    why: words(
      "Why, for all who may read the amended entry: they see it beside the first text.",
      "The cup's tare had not been taken off",
    ),
    prose: choice(
      ["struck"],
      "Strikes out the prose of the amended entry; it stays readable. Without any other key below, this is meant.",
    ).optional(),
    date: day(
      "The day on which it happened, where the entry was written under another; the entry keeps its file's name.",
    ).optional(),
    hours: list(parts.hours, "All of that day's lines of hours, as they should read.").optional(),
    cut: some("Cuts", parts.cut, "lot"),
    batches: list(batch, "Batches that were written down wrong: which, and what is right.").optional(),
    tests: some("Tests", parts.test, "piece"),
    measurements: some("Measurements", parts.measurement, "what"),
    weighed: some("Weighings", parts.weighing, "part"),
    scales: partly(parts.scales, []).optional(),
    departures: some("Departures", parts.departure, "id"),
    accepts: some("Acceptances", parts.acceptance, "departure"),
    open_items: z
      .strictObject({
        raise: some("Open items", parts.openItem, "id"),
        close: list(
          id("An open item.", "O-08"),
          "All open items that were done that day, as the list should read.",
        ).optional(),
      })
      .optional(),
    recalls: some("Recalls", parts.recall, "lot"),
    reworks: list(parts.rework, "All reworks of that day, as they should read.").optional(),
    rejects: some("Rejections", parts.rejection, "batch"),
    inspections: some("Inspections", parts.inspection, "hold_point"),
  });
}

/** A fact of which only its keys must be given. */
function partly(part: z.ZodObject, keys: readonly string[]) {
  const shape: { [key: string]: z.ZodType } = {};
  for (const [key, value] of Object.entries(part.shape) as [string, z.ZodType][])
    shape[key] = keys.includes(key) || value.def.type === "optional" ? value : value.optional();
  return z.strictObject({
    ...shape,
    struck: list(
      words("A value's key, or all.", "closed"),
      "Values that are taken back with nothing in their place: their keys, such as closed or shop.humidity; or all, for the whole line.",
    ).optional(),
  });
}
