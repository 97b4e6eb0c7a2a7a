/** `RENEWALS=500 npx vitest --config tests/vitest.config.ts tests/preview/renewal` tries that many sequences. */
import { cpSync, rmSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, it } from "vitest";
import { build } from "../../src/build.ts";
import { renewing } from "../../src/preview/preview.ts";
import { SiteOnDemand } from "../../src/preview/site.ts";
import { apply, type Edit, EDITS, EDITS_OF_PROSE, writeStart } from "../publish/edits.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";

const scratch = scratchFolders();
const SEQUENCES = Number(process.env["RENEWALS"] ?? 2);
const tell = { line: () => undefined, progress: () => undefined };

const does = fc.oneof(fc.constantFrom(...EDITS), fc.constantFrom(...EDITS_OF_PROSE));
const steps: fc.Arbitrary<readonly Edit[]> = fc.array(fc.record({ does, at: fc.nat(97) }), {
  minLength: 3,
  maxLength: 8,
});

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
