/**
 * Measures in one run, by turns, what we take against what others take for the same.
 * `node tests/bench/run.mjs [full] [edit] [pictures] [growth] [--entries 2000] [--rounds 5] [--photos 24] [--sizes 1000,2000,4000,8000] [--dir FOLDER] [--write]`
 * Without names of parts `full` alone; `all` for every part. `--write` puts the results, with machine and date, beside this file.
 */
import { writeFileSync } from "node:fs";
import { cpus, loadavg, totalmem } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { chart } from "./chart.mjs";
import { root } from "./measure.mjs";
import { edit } from "./parts/edit.mjs";
import { full } from "./parts/full.mjs";
import { growth } from "./parts/growth.mjs";
import { pictures } from "./parts/pictures.mjs";
import { asMarkdown, asText } from "./table.mjs";

const PARTS = { full, edit, pictures, growth };
const text = (value) => ({ type: "string", default: value });
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { entries: text("2000"), rounds: text("5"), photos: text("24"), sizes: text("1000,2000,4000,8000"), dir: { type: "string" }, write: { type: "boolean", default: false } },
});
const options = { entries: Number(values.entries), rounds: Number(values.rounds), photos: Number(values.photos), sizes: values.sizes.split(",").map(Number), dir: values.dir };
const asked = positionals.includes("all") ? Object.keys(PARTS) : positionals.length === 0 ? ["full"] : positionals;

const machine = () => `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model.trim()}, ${(totalmem() / 1e9).toFixed(0)} GB, load ${loadavg()[0].toFixed(1)} at the start, ${new Date().toISOString().slice(0, 10)}`;
const head = machine();
process.stdout.write(`${head}\n\n`);

const results = [];
for (const name of asked) {
  const result = await PARTS[name](options);
  results.push({ name, ...result });
  process.stdout.write(`${asText(result)}\n`);
}
if (values.write) writeResults();

function writeResults() {
  const grown = results.find(({ name }) => name === "growth");
  const picture = grown === undefined ? "" : "\n![Processor time and memory against the number of entries](results.svg)\n";
  writeFileSync(join(root, "tests/bench/results.md"), `# What was measured\n\n${head}. Processor time is what to look at where other programs ran at the same time.\n\n${results.map(asMarkdown).join("\n")}${picture}`);
  if (grown !== undefined) writeFileSync(join(root, "tests/bench/results.svg"), chart(grown.points));
}
