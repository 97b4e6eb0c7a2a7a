import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { contentOf, scratchFolders } from "../publish/scratch.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const scratch = scratchFolders();
/** Unpacked, in bytes. */
const MOST = 3_000_000;

interface Packed {
  readonly filename: string;
  readonly unpackedSize: number;
  readonly files: readonly { readonly path: string }[];
}

const run = (command: string, words: readonly string[], cwd: string): string =>
  execFileSync(command, words, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });

const SOURCE = ["src", "layouts", "package.json", "README.md", "LICENSE", "CHANGELOG.md"];

/** As npm packs it, from a copy that is compiled on its own. */
function pack(copy: string): Packed {
  for (const name of SOURCE) cpSync(join(root, name), join(copy, name), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
  mkdirSync(join(copy, ".build/parts"), { recursive: true });
  writeFileSync(join(copy, ".build/parts/earlier-ABCDEFGH.js"), "");
  run("npm", ["run", "-s", "prepack"], copy);
  const [packed] = JSON.parse(
    run("npm", ["pack", "--json", "--ignore-scripts", "--offline"], copy),
  ) as readonly Packed[];
  if (packed === undefined) throw new Error("npm packed nothing");
  return packed;
}

interface Lock {
  readonly packages: { readonly [path: string]: { readonly dev?: boolean; readonly optional?: boolean } };
}

/** The package in a folder of its own, beside what it depends on and nothing else: what serves development is not there. */
function install(tarball: string, folder: string): string {
  const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as Lock;
  const modules = join(folder, "node_modules");
  for (const [path, { dev }] of Object.entries(packages)) {
    const name = /^node_modules\/((?:@[^/]+\/)?[^/]+)$/.exec(path)?.[1];
    if (name === undefined || dev === true || !existsSync(join(root, path))) continue;
    mkdirSync(dirname(join(modules, name)), { recursive: true });
    symlinkSync(join(root, path), join(modules, name));
  }
  const own = join(modules, "scarfline");
  mkdirSync(own);
  run("tar", ["-xzf", tarball, "-C", own, "--strip-components", "1"], folder);
  return join(
    own,
    (JSON.parse(readFileSync(join(own, "package.json"), "utf8")) as { bin: { scarfline: string } }).bin.scarfline,
  );
}

describe("The package", () => {
  const copy = mkdtempSync(join(tmpdir(), "scarfline-package-"));
  let packed: Packed;
  beforeAll(() => void (packed = pack(copy)), 120_000);
  afterAll(() => rmSync(copy, { recursive: true }));

  it("has the program, its sheets and scripts, and what is to be read; no source, no test, no map, no demo", () => {
    const kinds = new Set(packed.files.map(({ path }) => path.replace(/[\w-]+\.(js\.br|js|css)$/, "*.$1")));
    expect([...kinds].sort()).toEqual([
      ".build/*.js",
      ".build/bench/*.css",
      ".build/bench/*.js.br",
      ".build/browser/*.js",
      ".build/eleventy.d.ts",
      ".build/licences.txt",
      ".build/parts/*.js",
      ".build/styles/*.css",
      "CHANGELOG.md",
      "LICENSE",
      "README.md",
      "layouts/readme/fields.md",
      "layouts/readme/record.md",
      "package.json",
    ]);
    expect(packed.unpackedSize).toBeLessThan(MOST);
  });

  it("has each part of the program once, and none of an earlier one", () => {
    const scripts = packed.files.filter(({ path }) => path.endsWith(".js"));
    const texts = scripts.map(({ path }) => readFileSync(join(copy, path), "utf8"));
    const parts = scripts.filter(({ path }) => path.startsWith(".build/parts/")).map(({ path }) => basename(path));
    expect(parts.length).toBeGreaterThan(3);
    expect(parts.filter((name) => !texts.some((text) => text.includes(name)))).toEqual([]);
  });

  it("has the licence of each package that is bundled", () => {
    const licences = readFileSync(join(copy, ".build/licences.txt"), "utf8");
    for (const name of ["@clack/prompts", "css-tree", "mediabunny", "temporal-polyfill", "yaml", "zod"])
      expect(licences).toMatch(new RegExp(`^${name} \\d.*: \\S`, "m"));
    const bare = licences.split("-".repeat(72)).filter((part) => !part.trim().includes("\n\n"));
    // It came with no text of its licence, whose name its package gives.
    expect(bare.map((part) => part.trim())).toEqual(["saxes 6.0.0: ISC"]);
    const placesOf = /^\[Word for word as under (.+) above, from “/gm;
    const named = [...licences.matchAll(placesOf)].map(([, name]) => name);
    expect(named.length).toBeGreaterThan(10);
    for (const name of named) expect(licences).toMatch(new RegExp(`^(?:In )?${name?.replace(/^the /, "")}:`, "m"));
    expect(licences).toContain("(C) Copyright John Maddock");
  });

  it("takes three commands from nothing to a first site: to install it, to begin and to build", () => {
    const elsewhere = scratch();
    const program = install(join(copy, packed.filename), elsewhere);
    const who = ["--name", "Bulrush", "--type", "parasol", "--builder", "Ines Example", "--public-name", "Ines"];
    const where = ["--units", "metric", "--time-zone", "Europe/Lisbon", "--start", "2021-03-07"];
    run(process.execPath, [program, "begin", "record", ...who, ...where], elsewhere);
    run(process.execPath, [program, "build", "record"], elsewhere);
    expect(contentOf(join(elsewhere, "site")).get("index.html")).toContain("Bulrush");
  }, 60_000);

  it("begins, checks and builds a record in a folder elsewhere, without what serves development", () => {
    const elsewhere = scratch();
    const program = install(join(copy, packed.filename), elsewhere);
    const scarfline = (...words: readonly string[]): string => run(process.execPath, [program, ...words], elsewhere);
    const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
    expect(scarfline("--version")).toBe(`${version}\n`);
    const who = ["--name", "Bulrush", "--type", "parasol", "--builder", "Ines Example", "--public-name", "Ines"];
    const where = ["--units", "metric", "--time-zone", "Europe/Lisbon", "--start", "2021-03-07"];
    scarfline("begin", "record", ...who, ...where, "--assembly", "Rudder", "--first", "Bench levelled");
    writeFileSync(join(elsewhere, "record", "assemblies", "rudder.svg"), DRAWING);
    const part = join(elsewhere, "record", "assemblies", "rudder.md");
    writeFileSync(
      part,
      readFileSync(part, "utf8").replace("\n# ", "\ndrawing: { file: rudder.svg, alt: The rudder }\n# "),
    );
    expect(scarfline("check", "record")).toContain("No problems in the record.");
    mkdirSync(join(elsewhere, "record", "pages"));
    writeFileSync(
      join(elsewhere, "record", "pages", "visit.md"),
      "---\ntitle: Come\n---\n{{ edition.aircraft.name }}\n",
    );
    scarfline("build", "record", "--out", "site", "--edition", "all");
    const site = contentOf(join(elsewhere, "site"));
    expect(site.get("public/index.html")).toContain("Bulrush");
    expect(site.get("public/visit.html")).toContain("<p>Bulrush</p>");
    const asks = 'console.log(typeof (await import("scarfline/eleventy")).default)';
    expect(run(process.execPath, ["--input-type=module", "--eval", asks], elsewhere)).toBe("function\n");
    expect([...site.keys()]).toEqual(expect.arrayContaining(["public/assets/style.css", "public/assets/chart.umd.js"]));
    expect(scarfline("entry", "record", "--title", "More")).toContain("title: More");
    expect(scarfline("due", "record")).toContain("Bulrush, as of the end of");
  }, 60_000);
});

const DRAWING =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><rect x="4" y="4" width="30" height="10" fill="#ccc"/></svg>';
