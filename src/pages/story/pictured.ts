import type { Entry, Photo } from "../../facts/types.ts";

/** What stands for an entry in lists. */
export type EntryPicture = Pick<Photo, "file" | "alt" | "caption">;

/** An entry by the first of its photographs, else by the poster of its first clip. */
export interface Pictured {
  readonly entry: Entry;
  readonly photo: EntryPicture;
}

export function pictureOf({ photos: [photo], clips: [clip] }: Entry): EntryPicture | undefined {
  return photo ?? (clip === undefined ? undefined : { file: clip.poster, alt: clip.alt });
}

export function pictured(entries: readonly Entry[]): Pictured[] {
  return entries.flatMap((entry) => {
    const photo = pictureOf(entry);
    return photo === undefined ? [] : [{ entry, photo }];
  });
}

/** So many of them, the first and the last among them, spread evenly over the course of the work. */
export function spreadOver(all: readonly Pictured[], most: number): Pictured[] {
  if (all.length <= most) return [...all];
  return Array.from({ length: most }, (_, at) => all[Math.round((at * (all.length - 1)) / (most - 1))]).filter(
    (one) => one !== undefined,
  );
}
