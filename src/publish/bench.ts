/** Writes the page at the bench, which is in no edition of the site. */
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { brotliDecompressSync } from "node:zlib";
import { BENCH_MANIFEST, benchPage } from "../../layouts/bench/bench-page.ts";
import { ICON } from "../../layouts/shell/icon.ts";

const digestOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/**
 * Into an empty folder. `given` is what the page is given of the record, but for when it was made, s since
 * 1970-01-01T00:00Z; `program` is where the program is installed.
 */
export async function writeBench(given: object, made: number, program: string, folder: string): Promise<void> {
  const parts = join(program, ".build", "bench");
  const script = async (name: string): Promise<string> =>
    brotliDecompressSync(await readFile(join(parts, `${name}.js.br`))).toString("utf8");
  const page = benchPage({
    script: await script("page"),
    style: await readFile(join(parts, "page.css"), "utf8"),
    data: JSON.stringify({ ...given, made }),
    digest: digestOf(JSON.stringify(given)),
  });
  await writeFile(join(folder, "index.html"), page);
  await writeFile(join(folder, "worker.js"), `var PAGE_DIGEST="${digestOf(page)}";\n${await script("worker")}`);
  await writeFile(join(folder, "manifest.webmanifest"), BENCH_MANIFEST);
  await writeFile(join(folder, "icon.svg"), ICON);
}
