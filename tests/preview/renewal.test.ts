/** `RENEWALS=500 npx vitest --config tests/vitest.config.ts tests/preview/renewal` tries that many sequences. */
import { cpSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, it } from "vitest";
import { build } from "../../src/build.ts";
import { renewing } from "../../src/preview/preview.ts";
import { SiteOnDemand } from "../../src/preview/site.ts";
import { writeRecord } from "../bench/record.mjs";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const scratch = scratchFolders();
const SEQUENCES = Number(process.env["RENEWALS"] ?? 2);
const tell = { line: () => undefined, progress: () => undefined };

interface Step {
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

const steps: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.record({ does: fc.constantFrom(...Object.keys(CHANGES)), at: fc.nat(97) }),
  { minLength: 3, maxLength: 8 },
);

const FOLDERS = ["entries", "entries", "entries", "lots", "assemblies", "adhesives", "procedures"];

async function writeStart(content: string): Promise<void> {
  writeRecord(content, 24);
  const { "photos/jig.jpg": photo = "", "drawings/fin.svg": drawing = "" } = await smallRecord();
  writeAll(content, {
    "photos/jig.jpg": photo,
    "drawings/fin.svg": drawing,
    "entries/2000-01-03-jig.md":
      "---\ndate: 2000-01-03\ntitle: Jig\nassembly: part-0\nphotos: [{ file: ../photos/jig.jpg, alt: The jig }]\n---\nSet up.\n",
  });
}

function apply(content: string, { does, at }: Step): void {
  const folder = join(content, FOLDERS[at % FOLDERS.length] ?? "entries");
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".md"))
    .sort();
  const name = names[at % Math.max(1, names.length)];
  if (name !== undefined) CHANGES[does]?.(join(folder, name), at);
}

const program = new URL("../..", import.meta.url).pathname;

/** Every file of the site besides what all sites share. */
function filesOf(folder: string): ReadonlyMap<string, string> {
  return new Map([...contentOf(folder)].filter(([path]) => !path.startsWith("assets/") && path !== ".scarfline"));
}

it(
  "A site renewed after any sequence of changes is, byte for byte, the site of a clean build",
  async () => {
    let good = 0;
    await fc.assert(
      fc.asyncProperty(steps, async (sequence) => {
        const folder = scratch();
        const content = join(folder, "content");
        await writeStart(content);
        const request = { content, cache: join(folder, "cache"), today: "2030-01-01" };
        const site = new SiteOnDemand(join(folder, "preview"));
        const renew = await renewing({ ...request, program, edition: "public" }, site, tell);
        for (const [at, step] of [{ does: "the same bytes", at: 0 }, ...sequence].entries()) {
          apply(content, step);
          const renewed = await renew();
          const out = join(folder, `out-${at}`);
          const built = await build(
            { ...request, cache: join(folder, `cache-${at}`), out, editions: ["public"], apart: false, program },
            tell,
          );
          if ("problems" in renewed || "problems" in built) {
            expect(renewed).toEqual(built);
            rmSync(content, { recursive: true });
            cpSync(join(folder, "good"), content, { recursive: true });
            continue;
          }
          good += 1;
          rmSync(join(folder, "good"), { recursive: true, force: true });
          cpSync(content, join(folder, "good"), { recursive: true });
          const clean = filesOf(out);
          for (const path of clean.keys()) site.make(path);
          expect(renewed.pages).toBe([...clean.keys()].filter((path) => !path.startsWith("photos/")).length);
          const made = filesOf(site.folder);
          for (const [path, text] of clean) expect(made.get(path) === text, path).toBe(true);
          expect([...made.keys()].filter((path) => !clean.has(path) && !path.startsWith("photos/"))).toEqual([]);
        }
      }),
      { numRuns: SEQUENCES, seed: process.env["RENEWALS"] === undefined ? 7 : Date.now() },
    );
    expect(good).toBeGreaterThan(2 * SEQUENCES);
  },
  60_000 + SEQUENCES * 20_000,
);
