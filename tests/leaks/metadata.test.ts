import exifReader from "exif-reader";
import exifr from "exifr";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";
import { jpegMarkers, pngNames, webpChunks } from "./chunks.ts";
import { type Form, pictureOf } from "./pictures.ts";
import { filesIn, found } from "./search.ts";
import { type Word, Words } from "./words.ts";

const scratch = scratchFolders();
const FORMS = ["jpg", "png", "webp", "tiff", "gif", "avif"] as const satisfies readonly Form[];
const SHOT = { width: 640, height: 480, colour: "#a08060" };
const ALL = {
  gps: true,
  exif: true,
  iptc: true,
  xmp: true,
  icc: true,
  ifd1: true,
  makerNote: true,
  userComment: true,
  mergeOutput: false,
};

async function planted(form: Form): Promise<{ bytes: Buffer; words: readonly Word[] }> {
  const words = new Words();
  return {
    bytes: await pictureOf(form, SHOT, (where) => words.say(where, "public", { told: false })),
    words: words.all,
  };
}

/** A record whose one picture is in the given form, and the small pictures that each edition makes of it. */
async function built(form: Form, edition: string): Promise<{ site: string; words: readonly Word[] }> {
  const { bytes, words } = await planted(form);
  const folder = scratch();
  const record = await smallRecord();
  const entry = String(record["entries/2021-03-01-first.md"]).replaceAll("jig.jpg", `jig.${form}`);
  writeAll(join(folder, "content"), { ...record, "entries/2021-03-01-first.md": entry, [`photos/jig.${form}`]: bytes });
  const { code, err } = await command([
    "build",
    "--content",
    join(folder, "content"),
    "--out",
    join(folder, "site"),
    "--edition",
    edition,
  ]);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return { site: join(folder, "site"), words };
}

const pictures = (site: string, ending: string): Buffer[] =>
  filesIn(site)
    .filter((path) => path.startsWith("photos/") && path.endsWith(ending))
    .map((path) => readFileSync(join(site, path)));

describe("The pictures of these tests", () => {
  it.each(["jpg", "tiff"] as const)("as %s hold what independent readers find in them", async (form) => {
    const { bytes, words } = await planted(form);
    const read = JSON.stringify(await exifr.parse(bytes, ALL));
    for (const { text, where } of words.filter((word) => /artist|owner|serial|description|XMP|IPTC/.test(word.where)))
      expect(read, where).toContain(text);
    if (form === "jpg")
      expect(await exifr.gps(bytes)).toMatchObject({
        latitude: expect.closeTo(38.6918, 3) as number,
        longitude: expect.closeTo(-9.202, 3) as number,
      });
    if (form === "jpg") expect((await exifr.thumbnail(bytes))?.length).toBeGreaterThan(100);
  });

  it.each(["jpg", "png", "webp"] as const)("as %s are read by another reader of EXIF too", async (form) => {
    const { bytes, words } = await planted(form);
    const { exif } = await sharp(bytes).metadata();
    const read = exifReader(exif ?? Buffer.alloc(0));
    expect(read.Image?.Artist).toBe(words.find(({ where }) => where === "artist")?.text);
    expect(read.Photo?.BodySerialNumber).toBe(words.find(({ where }) => where === "serial number")?.text);
    expect(read.GPSInfo?.GPSLatitudeRef).toBe("N");
  });

  it.each([...FORMS, "svg"] as const)("as %s hold every planted word where the search finds it", async (form) => {
    const { bytes, words } = await planted(form);
    const folder = scratch();
    writeAll(folder, { [`a.${form}`]: bytes });
    const hits = found(folder, words);
    expect(words.filter((word) => !hits.has(word)).map(({ where }) => where)).toEqual([]);
    expect(words.length).toBeGreaterThan(1);
    if (form === "png") expect(pngNames(bytes)).toEqual(expect.arrayContaining(["tEXt", "zTXt", "iTXt", "eXIf"]));
    if (form === "webp") expect(webpChunks(bytes)).toEqual(expect.arrayContaining(["EXIF", "XMP "]));
    if (form === "jpg") expect(jpegMarkers(bytes)).toEqual(expect.arrayContaining(["APP1", "APP13", "APP5", "COM"]));
  });
});

describe.each(["public", "archive"])("A picture in the %s edition's pages", (edition) => {
  it.each(FORMS)("made from %s has nothing beside the picture, by four readers", async (form) => {
    const { site, words } = await built(form, edition);
    expect([...found(site, words).keys()].map(({ where }) => where)).toEqual([]);
    const jpegs = pictures(site, ".jpg");
    const webps = pictures(site, ".webp");
    expect([jpegs.length, webps.length]).toEqual([edition === "public" ? 2 : 4, edition === "public" ? 2 : 4]);
    for (const jpeg of jpegs) {
      expect(new Set(jpegMarkers(jpeg))).toEqual(new Set(["DQT", "SOF0", "DHT", "SOS"]));
      expect(await exifr.parse(jpeg, { ...ALL, jfif: false })).toBeUndefined();
    }
    for (const webp of webps) expect(webpChunks(webp)).toEqual(["VP8 "]);
    for (const picture of [...jpegs, ...webps]) {
      const { exif, iptc, xmp, icc, tifftagPhotoshop, orientation, comments } = await sharp(picture).metadata();
      expect({ exif, iptc, xmp, icc, tifftagPhotoshop, orientation, comments }).toEqual({});
    }
  });
});

describe("A drawing", () => {
  it("holds nothing that a drawing program noted beside it", async () => {
    const words = new Words();
    const folder = scratch();
    const drawing = await pictureOf("svg", SHOT, (where) => words.say(where, "public", { told: false }));
    writeAll(join(folder, "content"), { ...(await smallRecord()), "drawings/fin.svg": drawing });
    const { code, err } = await command(["build", "--content", join(folder, "content"), "--out", join(folder, "site")]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect([...found(join(folder, "site"), words.all)].map(([{ where }, paths]) => [where, paths])).toEqual([]);
  });
});
