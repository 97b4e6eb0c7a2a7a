/** Photographs of the days on what is inside a hold point, numbered so that a bay can be written beside each. */
import type { Entry, Photo } from "../../../facts/types.ts";
import type { Shown } from "../../../editions/shown.ts";
import { storyOf } from "../../story/story.ts";

export interface PhotosInside {
  /** The newest first, and numbered in that order. */
  readonly shown: readonly { readonly photo: Photo; readonly entry: Entry }[];
  /** How many more there are on the pages of their days. */
  readonly more: number;
}

/** So many that they stay on a sheet or two. */
const MOST = 24;

export function photosInside(shown: Shown, within: ReadonlySet<string>): PhotosInside {
  const { homesOf } = storyOf(shown);
  const isInside = ({ id }: Entry): boolean => [...(homesOf.get(id) ?? [])].some((home) => within.has(home));
  const all = shown.record.entries
    .filter(isInside)
    .flatMap((entry) => entry.photos.map((photo) => ({ photo, entry })))
    .reverse();
  return { shown: all.slice(0, MOST), more: Math.max(0, all.length - MOST) };
}
