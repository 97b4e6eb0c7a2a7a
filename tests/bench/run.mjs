/**
 * Measures a full build against what other ways of rendering the same Markdown take, in one run, by turns.
 * `node tests/bench/run.mjs [--entries 2000] [--rounds 5] [--dir FOLDER]`
 *
 * No folder is removed before the end: some disks are slow to make files just after others were removed.
 */
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
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

try {
  prepare();
  const contestants = [
    { name: "scarfline build", run: (out) => node([join(root, ".build/cli.js"), "build", "--content", join(work, "content"), "--out", out]) },
    { name: "plain Eleventy", run: (out) => node([join(root, "node_modules/@11ty/eleventy/cmd.cjs"), "--input=input", `--output=${out}`, "--quiet"]) },
    { name: "bare loop", run: (out) => node([join(root, "tests/bench/bare-loop.mjs"), join(work, "content/entries"), out]) },
  ];
  const times = new Map(contestants.map(({ name }) => [name, []]));
  for (let round = 0; round < rounds; round += 1) {
    for (const { name, run } of contestants) {
      const out = join("out", `${name.replaceAll(" ", "-")}-${round}`);
      const began = performance.now();
      run(out);
      times.get(name).push(performance.now() - began);
    }
  }
  print(contestants, times);
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

function node(words) {
  execFileSync(process.execPath, words, { cwd: work, stdio: ["ignore", "ignore", "inherit"] });
}

function print(contestants, times) {
  const median = (name) => [...times.get(name)].sort((a, b) => a - b)[Math.floor(rounds / 2)];
  const against = median("plain Eleventy");
  process.stdout.write(`${entries} entries, ${rounds} rounds by turns, Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model.trim()}\n\n`);
  process.stdout.write(`${"".padEnd(18)}${"pages".padStart(8)}${"median s".padStart(10)}${"least s".padStart(10)}${"most s".padStart(10)}${"ratio".padStart(8)}\n`);
  for (const { name } of contestants) {
    const pages = pagesIn(join(work, "out", `${name.replaceAll(" ", "-")}-0`));
    const seconds = [median(name), Math.min(...times.get(name)), Math.max(...times.get(name))].map((time) => (time / 1000).toFixed(2).padStart(10));
    process.stdout.write(`${name.padEnd(18)}${String(pages).padStart(8)}${seconds.join("")}${(median(name) / against).toFixed(2).padStart(8)}\n`);
  }
}

function pagesIn(folder) {
  return readdirSync(folder, { recursive: true }).filter((name) => name.endsWith(".html")).length;
}
