/** The licences of what is bundled, and the notices in its sources; what several say in the same words stands once. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const RULE = `\n${"-".repeat(72)}\n`;
/** Shorter words than these are as well said again, in characters. */
const WORTH_NAMING = 200;

/** Of bundles as esbuild tells of them: the files that went in, and what it found in their comments, each once. */
export function licencesOf(inputs, comments) {
  const texts = [...byText(packagesOf(inputs)), ...byText(noticesOf(comments))];
  return `Bundled here, each under its own licence:\n\n${saidOnce(texts).join(RULE)}`;
}

/** A licence as it came with each package. */
function packagesOf(inputs) {
  const folders = new Set(inputs.flatMap((path) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(path)?.[0] ?? []));
  return [...folders].sort().map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
    const file = readdirSync(folder).find((each) => /^(licen[cs]e|copying)/i.test(each));
    const text = file === undefined ? "" : readFileSync(join(folder, file), "utf8").trim();
    return [`${name} ${version}: ${license ?? "its licence is below"}`, text];
  });
}

/** What comments of sources say, a paragraph once for all packages of one owner. */
function noticesOf(comments) {
  const byOwner = new Map();
  // Files by name, then what all of them have, a step further in.
  for (const comment of comments)
    for (const [, files, told] of comment.matchAll(/((?:^\S+\/\S+:\n)+)((?: {2}.*\n|\n)+)/gm)) {
      const text = told.replace(/^ *(?:\/\*[*!]?|\*\/|\*(?!\*)) ?(?:```.*)?|\*\/\s*$/gm, "");
      const paragraphs = new Map(paragraphsOf(text).map((one) => [wordsOf(one), one]));
      for (const file of files.trim().split("\n")) {
        const [owner] = file.split("/");
        byOwner.set(owner, new Map([...(byOwner.get(owner) ?? []), ...paragraphs]));
      }
    }
  return [...byOwner].map(([owner, paragraphs]) => [`In sources of ${owner}:`, [...paragraphs.values()].join("\n\n")]);
}

function byText(all) {
  const names = new Map();
  for (const [name, text] of all) names.set(text, [...new Set([...(names.get(text) ?? []), name])]);
  return [...names].map(([text, each]) => ({ names: each, paragraphs: paragraphsOf(text) }));
}

/** A run of paragraphs that stands further up, in the same order, is named by where it stands and by its first and last words. */
function saidOnce(texts) {
  const known = new Map();
  return texts.map(({ names, paragraphs }) => {
    const places = paragraphs.map((paragraph) => known.get(wordsOf(paragraph)));
    const told = [];
    for (let from = 0, to; from < paragraphs.length; from = to) {
      to = from + 1;
      const first = places[from];
      while (first && to < paragraphs.length && follows(places[to - 1], places[to])) to += 1;
      const run = paragraphs.slice(from, to);
      const named = first && wordsOf(run.join(" ")).length > WORTH_NAMING;
      told.push(...(named ? [`[Word for word as under ${first.name} above, ${endsOf(run)}.]`] : run));
    }
    for (const [at, paragraph] of paragraphs.entries())
      if (!places[at]) known.set(wordsOf(paragraph), { name: nameOf(names), text: paragraphs, at });
    return `${names.join("\n")}\n${told.length === 0 ? "" : `\n${told.join("\n\n")}\n`}`;
  });
}

const follows = (one, next) => next !== undefined && next.text === one.text && next.at === one.at + 1;
const nameOf = ([name]) => name.replace(/^In sources of /, "the sources of ").replace(/:.*$/, "");
const paragraphsOf = (text) =>
  text.split(/\n\s*\n/).flatMap((one) => (one.trim() === "" ? [] : [one.replace(/^\n+/, "").trimEnd()]));
const wordsOf = (text) => text.replace(/\s+/g, " ").trim();

function endsOf(run) {
  const words = wordsOf(run.join(" ")).split(" ");
  return `from “${words.slice(0, 6).join(" ")}” to “${words.slice(-6).join(" ")}”`;
}
