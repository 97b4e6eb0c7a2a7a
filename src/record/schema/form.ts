/** Forms within the form of a file's front matter. */
import type * as z from "zod";
import type { Path } from "../text/yaml.ts";

/** A form without the wrappings of `optional`. */
export function bare(form: z.ZodType | undefined): z.ZodType | undefined {
  const def = form?.def as { type: string; innerType?: z.ZodType } | undefined;
  return def?.innerType ? bare(def.innerType) : form;
}

/** The forms of which a value may have any: one item, or a list of them. */
function formsOf(form: z.ZodType | undefined): readonly z.ZodType[] {
  const def = bare(form)?.def as { in?: z.ZodType; options?: readonly z.ZodType[] } | undefined;
  return def?.options ?? (def?.in ? formsOf(def.in) : []);
}

/** The form at a path, where `form` allows anything there; a number stands for any item of a list. */
export function formAt(form: z.ZodType | undefined, path: Path): z.ZodType | undefined {
  let at = form;
  for (const step of path) {
    const several = typeof step === "number" ? formsOf(at).find(({ type }) => type === "array") : undefined;
    const def = (several ?? bare(at))?.def as { element?: z.ZodType; shape?: { [key: string]: z.ZodType } } | undefined;
    at = typeof step === "number" ? def?.element : def?.shape?.[String(step)];
  }
  return bare(at);
}

/** Whether the value at a path may be left out. */
export function isOptional(form: z.ZodType, path: Path): boolean {
  const last = path.at(-1);
  return typeof last === "string" && shapeAt(form, path.slice(0, -1))[last]?.def.type === "optional";
}

export function shapeAt(form: z.ZodType, path: Path): { readonly [key: string]: z.ZodType } {
  return (formAt(form, path)?.def as { shape?: { [key: string]: z.ZodType } } | undefined)?.shape ?? {};
}
