import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Problem } from "../../problem.ts";
import type { FilePath } from "../../facts/types.ts";
import { readyClip } from "../clips/ready.ts";
import type { Kept, PictureCache } from "./cache.ts";
import { deriveDocument, derivePicture } from "./decode.ts";
import { inertEnding } from "./inert.ts";
import { drawingProblems, unreadable } from "./problems.ts";
import type { Outcome, Ready, ReadyFilm } from "./ready-file.ts";
import { NAME_LENGTH } from "./recipe.ts";
import type { Wanted } from "./wanted.ts";

export interface ReadyFiles {
  readonly pictures: ReadonlyMap<FilePath, Ready>;
  readonly documents: ReadonlyMap<FilePath, Ready>;
  readonly clips: ReadonlyMap<FilePath, ReadyFilm>;
  readonly problems: readonly Problem[];
  /** How many were decoded or copied now, and not found in the cache. */
  readonly decoded: number;
}

interface PictureFacts {
  readonly width: number;
  readonly height: number;
  readonly colour: string;
  readonly widths: readonly number[];
}

/** Pictures in work at a time: a large one decoded takes some tens of megabytes. */
const AT_ONCE = 2;
const DRAWING = /\.svg$/i;
const RASTER = /\.(jpe?g|png|webp|tiff?|avif|gif|heic|heif|jxl|bmp)$/i;

/** Makes ready what a record names. A file that cannot be is a problem, and the others are still looked at. */
export async function readyFiles(
  content: string,
  wanted: readonly Wanted[],
  cache: PictureCache,
  onDone: (done: number, of: number) => void,
): Promise<ReadyFiles> {
  const pictures = new Map<FilePath, Ready>();
  const documents = new Map<FilePath, Ready>();
  const clips = new Map<FilePath, ReadyFilm>();
  const problems: Problem[] = [];
  let decoded = 0;
  let done = 0;
  const settle = <Made>({ file }: Wanted, outcome: Outcome<Made>, into: Map<FilePath, Made>): void => {
    if ("problems" in outcome) problems.push(...outcome.problems);
    else {
      into.set(file, outcome.ready);
      if (outcome.decoded) decoded += 1;
    }
  };
  await eachOf(wanted, AT_ONCE, async (each) => {
    if (each.use === "clip") settle(each, await readyClip(content, each, cache), clips);
    else settle(each, await readyOne(content, each, cache), each.use === "picture" ? pictures : documents);
    onDone((done += 1), wanted.length);
  });
  return { pictures, documents, clips, problems, decoded };
}

async function readyOne(content: string, wanted: Wanted, cache: PictureCache): Promise<Outcome> {
  const path = join(content, wanted.file);
  const digest = await cache.digestOf(path);
  if (DRAWING.test(wanted.file)) return readyDrawing(path, digest, wanted, cache);
  if (wanted.use === "picture") return readyPicture(path, digest, wanted, cache);
  return RASTER.test(wanted.file)
    ? readyScan(path, digest, wanted, cache)
    : { ready: originalOf(path, digest, await inertEnding(path)), decoded: false };
}

async function readyPicture(path: string, digest: string, wanted: Wanted, cache: PictureCache): Promise<Outcome> {
  const found = cache.find<PictureFacts>("picture", digest);
  if (found !== undefined) return { ready: pictureOf(found, digest), decoded: false };
  try {
    const { files, ...facts } = await derivePicture(await readFile(path));
    return { ready: pictureOf(await cache.keep("picture", digest, facts, files), digest), decoded: true };
  } catch (error) {
    return { problems: [unreadable(wanted, error)] };
  }
}

async function readyScan(path: string, digest: string, wanted: Wanted, cache: PictureCache): Promise<Outcome> {
  const found = cache.find("document", digest);
  if (found !== undefined) return { ready: scanOf(found, digest), decoded: false };
  try {
    const bytes = await deriveDocument(await readFile(path));
    return {
      ready: scanOf(await cache.keep("document", digest, {}, [{ name: "document.jpg", bytes }]), digest),
      decoded: true,
    };
  } catch (error) {
    return { problems: [unreadable(wanted, error)] };
  }
}

async function readyDrawing(path: string, digest: string, wanted: Wanted, cache: PictureCache): Promise<Outcome> {
  const found = cache.find<{ width: number; height: number }>("drawing", digest);
  if (found !== undefined) return { ready: drawingOf(found, digest), decoded: false };
  // Apart from the program, since each drawing is read once.
  const { readDrawing } = await import("./drawing.ts");
  const drawing = readDrawing(await readFile(path));
  if (!("svg" in drawing)) return { problems: drawingProblems(wanted, drawing) };
  const { svg, ...size } = drawing;
  return {
    ready: drawingOf(await cache.keep("drawing", digest, size, [{ name: "drawing.svg", bytes: svg }]), digest),
    decoded: false,
  };
}

function pictureOf({ folder, facts }: Kept<PictureFacts>, digest: string): Ready {
  const name = (width: number, ending: string): string => `photos/${digest.slice(0, NAME_LENGTH)}-${width}.${ending}`;
  const source = (type: string, ending: string) => ({
    type,
    files: facts.widths.map((width) => ({ path: name(width, ending), width })),
  });
  const { width, height, colour } = facts;
  return {
    picture: { width, height, colour, sources: [source("image/webp", "webp"), source("image/jpeg", "jpg")] },
    placings: facts.widths.flatMap((each) =>
      ["webp", "jpg"].map((ending) => ({
        from: join(folder, `${each}.${ending}`),
        to: name(each, ending),
        original: false,
      })),
    ),
  };
}

function drawingOf({ folder, facts }: Kept<{ width: number; height: number }>, digest: string): Ready {
  const path = `drawings/${digest.slice(0, NAME_LENGTH)}.svg`;
  const picture = {
    ...facts,
    colour: "transparent",
    sources: [{ type: "image/svg+xml", files: [{ path, width: facts.width }] }],
  };
  return { path, picture, placings: [{ from: join(folder, "drawing.svg"), to: path, original: false }] };
}

function scanOf({ folder }: Kept<unknown>, digest: string): Ready {
  const path = documentPath(digest, ".jpg");
  return { path, placings: [{ from: join(folder, "document.jpg"), to: path, original: false }] };
}

function originalOf(from: string, digest: string, ending: string): Ready {
  const path = documentPath(digest, ending);
  return { path, placings: [{ from, to: path, original: true }] };
}

/** Its name tells nothing: that of the original may name a person or a supplier. */
function documentPath(digest: string, ending: string): string {
  return `files/${digest.slice(0, NAME_LENGTH)}${ending}`;
}

async function eachOf<Item>(
  items: readonly Item[],
  atOnce: number,
  work: (item: Item) => Promise<void>,
): Promise<void> {
  const left = items.values();
  const worker = async (): Promise<void> => {
    for (const item of left) await work(item);
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
}
