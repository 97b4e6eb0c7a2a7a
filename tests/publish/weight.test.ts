import { readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { gzipSync } from "node:zlib";
import { parse } from "node-html-parser";
import { describe, expect, it } from "vitest";
import { builtDemo } from "../browser/demo.ts";

const site = builtDemo("public");

const KILOBYTE = 1000;

/** A page and every sheet and script it asks for; photographs and drawings are not counted. */
function filesOf(path: string): Buffer[] {
  const page = readFileSync(join(site.folder, path));
  const root = parse(page.toString());
  const asked = [
    ...root.querySelectorAll("link[rel=stylesheet]").map((link) => link.getAttribute("href")),
    ...root.querySelectorAll("script[src]").map((script) => script.getAttribute("src")),
  ];
  return [page, ...asked.map((file) => readFileSync(join(site.folder, posix.join(posix.dirname(path), file ?? ""))))];
}

const bare = (path: string): number => filesOf(path).reduce((sum, { length }) => sum + length, 0) / KILOBYTE;
/** As any common host sends it. */
const packed = (path: string): number => filesOf(path).reduce((sum, file) => sum + gzipSync(file).length, 0) / KILOBYTE;

const batches = site.pages.filter((path) => path.startsWith("batch/"));
const assemblies = site.pages.filter((path) => path.startsWith("assembly/"));
const beyond = (paths: readonly string[], weigh: (path: string) => number, most: number): string[] =>
  paths.filter((path) => weigh(path) >= most).map((path) => `${path}: ${weigh(path).toFixed(1)} kB`);

describe("Without photographs", () => {
  it("there are pages to weigh, each with a sheet, so that this test cannot pass on nothing", () => {
    expect(batches.length).toBeGreaterThan(40);
    expect(assemblies.length).toBeGreaterThan(10);
    expect([...batches, ...assemblies].filter((path) => filesOf(path).length < 3)).toEqual([]);
    expect(filesOf("index.html")).toHaveLength(1);
  });

  it("home and all batches but the one with most pieces weigh less than 60 kB, though a host pack nothing, and that one less than 75", () => {
    expect(beyond(["index.html", ...batches], bare, 60).length).toBeLessThan(2);
    expect(beyond(["index.html", ...batches], bare, 75)).toEqual([]);
  });

  it("most assemblies weigh less than 62 kB though a host pack nothing, and the one with most in it less than 103 kB", () => {
    expect(beyond(assemblies, bare, 103)).toEqual([]);
    expect(beyond(assemblies, bare, 62).length).toBeLessThan(assemblies.length / 2);
  });

  it("home, every batch and every assembly weigh less than 30 kB as packed by a host", () => {
    expect(beyond(["index.html", ...batches, ...assemblies], packed, 30)).toEqual([]);
  });

  it("home carries its sheets as they are in their files, so that its picture waits for none and shares the line with none", () => {
    const home = parse(readFileSync(join(site.folder, "index.html"), "utf8"));
    expect(home.querySelectorAll("link[rel=stylesheet]")).toEqual([]);
    const sheets = ["style", "story", "home", "print"].map((name) =>
      readFileSync(join(site.folder, `assets/${name}.css`), "utf8"),
    );
    expect(home.querySelector("style")?.textContent).toBe(sheets.join(""));
  });

  it("no page asks for the library of charts before a chart is pointed at", () => {
    expect(site.pages.filter((path) => readFileSync(join(site.folder, path), "utf8").includes("chart.umd"))).toEqual(
      [],
    );
  });
});

describe("The history of a part in the archive", () => {
  const archive = builtDemo("archive");

  it("is there for every assembly and joint, and each page of it weighs less than 100 kB", () => {
    const histories = archive.pages.filter((path) => path.startsWith("history/"));
    const of = (kind: string): number => archive.pages.filter((path) => path.startsWith(`${kind}/`)).length;
    expect(histories.length).toBeGreaterThanOrEqual(of("assembly") + of("joint"));
    const heavy = histories.filter((path) => readFileSync(join(archive.folder, path)).length >= 100 * KILOBYTE);
    expect(heavy).toEqual([]);
  });
});

describe("An assembly with many days", () => {
  it("lists the last of them, and all on a page that it leads to", () => {
    const days = (path: string): string[] =>
      parse(readFileSync(join(site.folder, path), "utf8"))
        .querySelectorAll(".log__title a")
        .map((link) => link.getAttribute("href") ?? "");
    const page = parse(readFileSync(join(site.folder, "assembly/wing-spar.html"), "utf8"));
    const all = days("days/wing-spar.html");
    expect(page.querySelectorAll("#days a").map((link) => link.getAttribute("href"))).toContain(
      "../days/wing-spar.html",
    );
    expect(all.length).toBeGreaterThan(20);
    expect(days("assembly/wing-spar.html")).toEqual(all.slice(-8));
  });
});
