/** Values for a field, from its form, from the same field elsewhere in the record, and near to what stands there. */
import type { Chance } from "./chance.ts";
import { type Form, type Site, sitesOf, type Value } from "./sites.ts";
import type { Texts } from "../workbench.ts";

const FACTORS = [0, 0.1, 0.5, 0.9, 0.98, 1.02, 1.1, 2, 10];

export class Values {
  readonly sites: readonly Site[];
  readonly #byKey = new Map<string, Value[]>();
  readonly #ids: readonly string[];

  /** `near`: the files in which places are sought; values come from all. */
  constructor(texts: Texts, near: ReadonlySet<string>) {
    const all = sitesOf(texts);
    const own = all.filter(({ file }) => near.has(file));
    this.sites = own.length > 0 ? own : all;
    for (const { path, value } of all) {
      const key = keyOf(path);
      if (value !== undefined) this.#byKey.set(key, [...(this.#byKey.get(key) ?? []), value]);
    }
    const stems = [...texts.keys()].map((file) => file.slice(file.lastIndexOf("/") + 1).replace(/\.md$/, ""));
    this.#ids = [...stems, ...(this.#byKey.get("id") ?? []).filter((id) => typeof id === "string")];
  }

  /** Another value of a site, or one where it is left out. */
  for(chance: Chance, { form, path, value }: Pick<Site, "form" | "path" | "value">): Value | undefined {
    const same = (this.#byKey.get(keyOf(path)) ?? []).filter((one) => typeof one === typeof (value ?? one));
    if (same.length > 0 && chance.below(3) === 0) return structuredClone(chance.of(same));
    if (typeof value === "string" && form.enum === undefined && chance.below(2) === 0) return near(chance, value);
    return this.made(chance, form, path);
  }

  /** One that the form alone gives, with things that the record holds where it names some. */
  made(chance: Chance, form: Form, path: Site["path"]): Value | undefined {
    if (form.enum !== undefined) return chance.of(form.enum);
    if (form.items !== undefined) {
      const item = this.made(chance, form.items, [...path, 0]);
      return item === undefined ? undefined : [item];
    }
    if (form.properties !== undefined) return this.#block(chance, form, path);
    const same = (this.#byKey.get(keyOf(path)) ?? []).filter((one) => typeof one === "string");
    if (same.length > 0 && chance.below(2) === 0) return chance.of(same);
    return form.pattern?.startsWith("^[A-Za-z0-9]") === true && keyOf(path) !== "id"
      ? chance.of(this.#ids)
      : chance.of(form.examples ?? []);
  }

  #block(chance: Chance, form: Form, path: Site["path"]): Value {
    const keys = Object.entries(form.properties ?? {}).filter(
      ([key]) => (form.required ?? []).includes(key) || chance.below(4) === 0,
    );
    return Object.fromEntries(
      keys.flatMap(([key, part]) => {
        const value = this.made(chance, part, [...path, key]);
        return value === undefined ? [] : [[key, value]];
      }),
    );
  }
}

/** The last key of a path; items of a list go by the key of the list. */
const keyOf = (path: Site["path"]): string => String(path.findLast((step) => typeof step === "string"));

/** The same with one of its numbers changed. */
function near(chance: Chance, text: string): string {
  const numbers = [...text.matchAll(/\d+(?:\.\d+)?/g)];
  const number = chance.of(numbers);
  if (number === undefined) return text;
  const [typed] = number;
  const digits = typed.split(".")[1]?.length ?? 0;
  const changed = (Number(typed) * (chance.of(FACTORS) ?? 1))
    .toFixed(digits)
    .padStart(digits === 0 ? typed.length : 0, "0");
  return text.slice(0, number.index) + changed + text.slice(number.index + typed.length);
}
