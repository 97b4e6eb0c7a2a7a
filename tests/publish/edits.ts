/** Edits of a small record, as a builder's hand and other programs make them. */
import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
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

const CHANGES: { readonly [name: string]: Change } = {
  "other prose": rewrite((text, at) => `${text}\nSeen again, ${at} times.\n`),
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

const FOLDERS = ["entries", "entries", "entries", "lots", "assemblies", "adhesives", "procedures"];

export async function writeStart(content: string): Promise<void> {
  writeRecord(content, 24);
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
  const folder = join(content, FOLDERS[at % FOLDERS.length] ?? "entries");
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".md"))
    .sort();
  const name = names[at % Math.max(1, names.length)];
  if (name !== undefined) CHANGES[does]?.(join(folder, name), at);
}
