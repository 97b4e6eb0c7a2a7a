import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const scratch = scratchFolders();

/** The example with a record, where this program and Eleventy are installed. */
async function example(): Promise<string> {
  const folder = scratch();
  cpSync(join(root, "tests/plugin/example"), folder, { recursive: true });
  writeAll(join(folder, "record"), await smallRecord());
  writeAll(folder, { "package.json": '{ "type": "module" }' });
  mkdirSync(join(folder, "node_modules"));
  symlinkSync(root, join(folder, "node_modules/scarfline"));
  return folder;
}

function eleventy(
  folder: string,
  ...words: readonly string[]
): { readonly code: number | null; readonly told: string } {
  const command = join(root, "node_modules/@11ty/eleventy/cmd.cjs");
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    cwd: folder,
    encoding: "utf8",
  });
  return { code: status, told: stdout + stderr };
}

describe("An Eleventy site of one's own, of which a chronicle is a part", () => {
  it("has the chronicle in its folder, and is given what the edition shows", async () => {
    const folder = await example();
    const { code, told } = eleventy(folder);
    expect(told).not.toMatch(/error/i);
    expect(code).toBe(0);
    const site = contentOf(join(folder, "_site"));
    expect(site.get("index.html")).toBe(`<!doctype html>
<title>What I do in the evenings</title>
<p>Stub: 3.5 h up to 2021-04-01.</p>
<ul>
  <li><a href="/chronicle/entry/2021-03-01-first.html">Ribs cut</a></li>
  <li><a href="/chronicle/entry/2021-03-08-second.html">More shaping</a></li>
</ul>
`);
    expect(site.get("chronicle/joint/F-J1.html")).toContain("Post to rib");
    expect(site.get("chronicle/entry/2021-03-01-first.html")).toContain("Cut the ribs");
    const all = [...site].map(([path, text]) => `${path} ${text}`).join("\n");
    expect(all).not.toMatch(/marmalade|quinces|secret-vault/);
  });

  it("is the chronicle that the command builds, byte for byte", async () => {
    const folder = await example();
    eleventy(folder);
    const build = ["build", "record", "--date", "2021-04-01", "--out", "alone"];
    const { status } = spawnSync(process.execPath, [join(root, ".build/cli.js"), ...build], { cwd: folder });
    expect(status).toBe(0);
    expect(contentOf(join(folder, "_site/chronicle"))).toEqual(contentOf(join(folder, "alone")));
  });

  it("stops at problems of the record, tells them all, and leaves what stands", async () => {
    const folder = await example();
    eleventy(folder);
    const before = contentOf(join(folder, "_site/chronicle"));
    const entry = join(folder, "record/entries/2021-03-08-second.md");
    const text = readFileSync(entry, "utf8")
      .replace("assembly: fin", "assembly: fim")
      .replace("who: ansa", "who: ansi");
    writeAll(folder, { "record/entries/2021-03-08-second.md": text });
    const { code, told } = eleventy(folder);
    expect(code).not.toBe(0);
    expect(told).toContain("entries/2021-03-08-second.md:4:11  no assembly");
    expect(told).toMatch(/entries\/2021-03-08-second\.md:6:\d+ {2}no person/);
    expect(contentOf(join(folder, "_site/chronicle"))).toEqual(before);
  });

  it("never takes a record within its own folder of templates for templates", async () => {
    const folder = await example();
    const config = `import scarfline from "scarfline/eleventy";
export default (config) => config.addPlugin(scarfline, { record: "record", edition: "inspector", at: "/of-the-build/" });
`;
    writeAll(folder, { "eleventy.config.js": config });
    expect(eleventy(folder).code).toBe(0);
    const paths = [...contentOf(join(folder, "_site")).keys()];
    expect(paths.filter((path) => path.startsWith("record/"))).toEqual([]);
    expect(paths).toContain("of-the-build/entry/2021-03-09-letter.html");
  });

  it("has types that need nothing else", async () => {
    const folder = await example();
    const use = `import scarfline, { type EditionView } from "scarfline/eleventy";
scarfline satisfies (config: never, options: { record: string; edition?: "inspector" }) => void;
export const title = ({ entries }: EditionView): string => entries[0]?.title ?? "";
// @ts-expect-error it has no such field
export const none = ({ engines }: EditionView): unknown => engines;
`;
    const settings = `{ "compilerOptions": { "module": "NodeNext", "strict": true, "noEmit": true, "types": [] }, "files": ["use.ts"] }`;
    writeAll(folder, { "use.ts": use, "tsconfig.json": settings });
    const { stdout } = spawnSync(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", folder], {
      encoding: "utf8",
    });
    expect(stdout).toBe("");
  });
});
