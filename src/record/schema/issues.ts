/** Issues of a schema to problems with a place and a mend. */
import type * as z from "zod";
import { placed, type Problem } from "../../problem.ts";
import { nearest, someOf } from "../../facts/nearest.ts";
import { type Fault, meaning, type Mending, onlyYouKnow, shown } from "../../facts/reading.ts";
import { type Data, type FrontMatter, type Path, SPOILED } from "../text/yaml.ts";
import { faultOf } from "../../facts/field.ts";
import { bare, formAt, isOptional, shapeAt } from "./form.ts";

type Issue = z.core.$ZodIssue;

/** Of a value that may be one or a list, the issues of the form that was typed. */
export function issuesOf(issues: readonly Issue[], data: Data): Issue[] {
  return issues.flatMap((issue) => {
    if (issue.code !== "invalid_union") return [issue];
    const value = valueAt(data, issue.path);
    if (value === undefined) return [issue];
    const isOther = ([first]: readonly Issue[]): boolean => first?.code === "invalid_type" && first.path.length === 0;
    const meant = issue.errors.find((errors) => !isOther(errors)) ?? issue.errors[0] ?? [];
    return issuesOf(
      meant.map((one) => ({ ...one, path: [...issue.path, ...one.path] })),
      data,
    );
  });
}

export function problemsOf(issue: Issue, schema: z.ZodType, front: FrontMatter): Problem[] {
  const path = issue.path;
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) =>
      placed(front.placeOfKey([...path, key]), unknownKey(key, Object.keys(shapeAt(schema, path))), key),
    );
  }
  const value = valueAt(front.data, path);
  if (value === SPOILED) return [];
  if (value === undefined)
    return isMistyped(front, path, schema) ? [] : [{ ...front.placeOf(path), ...missing(path, schema) }];
  if (value === "") return [{ ...front.placeOfKey(path), ...empty(path, schema) }];
  return [placed(front.placeOf(path), faultIn(issue, path, schema, value, front), front.typedAt(path))];
}

/** Whether the key stands there with a slip in it or without a blank after its colon, which is a problem of its own. */
function isMistyped(front: FrontMatter, path: Path, schema: z.ZodType): boolean {
  const block = valueAt(front.data, path.slice(0, -1));
  const known = Object.keys(shapeAt(schema, path.slice(0, -1)));
  const name = String(path.at(-1));
  return (
    typeof block === "object" &&
    Object.keys(block).some(
      (key) => !known.includes(key) && (key.startsWith(`${name}:`) || nearest(key, known) === name),
    )
  );
}

function faultIn(issue: Issue, path: Path, schema: z.ZodType, value: Data, front: FrontMatter): Fault {
  if (issue.code === "custom") {
    const fault = faultOf(issue.params);
    if (fault?.code === "bad-id" && path.at(-1) !== "id")
      return { ...withoutMend(fault), ...onlyYouKnow("give the id as it stands where the thing itself is") };
    if (fault) return fault;
  }
  if (issue.code === "too_small")
    return {
      code: "empty",
      message: `${nameOf(path)} has nothing in its brackets`,
      expected: about(path, schema),
      mend: isOptional(schema, path) ? "write what it is, or take the line away" : "write what it is",
    };
  if (issue.code === "invalid_value") return wrongWord(issue.values.map(String), value, front.typedAt(path));
  if (issue.code === "invalid_type") return wrongForm(issue.expected, path, value, schema, front.typedAt(path));
  return {
    code: "wrong-form",
    message: issue.message,
    found: shown(front.typedAt(path)),
    mend: "look at the example of this file in the README",
  };
}

/** Of an id that only names a thing, what would be sound is not yet an id that the record has. */
function withoutMend({ instead: _, ...fault }: Fault): Fault {
  return fault;
}

function unknownKey(key: string, known: readonly string[]): Fault {
  const meant = nearest(key, known);
  const glued = /^([a-z_]+):(.+)$/.exec(key);
  const mending: Mending =
    meant !== undefined
      ? { mend: `did you mean \`${meant}\`?`, instead: meant }
      : glued && known.includes(glued[1] ?? "")
        ? onlyYouKnow(`put a blank after the colon: ${glued[1]}: ${glued[2]}`)
        : onlyYouKnow("take it away, or tell it in the prose");
  return {
    code: "unknown-key",
    message: `\`${shown(key)}\` is not a key that is known here`,
    expected: `one of ${someOf(known, 30)}`,
    ...mending,
  };
}

function missing(path: Path, schema: z.ZodType): Fault {
  const name = nameOf(path);
  return {
    code: "missing-key",
    message: `${name} is missing`,
    expected: `${about(path, schema)}`,
    mend: `add ${lineFor(path, "…")}, with what is so in your build`,
  };
}

function empty(path: Path, schema: z.ZodType): Fault {
  const required = !isOptional(schema, path);
  const mend = required ? "write what it is" : "write what it is, or take the line away";
  return { code: "empty", message: `${nameOf(path)} has nothing after it`, expected: about(path, schema), mend };
}

function lineFor(path: Path, example: string): string {
  const last = path.at(-1);
  return typeof last === "string" ? `\`${last}: ${example}\`` : `\`${example}\``;
}

/** `\`title\`` or `this item`. */
function nameOf(path: Path): string {
  const last = path.at(-1);
  return typeof last === "string" ? `\`${last}\`` : last === undefined ? "the front matter" : "this item";
}

function about(path: Path, schema: z.ZodType): string {
  const at = formAt(schema, path);
  const description = at?.meta()?.description ?? "";
  const example = exampleOf(at);
  const first = description.replace(/\.$/, "");
  return first === ""
    ? `such as ${example}`
    : `${first.slice(0, 1).toLowerCase()}${first.slice(1)}, such as ${example}`;
}

function wrongWord(values: readonly string[], value: Data, typed: string): Fault {
  const meant = typeof value === "string" ? nearest(value, values) : undefined;
  const expected = values.length === 1 ? (values[0] ?? "") : `${values.slice(0, -1).join(", ")} or ${values.at(-1)}`;
  return {
    code: "unknown-word",
    message: "this word is not known here",
    expected,
    found: shown(typed),
    ...(meant === undefined ? onlyYouKnow("use one of these words") : meaning(meant)),
  };
}

const FORMS: { readonly [form: string]: string } = { string: "text", array: "a list", object: "a block of keys" };

function wrongForm(expected: string, path: Path, value: Data, schema: z.ZodType, typed: string): Fault {
  const is = typeof value === "string" ? "text" : Array.isArray(value) ? "a list" : "a block of keys";
  const wants = FORMS[expected] ?? "something else";
  const example = exampleOf(formAt(schema, path));
  const mend =
    path.length === 0
      ? `give keys with a colon, such as \`${firstKey(schema)}: …\`, one on each line`
      : expected === "array" && typeof value === "string" && !/[:{]/.test(example)
        ? `put brackets around it: ${lineFor(path, `[${shown(value)}]`)}`
        : `give it in the form of the example, with what is so in your build`;
  return {
    code: "wrong-form",
    message: `${path.length === 0 ? "the front matter" : nameOf(path)} is ${is}; ${wants} belongs here`,
    expected: path.length === 0 ? "keys and values" : about(path, schema),
    found: shown(typed),
    mend,
  };
}

function firstKey(schema: z.ZodType): string {
  return Object.keys(shapeAt(schema, []))[0] ?? "title";
}

/** One line that shows the form of a value. */
function exampleOf(schema: z.ZodType | undefined): string {
  const inner = bare(schema);
  const example = schema?.meta()?.examples ?? inner?.meta()?.examples;
  const [first] = Array.isArray(example) ? (example as readonly unknown[]) : [];
  if (typeof first === "string") return quoted(first);
  if (typeof first === "object" && first !== null)
    return `{ ${Object.entries(first)
      .map(([key, text]) => `${key}: ${quoted(String(text))}`)
      .join(", ")} }`;
  const def = inner?.def as
    | { type: string; element?: z.ZodType; shape?: { [key: string]: z.ZodType }; entries?: { [word: string]: string } }
    | undefined;
  if (def?.entries) return Object.values(def.entries)[0] ?? "…";
  if (def?.element) return `[${exampleOf(def.element)}]`;
  if (def?.shape) {
    const needed = Object.entries(def.shape).filter(([, part]) => part.def.type !== "optional");
    const shownKeys = needed.length > 0 ? needed : Object.entries(def.shape).slice(0, 2);
    return `{ ${shownKeys
      .slice(0, 4)
      .map(([key, part]) => `${key}: ${exampleOf(part)}`)
      .join(", ")} }`;
  }
  return "…";
}

function quoted(example: string): string {
  return /^\d{1,2}:\d{2}$/.test(example) || /\s:\s/.test(example) || /[,;]|: /.test(example) ? `"${example}"` : example;
}

export function valueAt(data: Data | undefined, path: Path): Data | undefined {
  let at: Data | undefined = data;
  for (const step of path) {
    if (at === undefined || typeof at === "string") return undefined;
    at = Array.isArray(at)
      ? (at as readonly Data[])[Number(step)]
      : (at as { readonly [key: string]: Data })[String(step)];
  }
  return at;
}
