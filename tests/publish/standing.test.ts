import { rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { beforeEach, describe, expect, it } from "vitest";
import { keepStanding, madeFrom, standing } from "../../src/publish/output/standing.ts";
import { contentOf, scratchFolders, writeAll } from "./scratch.ts";

const scratch = scratchFolders();
const PHOTO = Buffer.alloc(100_000, 7);
const TOLD = ["Reckoned: nothing."];
const LONG_AGO = new Date("2024-05-01T12:00:00Z");

let folder: string;
let place: { readonly content: string; readonly out: string; readonly cache: string };

const from = (given: Partial<Parameters<typeof madeFrom>[0]> = {}): Promise<string | undefined> =>
  madeFrom({ content: place.content, program: "a program", options: { editions: ["public"] }, ...given });

beforeEach(async () => {
  folder = scratch();
  place = { content: join(folder, "content"), out: join(folder, "site"), cache: join(folder, ".cache") };
  writeAll(place.content, {
    "aircraft.md": "an aircraft",
    "entries/1.md": "an entry",
    "climate/shop.csv": "a log",
    "photos/big.jpg": PHOTO,
    "seals.txt": "a seal",
    "seals/0001.txt": "digests",
    "pages/visit.md": "a page",
    "layouts/entry.liquid": "a layout",
    "style.css": "a sheet",
  });
  utimesSync(join(place.content, "photos/big.jpg"), LONG_AGO, LONG_AGO);
  writeAll(place.out, { "index.html": "a page", "photos/big.jpg": PHOTO, CNAME: "not ours" });
  writeFileSync(join(place.out, ".scarfline"), "index.html\nphotos/big.jpg\n");
  await keepStanding(place, await from(), TOLD);
});

describe("A site stands as it was built", () => {
  it("where nothing has changed, and says what was told then", async () => {
    expect(standing(place, await from())).toEqual(TOLD);
  });

  it("where only what is not read, or not ours, has changed", async () => {
    writeAll(place.content, { "schemas/entry.json": "{}", ".git/index": "theirs", "entries/.1.md.swp": "half" });
    writeAll(place.out, { CNAME: "elsewhere", "more.txt": "theirs" });
    expect(standing(place, await from())).toEqual(TOLD);
  });
});

describe("A site is made anew", () => {
  const CHANGES: { readonly [what: string]: () => void } = {
    "a file of the record says something else": () => writeAll(place.content, { "entries/1.md": "an entrx" }),
    "a file came": () => writeAll(place.content, { "entries/2.md": "" }),
    "a file went": () => rmSync(join(place.content, "entries/1.md")),
    "a log says something else": () => writeAll(place.content, { "climate/shop.csv": "a lag" }),
    "an own page says something else": () => writeAll(place.content, { "pages/visit.md": "a paga" }),
    "a layout says something else": () => writeAll(place.content, { "layouts/entry.liquid": "a laiout" }),
    "an own sheet says something else": () => writeAll(place.content, { "style.css": "a shaet" }),
    "an own sheet went": () => rmSync(join(place.content, "style.css")),
    "a seal was set": () => writeAll(place.content, { "seals.txt": "two seals" }),
    "what a seal lists says something else": () => writeAll(place.content, { "seals/0001.txt": "other digests" }),
    "a file came that the record cannot have": () => writeAll(place.content, { "entries/1.MD": "an entry" }),
    "a photograph has another time": () =>
      utimesSync(join(place.content, "photos/big.jpg"), LONG_AGO, new Date("2024-06-01T12:00:00Z")),
    "a photograph has another size": () => writeFileSync(join(place.content, "photos/big.jpg"), PHOTO.subarray(1)),
    "a page was altered": () => writeAll(place.out, { "index.html": "a paga" }),
    "a page is gone": () => rmSync(join(place.out, "index.html")),
    "a picture of the site is gone": () => rmSync(join(place.out, "photos/big.jpg")),
    "the list of what was written is gone": () => rmSync(join(place.out, ".scarfline")),
    "the list of what was written says less": () => writeAll(place.out, { ".scarfline": "index.html\n" }),
    "what is kept of it is gone": () => rmSync(place.cache, { recursive: true }),
  };
  for (const [what, change] of Object.entries(CHANGES))
    it(`where ${what}`, async () => {
      change();
      expect(standing(place, await from())).toBeUndefined();
    });

  it("by text of the same length and time that says something else", async () => {
    const file = join(place.content, "entries/1.md");
    const { atime, mtime } = statSync(file);
    writeFileSync(file, "on entry");
    utimesSync(file, atime, mtime);
    expect(standing(place, await from())).toBeUndefined();
  });

  it("where what is kept of it was cut short", async () => {
    for (const [path, text] of contentOf(place.cache)) writeFileSync(join(place.cache, path), text.slice(0, -9));
    expect(standing(place, await from())).toBeUndefined();
  });

  it("where another program, other options or another folder of the record are asked", async () => {
    expect(standing(place, await from({ program: "another program" }))).toBeUndefined();
    expect(standing(place, await from({ options: { editions: ["archive"] } }))).toBeUndefined();
    writeAll(join(folder, "copy"), Object.fromEntries(contentOf(place.content)));
    expect(standing(place, await from({ content: join(folder, "copy") }))).toBeUndefined();
  });

  it("where an own page or layout is a template or begins with code, either of which may ask for the hour", async () => {
    for (const [path, text] of [
      ["pages/visit.md", "Made at {{ 'now' | date: '%H:%M' }}"],
      ["layouts/entry.liquid", "{% assign hour = 'now' | date: '%H' %}"],
      ["pages/visit.md", "---js\n{ title: String(new Date()) }\n---\na page"],
    ] as const) {
      const before = contentOf(place.content).get(path) ?? "";
      writeAll(place.content, { [path]: text });
      expect(await from(), path).toBeUndefined();
      writeAll(place.content, { [path]: before });
      expect(await from(), path).toBeDefined();
    }
  });

  it("where own pages are code, which may ask for anything", async () => {
    writeAll(place.content, { "pages/_lib/days.mjs": "export const now = new Date();" });
    expect(await from()).toBeUndefined();
  });

  it("where nobody can tell which program runs, or a photograph has only just come", async () => {
    expect(await from({ program: undefined })).toBeUndefined();
    writeFileSync(join(place.content, "photos/big.jpg"), PHOTO);
    expect(await from()).toBeUndefined();
  });
});

it("What a site is made from has one digest for the same files, and another for any other", async () => {
  const file = fc.tuple(
    fc.constantFrom("a.md", "b.md", "b.csv", "c/a.md", "c/b.md"),
    fc.constantFrom("", "1", "11", "a.md"),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(file, { maxLength: 5 }), fc.array(file, { maxLength: 5 }), async (one, other) => {
      const digest = async (files: typeof one): Promise<string | undefined> => {
        rmSync(place.content, { recursive: true });
        writeAll(place.content, { "aircraft.md": "", ...Object.fromEntries(files) });
        return from();
      };
      const same =
        JSON.stringify(Object.entries(Object.fromEntries(one)).sort()) ===
        JSON.stringify(Object.entries(Object.fromEntries(other)).sort());
      expect((await digest(one)) === (await digest(other))).toBe(same);
    }),
  );
});
