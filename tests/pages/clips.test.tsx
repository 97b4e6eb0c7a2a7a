import { placedRules } from "../../layouts/parts/placed.ts";
import { describe, expect, it } from "vitest";
import { parse } from "node-html-parser";
import { renderToString } from "preact-render-to-string";
import { Clip } from "../../layouts/parts/clip.tsx";
import { storyPages } from "../../layouts/shell/story-pages.tsx";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { pictured, pictureOf } from "../../src/pages/story/pictured.ts";
import type { Edition, ReadyClip, Site } from "../../src/editions/shown.ts";
import { playedWords } from "../../src/words/durations.ts";
import { bytesWords } from "../../src/words/numbers.ts";
import type { Audience, Clip as ClipFact, Entry, Photo } from "../../src/facts/types.ts";
import { entry, record } from "../evidence/make.ts";
import { made, storySite } from "./story-site.ts";

const place = { file: "made.md", line: 1, column: 1 };
const clip = (change: Partial<ClipFact> = {}): ClipFact => ({
  place,
  file: "clips/flex.mp4",
  poster: "photos/clamps.jpg",
  alt: "The tip <springs> back",
  caption: "Twice & again",
  audience: "public",
  ...change,
});
const photo = (file: string, audience: Audience = "public"): Photo => ({ place, file, alt: "A picture", audience });
const film: ReadyClip = {
  width: 480,
  height: 640,
  seconds: 71.2,
  bytes: 3_400_000,
  type: "video/mp4",
  path: "clips/d1.mp4",
};
const FROM = "entry/2025-03-10-glue.html";

function siteWith(clips: readonly ClipFact[]): Site {
  const site = storySite();
  const entries = site.shown.record.entries.map((each, at) => (at === 0 ? { ...each, clips } : each));
  return {
    ...site,
    shown: { ...site.shown, record: { ...site.shown.record, entries } },
    clips: new Map([["clips/flex.mp4", film]]),
  };
}

describe("A clip on a page", () => {
  const figure = parse(renderToString(<Clip site={siteWith([clip()])} from={FROM} clip={clip()} />));
  const video = figure.querySelector("video");

  it("is the browser's own player, by its poster, and asks for nothing before it is played", () => {
    expect(video?.attributes).toMatchObject({
      controls: "",
      preload: "none",
      poster: "../photos/clamps-800.jpg",
      "aria-label": "The tip <springs> back",
    });
    expect(figure.querySelector("source")?.attributes).toEqual({ src: "../clips/d1.mp4", type: "video/mp4" });
    expect(video?.hasAttribute("autoplay")).toBe(false);
  });

  it("states its size, by itself and not by its poster's, so that nothing moves", () => {
    expect(video?.attributes).toMatchObject({ width: "480", height: "640" });
    expect(placedRules(video?.outerHTML ?? "")).toContain("{aspect-ratio:480/640;max-width:64vh}");
  });

  it("has its words below it, and a plain link to the file with how much there is of it", () => {
    expect(figure.querySelector("figcaption")?.text).toBe("Twice & again The clip by itself, 1 min 12 s, 3.4 MB");
    expect(figure.querySelector("figcaption a")?.getAttribute("href")).toBe("../clips/d1.mp4");
  });

  it("is not there where it was not made ready", () => {
    expect(renderToString(<Clip site={siteWith([])} from={FROM} clip={clip({ file: "clips/other.mp4" })} />)).toBe("");
  });

  it("stands in the entry, and with the photographs of a joint that was glued in that entry", () => {
    const site = siteWith([clip()]);
    expect(made(storyPages(site), FROM).match(/<video/g)).toHaveLength(1);
    expect(made(storyPages(site), "index.html")).not.toContain("<video");
  });
});

describe("Where photographs stand for entries", () => {
  it("the poster of a clip does, if there is no photograph", () => {
    expect(pictureOf(entry("2025-01-01-a", { clips: [clip()] }))).toEqual({
      file: "photos/clamps.jpg",
      alt: "The tip <springs> back",
    });
    expect(pictureOf(entry("2025-01-01-a", { photos: [photo("photos/bench.jpg")], clips: [clip()] }))?.file).toBe(
      "photos/bench.jpg",
    );
    expect(
      pictured([entry("2025-01-01-a"), entry("2025-01-02-a", { clips: [clip()] })]).map((one) => one.entry.id),
    ).toEqual(["2025-01-02-a"]);
  });
});

describe("Of clips an edition shows", () => {
  const shownIn = (edition: Edition, ...entries: Entry[]): (readonly string[])[] => {
    const whole = record({ entries });
    return editionOf(whole, reckon(whole), edition).record.entries.map(({ clips, photos }) => [
      ...clips.flatMap(({ file, poster }) => [file, poster]),
      ...photos.map(({ file }) => file),
    ]);
  };
  const day = (at: number, change: Partial<Entry>): Entry => entry(`2025-01-0${at}-a`, change);

  it("those that are for its readers", () => {
    const one = day(1, {
      clips: [clip(), clip({ file: "clips/visitor.mp4", poster: "photos/visitor.jpg", audience: "inspector" })],
    });
    expect(shownIn("public", one)).toEqual([["clips/flex.mp4", "photos/clamps.jpg"]]);
    expect(shownIn("inspector", one)[0]).toHaveLength(4);
  });

  it("none that is marked for others anywhere, nor its poster, were it shown as a photograph too", () => {
    const entries = [day(1, { clips: [clip()] }), day(2, { clips: [clip({ audience: "archive" })] })];
    expect(shownIn("inspector", ...entries)).toEqual([[], []]);
    expect(shownIn("inspector", ...entries, day(3, { photos: [photo("photos/clamps.jpg")] }))).toEqual([[], [], []]);
  });

  it("none whose poster is marked for others as a photograph: it is a frame of the clip", () => {
    expect(
      shownIn("public", day(1, { clips: [clip()] }), day(2, { photos: [photo("photos/clamps.jpg", "inspector")] })),
    ).toEqual([[], []]);
  });
});

describe("How much there is of a clip", () => {
  it("is told in begun seconds and in bytes", () => {
    expect([0.2, 3, 3.04, 3.2, 60, 125].map(playedWords)).toEqual(["1 s", "3 s", "3 s", "4 s", "1 min", "2 min 5 s"]);
    expect([900, 33_157, 3_400_000].map(bytesWords)).toEqual(["900 bytes", "33.2 kB", "3.4 MB"]);
  });
});
