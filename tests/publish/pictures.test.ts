import { readFileSync, renameSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { PictureCache } from "../../src/publish/pictures/cache.ts";
import { readyFiles, type ReadyFiles } from "../../src/publish/pictures/ready.ts";
import { widthsFor } from "../../src/publish/pictures/recipe.ts";
import type { Wanted } from "../../src/publish/pictures/wanted.ts";
import { contentOf, scratchFolders, writeAll } from "./scratch.ts";

const scratch = scratchFolders();
const place = { file: "entries/2031-01-01-a.md", line: 4, column: 9 };
const picture = (file: string): Wanted => ({ file, place, use: "picture" });

async function ready(content: string, wanted: readonly Wanted[], cacheFolder: string): Promise<ReadyFiles> {
  const cache = PictureCache.open(cacheFolder);
  const found = await readyFiles(content, wanted, cache, () => undefined);
  await cache.close();
  return found;
}

/** Red on the left, blue on the right, noted as lying on its side, with a place and an owner in its metadata. */
async function lyingPhoto(width: number, height: number): Promise<Buffer> {
  const left = await sharp({ create: { width: width / 2, height, channels: 3, background: "#d01010" } })
    .png()
    .toBuffer();
  const whole = sharp({ create: { width, height, channels: 3, background: "#1010d0" } }).composite([
    { input: left, left: 0, top: 0 },
  ]);
  return whole
    .withExif({ IFD0: { Copyright: "Secret Owner" }, IFD3: { GPSLatitude: "51/1 30/1 0/1" } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
}

describe("Widths of derivatives", () => {
  it("never enlarge, and leave out one that is nearly the widest", () => {
    expect(widthsFor(4000)).toEqual([480, 960, 1600]);
    expect(widthsFor(1600)).toEqual([480, 960, 1600]);
    expect(widthsFor(1000)).toEqual([480, 1000]);
    expect(widthsFor(500)).toEqual([500]);
    expect(widthsFor(200)).toEqual([200]);
  });
});

describe("A photograph made ready", () => {
  it("stands upright, keeps its size, and carries nothing beside the picture", async () => {
    const content = scratch();
    writeAll(content, { "photos/jig.jpg": await lyingPhoto(1200, 800) });
    expect(readFileSync(join(content, "photos/jig.jpg"), "latin1")).toContain("Secret Owner");
    const { pictures, problems, decoded } = await ready(content, [picture("photos/jig.jpg")], scratch());
    expect({ problems, decoded }).toEqual({ problems: [], decoded: 1 });
    const jig = pictures.get("photos/jig.jpg");
    expect(jig?.picture).toMatchObject({
      width: 800,
      height: 1200,
      sources: [{ type: "image/webp" }, { type: "image/jpeg" }],
    });
    expect(jig?.placings.map(({ to }) => to.replace(/^photos\/[0-9a-f]{20}/, "photos/…"))).toEqual([
      "photos/…-480.webp",
      "photos/…-480.jpg",
      "photos/…-800.webp",
      "photos/…-800.jpg",
    ]);
    for (const { from } of jig?.placings ?? []) {
      const made = await sharp(from).metadata();
      expect({ exif: made.exif, xmp: made.xmp, iptc: made.iptc, icc: made.icc, orientation: made.orientation }).toEqual(
        {},
      );
      expect(readFileSync(from, "latin1")).not.toContain("Secret");
    }
    const { data } = await sharp(jig?.placings[1]?.from).raw().toBuffer({ resolveWithObject: true });
    expect(
      [data[0], data[2]].map((part) => (part ?? 0) > 120),
      "red, which lay on the left, is above",
    ).toEqual([true, false]);
    expect([data.at(-3), data.at(-1)].map((part) => (part ?? 0) > 120)).toEqual([false, true]);
  });

  it("is in sRGB whatever profile it came in", async () => {
    const content = scratch();
    const wide = await sharp({ create: { width: 20, height: 20, channels: 3, background: "#ff0000" } })
      .withIccProfile("p3")
      .png()
      .toBuffer();
    writeAll(content, { "a.png": wide });
    const { pictures } = await ready(content, [picture("a.png")], scratch());
    const { data, info } = await sharp(pictures.get("a.png")?.placings[1]?.from)
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(info.channels).toBe(3);
    expect([data[0], data[1], data[2]].map((part) => Math.round((part ?? 0) / 16))).toEqual([16, 0, 0]);
  });

  it("knows its dominant colour", async () => {
    const content = scratch();
    writeAll(content, {
      "a.png": await sharp({ create: { width: 30, height: 20, channels: 3, background: "#c8a868" } })
        .png()
        .toBuffer(),
    });
    const { pictures } = await ready(content, [picture("a.png")], scratch());
    expect(pictures.get("a.png")?.picture?.colour).toBe("#c8a868");
  });

  it("is decoded once, however many builds follow, and anew when its content changes", async () => {
    const content = scratch();
    const cache = scratch();
    writeAll(content, { "a.jpg": await lyingPhoto(80, 40) });
    const first = await ready(content, [picture("a.jpg")], cache);
    expect((await ready(content, [picture("a.jpg")], cache)).decoded).toBe(0);
    renameSync(join(content, "a.jpg"), join(content, "b.jpg"));
    const renamed = await ready(content, [picture("b.jpg")], cache);
    expect(renamed.decoded).toBe(0);
    expect(renamed.pictures.get("b.jpg")).toEqual(first.pictures.get("a.jpg"));
    writeAll(content, { "b.jpg": await lyingPhoto(60, 40) });
    expect((await ready(content, [picture("b.jpg")], cache)).decoded).toBe(1);
  });

  it("is made anew where somebody wrote into what was made of it, as a site's picture is a link to it", async () => {
    const [content, folder] = [scratch(), scratch()];
    writeAll(content, { "a.jpg": await lyingPhoto(80, 40) });
    const first = await ready(content, [picture("a.jpg")], folder);
    const made = first.pictures.get("a.jpg")?.placings.map(({ from }) => from) ?? [];
    const were = made.map((path) => readFileSync(path));
    const [smaller, other, gone] = made;
    writeFileSync(smaller ?? "", "half");
    expect((await ready(content, [picture("a.jpg")], folder)).decoded).toBe(1);
    writeFileSync(other ?? "", Buffer.alloc(were[1]?.length ?? 0));
    expect((await ready(content, [picture("a.jpg")], folder)).decoded).toBe(1);
    rmSync(gone ?? other ?? "");
    expect((await ready(content, [picture("a.jpg")], folder)).decoded).toBe(1);
    expect(made.map((path) => readFileSync(path))).toEqual(were);
  });

  it("is found again in a cache that was copied, whose files have other times", async () => {
    const [content, folder] = [scratch(), scratch()];
    writeAll(content, { "a.jpg": await lyingPhoto(80, 40) });
    const { pictures } = await ready(content, [picture("a.jpg")], folder);
    for (const { from } of pictures.get("a.jpg")?.placings ?? []) utimesSync(from, 1_000_000, 1_000_000);
    expect((await ready(content, [picture("a.jpg")], folder)).decoded).toBe(0);
  });

  it("is not read again while size and time are the same, unless the time is too fresh to be trusted", async () => {
    const content = scratch();
    const folder = scratch();
    writeAll(content, { "a.txt": "one" });
    const look = async (): Promise<string> => {
      const cache = PictureCache.open(folder);
      const digest = await cache.digestOf(join(content, "a.txt"));
      await cache.close();
      return digest;
    };
    const fresh = await look();
    writeFileSync(join(content, "a.txt"), "two");
    expect(await look()).not.toBe(fresh);
    utimesSync(join(content, "a.txt"), 1_000_000, 1_000_000);
    const settled = await look();
    writeFileSync(join(content, "a.txt"), "six");
    utimesSync(join(content, "a.txt"), 1_000_000, 1_000_000);
    expect(await look()).toBe(settled);
  });

  it("gives the same bytes from an empty cache", async () => {
    const content = scratch();
    writeAll(content, { "a.jpg": await lyingPhoto(700, 300) });
    const bytes = async (): Promise<string[]> => {
      const folder = scratch();
      const found = await ready(content, [picture("a.jpg")], folder);
      const files = found.pictures.get("a.jpg")?.placings.map(({ from }) => readFileSync(from, "latin1")) ?? [];
      rmSync(folder, { recursive: true });
      return files;
    };
    expect(await bytes()).toEqual(await bytes());
  });

  it("is made anew where the cache was damaged", async () => {
    const content = scratch();
    const cache = scratch();
    writeAll(content, { "photos/jig.jpg": await lyingPhoto(400, 300) });
    await ready(content, [picture("photos/jig.jpg")], cache);
    const whole = contentOf(cache);
    for (const name of ["facts.json", "seen.json"]) {
      const path = [...whole.keys()].find((each) => each.endsWith(name)) ?? "";
      writeFileSync(join(cache, path), '{"wid');
    }
    expect((await ready(content, [picture("photos/jig.jpg")], cache)).decoded).toBe(1);
    const without = (files: Map<string, string>) =>
      new Map(
        [...files]
          .filter(([path]) => path !== "seen.json")
          .map(([path, text]) => [path, text.replaceAll(/"changed":[\d.]+/g, "")]),
      );
    expect(without(contentOf(cache))).toEqual(without(whole));
  });

  it("stays in the cache when that is pruned, and what is no longer named goes", async () => {
    const content = scratch();
    const folder = scratch();
    const [kept, gone] = [picture("photos/jig.jpg"), picture("photos/old.jpg")];
    writeAll(content, { "photos/jig.jpg": await lyingPhoto(400, 300), "photos/old.jpg": await lyingPhoto(200, 300) });
    await ready(content, [kept, gone], folder);
    const cache = PictureCache.open(folder);
    await readyFiles(content, [kept], cache, () => undefined);
    expect(await cache.prune()).toBe(1);
    expect(readFileSync(join(folder, "seen.json"), "utf8")).not.toContain("old.jpg");
    expect((await ready(content, [kept], folder)).decoded).toBe(0);
    expect((await ready(content, [kept, gone], folder)).decoded).toBe(1);
  });

  it("leaves nothing half made in the cache", async () => {
    const content = scratch();
    const cache = scratch();
    writeAll(content, { "a.jpg": (await lyingPhoto(80, 40)).subarray(0, 400), "b.jpg": await lyingPhoto(80, 40) });
    await ready(content, [picture("a.jpg"), picture("b.jpg")], cache);
    expect([...contentOf(cache).keys()].filter((path) => path.startsWith("making/"))).toEqual([]);
  });
});

describe("What cannot be made ready", () => {
  it("is told with its place and a mend, all of it at once, and what is sound is made ready", async () => {
    const content = scratch();
    writeAll(content, {
      "cut.jpg": (await lyingPhoto(800, 600)).subarray(0, 3000),
      "words.jpg": "no picture",
      "good.jpg": await lyingPhoto(80, 40),
      "bad.svg": `<svg viewBox="0 0 9 9">\n<script/></svg>`,
    });
    const found = await ready(content, ["cut.jpg", "words.jpg", "good.jpg", "bad.svg"].map(picture), scratch());
    expect([...found.pictures.keys()]).toEqual(["good.jpg"]);
    expect(found.problems.map(({ code, file, line, mend }) => ({ code, file, line, mends: mend.length > 20 }))).toEqual(
      expect.arrayContaining([
        { code: "picture-unreadable", file: place.file, line: 4, mends: true },
        { code: "picture-unreadable", file: place.file, line: 4, mends: true },
        { code: "drawing-unsafe", file: "bad.svg", line: 2, mends: true },
      ]),
    );
    expect(found.problems).toHaveLength(3);
  });

  it("includes a drawing that was cut short, and one that repeats itself beyond all drawing", async () => {
    const content = scratch();
    const twice = Array.from({ length: 20 }, (_, at) => `<g id="l${at}">${`<use href="#l${at - 1}"/>`.repeat(2)}</g>`);
    writeAll(content, {
      "cut.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">\n<g>`,
      "vast.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">${twice.join("")}</svg>`,
    });
    const { problems } = await ready(content, ["cut.svg", "vast.svg"].map(picture), scratch());
    // In the order in which they were looked at, which may be either.
    const found = problems.map(({ code, file, line }) => ({ code, file, line }));
    expect(found.sort((a, b) => (a.file < b.file ? -1 : 1))).toEqual([
      { code: "drawing-unreadable", file: "cut.svg", line: 2 },
      { code: "drawing-too-large", file: "vast.svg", line: 1 },
    ]);
  });

  it("includes a picture with too many pixels, which is not decoded", async () => {
    const content = scratch();
    writeAll(content, {
      "huge.png": await sharp({
        create: { width: 16_000, height: 16_000, channels: 3, background: "#fff" },
        limitInputPixels: false,
      })
        .png({ compressionLevel: 1 })
        .toBuffer(),
    });
    const { problems } = await ready(content, [picture("huge.png")], scratch());
    expect(problems.map(({ code }) => code)).toEqual(["picture-too-large"]);
  });
});

describe("A document", () => {
  it("goes by a name that tells nothing, and as a copy, so that the original is never touched", async () => {
    const content = scratch();
    writeAll(content, { "papers/Invoice Secret Person.PDF": "%PDF-1.7" });
    const { documents } = await ready(
      content,
      [{ file: "papers/Invoice Secret Person.PDF", place, use: "document" }],
      scratch(),
    );
    const paper = documents.get("papers/Invoice Secret Person.PDF");
    expect(paper?.path).toMatch(/^files\/[0-9a-f]{20}\.pdf$/);
    expect(paper?.placings.map(({ original }) => original)).toEqual([true]);
  });

  it.each([
    ["papers/page.html", "no tag", ".txt"],
    ["papers/gadget.js", "alert(1)", ".txt"],
    ["papers/served.phar", "words <?php system('id');", ".txt"],
    ["papers/served.php8", "words <?php system('id');", ".txt"],
    ["papers/served.cgi", "#!/bin/sh", ".txt"],
    ["papers/served.JSPX", "words", ".txt"],
    ["papers/page.XHTML", "<html xmlns='http://www.w3.org/1999/xhtml'><script>alert(1)</script></html>", ".txt"],
    ["papers/drawing.svgz", "\u001f\u008b", ".txt"],
    ["papers/route.gpx", "<?xml version='1.0'?><gpx/>", ".txt"],
    ["papers/plan.dxf", " \n<script>alert(1)</script>", ".txt"],
    ["papers/marked.csv", "\ufeff<script>alert(1)</script>", ".txt"],
    ["papers/wide", Buffer.from("\ufeff<script>alert(1)</script>", "utf16le"), ".txt"],
    ["papers/plan.dxf", "0\nSECTION", ".dxf"],
    ["papers/notes", "two lines", ""],
    ["papers/bill.from-somebody", "two lines", ".bin"],
    ["papers/gadget.wasm", "\u0000asm", ".bin"],
    ["papers/bill.anna", "two lines", ".bin"],
  ])("never runs when it is opened: %s that begins with %j ends in %j", async (file, bytes, ending) => {
    const content = scratch();
    writeAll(content, { [file]: bytes });
    const { documents } = await ready(content, [{ file, place, use: "document" }], scratch());
    expect(documents.get(file)?.path?.replace(/^files\/[0-9a-f]{20}/, "")).toBe(ending);
  });

  it("that is a photograph loses where it was taken", async () => {
    const content = scratch();
    writeAll(content, { "scan.jpg": await lyingPhoto(300, 200) });
    const { documents } = await ready(content, [{ file: "scan.jpg", place, use: "document" }], scratch());
    const made = await sharp(documents.get("scan.jpg")?.placings[0]?.from).metadata();
    expect({ width: made.width, height: made.height, exif: made.exif }).toEqual({
      width: 200,
      height: 300,
      exif: undefined,
    });
  });
});
