/**
 * Measures a full build against what other ways of rendering the same Markdown take, in one run, by turns.
 * `node tests/bench/run.mjs [--entries 2000] [--rounds 5] [--dir FOLDER]`
 *
 * No folder is removed before the end: some disks are slow to make files just after others were removed.
 */
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { writeRecord } from "./record.mjs";

const { values } = parseArgs({ options: { entries: { type: "string", default: "2000" }, rounds: { type: "string", default: "5" }, dir: { type: "string", default: tmpdir() } } });
const entries = Number(values.entries);
const rounds = Number(values.rounds);
const root = new URL("../..", import.meta.url).pathname;
const work = mkdtempSync(join(values.dir, "scarfline-bench-"));

const LAYOUT = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{{ title }}</title></head><body><h1>{{ title }}</h1>{{ content }}</body></html>`;
const YARDSTICK = "plain Eleventy";

const contestants = [
  { name: "scarfline build", words: (out) => [join(root, ".build/cli.js"), "build", "--content", join(work, "content"), "--out", out] },
  { name: YARDSTICK, words: (out) => [join(root, "node_modules/@11ty/eleventy/cmd.cjs"), "--input=input", `--output=${out}`, "--quiet"] },
  { name: "bare loop", words: (out) => [join(root, "tests/bench/bare-loop.mjs"), join(work, "content/entries"), out] },
];

try {
  prepare();
  const runs = new Map(contestants.map(({ name }) => [name, []]));
  for (let round = 0; round < rounds; round += 1) {
    for (const { name, words } of contestants) runs.get(name).push(measured(words(outOf(name, round))));
  }
  print(runs);
} finally {
  rmSync(work, { recursive: true });
}

function prepare() {
  writeRecord(join(work, "content"), entries);
  mkdirSync(join(work, "input/_includes"), { recursive: true });
  cpSync(join(work, "content/entries"), join(work, "input/entries"), { recursive: true });
  writeFileSync(join(work, "input/_includes/page.liquid"), LAYOUT);
  writeFileSync(join(work, "input/entries/entries.json"), JSON.stringify({ layout: "page.liquid" }));
}

/** Seconds on the clock, seconds of processor time (which other programs on the machine disturb less), most MB of memory. */
function measured(words) {
  const note = join(work, "usage.json");
  const began = performance.now();
  execFileSync(process.execPath, ["--import", join(root, "tests/bench/usage.mjs"), ...words], { cwd: work, stdio: ["ignore", "ignore", "inherit"], env: { ...process.env, BENCH_USAGE: note } });
  const seconds = (performance.now() - began) / 1000;
  const { cpu, memory } = JSON.parse(readFileSync(note, "utf8"));
  return { seconds, cpu: cpu / 1000, memory };
}

function outOf(name, round) {
  return join("out", `${name.replaceAll(" ", "-")}-${round}`);
}

function print(runs) {
  const median = (name, what) => runs.get(name).map((run) => run[what]).sort((a, b) => a - b)[Math.floor(rounds / 2)];
  const row = (cells) => process.stdout.write(`${cells.map((cell, at) => (at === 0 ? cell.padEnd(16) : cell.padStart(11))).join("")}\n`);
  process.stdout.write(`${entries} entries, medians of ${rounds} rounds by turns, Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model.trim()}, ${new Date().toISOString().slice(0, 10)}\n\n`);
  row(["", "pages", "MB of HTML", "seconds", "ratio", "CPU s", "ratio", "MB memory", "ratio"]);
  for (const { name } of contestants) {
    const { count, bytes } = pagesIn(join(work, outOf(name, 0)));
    const measures = ["seconds", "cpu", "memory"].flatMap((what) => [median(name, what).toFixed(what === "memory" ? 0 : 2), (median(name, what) / median(YARDSTICK, what)).toFixed(2)]);
    row([name, String(count), (bytes / 1e6).toFixed(1), ...measures]);
  }
}

function pagesIn(folder) {
  const pages = readdirSync(folder, { recursive: true }).filter((name) => name.endsWith(".html"));
  return { count: pages.length, bytes: pages.reduce((sum, name) => sum + statSync(join(folder, name)).size, 0) };
}
