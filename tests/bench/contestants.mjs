/** Ways of making pages of the same entries: ours, and others that do far less. */
import { cpSync, mkdirSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { measuredNode, measuredProgram, root } from "./measure.mjs";
import { writeRecord } from "./record.mjs";
import { hasTool } from "./tools.mjs";

export const OURS = "scarfline build";
export const ELEVENTY = "plain Eleventy";
export const HUGO = "plain Hugo";

/** Writes a record, and its entries once more for each of the others with a one-file layout; gives the ids of the entries. */
export function prepare(work, entryCount) {
  const entries = writeRecord(join(work, "content"), entryCount);
  mkdirSync(join(work, "input/_includes"), { recursive: true });
  cpSync(join(work, "content/entries"), join(work, "input/entries"), { recursive: true });
  writeFileSync(join(work, "input/_includes/page.liquid"), page("{{ title }}", "{{ content }}"));
  writeFileSync(join(work, "input/entries/entries.json"), JSON.stringify({ layout: "page.liquid" }));
  mkdirSync(join(work, "hugo/layouts/_default"), { recursive: true });
  cpSync(join(work, "content/entries"), join(work, "hugo/content/entries"), { recursive: true });
  writeFileSync(join(work, "hugo/layouts/_default/single.html"), page("{{ .Title }}", "{{ .Content }}"));
  writeFileSync(
    join(work, "hugo/config.toml"),
    'baseURL = "https://example.invalid/"\ndisableKinds = ["home", "section", "taxonomy", "term", "RSS", "sitemap", "404"]\n',
  );
  return entries;
}

const page = (title, content) =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}</title></head><body><h1>${title}</h1>${content}</body></html>`;

export function contestants(work) {
  const out = (name, round) => join(work, "out", `${name.replaceAll(" ", "-")}-${round}`);
  const node = (name, words) => ({
    name,
    out: (round) => out(name, round),
    run: (round) => measuredNode(words(out(name, round)), work),
  });
  const hugo = {
    name: HUGO,
    out: (round) => out(HUGO, round),
    run: (round) => measuredProgram([["hugo", "--quiet", "--source", "hugo", "--destination", out(HUGO, round)]], work),
  };
  return [
    node(OURS, (to) => [
      join(root, ".build/cli.js"),
      "build",
      "--fresh",
      "--content",
      join(work, "content"),
      "--out",
      to,
    ]),
    node(ELEVENTY, (to) => [
      join(root, "node_modules/@11ty/eleventy/cmd.cjs"),
      "--input=input",
      `--output=${to}`,
      "--quiet",
    ]),
    ...(hasTool("hugo") ? [hugo] : []),
    node("bare loop", (to) => [join(root, "tests/bench/bare-loop.mjs"), join(work, "content/entries"), to]),
  ];
}

/** How many pages a site has, and their size in MB. */
export function pagesIn(folder) {
  const pages = readdirSync(folder, { recursive: true }).filter((name) => name.endsWith(".html"));
  return {
    pages: pages.length,
    megabytes: pages.reduce((sum, name) => sum + statSync(join(folder, name)).size, 0) / 1e6,
  };
}
