import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { type CheckRequest, openPictures, prepare, type Prepared, type Teller } from "./check.ts";
import { defined } from "./defined.ts";
import { reckon } from "./evidence/evidence.ts";
import type { Evidence } from "./evidence/types.ts";
import { editionOf } from "./editions/edition.ts";
import type { Edition } from "./editions/shown.ts";
import { Texts } from "./editions/texts.ts";
import { counted } from "./words/lists.ts";
import type { Note, Problem } from "./problem.ts";
import { beginOutput } from "./publish/output/folder.ts";
import type { KeptPages } from "./publish/output/kept-pages.ts";
import { publish, type Published, type Publishing } from "./publish/publish.ts";
import { wholesOf } from "./publish/whole.ts";
import type { Readings } from "./record/readings.ts";
import type { Record } from "./facts/types.ts";

export interface BuildRequest extends CheckRequest {
  readonly out: string;
  readonly editions: readonly Edition[];
  /** Whether pictures that this record no longer names are cleared from the cache afterwards. */
  readonly prune?: boolean;
  /** Each edition in a folder of its own name, so that one can be put on a host without the others. */
  readonly apart: boolean;
}

interface EditionBuilt extends Published {
  readonly edition: Edition;
  /** Where it stands now. */
  readonly folder: string;
}

export type Built = (
  | { readonly problems: readonly Problem[] }
  | { readonly record: Record; readonly evidence: Evidence; readonly editions: readonly EditionBuilt[] }
) & { readonly notes: readonly Note[] };

/** What earlier builds by the same program left. */
export interface KnownBefore {
  readonly readings?: Readings | undefined;
  readonly pages?: KeptPages | undefined;
}

/**
 * Reads a record, reckons what it proves and writes a site. With any problem in the record nothing is written.
 * @throws OutputRefused where the output folder cannot be used
 */
export async function build(
  request: BuildRequest,
  tell: Teller,
  { readings, pages }: KnownBefore = {},
): Promise<Built> {
  const { content, out } = request;
  const making = await beginOutput(out, content);
  try {
    const pictures = openPictures(request.cache);
    const prepared = await prepare(request, tell, defined({ pictures, readings }));
    if ("problems" in prepared) return prepared;
    const { record } = prepared;
    const keeping = pages && keepingOf(pages, record);
    const evidence = reckon(record);
    const editions = await publishAll(prepared, evidence, request, making.folder, keeping);
    if ("problems" in editions) return { problems: editions.problems, notes: prepared.notes };
    await making.moveIntoPlace();
    pages?.close();
    if (request.prune === true)
      tell.line(
        `Cleared the cache of ${counted(await pictures.prune(), "picture, document or clip", "pictures, documents and clips")}.`,
      );
    return { record, evidence, editions, notes: prepared.notes };
  } finally {
    await making.giveUp();
  }
}

/** From now on readings of the record's texts are noted. */
function keepingOf(pages: KeptPages, record: Record): (folder: string) => Publishing["keeping"] {
  const texts = new Texts(record);
  const wholeOf = wholesOf(pages.madeWith, record);
  return (folder) => (laidOut) => pages.edition(folder, wholeOf(laidOut), texts);
}

async function publishAll(
  { record, ready, seal, maker }: Extract<Prepared, { readonly record: Record }>,
  evidence: Evidence,
  request: BuildRequest,
  folder: string,
  keeping?: (folder: string) => Publishing["keeping"],
): Promise<EditionBuilt[] | { readonly problems: readonly Problem[] }> {
  const built: EditionBuilt[] = [];
  for (const edition of request.editions) {
    const place = request.apart ? edition : "";
    await mkdir(join(folder, place), { recursive: true });
    const published = await publish(editionOf(record, evidence, edition, seal), ready, request, join(folder, place), {
      maker: edition === "public" ? undefined : maker,
      keeping: keeping?.(place),
    });
    if ("problems" in published) return published;
    built.push({ ...published, edition, folder: join(request.out, place) });
  }
  return built;
}
