/** The index of a search as it is sent: each word with the things that hold it, small enough for thousands of entries. */
import { spellingsOf, termsWithin } from "./terms.ts";

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
  const within = termsWithin();
  const places = new Map<string, number[]>();
  all.forEach(({ id, title, words }, at) => {
    const name = new Set([...(id === undefined ? [] : [...within(id), ...spellingsOf(id)]), ...within(title)]);
    for (const term of new Set([...name, ...words.flatMap(within)])) {
      const known = places.get(term);
      const place = placeOf(at, name.has(term));
      if (known === undefined) places.set(term, [place]);
      else known.push(place);
    }
  });
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
