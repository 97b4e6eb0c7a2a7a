import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pagesOf } from "../../layouts/shell/site.tsx";
import { editionOf } from "../../src/editions/edition.ts";
import type { ReadyClip, Site } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Record } from "../../src/facts/types.ts";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { planted } from "../pages/planted.ts";
import { fieldPaths, valuesIn, watched } from "./fields.ts";
import { excused, NONE } from "./because.ts";
import { NOT_PLANTED, UNTOLD } from "./untold.ts";

const PLACES = ["page", "appendix", "ledger"] as const;
type Place = (typeof PLACES)[number];

/** Records of which each holds what chance left out of the others; the same each time. */
const records = fc
  .sample(fc.infiniteStream(fc.nat({ max: 5039 })), { numRuns: 8, seed: 1 })
  .map((chance) => planted((...from) => from[chance.next().value % from.length] as (typeof from)[number]).record);

const CLIP: ReadyClip = { width: 64, height: 48, seconds: 1, bytes: 900, type: "video/mp4", path: "clip.mp4" };

/** The fields that are read while a place is made, by place. */
function readIn(all: readonly Record[]): { readonly [place in Place]: ReadonlySet<string> } {
  const read = { page: new Set<string>(), appendix: new Set<string>(), ledger: new Set<string>() };
  let into: Set<string> | undefined;
  for (const one of all) {
    const record = watched(one, (path) => into?.add(path));
    into = undefined;
    const shown = editionOf(record, reckon(record), "archive");
    const site: Site = {
      shown,
      pictures: new Map(),
      clips: new Map(one.entries.flatMap(({ clips }) => clips.map(({ file }) => [file, CLIP] as const))),
      files: new Map(),
      prose: ({ markdown }) => markdown,
    };
    into = read.ledger;
    for (const { text } of ledgersOf(shown)) expect(text).not.toBe("");
    // Some pages are chosen by what the record holds, before any is made.
    into = read.page;
    for (const page of pagesOf(site)) {
      into = page.path === "appendix.html" ? read.appendix : read.page;
      page.make();
    }
  }
  return read;
}

describe("Every field of every fact", () => {
  const held = new Set(records.flatMap((record) => valuesIn(record).map(([path]) => path)));
  const read = readIn(records);

  it("is in the planted records by which editions are tested, or it is said why not", () => {
    const missing = fieldPaths().filter((field) => !held.has(field));
    expect(excused(missing, NOT_PLANTED)).toEqual(NONE);
  });

  it.each(PLACES)("is told in a %s, or it is said why not", (place) => {
    const missing = fieldPaths().filter((field) => !read[place].has(field));
    expect(excused(missing, UNTOLD[place])).toEqual(NONE);
  });
});
