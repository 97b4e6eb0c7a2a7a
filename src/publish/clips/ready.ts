import { stat } from "node:fs/promises";
import { join } from "node:path";
import type { ReadyClip } from "../../editions/shown.ts";
import type { Kept, PictureCache } from "../pictures/cache.ts";
import type { Outcome, Ready, ReadyFilm } from "../pictures/ready-file.ts";
import { NAME_LENGTH } from "../pictures/recipe.ts";
import type { Wanted } from "../pictures/wanted.ts";
import type { ClipFacts } from "./copy.ts";
import { unplayable } from "./problems.ts";
import { Refused } from "./refused.ts";
import type { Container } from "./whole.ts";

interface Facts extends ClipFacts {
  readonly bytes: number;
}

/** A clip of the record, from the cache where it was copied before. */
export async function readyClip(content: string, wanted: Wanted, cache: PictureCache): Promise<Outcome<ReadyFilm>> {
  const path = join(content, wanted.file);
  const container = /\.webm$/i.test(wanted.file) ? "webm" : "mp4";
  const kind = `clip-${container}`;
  const digest = await cache.digestOf(path);
  const { size } = await stat(path);
  const found = cache.find<Facts>(kind, digest);
  if (found !== undefined) return { ready: filmOf(found, path, size, digest, container), decoded: false };
  try {
    const kept = await cache.make(kind, digest, async (making): Promise<Facts> => {
      const to = join(making, nameOf(container));
      // Apart from the program, since few records have clips.
      const { copyBare } = await import("./copy.ts");
      const facts = await copyBare(path, to, container);
      return { ...facts, bytes: (await stat(to)).size };
    });
    return { ready: filmOf(kept, path, size, digest, container), decoded: true };
  } catch (error) {
    if (error instanceof Refused) return { problems: [unplayable(wanted, error)] };
    throw error;
  }
}

function filmOf(
  { folder, facts }: Kept<Facts>,
  path: string,
  size: number,
  digest: string,
  container: Container,
): ReadyFilm {
  const to = `clips/${digest.slice(0, NAME_LENGTH)}.${container}`;
  const clip: ReadyClip = { ...facts, type: `video/${container}`, path: to };
  const ready = (from: string, original: boolean, bytes: number): Ready => ({
    clip: { ...clip, bytes },
    placings: [{ from, to, original }],
  });
  return { bare: ready(join(folder, nameOf(container)), false, facts.bytes), own: ready(path, true, size) };
}

function nameOf(container: Container): string {
  return `clip.${container}`;
}
