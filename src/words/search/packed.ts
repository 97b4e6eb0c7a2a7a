/** The index of a search as it is sent: each word with the things that hold it, small enough for thousands of entries. */
import { spellingsOf, termsOf } from "./terms.ts";

/** What is told of a thing that was found. */
export interface Thing {
  readonly kind: string;
  /** From the site's root. */
  readonly path: string;
  readonly id?: string;
  readonly title: string;
  readonly day?: string;
  readonly lead: string;
}

export interface Findable extends Thing {
  /** Whatever else than its id and title it is found by. */
  readonly words: readonly string[];
}

export interface PackedIndex {
  readonly kinds: readonly string[];
  /** The kind by its number. What a thing has not is empty. */
  readonly things: readonly (readonly [
    kind: number,
    path: string,
    id: string,
    title: string,
    day: string,
    lead: string,
  ])[];
  /** Every word, in order, one a line. */
  readonly terms: string;
  /** Of each word the places at which it stands, packed, one a line. */
  readonly places: string;
}

export function packed(all: readonly Findable[]): PackedIndex {
  const places = placesOf(all);
  const kinds = [...new Set(all.map(({ kind }) => kind))];
  const terms = [...places.keys()].sort();
  return {
    kinds,
    things: all.map(({ kind, path, id = "", title, day = "", lead }) => [
      kinds.indexOf(kind),
      path,
      id,
      title,
      day,
      lead,
    ]),
    terms: terms.join("\n"),
    places: terms.map((term) => packedPlaces(places.get(term) ?? [])).join("\n"),
  };
}

/** Of each word the places at which it stands, in their order. Each way of writing one is looked at once. */
function placesOf(all: readonly Findable[]): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  const ofTerm = (term: string): number[] => {
    const known = places.get(term) ?? [];
    places.set(term, known);
    return known;
  };
  const written = new Map<string, readonly number[][]>();
  const within = (word: string): readonly number[][] => {
    const known = written.get(word) ?? termsOf(word).map(ofTerm);
    written.set(word, known);
    return known;
  };
  const note = (lists: readonly number[][], at: number, isName: boolean): void => {
    for (const list of lists) if (thingAt(list.at(-1) ?? -1) !== at) list.push(placeOf(at, isName));
  };
  all.forEach(({ id, title, words }, at) => {
    if (id !== undefined) note([...within(id), ...spellingsOf(id).map(ofTerm)], at, true);
    for (const word of title.split(" ")) note(within(word), at, true);
    for (const text of words) for (const word of text.split(" ")) note(within(word), at, false);
  });
  return places;
}

/** One number for a thing and whether the word is of its name. */
const placeOf = (thing: number, isName: boolean): number => thing * 2 + Number(isName);
export const thingAt = (place: number): number => place >> 1;
export const isNameAt = (place: number): boolean => (place & 1) === 1;

const DIGITS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
const VALUE = new Map([...DIGITS].map((digit, value) => [digit, value]));
const BITS = 5;
const MORE = 1 << BITS;

/** The steps from each place to the next, five bits a letter, the lowest first; a sixth bit where more follow. */
function packedPlaces(places: readonly number[]): string {
  let text = "";
  let last = 0;
  for (const place of places) {
    let step = place - last;
    last = place;
    for (; step >= MORE; step >>>= BITS) text += DIGITS[(step & (MORE - 1)) | MORE];
    text += DIGITS[step];
  }
  return text;
}

export function placesIn(text: string): number[] {
  const places: number[] = [];
  let [last, step, shift] = [0, 0, 0];
  for (const digit of text) {
    const value = VALUE.get(digit) ?? 0;
    step |= (value & (MORE - 1)) << shift;
    shift += BITS;
    if (value >= MORE) continue;
    last += step;
    places.push(last);
    [step, shift] = [0, 0];
  }
  return places;
}
