import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ALL_FORMATS, EncodedPacketSink, FilePathSource, Input, type InputTrack } from "mediabunny";
import { afterEach, describe, expect, it, vi } from "vitest";
import { problemText } from "../../src/problem.ts";
import { PictureCache } from "../../src/publish/pictures/cache.ts";
import { readyFiles, type ReadyFiles } from "../../src/publish/pictures/ready.ts";
import type { Wanted } from "../../src/publish/pictures/wanted.ts";
import { boxesIn, elementsIn } from "./clip-parts.ts";
import { contentOf, scratchFolders, writeAll } from "./scratch.ts";

const scratch = scratchFolders();
afterEach(() => {
  vi.useRealTimers();
});
const MADE = new URL("clips/", import.meta.url).pathname;
const made = (name: string): Buffer => readFileSync(join(MADE, name));
const clip = (file: string): Wanted => ({
  file,
  place: { file: "entries/2031-01-01-a.md", line: 4, column: 9 },
  use: "clip",
});

async function ready(content: string, names: readonly string[], cacheFolder = scratch()): Promise<ReadyFiles> {
  const cache = PictureCache.open(cacheFolder);
  const found = await readyFiles(content, names.map(clip), cache, () => undefined);
  await cache.close();
  return found;
}

/** The bare copy of one clip. */
async function bareOf(name: string): Promise<Buffer> {
  const content = scratch();
  writeAll(content, { [name]: made(name) });
  const { clips, problems } = await ready(content, [name]);
  expect(problems).toEqual([]);
  return readFileSync(clips.get(name)?.bare.placings[0]?.from ?? "");
}

async function tracksOf(
  bytes: Buffer,
): Promise<{ track: InputTrack; packets: { time: string; key: string; bytes: Buffer }[] }[]> {
  const file = join(scratch(), "clip");
  writeFileSync(file, bytes);
  const input = new Input({ source: new FilePathSource(file), formats: ALL_FORMATS });
  const tracks = [];
  for (const track of await input.getTracks()) {
    const packets = [];
    for await (const { timestamp, type, data } of new EncodedPacketSink(track).packets())
      packets.push({ time: timestamp.toFixed(3), key: type, bytes: Buffer.from(data) });
    tracks.push({ track, packets });
  }
  return tracks;
}

/** Frames of H.264 without the units named. */
function without(frame: Buffer, kinds: readonly number[]): Buffer {
  const kept: Buffer[] = [];
  for (let at = 0; at < frame.length; ) {
    const end = at + 4 + frame.readUInt32BE(at);
    if (!kinds.includes((frame[at + 4] ?? 0) & 0x1f)) kept.push(frame.subarray(at, end));
    at = end;
  }
  return Buffer.concat(kept);
}

describe("The clips of these tests", () => {
  it("hold what a phone notes, so that the copies cannot lack it for no reason", () => {
    const mp4 = made("planted.mp4").toString("latin1");
    for (const word of ["title", "comment", "handler", "track", "make", "model", "xmp", "item", "words-in-a-track"])
      expect(mp4, word).toContain(`PLANTED-${word}`);
    expect(mp4).toContain("+38.6918-009.202");
    expect(mp4).toContain("x264 - core");
    expect(boxesIn(made("planted.mp4")).map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(["udta", "meta", "uuid", "tmcd", "tx3g"]),
    );
    const webm = made("planted.webm").toString("latin1");
    for (const word of ["title", "comment", "artist", "handler", "track", "words-in-a-track"])
      expect(webm, word).toContain(`PLANTED-${word}`);
    expect(elementsIn(made("planted.webm"))).toEqual(expect.arrayContaining(["Tags"]));
  });
});

describe("The bare copy of a clip", () => {
  it.each(["planted.mp4", "planted.webm"])("of %s holds nothing that was noted in it", async (name) => {
    const bare = (await bareOf(name)).toString("latin1");
    for (const noted of ["PLANTED", "38.69", "x264", "Lavf", "libvpx", "und\0tmcd"])
      expect(bare, noted).not.toContain(noted);
  });

  it("as an MP4 is made of no other boxes than playing needs, and states no time of making", async () => {
    const boxes = boxesIn(await bareOf("planted.mp4"));
    const needed = [
      "ftyp",
      "moov",
      "mvhd",
      "trak",
      "tkhd",
      "edts",
      "elst",
      "mdia",
      "mdhd",
      "hdlr",
      "minf",
      "vmhd",
      "smhd",
      "dinf",
      "dref",
      "url ",
      "stbl",
      "stsd",
      "avc1",
      "avcC",
      "colr",
      "pasp",
      "btrt",
      "mp4a",
      "esds",
      "stts",
      "ctts",
      "cslg",
      "stss",
      "stsc",
      "stsz",
      "stco",
      "co64",
      "free",
      "mdat",
    ];
    expect(boxes.map(({ kind }) => kind).filter((kind) => !needed.includes(kind))).toEqual([]);
    expect(boxes.filter(({ kind }) => kind === "trak")).toHaveLength(2);
    const times = boxes.filter(({ kind }) => ["mvhd", "tkhd", "mdhd"].includes(kind));
    expect(times).toHaveLength(5);
    for (const { content } of times)
      expect(content.subarray(4, content[0] === 1 ? 20 : 12).every((byte) => byte === 0)).toBe(true);
    for (const { content } of boxes.filter(({ kind }) => kind === "free"))
      expect(content.every((byte) => byte === 0)).toBe(true);
  });

  it("as a WebM is made of no other elements than playing needs", async () => {
    const needed = ["EBML", "Segment", "SeekHead", "Void", "Info", "Tracks", "Cluster", "Cues"];
    expect(elementsIn(await bareOf("planted.webm")).filter((name) => !needed.includes(name))).toEqual([]);
  });

  it.each(["planted.mp4", "planted.webm", "front.mp4", "later.webm"])(
    "of %s has each frame and each piece of sound as it was, at its time",
    async (name) => {
      const [before, after] = [await tracksOf(made(name)), await tracksOf(await bareOf(name))];
      const played = before.filter(({ track }) => track.type === "video" || track.type === "audio");
      expect(after.map(({ track }) => [track.type, track.codec])).toEqual(
        played.map(({ track }) => [track.type, track.codec]),
      );
      after.forEach(({ packets, track }, at) => {
        const bytes = (of: Buffer): Buffer => (track.codec === "avc" ? without(of, [6]) : of);
        expect(packets.length).toBeGreaterThan(20);
        expect(packets).toEqual(played[at]?.packets.map((packet) => ({ ...packet, bytes: bytes(packet.bytes) })));
      });
    },
  );

  it("knows how it is shown: upright, and how long", async () => {
    const content = scratch();
    writeAll(content, { "a.mp4": made("planted.mp4"), "b.webm": made("later.webm") });
    const { clips } = await ready(content, ["a.mp4", "b.webm"]);
    expect(clips.get("a.mp4")?.bare.clip).toMatchObject({
      width: 64,
      height: 96,
      seconds: expect.closeTo(1.2, 1) as number,
      type: "video/mp4",
    });
    expect(clips.get("b.webm")?.bare.clip).toMatchObject({
      width: 96,
      height: 64,
      seconds: expect.closeTo(1.2, 1) as number,
      type: "video/webm",
    });
  });

  it.each(["planted.mp4", "planted.webm"])("of %s is the same bytes whenever it is made", async (name) => {
    vi.useFakeTimers({ toFake: ["Date"], now: new Date("2001-02-03T04:05:06Z") });
    const first = await bareOf(name);
    vi.setSystemTime(new Date("2049-01-01T00:00:00Z"));
    expect((await bareOf(name)).equals(first)).toBe(true);
  });

  it("goes by a name that tells nothing, and the archive gets the file itself, as a copy", async () => {
    const content = scratch();
    writeAll(content, { "clips/Secret Person.M4V": made("planted.mp4") });
    const film = (await ready(content, ["clips/Secret Person.M4V"])).clips.get("clips/Secret Person.M4V");
    expect(film?.bare.placings.map(({ to, original }) => [to.replace(/[0-9a-f]{20}/, "…"), original])).toEqual([
      ["clips/….mp4", false],
    ]);
    expect(film?.own.placings).toEqual([
      { from: join(content, "clips/Secret Person.M4V"), to: film?.bare.placings[0]?.to, original: true },
    ]);
    expect(film?.own.clip?.bytes).toBe(made("planted.mp4").length);
  });

  it("is made once, however many builds follow, and leaves nothing half made", async () => {
    const content = scratch();
    const cache = scratch();
    writeAll(content, { "a.mp4": made("planted.mp4"), "cut.mp4": made("planted.mp4").subarray(0, 9000) });
    const first = await ready(content, ["a.mp4", "cut.mp4"], cache);
    expect([first.decoded, first.problems.length]).toEqual([1, 1]);
    const again = await ready(content, ["a.mp4"], cache);
    expect([again.decoded, again.clips.get("a.mp4")]).toEqual([0, first.clips.get("a.mp4")]);
    expect([...contentOf(cache).keys()].filter((path) => path.startsWith("making/"))).toEqual([]);
    expect(readdirSync(join(cache, "making"))).toEqual([]);
  });
});

describe("What cannot be played", () => {
  it("is told with its place and a mend, all of it at once", async () => {
    const content = scratch();
    const [end, front, webm] = [made("planted.mp4"), made("front.mp4"), made("later.webm")];
    writeAll(content, {
      "cut at its end.mp4": end.subarray(0, end.length - 700),
      "cut.mp4": front.subarray(0, 9000),
      "cut.webm": webm.subarray(0, 9000),
      "hevc.mp4": made("hevc.mp4"),
      "sound.mp4": made("sound.mp4"),
      "good.mp4": front,
      "words.mp4": "....ftypisom and no more",
      "none.webm": webm.subarray(0, 40),
    });
    const { problems, clips } = await ready(content, [
      "cut at its end.mp4",
      "cut.mp4",
      "cut.webm",
      "hevc.mp4",
      "sound.mp4",
      "good.mp4",
      "words.mp4",
      "none.webm",
    ]);
    expect([...clips.keys()]).toEqual(["good.mp4"]);
    await expect(`${problems.map(problemText).sort().join("\n")}\n`).toMatchFileSnapshot("clips/problems.txt");
  });

  it("is not said of a clip for a disk that is full or a folder that may not be written", async () => {
    const content = scratch();
    const cache = scratch();
    writeAll(content, { "a.mp4": made("front.mp4") });
    writeFileSync(join(cache, "making"), "a file where a folder is made");
    await expect(ready(content, ["a.mp4"], cache)).rejects.toThrow(/EEXIST|ENOTDIR/);
  });
});

describe("A clip of some hundred megabytes", () => {
  it("is copied with no more memory than a short one takes, but for the list of its frames", () => {
    const folder = scratch();
    const long = join(folder, "long.mp4");
    execFileSync(process.execPath, ["--import", "tsx", new URL("clips/long.mjs", import.meta.url).pathname, long], {
      stdio: "inherit",
    });
    expect(statSync(long).size).toBeGreaterThan(300_000_000);
    const peak = (file: string): number =>
      Number(
        execFileSync(
          process.execPath,
          ["--import", "tsx", new URL("clips/peak.mjs", import.meta.url).pathname, file, join(folder, "out.mp4")],
          { encoding: "utf8" },
        ),
      );
    expect(peak(long) - peak(join(MADE, "front.mp4"))).toBeLessThan(160);
  }, 120_000);
});
