import { copyFile, mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { ICON, ICON_FILE } from "../../layouts/shell/icon.ts";

/**
 * Writes what all pages share into `assets/`: the style sheets, our scripts, the sign, Chart.js. `program` is the
 * folder the program is installed in.
 */
export async function writeAssets(program: string, site: string): Promise<void> {
  const assets = join(site, "assets");
  await mkdir(assets, { recursive: true });
  for (const folder of ["styles", "browser"]) {
    for (const file of await filesIn(join(program, ".build", folder)))
      await copyFile(file, join(assets, basename(file)));
  }
  await writeFile(join(site, ICON_FILE), ICON);
  await writeChartLibrary(assets);
}

async function filesIn(folder: string): Promise<string[]> {
  return (await readdir(folder)).sort().map((name) => join(folder, name));
}

/** Its file for classic scripts is not among the package's exports, but lies beside the one that is. */
async function writeChartLibrary(assets: string): Promise<void> {
  const dist = dirname(createRequire(import.meta.url).resolve("chart.js"));
  const script = await readFile(join(dist, "chart.umd.js"), "utf8");
  await writeFile(join(assets, "chart.umd.js"), script.replace(/\n\/\/# sourceMappingURL=.*\s*$/, "\n"));
  await writeFile(join(assets, "chart.LICENSE.txt"), await readFile(join(dist, "../LICENSE.md")));
}
