import { copyFile, mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";

/** Writes what all pages share into `assets/`: the style sheet, our scripts, Chart.js. `program` is the folder the program is installed in. */
export async function writeAssets(program: string, site: string): Promise<void> {
  const assets = join(site, "assets");
  await mkdir(assets, { recursive: true });
  await writeFile(join(assets, "style.css"), await styles(join(program, "layouts/styles")));
  for (const script of await scripts(join(program, ".build/browser"))) await copyFile(script, join(assets, basename(script)));
  await writeChartLibrary(assets);
}

async function styles(folder: string): Promise<string> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(".css")).sort();
  return (await Promise.all(names.map((name) => readFile(join(folder, name), "utf8")))).join("\n");
}

async function scripts(folder: string): Promise<string[]> {
  const names = await readdir(folder).catch(() => []);
  return names.filter((name) => name.endsWith(".js")).sort().map((name) => join(folder, name));
}

/** Its file for classic scripts is not among the package's exports, but lies beside the one that is. */
async function writeChartLibrary(assets: string): Promise<void> {
  const dist = dirname(createRequire(import.meta.url).resolve("chart.js"));
  const script = await readFile(join(dist, "chart.umd.js"), "utf8");
  await writeFile(join(assets, "chart.umd.js"), script.replace(/\n\/\/# sourceMappingURL=.*\s*$/, "\n"));
  await writeFile(join(assets, "chart.LICENSE.txt"), await readFile(join(dist, "../LICENSE.md")));
}
