/** One digest of whatever values. */
import { createHash, type Hash } from "node:crypto";
import Token from "markdown-it/lib/token.mjs";

/** A value of which its fields may not tell all, such as a function. */
class Undigestible extends Error {}

/** What begins here, or ends. */
enum Kind {
  text,
  number,
  other,
  known,
  list,
  map,
  set,
  field,
  end,
  plain,
  token,
  bytes,
}

/** What is all told by its own fields. */
const OPEN: ReadonlyMap<unknown, Kind> = new Map<unknown, Kind>([
  [Object.prototype, Kind.plain],
  [Token.prototype, Kind.token],
]);

/**
 * Of values and all that is in them: the same for the same in the same order, with the same objects in several places. Fields that cannot
 * be enumerated are left out. Undefined where something in them is not told by its fields, such as a function.
 */
export function deepDigest(value: unknown): string | undefined {
  const digesting = new Digesting();
  try {
    digesting.add(value);
  } catch (error) {
    if (error instanceof Undigestible) return undefined;
    throw error;
  }
  return digesting.end();
}

/** Units of two bytes that are taken at once. */
const ROOM = 2 ** 15;
const HIGH = 16;
const LOW = 2 ** HIGH - 1;
/** Of a number, its kind before it. */
const NUMBER = 5;

/** A record has some millions of letters and a few hundred thousand objects: they are put into one buffer, letter by letter. */
class Digesting {
  readonly #hash: Hash = createHash("sha256");
  readonly #units = new Uint16Array(ROOM);
  readonly #number = new Float64Array(1);
  readonly #ofNumber = new Uint16Array(this.#number.buffer);
  /** Its place among all that were met, by each object. */
  readonly #met = new Map<object, number>();
  #at = 0;

  add(value: unknown): void {
    if (typeof value === "string") this.#text(Kind.text, value);
    else if (typeof value === "object" && value !== null) this.#object(value);
    else if (typeof value === "number") this.#count(Kind.number, value);
    else if (typeof value === "function" || typeof value === "symbol") throw new Undigestible(typeof value);
    else this.#text(Kind.other, `${typeof value} ${value}`);
  }

  end(): string {
    this.#flush();
    return this.#hash.digest("hex");
  }

  #object(value: object): void {
    // Told whole in each place: most are empty.
    if (Array.isArray(value)) return this.#all(Kind.list, value.length, value);
    const place = this.#met.get(value);
    if (place !== undefined) return this.#count(Kind.known, place);
    this.#met.set(value, this.#met.size);
    if (ArrayBuffer.isView(value)) return this.#bytes(value);
    if (value instanceof Set) return this.#all(Kind.set, value.size, value);
    if (!(value instanceof Map)) return this.#fields(value as { readonly [key: string]: unknown });
    this.#all(Kind.map, value.size, value.keys());
    this.#all(Kind.map, value.size, value.values());
  }

  #fields(value: { readonly [key: string]: unknown }): void {
    const made: unknown = Object.getPrototypeOf(value);
    const kind = OPEN.get(made);
    if (kind === undefined) throw new Undigestible(String((made as object | null)?.constructor.name));
    this.#count(kind, 0);
    for (const key of Object.keys(value)) {
      this.#text(Kind.field, key);
      this.add(value[key]);
    }
    this.#count(Kind.end, 0);
  }

  /** Of a list of numbers as the machine holds them. */
  #bytes(value: ArrayBufferView): void {
    this.#text(Kind.bytes, `${value.constructor.name} ${value.byteLength}`);
    this.#flush();
    this.#hash.update(new Uint8Array(value.buffer, value.byteOffset, value.byteLength));
  }

  #all(kind: Kind, size: number, values: Iterable<unknown>): void {
    this.#count(kind, size);
    for (const each of values) this.add(each);
  }

  /** By its bits, which tell nothing from less than nothing. */
  #count(kind: Kind, count: number): void {
    if (this.#at + NUMBER > ROOM) this.#flush();
    this.#number[0] = count;
    this.#units[this.#at] = kind;
    this.#units.set(this.#ofNumber, this.#at + 1);
    this.#at += NUMBER;
  }

  #text(kind: Kind, text: string): void {
    if (this.#at + 3 > ROOM) this.#flush();
    this.#units[this.#at++] = kind;
    this.#units[this.#at++] = text.length & LOW;
    this.#units[this.#at++] = text.length >>> HIGH;
    for (let from = 0; from < text.length; ) {
      const to = Math.min(text.length, from + ROOM - this.#at);
      for (; from < to; from += 1) this.#units[this.#at++] = text.charCodeAt(from);
      if (this.#at === ROOM) this.#flush();
    }
  }

  #flush(): void {
    this.#hash.update(new Uint8Array(this.#units.buffer, 0, this.#at * 2));
    this.#at = 0;
  }
}
