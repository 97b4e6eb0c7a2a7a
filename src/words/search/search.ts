/** Looks for words in an index: every one of them must be there, as it is, as a beginning or, if it is nowhere, spelt alike. */
import SearchableMap from "minisearch/SearchableMap";
import { isNameAt, type PackedIndex, placesIn, type Thing, thingAt } from "./packed.ts";
import { hasDigit, partsOf, wordsIn } from "./terms.ts";

export interface Index {
  readonly things: readonly Thing[];
  /** By each word the line on which its places stand. */
  readonly lines: SearchableMap<number>;
  readonly places: readonly string[];
}

export interface Answer {
  /** The best first. */
  readonly found: readonly Thing[];
  /** Words that stand nowhere as they were typed, and what they were taken for. */
  readonly readAs: readonly { readonly typed: string; readonly as: readonly string[] }[];
}

export function openIndex({ kinds, things, terms, places }: PackedIndex): Index {
  return {
    things: things.map(([kind, path, id, title, day, lead]) => ({
      kind: kinds[kind] ?? "",
      path,
      title,
      lead,
      ...(id === "" ? {} : { id }),
      ...(day === "" ? {} : { day }),
    })),
    lines: SearchableMap.from(terms.split("\n").map((term, line) => [term, line] as [string, number])),
    places: places.split("\n"),
  };
}

/** A word of the index that a typed one may mean, and how much less it counts. */
interface Meant {
  readonly line: number;
  readonly weight: number;
  readonly term: string;
}

interface Asked {
  readonly typed: string;
  readonly meant: readonly Meant[];
  readonly isAlike: boolean;
}

/** `query` as it was typed; nothing is found by nothing. */
export function search(index: Index, query: string): Answer {
  const typed = [...new Set(wordsIn(query).flatMap((word) => wholeOrParts(index, word)))];
  if (typed.length === 0) return { found: [], readAs: [] };
  const asked = typed.map((word) => askedFor(index, word));
  const found = foundBy(index, asked);
  const again = found.length > 0 ? asked : typed.map((word) => orAlike(index, word));
  return {
    found: found.length > 0 ? found : foundBy(index, again),
    readAs: again
      .filter(({ isAlike }) => isAlike)
      .map(({ typed: word, meant }) => ({ typed: word, as: meant.map(({ term }) => term) })),
  };
}

/** An id stays whole. Words joined by a hyphen that stand nowhere so are each looked for. */
function wholeOrParts({ lines }: Index, word: string): string[] {
  const parts = partsOf(word);
  return lines.has(word) || hasDigit(word) || parts.length === 0 ? [word] : parts;
}

/** Of an id that stands there no other is meant that begins alike; nothing is taken for an id that stands nowhere. */
function askedFor(index: Index, typed: string): Asked {
  const { lines } = index;
  const own = lines.get(typed);
  const exact = own === undefined ? [] : [{ line: own, weight: 1, term: typed }];
  if (hasDigit(typed)) return { typed, meant: own === undefined ? beginning(index, typed) : exact, isAlike: false };
  const meant = [...exact, ...beginning(index, typed)];
  if (meant.length > 0) return { typed, meant, isAlike: false };
  const alike = spelt(index, typed);
  return { typed, meant: alike, isAlike: alike.length > 0 };
}

/** A word that is there, but not together with the others, may still be another misspelt. */
function orAlike(index: Index, typed: string): Asked {
  const asked = askedFor(index, typed);
  if (hasDigit(typed) || asked.isAlike) return asked;
  const alike = spelt(index, typed);
  return { typed, meant: [...asked.meant, ...alike], isAlike: alike.length > 0 };
}

/** Shorter ones begin too many words. */
const SHORTEST_BEGINNING = 2;

function beginning({ lines }: Index, typed: string): Meant[] {
  if (typed.length < SHORTEST_BEGINNING) return [];
  return [...lines.atPrefix(typed).entries()]
    .filter(([term]) => term !== typed)
    .map(([term, line]) => ({ line, weight: (0.7 * typed.length) / term.length, term }));
}

/** How many letters may be wrong, missing or too many: a letter out of place is two. */
const wrongIn = (typed: string): number => (typed.length < 4 ? 0 : typed.length === 4 ? 1 : typed.length < 10 ? 2 : 3);

/** The words that are spelt most like it. */
function spelt({ lines }: Index, typed: string): Meant[] {
  const most = wrongIn(typed);
  const alike = [...lines.fuzzyGet(typed, most)].filter(([term, [, wrong]]) => wrong > 0 && !hasDigit(term));
  const nearest = Math.min(...alike.map(([, [, wrong]]) => wrong));
  return alike
    .filter(([, [, wrong]]) => wrong === nearest)
    .map(([term, [line, wrong]]) => ({ line, weight: 0.5 - 0.1 * wrong, term }));
}

/** A word of a thing's name says more than one in its text. */
const OF_NAME = 4;
/** Whoever types an id wants that thing before all others. */
const OWN = 100;

function foundBy({ things, places }: Index, asked: readonly Asked[]): Thing[] {
  const score = new Float64Array(things.length);
  const held = new Uint16Array(things.length);
  for (const [at, { meant, typed }] of asked.entries()) {
    const best = new Map<number, number>();
    for (const { line, weight } of meant) {
      for (const place of placesIn(places[line] ?? "")) {
        const thing = thingAt(place);
        const worth = weight * (isNameAt(place) ? OF_NAME : 1);
        if (worth > (best.get(thing) ?? 0)) best.set(thing, worth);
      }
    }
    const rare = Math.log(1 + things.length / Math.max(1, best.size));
    for (const [thing, worth] of best) {
      if (held[thing] !== at) continue;
      held[thing] = at + 1;
      const isOwn = things[thing]?.id?.toLowerCase() === typed;
      score[thing] = (score[thing] ?? 0) + worth * rare + (isOwn ? OWN : 0);
    }
  }
  const worthOf = (at: number): number => score[at] ?? 0;
  return [...things.keys()]
    .filter((at) => held[at] === asked.length)
    .sort((a, b) => worthOf(b) - worthOf(a) || b - a)
    .flatMap((at) => things[at] ?? []);
}
