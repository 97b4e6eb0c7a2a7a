import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { describe, expect, it } from "vitest";
import { MOST } from "./limits.ts";
import { ORDER } from "./order.ts";
import { sourceFiles } from "./source.ts";

const text = readFileSync(new URL("../../DEVELOPERS.md", import.meta.url), "utf8");
const { scripts, engines } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
  scripts: { readonly [name: string]: string };
  engines: { readonly node: string };
};
const quoted = [...text.matchAll(/`([^`\n]+)`/g)].map(([, word = ""]) => word);
/** Of a record or a site, not of this project. */
const NAMED_BY_A_BUILDER: readonly string[] = ["shop-temperature/outside"];
const root = new URL("../../", import.meta.url).pathname;
const inside = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" }).map((name) => posix.join(folder, name));
const paths = [
  ...["src", "layouts", "tests", "content"].flatMap((folder) => [folder, ...inside(folder)]),
  ...readdirSync(root),
].flatMap((path) => [path, path.replace(/\.tsx?$/, "")]);
const tree = [...text.matchAll(/^((?:src|layouts)\/[\w/-]*) +(\S.*)$/gm)].map(([, folder = ""]) => folder);

describe("The guide for contributors", () => {
  it("says of every folder of source what may be in it, each sheet's own styles apart", () => {
    const above = (folder: string): string[] => (folder === "." ? [] : [folder, ...above(posix.dirname(folder))]);
    const folders = new Set(sourceFiles("src", "layouts").flatMap(({ path }) => above(posix.dirname(path))));
    const missing = [...folders].filter((f) => !f.startsWith("layouts/styles/") && !tree.includes(`${f}/`));
    expect(missing).toEqual([]);
  });

  it("names no folder of source that is not there, and none twice", () => {
    expect(tree.filter((folder) => !existsSync(folder))).toEqual([]);
    expect(tree.length).toBe(new Set(tree).size);
  });

  it("gives the order of rooms that is held to", () => {
    expect(text).toContain(`\`${ORDER.join(" ← ")}\``);
  });

  it("names only commands that there are", () => {
    const named = [...text.matchAll(/npm run (?:-s )?([\w:]+)/g)].map(([, name = ""]) => name);
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
  });

  it("names only files and folders that there are, wherever it begins to name them", () => {
    const named = quoted.filter((word) =>
      /^[\w-]+(?:\/[\w.-]+)*\.(?:tsx?|mjs|md|R|sh)$|^[\w-]+(?:\/[\w-]+)+\/?$/.test(word),
    );
    const own = named.filter((word) => !NAMED_BY_A_BUILDER.includes(word) && !word.endsWith("/NAME.md"));
    expect(own.length).toBeGreaterThan(30);
    const missing = own.filter((word) => !paths.some((path) => `/${path}`.endsWith(`/${word.replace(/\/$/, "")}`)));
    expect([...new Set(missing)]).toEqual([]);
  });

  it("names only constants, and words of the recipes, that stand in the source", () => {
    const source = sourceFiles("src", "layouts", "tests").map((file) => file.text);
    const constants = quoted.filter(
      (word) => /^[A-Z][A-Z_]{3,}(?:\.\w+)?$/.test(word) && !/^RENAME_|^README/.test(word),
    );
    const recipe = text.slice(text.indexOf("## Recipe: a new kind of fact"), text.indexOf("## Attacks"));
    const calls = [...recipe.matchAll(/`([a-z]\w+)(?:<T>|\([^`]*)?`/g)].map(([, word = ""]) => word);
    expect(constants.length).toBeGreaterThan(1);
    expect(calls.length).toBeGreaterThan(15);
    const words = [...constants.map((word) => word.split(".")[0] ?? ""), ...calls];
    expect(words.filter((word) => !source.some((each) => new RegExp(`\\b${word}\\b`).test(each)))).toEqual([]);
  });

  it("gives the limits of files and functions that are held to, and the oldest Node that must work", () => {
    expect(text).toContain(`a file over ${MOST.file} lines, a function over ${MOST.function},`);
    expect(text).toContain(`a folder of more than ${MOST.folder} files`);
    expect(`>=${/Node ([\d.]+) is the oldest that must work/.exec(text)?.[1]}`).toBe(engines.node);
  });
});
