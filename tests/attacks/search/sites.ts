/** Every place of a record that its schemas name: what stands there, and what may. So a new field is edited without being listed. */
import { FOLDERS } from "../../../src/facts/kinds.ts";
import { jsonSchemas } from "../../../src/record/schema-files.ts";
import { readFrontMatter } from "../../../src/record/text/front-matter.ts";
import { Source } from "../../../src/record/text/source.ts";
import type { Texts } from "../workbench.ts";

/** Front matter that may be changed in place. */
export type Value = string | Value[] | { [key: string]: Value };

export interface Form {
  readonly properties?: { readonly [key: string]: Form };
  readonly required?: readonly string[];
  readonly items?: Form;
  readonly anyOf?: readonly Form[];
  readonly enum?: readonly string[];
  readonly examples?: readonly string[];
  readonly pattern?: string;
}

export interface Site {
  readonly file: string;
  /** `entry batches[].shop.humidity` */
  readonly name: string;
  readonly path: readonly (string | number)[];
  readonly form: Form;
  /** Whether it may be left out. */
  readonly optional: boolean;
  /** Undefined where it is left out. */
  readonly value: Value | undefined;
}

const FORMS = jsonSchemas() as ReadonlyMap<string, Form>;

export function kindOf(file: string): string | undefined {
  if (file === "aircraft.md") return "aircraft";
  return file.endsWith(".md") ? FOLDERS[file.slice(0, file.indexOf("/"))] : undefined;
}

/** Of texts, what was read of them: the same few files come again and again. */
const known = new Map<string, Value>();

export function frontOf(file: string, text: string): Value {
  const found = known.get(text);
  if (found !== undefined) return found;
  const read = readFrontMatter(new Source(file, text));
  if ("problem" in read) throw new Error(`${file} has no front matter`);
  const front = read.front.data as Value;
  known.set(text, front);
  return front;
}

/** JSON is YAML. */
export function textOf(front: Value, text: string): string {
  return `---\n${JSON.stringify(front)}\n---\n${text.slice(text.indexOf("\n---\n", 3) + 5)}`;
}

const sites = new Map<string, readonly Site[]>();

export function sitesOf(texts: Texts): Site[] {
  return [...texts].flatMap(([file, text]) => {
    const kind = kindOf(file);
    if (kind === undefined) return [];
    const found = sites.get(`${file}\n${text}`) ?? sitesOfFile(file, kind, frontOf(file, text));
    sites.set(`${file}\n${text}`, found);
    return found;
  });
}

function sitesOfFile(file: string, kind: string, front: Value): Site[] {
  const form = FORMS.get(`${kind}.schema.json`);
  if (form === undefined) throw new Error(`no schema of ${kind}`);
  return [...within({ file, name: kind, path: [], form, optional: false, value: front })].slice(1);
}

/** A site and all within it; where it is left out, it alone. */
function* within(site: Site): Generator<Site> {
  yield site;
  const { value, name, path, file } = site;
  const form = formFor(site.form, value);
  if (Array.isArray(value)) {
    for (const [at, item] of value.entries())
      yield* within({
        file,
        name: `${name}[]`,
        path: [...path, at],
        form: form.items ?? {},
        optional: true,
        value: item,
      });
  } else if (typeof value === "object") {
    for (const [key, part] of Object.entries(form.properties ?? {})) {
      const optional = !(form.required ?? []).includes(key);
      const inner = name.includes(" ") ? `${name}.${key}` : `${name} ${key}`;
      yield* within({ file, name: inner, path: [...path, key], form: part, optional, value: value[key] });
    }
  }
}

/** Of several forms the one that the value has. */
const formFor = (form: Form, value: Value | undefined): Form =>
  form.anyOf?.find((one) => (one.items !== undefined) === Array.isArray(value)) ?? form;

/** The front matter with another value at a site, without it, or with one more item of a list. */
export function changedAt(front: Value, path: Site["path"], value: Value | undefined): Value {
  const copy = structuredClone(front);
  const last = path.at(-1);
  let parent: Value = copy;
  for (const step of path.slice(0, -1)) parent = (parent as { [step: string]: Value })[step] as Value;
  if (Array.isArray(parent)) parent.splice(Number(last), 1, ...(value === undefined ? [] : [value]));
  else if (value === undefined) delete (parent as { [key: string]: Value })[String(last)];
  else (parent as { [key: string]: Value })[String(last)] = value;
  return copy;
}

/** Each file of front matter, changed. */
export function changedFiles(texts: Texts, change: (front: Value, file: string) => Value): Texts {
  return new Map(
    [...texts].map(([file, text]) =>
      kindOf(file) === undefined ? [file, text] : [file, textOf(change(frontOf(file, text), file), text)],
    ),
  );
}

/** Names of all that any form has, items of lists by the name of their list. */
export function namesInForms(): ReadonlySet<string> {
  const names = new Set<string>();
  const add = (name: string, form: Form): void => {
    names.add(name.replace(/\[\]$/, ""));
    for (const one of form.anyOf ?? []) add(name, one);
    if (form.items !== undefined) add(`${name}[]`, form.items);
    for (const [key, part] of Object.entries(form.properties ?? {}))
      add(name.includes(" ") ? `${name}.${key}` : `${name} ${key}`, part);
  };
  for (const [file, form] of FORMS) add(file.replace(".schema.json", ""), form);
  return names;
}
