/**
 * Measures in one run, by turns, what we take against what others take for the same; and how fast pages of the demo come.
 * `node tests/bench/run.mjs [full] [edit] [pictures] [unchanged] [reckoning] [growth] [pages] [search] [hostile] [ratios] [--entries 2000] [--rounds 5] [--photos 24] [--many 10000] [--batches 2500,5000,10000,20000] [--sizes 1000,2000,4000,8000] [--dir FOLDER] [--write]`
 * Without names of parts `full` alone; `all` for every part. `--write` puts the results, with machine and date, beside this file.
 */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { cpus, loadavg, totalmem } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { chart } from "./chart.mjs";
import { root } from "./measure.mjs";
import { edit } from "./parts/edit.mjs";
import { full } from "./parts/full.mjs";
import { growth } from "./parts/growth.mjs";
import { hostile } from "./parts/hostile.mjs";
import { pages } from "./parts/pages.mjs";
import { pictures } from "./parts/pictures.mjs";
import { ratios } from "./parts/ratios.mjs";
import { reckoning } from "./parts/reckoning.mjs";
import { search } from "./parts/search.mjs";
import { unchanged } from "./parts/unchanged.mjs";
import { asMarkdown, asText } from "./table.mjs";

const PARTS = { ratios, full, edit, pictures, unchanged, reckoning, growth, pages, search, hostile };
const text = (value) => ({ type: "string", default: value });
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    entries: text("2000"),
    rounds: text("5"),
    photos: text("24"),
    many: text("10000"),
    batches: text("2500,5000,10000,20000"),
    sizes: text("1000,2000,4000,8000"),
    dir: { type: "string" },
    write: { type: "boolean", default: false },
  },
});
const options = {
  entries: Number(values.entries),
  rounds: Number(values.rounds),
  photos: Number(values.photos),
  many: Number(values.many),
  batches: values.batches.split(",").map(Number),
  sizes: values.sizes.split(",").map(Number),
  dir: values.dir,
};
const asked = positionals.includes("all") ? Object.keys(PARTS) : positionals.length === 0 ? ["full"] : positionals;

const machine = () =>
  `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model.trim()}, ${(totalmem() / 1e9).toFixed(0)} GB, load ${loadavg()[0].toFixed(1)} at the start, ${new Date().toISOString().slice(0, 10)}`;
const head = machine();
process.stdout.write(`${head}\n\n`);

const results = [];
for (const name of asked) {
  const result = await PARTS[name](options);
  results.push({ name, ...result });
  process.stdout.write(`${asText(result)}\n`);
}
if (values.write) writeResults();

/** Results of parts that were not measured now stay as they are, each with its own machine and date. */
function writeResults() {
  const file = join(root, "tests/bench/results.md");
  const sections = new Map(existsSync(file) ? sectionsIn(readFileSync(file, "utf8")) : []);
  for (const result of results) sections.set(result.name, `${asMarkdown(result)}\n${head}.\n`);
  const grown = results.find(({ name }) => name === "growth");
  if (grown !== undefined) {
    writeFileSync(join(root, "tests/bench/results.svg"), chart(grown.points));
    sections.set(
      "growth",
      `${sections.get("growth")}\n![Processor time and memory against the number of entries](results.svg)\n`,
    );
  }
  const known = Object.keys(PARTS).filter((name) => sections.has(name));
  writeFileSync(
    file,
    `# What was measured\n\nProcessor time is what to look at where other programs ran at the same time. Each part stands as it was measured last, with its day below it.\n\n${known.map((name) => `<!-- ${name} -->\n${sections.get(name)}`).join("\n")}`,
  );
  execFileSync(join(root, "node_modules/.bin/biome"), ["format", "--write", file]);
}

/** Of a file of results, each part's text by its name. */
function sectionsIn(markdown) {
  return [...markdown.matchAll(/^<!-- (\w+) -->\n(.*?)(?=^<!-- |$(?![\s\S]))/gms)].map(([, name, text]) => [
    name,
    `${text.trimEnd()}\n`,
  ]);
}
