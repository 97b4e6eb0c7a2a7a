/** Writes the page at the bench, which is in no edition of the site. */
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { BENCH_MANIFEST, benchPage } from "../../layouts/bench/bench-page.ts";
import { ICON } from "../../layouts/shell/icon.ts";

const digestOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/**
 * Into an empty folder. `given` is what the page is given of the record, but for when it was made, s since
 * 1970-01-01T00:00Z; `program` is where the program is installed.
 */
export async function writeBench(given: object, made: number, program: string, folder: string): Promise<void> {
  const part = (name: string): Promise<string> => readFile(join(program, ".build", "bench", name), "utf8");
  const page = benchPage({
    script: await part("page.js"),
    style: await part("page.css"),
    data: JSON.stringify({ ...given, made }),
    digest: digestOf(JSON.stringify(given)),
  });
  await writeFile(join(folder, "index.html"), page);
  await writeFile(join(folder, "worker.js"), `var PAGE_DIGEST="${digestOf(page)}";\n${await part("worker.js")}`);
  await writeFile(join(folder, "manifest.webmanifest"), BENCH_MANIFEST);
  await writeFile(join(folder, "icon.svg"), ICON);
}
