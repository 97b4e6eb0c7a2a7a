/** Edits of a small record, as a builder's hand and other programs make them. */
import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { writeRecord } from "../bench/record.mjs";
import { writeAll } from "./scratch.ts";
import { smallRecord } from "./small-record.ts";

export interface Edit {
  readonly does: string;
  /** Which of the files it could be done to. */
  readonly at: number;
}

type Change = (file: string, at: number) => void;

const rewrite =
  (change: (text: string, at: number) => string): Change =>
  (file, at) =>
    writeFileSync(file, change(readFileSync(file, "utf8"), at));

/** Links that some editions show and others hide, and pictures, of prose that stands in `entries`. */
const NAMES = ["2000-01-03-jig.md", "2000-01-05-session-2.md", "B-0001", "F-33", "part-0", "../photos/jig.jpg"];
const linked = (at: number): string => `${at % 3 === 0 ? "!" : ""}[named ${at}](${NAMES[at % NAMES.length]})`;

/** Of an entry's prose alone, as far as it has any. */
const OF_PROSE: { readonly [name: string]: Change } = {
  "a sentence more": rewrite((text, at) => `${text}\nSeen again, ${at} times.\n`),
  "a sentence more, again": rewrite((text, at) => `${text}\nAnd ${at} times more.\n`),
  "a link or a picture more": rewrite((text, at) => `${text}\nThere is ${linked(at)}.\n`),
  "another first paragraph": rewrite((text, at) =>
    text.replace(/\n---\n/, `\n---\nFirst of all ${at}. ${linked(at)}\n\n`),
  ),
  "a word less": rewrite((text) => text.replace(/ \w+\.(\s*)$/, ".$1")),
  "a passage for few": rewrite(
    (text, at) => `${text}\n::: ${at % 2 === 0 ? "inspector" : "archive"}\nFor few ${at}, ${linked(at)}.\n:::\n`,
  ),
  "other words for few": rewrite((text, at) => text.replace(/For few \d+/g, `For few ${at}`)),
  "readers of passages change places": rewrite((text) =>
    text.replace(/^::: (inspector|archive)$/gm, (_, one) => `::: ${one === "archive" ? "inspector" : "archive"}`),
  ),
  "two passages for few": rewrite(
    (text, at) => `${text}\n::: inspector\nFor few ${at}.\n:::\n::: archive\nFor few ${at + 1}.\n:::\n`,
  ),
  "no prose": rewrite((text) => text.replace(/\n---\n[^]*$/, "\n---\n")),
};

const CHANGES: { readonly [name: string]: Change } = {
  ...OF_PROSE,
  "prose struck out": (file, at) =>
    writeFileSync(
      join(file, `../2029-01-01-strikes-${at}.md`),
      `---\ndate: 2029-01-01\ntitle: Struck\namends: [{ entry: ${basename(file, ".md")}, why: it was not so }]\n---\nIt was ${linked(at)}.\n`,
    ),
  "the same bytes": rewrite((text) => text),
  "other title": rewrite((text, at) => text.replace(/^title: .*/m, `title: Called ${at} now`)),
  "as long, but other": rewrite((text) => text.replace(/[aeiou](?=[^]{40}$)/, "y")),
  "other mass": rewrite((text, at) => text.replace(/mass: \d+/g, `mass: ${20 + (at % 60)}`)),
  "a key that is none": rewrite((text) => text.replace(/^title:/m, "titel:")),
  gone: (file) => rmSync(file),
  renamed: (file, at) => renameSync(file, file.replace(/(?:-x\d+)?\.md$/, `-x${at}.md`)),
  copied: (file, at) => writeFileSync(file.replace(/\.md$/, `-copy${at}.md`), readFileSync(file)),
  "only for the inspector": rewrite((text) =>
    text.includes("\nfor:") ? text : text.replace(/^---\n/, "---\nfor: inspector\n"),
  ),
};

export const EDITS: readonly string[] = Object.keys(CHANGES);
export const EDITS_OF_PROSE: readonly string[] = Object.keys(OF_PROSE);

const FOLDERS = ["entries", "entries", "entries", "lots", "assemblies", "adhesives", "procedures"];

export async function writeStart(content: string): Promise<void> {
  writeRecord(content, 24);
  rewrite((text) => text.replace("\ntarget:", "\naddress: https://example.org/build/\ntarget:"))(
    join(content, "aircraft.md"),
    0,
  );
  const { "photos/jig.jpg": photo = "", "drawings/fin.svg": drawing = "" } = await smallRecord();
  writeAll(content, {
    "photos/jig.jpg": photo,
    "drawings/fin.svg": drawing,
    "entries/2000-01-03-jig.md":
      "---\ndate: 2000-01-03\ntitle: Jig\nassembly: part-0\nphotos: [{ file: ../photos/jig.jpg, alt: The jig }]\n---\nSet up.\n",
  });
}

/** Does one of `EDITS` to a file of the record. */
export function apply(content: string, { does, at }: Edit): void {
  const folder = join(content, (does in OF_PROSE ? undefined : FOLDERS[at % FOLDERS.length]) ?? "entries");
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".md"))
    .sort();
  const name = names[at % Math.max(1, names.length)];
  if (name !== undefined) CHANGES[does]?.(join(folder, name), at);
}
