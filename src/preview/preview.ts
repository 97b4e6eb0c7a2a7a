import { mkdir, mkdtemp, realpath, rm } from "node:fs/promises";
import { join, resolve } from "node:path";
import type { BuildRequest } from "../build.ts";
import { openPictures, openReadings, prepare, type PrepareRequest, type Teller } from "../check.ts";
import { editionOf } from "../editions/edition.ts";
import type { Edition } from "../editions/shown.ts";
import type { Note, Problem } from "../problem.ts";
import { writeAssets } from "../publish/assets.ts";
import { compiledProgram } from "../publish/output/standing.ts";
import { layOutWhole } from "../publish/publish.ts";
import { defined } from "../defined.ts";
import type { PreviewDesk } from "./desk.ts";
import type { EditorLink } from "./editor.ts";
import type { Trouble } from "./overlay.ts";
import { Reckoned } from "./reckoned.ts";
import { servePreview } from "./server.ts";
import { SiteOnDemand } from "./site.ts";
import { oneAtATime, watchFolder } from "./watch.ts";

export interface PreviewRequest extends PrepareRequest, Pick<BuildRequest, "program"> {
  readonly edition: Edition;
  readonly port: number;
  readonly desk?: PreviewDesk;
  readonly link?: EditorLink;
}

/**
 * What came of a look at the record: how many pages its site has, none of them made yet, or all that is wrong with
 * it.
 */
export type Renewed = ({ readonly pages: number } | { readonly problems: readonly Problem[] }) & {
  readonly notes: readonly Note[];
};

export interface PreviewTeller extends Teller {
  /** The server is up; the first look at the record comes after. */
  readonly serving: (url: string) => void;
  readonly renewed: (renewed: Renewed | Error, milliseconds: number) => void;
  readonly error: (text: string) => void;
}

export interface Preview {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/**
 * Serves a record's site, renews it after each change of the record, and keeps serving the last good one while there
 * are problems.
 */
export async function startPreview(request: PreviewRequest, tell: PreviewTeller): Promise<Preview> {
  await mkdir(request.cache, { recursive: true });
  const folder = await mkdtemp(join(resolve(request.cache), "preview-"));
  await writeAssets(request.program, folder);
  const site = new SiteOnDemand(folder);
  const server = await servePreview(site, request, tell.error);
  tell.serving(server.url);
  const look = await renewing(request, site, tell);
  const renew = oneAtATime(async () => {
    const began = performance.now();
    const renewed = await look().catch((error: unknown) => (error instanceof Error ? error : new Error(String(error))));
    tell.renewed(renewed, performance.now() - began);
    server.show(troubleOf(renewed, request.link));
  });
  const watch = await watchFolder(await realpath(request.content), () => void renew());
  await renew();
  return {
    url: server.url,
    close: async () => {
      await watch.close();
      await server.close();
      await rm(folder, { recursive: true });
    },
  };
}

/**
 * Reads the record whole each time, but parses only files that changed, and reckons it whole where anything but texts of entries did; pages
 * are left for those who ask for them.
 */
export async function renewing(
  request: PrepareRequest & Pick<PreviewRequest, "edition" | "program">,
  site: SiteOnDemand,
  tell: Teller,
): Promise<() => Promise<Renewed>> {
  const kept = { memory: new Map(), pictures: openPictures(request.cache) };
  const reckoned = new Reckoned();
  let readings = openReadings(request, await compiledProgram(request.program));
  return async () => {
    const prepared = await prepare(request, tell, defined({ ...kept, readings }));
    readings = undefined;
    if ("problems" in prepared) return prepared;
    const shown = editionOf(prepared.record, reckoned.of(prepared.record), request.edition, prepared.seal);
    const layout = await layOutWhole(shown, prepared.ready, request);
    if ("problems" in layout) return { problems: layout.problems, notes: prepared.notes };
    await site.renew(layout);
    return { pages: layout.pages.length, notes: prepared.notes };
  };
}

function troubleOf(renewed: Renewed | Error, link: EditorLink | undefined): Trouble | undefined {
  if (renewed instanceof Error) return { problems: [], failure: renewed.stack ?? renewed.message };
  return "problems" in renewed ? defined({ problems: renewed.problems, link }) : undefined;
}
