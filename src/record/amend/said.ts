/** Values of front matter as words, with the things that they name. */
import type * as z from "zod";
import { isPlain, namedBy } from "../../facts/id.ts";
import type { Said } from "../../facts/types.ts";
import { formAt } from "../schema/form.ts";
import type { Data } from "../text/yaml.ts";

/** `form` is that of the value, where it has one: what was typed is put into words before it is held against it. */
export function saidOf(form: z.ZodType | undefined, data: Data): Said {
  if (typeof data === "string") return [named(form, data)];
  const parts = Array.isArray(data)
    ? (data as readonly Data[]).map((item, at) => saidOf(formAt(form, [at]), item))
    : Object.entries(data).map(([key, part]) => {
        const inner = formAt(form, [key]);
        return [...(inner && isPlain(inner) ? [] : [`${wordsOf(key)} `]), ...saidOf(inner, part)];
      });
  const blocks = Array.isArray(data) && data.some((item) => typeof item !== "string");
  return parts.length === 0
    ? ["none"]
    : parts.flatMap((part, at) => [...(at > 0 ? [blocks ? "; " : ", "] : []), ...part]);
}

/** The name of a file can tell what the file does not show. */
function named(form: z.ZodType | undefined, typed: string): Said[number] {
  const kind = form && namedBy(form);
  if (kind === "file") return "a file";
  return kind === undefined ? typed : { kind, id: typed };
}

export function wordsOf(...keys: readonly string[]): string {
  return keys.map((key) => key.replaceAll("_", " ")).join(" ");
}
