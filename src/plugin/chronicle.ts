/** A chronicle within somebody's own Eleventy site: read and judged before their pages are made, put into place after them. */
import { join, posix, relative, sep } from "node:path";
import { editionViewOf } from "../../layouts/own/edition-view.tsx";
import { openPictures, prepare } from "../check.ts";
import { defined } from "../defined.ts";
import { editionOf } from "../editions/edition.ts";
import { reckon } from "../evidence/evidence.ts";
import { localDay } from "../facts/time/local-day.ts";
import type { EditionView } from "../pages/own/edition-view.ts";
import { inOrder, type Problem, problemCount, problemText } from "../problem.ts";
import { beginOutput } from "../publish/output/folder.ts";
import type { ReadyFiles } from "../publish/pictures/ready.ts";
import { layOutWhole, type LaidOutSite, versionOf, writeSite } from "../publish/publish.ts";
import type { ChronicleOptions, ConfigAsked } from "./options.ts";

interface Standing {
  readonly laidOut: LaidOutSite;
  readonly ready: ReadyFiles;
  readonly view: EditionView;
}

const CACHE = join(".cache", "scarfline");

/** @param program where this program is installed */
export function addChronicle(config: ConfigAsked, options: ChronicleOptions, program: string): void {
  const { record, at = "chronicle" } = options;
  const folder = folderOf(at);
  let read: Promise<Standing> | undefined;
  // Their templates never read a record: the same bytes would be taken for something else.
  const inside = relative(".", record).split(sep).join("/");
  config.ignores.add(`${inside}/**`);
  config.addWatchTarget(record);
  config.addGlobalData("chronicle", async () => (await (read ??= readWhole(options, folder, program))).view);
  config.on("eleventy.before", async () => void (await (read = readWhole(options, folder, program))));
  config.on("eleventy.after", async ({ directories: { output } }) => {
    const { laidOut, ready } = await (read ??= readWhole(options, folder, program));
    const making = await beginOutput(join(output, folder), record);
    try {
      await writeSite(laidOut, ready, program, making.folder);
      await making.moveIntoPlace();
    } finally {
      await making.giveUp();
    }
  });
}

/** @throws Error where it is no folder within a site */
function folderOf(at: string): string {
  const folder = posix.normalize(at).replace(/^\/+|\/+$/g, "");
  if (folder === "" || folder === "." || folder.split("/").includes(".."))
    throw new Error(`at: ${JSON.stringify(at)} is no folder within the site. Give one, such as "chronicle"`);
  return folder;
}

/** @throws Error that tells all problems of the record */
async function readWhole(
  { record: content, edition = "public", date }: ChronicleOptions,
  folder: string,
  program: string,
): Promise<Standing> {
  const silent = { line: () => undefined, progress: () => undefined };
  const request = defined({ content, cache: CACHE, today: localDay(new Date()), day: date });
  const prepared = await prepare(request, silent, { pictures: openPictures(CACHE) });
  if ("problems" in prepared) throw refused(content, prepared.problems);
  const { record, ready, seal } = prepared;
  const shown = editionOf(record, reckon(record), edition, seal);
  const laidOut = await layOutWhole(shown, ready, { content, program }, { version: await versionOf(program) });
  if ("problems" in laidOut) throw refused(content, laidOut.problems);
  return { laidOut, ready, view: editionViewOf(laidOut.site, `/${folder}/`) };
}

function refused(content: string, problems: readonly Problem[]): Error {
  const told = inOrder(problems).map(problemText).join("\n\n");
  return new Error(
    `${problemCount(problems)} in the record at ${content}; the chronicle stays as it was.\n\n${told}\n`,
  );
}
