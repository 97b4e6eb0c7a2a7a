/** The values of a front matter and where they stand: all that is kept of the parsed document. */
import type { Place } from "../../problem.ts";
import type { Path } from "../../facts/values.ts";
import type { Source } from "./source.ts";

/** Text as typed, a list or a block. */
export type Data = string | readonly Data[] | { readonly [key: string]: Data };

export interface FrontMatter {
  readonly data: Data;
  /** Where the value at a path stands; where there is none, the block that lacks it. */
  readonly placeOf: (path: Path) => Place;
  /** Where the key at the end of a path stands. */
  readonly placeOfKey: (path: Path) => Place;
  /** The value at a path as typed. */
  readonly typedAt: (path: Path) => string;
  /** The entry whose `in_use` put the value at a path there, where nothing was typed. */
  readonly usualFrom: (path: Path) => string | undefined;
}

/** Offsets in the YAML of a value's own start and end, and of its key. */
export interface Spot {
  readonly start: number;
  readonly end: number;
  readonly key?: number;
  readonly parts?: { readonly [key: string]: Spot } | readonly Spot[];
}

export interface ReadValue {
  readonly data: Data;
  readonly spot: Spot;
}

/** `base` is where the YAML begins in the file. */
export function frontMatter(source: Source, base: number, { data, spot: root }: ReadValue): FrontMatter {
  return {
    data,
    placeOf: (path) => source.at(base + spotAt(root, path).spot.start),
    placeOfKey: (path) => {
      const { spot, whole } = spotAt(root, path);
      return source.at(base + (whole ? (spot.key ?? spot.start) : spot.start));
    },
    typedAt: (path) => {
      const { spot, whole } = spotAt(root, path);
      return whole ? source.text.slice(base + spot.start, base + spot.end) : "";
    },
    usualFrom: () => undefined,
  };
}

/** The spot at the end of a path, or the last one on the way to it. */
function spotAt(root: Spot, path: Path): { readonly spot: Spot; readonly whole: boolean } {
  let spot = root;
  for (const step of path) {
    const parts = spot.parts as { readonly [step: PropertyKey]: Spot | undefined } | undefined;
    const next = parts && Object.hasOwn(parts, step) ? parts[step] : undefined;
    if (next === undefined) return { spot, whole: false };
    spot = next;
  }
  return { spot, whole: true };
}

const NO_KEY = -1;

/** The numbers of a spot and of all within it, in the order of the values; the values of `data` all have theirs. */
export function flattened({ data, spot }: ReadValue): number[] {
  const flat: number[] = [];
  const put = (value: Data, { start, end, key = NO_KEY, parts }: Spot): void => {
    flat.push(start, end, key);
    if (typeof value === "string") return;
    const values = value as { readonly [step: string]: Data };
    const spots = parts as { readonly [step: string]: Spot };
    for (const step of Object.keys(values)) put(values[step] as Data, spots[step] as Spot);
  };
  put(data, spot);
  return flat;
}

/** Values that came from JSON, as `parseYaml` gives them, with the spots that were {@link flattened}. */
export function unflattened(plain: Data, flat: readonly number[]): ReadValue {
  let at = 0;
  const take = (value: Data): ReadValue => {
    const [start = 0, end = 0, key = NO_KEY] = [flat[at], flat[at + 1], flat[at + 2]];
    at += 3;
    const own = key === NO_KEY ? { start, end } : { start, end, key };
    if (typeof value === "string") return { data: value, spot: own };
    if (Array.isArray(value)) {
      const items = (value as readonly Data[]).map(take);
      return { data: items.map(({ data }) => data), spot: { ...own, parts: items.map(({ spot }) => spot) } };
    }
    const data = Object.create(null) as { [key: string]: Data };
    const parts = Object.create(null) as { [key: string]: Spot };
    for (const [step, part] of Object.entries(value)) {
      const read = take(part);
      data[step] = read.data;
      parts[step] = read.spot;
    }
    return { data, spot: { ...own, parts } };
  };
  return take(plain);
}
