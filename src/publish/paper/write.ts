import { mkdir, readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { appendixSheet } from "../../../layouts/appendix/appendix.tsx";
import { holdPointSheet } from "../../../layouts/appendix/hold-point-sheet.tsx";
import type { Site } from "../../editions/shown.ts";
import type { FilePath } from "../../facts/types.ts";
import { papersOf } from "../../pages/appendix/papers.ts";
import type { Placing } from "../pictures/ready-file.ts";
import { setterApart } from "./apart.ts";
import { paperOf } from "./papers.ts";

/** As wide as a third of a page needs, at some 250 dots an inch. */
const WIDTH = 600;
const SETTABLE = /(?:-(\d+))?\.(?:jpg|svg)$/;

/**
 * Makes the PDFs of an edition in a site's folder, one after another, of what its pages are made of. `placings` are what
 * becomes of a picture of the record; `program` is where the program is installed. Returns how many.
 */
export async function writePapers(
  site: Site,
  placings: (file: FilePath) => readonly Placing[],
  program: string,
  folder: string,
): Promise<number> {
  const disk = (file: FilePath): Placing | undefined => {
    const settable = placings(file).filter(({ to }) => SETTABLE.test(to));
    return settable.find(({ to }) => Number(SETTABLE.exec(to)?.[1] ?? WIDTH) >= WIDTH) ?? settable.at(-1);
  };
  const papers = papersOf(site.shown);
  const setter = setterApart(program);
  try {
    for (const paper of papers) {
      const sheet =
        "sheet" in paper ? appendixSheet(site, paper.sheet) : holdPointSheet(site, paper.holdPoint, paper.path);
      const { paper: made, drawn, pictures } = paperOf(site, sheet, (file) => /\.\w+$/.exec(disk(file)?.to ?? "")?.[0]);
      const files = new Map<string, Uint8Array>(drawn);
      for (const [name, file] of pictures) files.set(name, await readFile(disk(file)?.from ?? ""));
      const to = join(folder, paper.path);
      await mkdir(dirname(to), { recursive: true });
      await setter.set({ paper: made, files, to });
    }
  } finally {
    await setter.end();
  }
  return papers.length;
}
