/** One digest of whatever values. */
import { createHash, type Hash } from "node:crypto";
import Token from "markdown-it/lib/token.mjs";

/** A value of which its fields may not tell all, such as a function. */
export class Undigestible extends Error {}

/** What is all told by its own fields, by how it is marked. */
const OPEN: ReadonlyMap<unknown, string> = new Map<unknown, string>([
  [Object.prototype, "<"],
  [Token.prototype, "!"],
]);
const ENOUGH = 2 ** 16;

/**
 * Of values and all that is in them: the same for the same, in the same order, shared in the same places. Fields that cannot be
 * enumerated are left out.
 * @throws Undigestible
 */
export function deepDigest(value: unknown): string {
  const digesting = new Digesting();
  digesting.add(value);
  return digesting.end();
}

class Digesting {
  readonly #hash: Hash = createHash("sha256");
  /** Its place among all that were met, by each object. */
  readonly #met = new Map<object, number>();
  #text = "";

  add(value: unknown): void {
    if (typeof value === "string") this.#put(`"${value.length}:${value}`);
    else if (typeof value === "object" && value !== null) this.#addObject(value);
    else if (typeof value === "number") this.#put(`${Object.is(value, -0) ? "-0" : value};`);
    else if (typeof value === "function" || typeof value === "symbol") throw new Undigestible(typeof value);
    else this.#put(`${typeof value} ${value};`);
  }

  end(): string {
    this.#hash.update(this.#text, "utf16le");
    return this.#hash.digest("hex");
  }

  #put(text: string): void {
    this.#text += text;
    if (this.#text.length < ENOUGH) return;
    this.#hash.update(this.#text, "utf16le");
    this.#text = "";
  }

  #addObject(value: object): void {
    const place = this.#met.get(value);
    if (place !== undefined) return this.#put(`^${place};`);
    this.#met.set(value, this.#met.size);
    if (Array.isArray(value)) this.#addAll("[", value.length, value);
    else if (value instanceof Set) this.#addAll("(", value.size, value);
    else if (value instanceof Map) {
      this.#addAll("{", value.size, value.keys());
      this.#addAll(":", value.size, value.values());
    } else this.#addFields(value as { readonly [key: string]: unknown });
  }

  #addFields(value: { readonly [key: string]: unknown }): void {
    const kind: unknown = Object.getPrototypeOf(value);
    const mark = OPEN.get(kind);
    if (mark === undefined) throw new Undigestible(String((kind as object | null)?.constructor.name));
    const keys = Object.keys(value);
    this.#addAll(mark, keys.length, keys);
    for (const key of keys) this.add(value[key]);
  }

  #addAll(kind: string, size: number, values: Iterable<unknown>): void {
    this.#put(`${kind}${size} `);
    for (const each of values) this.add(each);
  }
}
