import { existsSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { describe, expect, it } from "vitest";
import { ORDER } from "./order.ts";
import { sourceFiles } from "./source.ts";

const text = readFileSync(new URL("../../DEVELOPERS.md", import.meta.url), "utf8");
const { scripts } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
  scripts: { readonly [name: string]: string };
};
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
});
