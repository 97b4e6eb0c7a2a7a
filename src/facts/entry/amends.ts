/**
 * `amends:` in an entry's front matter: what it says of an earlier entry that was written down wrong.
 *
 * Corrections stand below the entry they correct, apart from the facts of the amending entry's own day, so that
 * neither can be taken for the other. A fact is found by its id, or by the words it was written down under. Only the
 * values stated are changed; all others, and the day where no `date` is stated, stay as they were. A list without ids
 * (hours, joints, timber, closed items) is stated anew as a whole. `struck` names values that are taken back with
 * nothing in their place.
 */
import * as z from "zod";
import { choice, day, list, words } from "../field.ts";
import { idOf } from "../id.ts";
import type { Amending, FoundBy } from "./amending.ts";

type Shape = { readonly [key: string]: z.ZodType };

/** The form of an amendment, made from the form of what it amends and from what of that can be amended. */
export function amendmentSchema(shape: Shape, amended: { readonly [key: string]: Amending }) {
  return z.strictObject({
    entry: idOf("entry", "The earlier entry that is amended.", "2025-03-08-caps"),
    why: words(
      "Why, for all who may read the amended entry: they see it beside the first text.",
      "The cup's tare had not been taken off",
    ),
    seen_by: idOf("person", "Who else, no builder of it, saw the source of what is right.", "helper").optional(),
    prose: choice(
      ["struck"],
      "Strikes out the prose of the amended entry; it stays readable. Without any other key below, this is meant.",
    ).optional(),
    ...amendable(shape, amended),
  });
}

function amendable(shape: Shape, amended: { readonly [key: string]: Amending }): { [key: string]: z.ZodType } {
  const out: { [key: string]: z.ZodType } = {};
  for (const [key, way] of Object.entries(amended)) {
    const form = whole(shape[key]);
    if (way.how === "found by") out[key] = some(form, way);
    else if (way.how === "anew") out[key] = form.meta({ ...form.meta(), description: way.says }).optional();
    else if (way.how === "alone") out[key] = partly(form as z.ZodObject, []).optional();
    else if (way.how === "day") out[key] = day(way.says).optional();
    else if (way.how === "within")
      out[key] = z.strictObject(amendable((form as z.ZodObject).shape, way.parts)).optional();
  }
  return out;
}

function some(form: z.ZodType, way: FoundBy): z.ZodType {
  const fact = partly((form as z.ZodArray<z.ZodObject>).element, [way.keys[0]], way);
  return list(fact, `${way.several} that were written down wrong: which, and what is right.`).optional();
}

/** A form without the wrapping of `optional`. */
function whole(form: z.ZodType | undefined): z.ZodType {
  if (form === undefined) throw new Error("only what an entry has can be amended");
  return form instanceof z.ZodOptional ? (form.unwrap() as z.ZodType) : form;
}

/** A fact of which only its keys must be given. */
function partly(part: z.ZodObject, keys: readonly string[], way?: FoundBy): z.ZodObject {
  const shape: { [key: string]: z.ZodType } = {};
  for (const [key, value] of Object.entries(part.shape) as [string, z.ZodType][]) {
    const inner = way?.lists?.[key];
    if (inner !== undefined) shape[key] = some(whole(value), inner);
    else shape[key] = keys.includes(key) || value.def.type === "optional" ? value : value.optional();
  }
  return z.strictObject({
    ...shape,
    struck: list(
      words("A value's key, or all.", "closed"),
      "Values that are taken back with nothing in their place: their keys, such as closed or shop.humidity; or all, for the whole line.",
    ).optional(),
  });
}
