import type { Entry, Photo } from "../record/types.ts";

/** An entry by the first of its photographs. */
export interface Pictured {
  readonly entry: Entry;
  readonly photo: Photo;
}

export function pictured(entries: readonly Entry[]): Pictured[] {
  return entries.flatMap((entry) => {
    const [photo] = entry.photos;
    return photo === undefined ? [] : [{ entry, photo }];
  });
}

/** So many of them, the first and the last among them, spread evenly over the course of the work. */
export function spreadOver(all: readonly Pictured[], most: number): Pictured[] {
  if (all.length <= most) return [...all];
  return Array.from({ length: most }, (_, at) => all[Math.round((at * (all.length - 1)) / (most - 1))]).filter((one) => one !== undefined);
}
