/** What may still be said in a file of the record, told in its comments by the schema's own words. */
import * as z from "zod";
import { SCHEMAS, type FileKind } from "../facts/kinds.ts";

/** A line for each key that a file of this kind may have and does not need, but for those `without`. */
export function optionalKeys(kind: FileKind, without: readonly string[] = []): string[] {
  const { shape } = SCHEMAS[kind] as z.ZodObject<z.ZodRawShape>;
  return Object.entries(shape).flatMap(([key, form]) =>
    z.safeParse(form as z.ZodType, undefined).success && !without.includes(key)
      ? [`${key}: ${z.globalRegistry.get(form as z.ZodType)?.description ?? descriptionOf(form as z.ZodType)}`]
      : [],
  );
}

function descriptionOf(form: z.ZodType): string {
  const within = form instanceof z.ZodOptional ? (form.unwrap() as z.ZodType) : form;
  return within.description ?? "";
}
