import { defined } from "../../defined.ts";
import type { Assembly, Entry, Photo } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { lineageOf, storyOf } from "./story.ts";

export interface EntryView {
  readonly entry: Entry;
  /** The assembly and those it stands in, outermost first. */
  readonly place: readonly Assembly[];
  readonly earlier?: Entry;
  readonly later?: Entry;
  /** The picture that opens the page: the first that the prose does not place itself. */
  readonly lead?: Photo;
  readonly others: readonly Photo[];
}

export function entryView(shown: Shown, entry: Entry): EntryView {
  const { position } = storyOf(shown);
  const { entries } = shown.record;
  const at = position.get(entry.id) ?? 0;
  const [earlier, later] = [entries[at - 1], entries[at + 1]];
  const [lead, ...others] = entry.photos.filter((photo) => !placedInProse(entry, photo));
  return defined({ entry, others, place: placeOf(shown, entry), lead, earlier, later });
}

const placeOf = ({ record }: Shown, { assembly }: Entry): Assembly[] =>
  assembly === undefined ? [] : lineageOf(record, assembly).reverse();

/** Whether the prose shows the photograph where it speaks of it. */
function placedInProse(entry: Entry, { file }: Photo): boolean {
  const plain = file.slice(file.lastIndexOf("/") + 1);
  if (entry.body.every(({ markdown }) => !markdown.includes(plain))) return false;
  const name = plain.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const image = new RegExp(`!\\[[^\\]]*\\]\\(<?(?:[^)\\s]*/)?${name}[>\\s)]`, "u");
  return entry.body.some(({ markdown }) => image.test(markdown));
}
