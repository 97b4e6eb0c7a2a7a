/** Every field that a builder can type, by the forms of facts. */
import * as z from "zod";
import { SCHEMAS } from "../../src/facts/kinds.ts";
import { bare } from "../../src/record/schema/form.ts";

interface Def {
  readonly element?: z.ZodType;
  readonly shape?: { readonly [key: string]: z.ZodType };
}

const defOf = (form: z.ZodType): Def => (bare(form)?.def ?? {}) as Def;

/** Paths such as `entry.batches.resin.lot`, each with its form. */
export function typedFields(): Map<string, z.ZodType> {
  const within = (form: z.ZodType, path: string): [string, z.ZodType][] => {
    const { element, shape } = defOf(form);
    if (element) return within(element, path);
    return shape
      ? Object.entries(shape).flatMap(([key, part]) => within(part, `${path}.${key}`))
      : [[path, bare(form) ?? form]];
  };
  return new Map(Object.entries(SCHEMAS).flatMap(([kind, form]) => within(form, kind)));
}

/** Texts of front matter, each with the path of its field. */
export function textsIn(data: unknown, path: string): (readonly [path: string, text: string])[] {
  if (Array.isArray(data)) return data.flatMap((item) => textsIn(item, path));
  if (typeof data !== "object" || data === null) return [[path, String(data)]];
  return Object.entries(data).flatMap(([key, part]) => textsIn(part, `${path}.${key}`));
}

/** Whether it can only be one of a few words, so that none can be planted in it. */
export const isChoice = (form: z.ZodType): boolean => form instanceof z.ZodEnum;
