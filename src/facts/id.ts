/** Ids and paths of files in front matter, and what each of them names. */
import * as z from "zod";
import { field } from "./field.ts";
import { LIMITS, tooLong } from "./limits.ts";
import { type Fault, onlyYouKnow, type Reading, shown, writes } from "./reading.ts";
import type { Kind } from "./values.ts";

/** What the text of a form names, kept beside the form: schemas for editors do not tell it. */
const NAMES = z.registry<{ readonly kind: Kind | "file" }>();

/** The kind of thing that a text of this form names, if it names one. */
export function namedBy(form: z.ZodType): Kind | "file" | undefined {
  return NAMES.get(form)?.kind;
}

/** Forms whose values are told without the word for them. */
const PLAIN = z.registry();

/** A form whose value says what it is: where a whole fact is told in words, its key does not stand before it. */
export function plain<T extends z.ZodType>(form: T): T {
  PLAIN.add(form);
  return form;
}

export const isPlain = (form: z.ZodType): boolean => PLAIN.has(form);

/** The id of a thing of the record. */
export function idOf(kind: Kind, description: string, example: string) {
  return ownId(description, example).register(NAMES, { kind });
}

/** One id, or several in brackets: always a list once read. */
export function idsOf(kind: Kind, description: string, example: string) {
  const one = idOf(kind, description, example);
  return z
    .union([one, z.array(one).min(1)])
    .transform((ids) => (typeof ids === "string" ? [ids] : ids))
    .meta({ description, examples: [example] })
    .register(NAMES, { kind });
}

export function pieceIdOf(description: string) {
  return ownPieceId(description).register(NAMES, { kind: "piece" });
}

/** The path of a file, looked for only once the whole record has been read. */
export const file = (description: string, example: string) =>
  field((typed) => ({ value: typed }), "a path", description, [example]).register(NAMES, { kind: "file" });

const ID = /^[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?$/;
const PIECE = /^[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?\/[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?$/;

/** Names that Windows keeps for devices, whatever follows a point: no file can be called so there. */
const DEVICE = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³]|conin\$|conout\$)$/i;

/** Whether Windows could hold a file of this name; pages and files of a record are named by its ids. */
export function isWindowsName(name: string): boolean {
  return !DEVICE.test((name.split(".")[0] ?? "").trimEnd()) && !/[. ]$/.test(name);
}

export function idFault(typed: string, example: string): Fault | undefined {
  const long = tooLong(typed, LIMITS.idLength);
  if (long) return long;
  if (ID.test(typed) && !isWindowsName(typed))
    return {
      code: "windows-name",
      message: "Windows can hold no file of this name, and files are named by ids",
      expected: `an id, such as ${example}`,
      found: shown(typed),
      mend: "give it another id, everywhere it is named",
    };
  if (ID.test(typed)) return undefined;
  const better = typed
    .replaceAll("ß", "ss")
    .replaceAll("ø", "o")
    .replaceAll("æ", "ae")
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[\s_/]+/g, "-")
    .replace(/[^A-Za-z0-9.-]/g, "")
    .replace(/^[.-]+|[.-]+$/g, "");
  return {
    code: "bad-id",
    message: "an id has only the letters A to Z, digits, - and . in it",
    expected: `an id, such as ${example}`,
    found: shown(typed),
    ...(better === "" || !isWindowsName(better) ? onlyYouKnow("give it another id") : writes(better)),
  };
}

/** The id by which others name the fact that it stands in, or a word of the builder's own. */
export function ownId(description: string, example: string) {
  return field(
    (typed): Reading<string> => {
      const fault = idFault(typed, example);
      return fault ? { fault } : { value: typed };
    },
    "an id",
    description,
    [example],
    { pattern: ID.source, most: LIMITS.idLength },
  );
}

export function ownPieceId(description: string) {
  return field(
    (typed): Reading<string> => {
      if (PIECE.test(typed)) return { value: typed };
      return {
        fault: {
          code: "bad-id",
          message: "a test piece has its batch's id, a slash and a number",
          expected: "the id of a piece, such as B-014/1",
          found: shown(typed),
          mend: "give the batch's id, a slash and the number",
        },
      };
    },
    "the id of a piece",
    description,
    ["B-014/1"],
    { pattern: PIECE.source, most: 2 * LIMITS.idLength + 1 },
  );
}
