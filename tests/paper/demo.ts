import { fileURLToPath } from "node:url";
import { prepare } from "../../src/check.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition, Shown, Site } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { papersOf } from "../../src/pages/appendix/papers.ts";
import { writePapers } from "../../src/publish/paper/write.ts";
import { layOut } from "../../src/publish/publish.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

export interface Papers {
  readonly shown: Shown;
  readonly site: Site;
  /** Its PDFs, from the folder they were written to. */
  readonly papersOf: readonly string[];
  /** Of a page of the site: its HTML. */
  readonly page: (path: string) => string;
}

/** PDFs of a record's edition and nothing else, in a folder. */
export async function papersOfRecord(content: string, edition: Edition, folder: string): Promise<Papers> {
  const quiet = { line: () => undefined, progress: () => undefined };
  const prepared = await prepare({ content, cache: ".cache/scarfline", today: "2099-01-01", paper: true }, quiet);
  if ("problems" in prepared) throw new Error(JSON.stringify(prepared.problems));
  const { record, ready, maker, seal } = prepared;
  const shown = editionOf(record, reckon(record), edition, seal);
  const { site, pages } = layOut(shown, ready, { hasPapers: true });
  if (maker === undefined) throw new Error("Typst is not here");
  await writePapers(site, (file) => ready.pictures.get(file)?.placings ?? [], ROOT, folder);
  return {
    shown,
    site,
    papersOf: papersOf(shown).map(({ path }) => path),
    page: (path) => pages.find((one) => one.path === path)?.make() ?? "",
  };
}
