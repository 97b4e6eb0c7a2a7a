/** A first month as a builder would write it, five years of notebooks before it: it reads as it stands, is judged as it should be, and every fact shows where its reader looks. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import exifr from "exifr";
import { parse } from "node-html-parser";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { build, type Built } from "../../src/build.ts";
import { FACTS } from "./facts.ts";

const program = new URL("../..", import.meta.url).pathname;
const record = join(program, "tests/first-month/record");
const folder = mkdtempSync(join(tmpdir(), "scarfline-test-"));
const out = join(folder, "site");
let built: Built;

beforeAll(async () => {
  built = await build(
    {
      content: record,
      out,
      editions: ["public", "inspector", "archive"],
      apart: true,
      today: "2026-03-31",
      cache: join(folder, "cache"),
      program,
    },
    { line: () => undefined, progress: () => undefined },
  );
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const evidence = () => {
  if ("problems" in built) throw new Error(JSON.stringify(built.problems));
  return built.evidence;
};
const words = (edition: string, page: string): string => {
  const main = parse(readFileSync(join(out, edition, `${page}.html`), "utf8")).querySelector("main");
  return (main?.structuredText ?? "").replace(/\s+/g, " ");
};

describe("A first month", () => {
  it("is read without a problem and without a note", () => {
    expect(built.notes).toEqual([]);
    expect("problems" in built ? built.problems : []).toEqual([]);
  });

  it("is judged as it should be", () => {
    const { batches, joints, holdPoints, pieces } = evidence();
    expect(Object.fromEntries([...batches].map(([id, { verdict }]) => [id, verdict]))).toEqual({
      "B-001": "shown",
      "B-002": "rejected",
      "B-003": "thrown away",
      "B-004": "shown",
      "B-005": "shown",
      "B-006": "shown",
    });
    expect(Object.fromEntries([...pieces].map(([id, { verdict }]) => [id, verdict]))).toEqual({
      "B-001/1": "pass",
      "B-001/2": "pass",
      "B-002/1": "fail",
      "B-002/2": "fail",
      "B-004/1": "too early",
      "B-004/2": "pass",
      "B-005/1": "pass",
      "B-006/1": "pass",
      "B-006/2": "pass",
      "B-006/3": "pass",
    });
    expect(Object.fromEntries([...joints].map(([id, { state }]) => [id, state]))).toEqual({
      "FI-J01": "shown",
      "RU-J01": "shown",
      "TP-J01": "shown",
      "TP-J02": "quarantined",
    });
    expect(Object.fromEntries([...holdPoints].map(([id, { state }]) => [id, state]))).toEqual({
      "FI-H1": "passed",
      "RU-H1": "blocked",
      "TP-H1": "blocked",
    });
  });

  it.each(FACTS)("$page tells $fact", ({ edition = "archive", page, says }) => {
    const text = words(edition, page);
    for (const one of says) expect(text).toContain(one);
  });

  it("keeps to itself where its photographs were taken, and what was paid, but in the archive", async () => {
    const photo = join(record, "photos/first-cup.jpg");
    expect(await exifr.gps(photo)).toMatchObject({ latitude: expect.closeTo(55.67, 4) });
    for (const edition of ["public", "inspector"]) {
      const text = words(edition, "entry/2026-03-03-first-cup");
      expect(text).not.toContain("GPS");
      const shown = parse(readFileSync(join(out, edition, "entry/2026-03-03-first-cup.html"), "utf8"));
      const files = shown.querySelectorAll("main img, main a[href*='.jpg'], main a[href*='.webp']");
      const paths = files.flatMap((one) => one.getAttribute("src") ?? one.getAttribute("href") ?? []);
      expect(paths.length).toBeGreaterThan(0);
      for (const path of paths) {
        const file = join(out, edition, "entry", path);
        expect(existsSync(file)).toBe(true);
        expect(await exifr.gps(file).catch(() => undefined)).toBeUndefined();
      }
      expect(existsSync(join(out, edition, "lot/S-1.html")) && words(edition, "lot/S-1")).not.toContain("640.00");
    }
  });
});
