/** The demo's PDFs: nothing lost, the site's own figures, and what whoever holds them on paper needs. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "node-html-parser";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Finding } from "../../src/evidence/types.ts";
import { apart } from "../../src/pages/appendix/sheets.ts";
import { acceptedWords } from "../../src/pages/evidence/evidence-lists.ts";
import { dateShort } from "../../src/words/dates.ts";
import { toldFinding } from "../../src/words/findings/told.ts";
import { type Papers, papersOfRecord } from "./demo.ts";
import { bare, bodiesOf, bookmarksOf, faultsOf, infoOf, oneLine, pagesOf, poppler } from "./pdf.ts";

const folder = mkdtempSync(join(tmpdir(), "scarfline-paper-"));
const pdf = join(folder, "paper/evidence.pdf");
const made: { papers?: Papers; pages: readonly string[]; bodies: readonly string[]; text: string } = {
  pages: [],
  bodies: [],
  text: "",
};

beforeAll(async () => {
  made.papers = await papersOfRecord("content", "archive", folder);
  made.pages = pagesOf(pdf);
  made.bodies = bodiesOf(pdf);
  made.text = bare(made.bodies.join(""));
});
afterAll(() => rmSync(folder, { recursive: true }));

const demo = (): Papers & Omit<typeof made, "papers"> => {
  const { papers, ...rest } = made;
  if (papers === undefined) throw new Error("no papers");
  return { ...papers, ...rest };
};

/** Which of these words do not stand in the PDF. */
const missing = (words: readonly string[]): string[] => words.filter((one) => !demo().text.includes(bare(one)));

const unmet = (findings: readonly Finding[]): Finding[] => findings.filter(({ severity }) => severity !== "meets");

it("The evidence as a PDF takes at most 40 pages", () => {
  expect(demo().pages.length).toBeLessThanOrEqual(40);
});

it("The evidence as a PDF has every batch, piece and joint", () => {
  const { batches, pieces, joints } = demo().shown.evidence;
  expect(batches.size + pieces.size + joints.size).toBeGreaterThan(250);
  expect(missing([...batches.keys()].map((id) => `Batch ${id},`))).toEqual([]);
  expect(missing([...pieces.keys(), ...joints.keys()])).toEqual([]);
  expect(missing([...joints.values()].map(({ joint }) => joint.title))).toEqual([]);
});

it("The evidence as a PDF says every finding of a batch and of a joint that is not met, with its limit, in whole", () => {
  const { shown } = demo();
  const { batches, joints } = shown.evidence;
  const found = [...batches.values(), ...joints.values()].flatMap(({ findings }) => unmet(findings));
  expect(found.length).toBeGreaterThan(150);
  expect(missing(found.map(shown.say))).toEqual([]);
  const told = [...batches.values()].flatMap(({ findings }) =>
    unmet(findings).map((one) => toldFinding(shown.say, one)),
  );
  expect(
    missing(told.flatMap(({ limit }) => (limit === undefined ? [] : [`Limit: ${limit.text}`, limit.from.text]))),
  ).toEqual([]);
});

it("The evidence as a PDF says every finding of a piece that is not met", () => {
  const { shown } = demo();
  const found = [...shown.evidence.pieces.values()].flatMap(({ findings }) => unmet(findings));
  expect(found.length).toBeGreaterThan(20);
  expect(missing(found.map(shown.say))).toEqual([]);
});

it("The evidence as a PDF has every departure, open item, amendment and signature in its own words", () => {
  const { shown } = demo();
  const { record, evidence } = shown;
  const items = [...evidence.departures.values(), ...evidence.openItems.values()];
  expect(missing(items.flatMap(({ id, what }) => [id, what]))).toEqual([]);
  const accepted = [...evidence.departures.values()].filter(({ acceptedBy }) => acceptedBy !== undefined);
  expect(missing(accepted.flatMap((one) => [one.why, acceptedWords(shown, one)]))).toEqual([]);
  const amendments = record.entries.flatMap(({ amendments: all }) => all);
  expect(amendments.length).toBeGreaterThan(2);
  expect(missing(amendments.map(({ why }) => why))).toEqual([]);
  const values = amendments.flatMap(({ changes }) => changes.flatMap(({ was, is }) => [...(was ?? []), ...(is ?? [])]));
  expect(missing(values.filter((part) => typeof part === "string"))).toEqual([]);
  const signed = [...evidence.holdPoints.values()].flatMap(({ inspections }) => inspections);
  expect(signed.length).toBeGreaterThan(1);
  expect(missing(signed.map(({ result, by }) => `${result} by ${shown.nameOf(by)}`))).toEqual([]);
});

it("The evidence as a PDF tells the figures of the site: tallies, ratios, pieces, measurements, sums", () => {
  const { page } = demo();
  const rowsOf = (path: string, table: string): string[] =>
    parse(page(path))
      .querySelectorAll("table")
      .filter((one) => one.querySelector("caption")?.text.startsWith(table) === true)
      .flatMap((one) => one.querySelectorAll("tbody tr"))
      .map((row) =>
        row
          .querySelectorAll("th, td")
          .map((cell) => cell.text)
          .join(""),
      );
  for (const [path, table] of [
    ["measurements.html", "Measurements"],
    ["weight.html", "Parts in the order"],
    ["credit.html", "Tasks that apply"],
    ["climate.html", "Temperature and relative"],
    ["charts.html", "Pieces that passed"],
  ] as const) {
    const rows = rowsOf(path, table);
    expect(rows.length, path).toBeGreaterThan(2);
    expect(missing(rows), path).toEqual([]);
  }
  const tallies = rowsOf("appendix.html", "Joints by state");
  expect(missing(tallies)).toEqual([]);
  const held = [...demo().shown.evidence.joints.values()].filter(({ state }) => state === "shown").length;
  expect(tallies.some((row) => row.startsWith("Jointsshown") && row.endsWith(String(held)))).toBe(true);
});

it("The evidence as a PDF names on every page the record, the edition, the part of it, the day, the seal and the page", () => {
  const { pages } = demo();
  const bad = pages.filter(
    (text, at) =>
      !text.startsWith("Pettichaps Archive edition ") ||
      !text.endsWith(`Record of 20 November 2026 No seal Page ${at + 1} of ${pages.length}`),
  );
  expect(bad).toEqual([]);
  const behind = pages.filter((text) =>
    /^Pettichaps Archive edition 17 What stands behind those batches (?!– \d)/.test(text),
  );
  expect(behind.length).toBeGreaterThan(4);
  expect(behind.filter((text) => !/ · Batch B-\d+, \d+ \w+ 20\d\d/.test(text))).toEqual([]);
});

it("The evidence as a PDF has in its contents the page on which each part begins, and bookmarks for parts, assemblies and batches", () => {
  const { pages, bodies, shown } = demo();
  const parts = [...(bodies[0] ?? "").matchAll(/^(\d+ [A-Z].*?)(?: \.){3,} \u2060?(\d+)$/gm)];
  expect(parts.map(([, title = ""]) => title.split(" ")[0])).toEqual(parts.map((_, at) => String(at + 1)));
  expect(parts.length).toBe(20);
  const wrong = parts.filter(([, title = "", at]) => pages[Number(at) - 1]?.includes(title) !== true);
  expect(wrong.map(([line]) => line)).toEqual([]);
  const bookmarks = bookmarksOf(pdf);
  const batches = [...shown.evidence.batches.keys()].map((id) => `Batch ${id},`);
  expect(batches.filter((words) => !bookmarks.some((one) => one.startsWith(words)))).toEqual([]);
  expect(bookmarks).toContain("2 Hold points and sign-off");
  expect(bookmarks).toContain("Wing › Main spar");
});

it("The evidence as a PDF names for each joint and batch the page it stands on in its index", () => {
  const { pages, shown } = demo();
  const index = pages.slice(-2).join(" ");
  const wrong = [...shown.evidence.joints.keys(), ...shown.evidence.batches.keys()].filter((id) => {
    const at = new RegExp(`${id}[ .]+(\\d+)`).exec(index)?.[1];
    return at === undefined || pages[Number(at) - 1]?.includes(id) !== true;
  });
  expect(wrong).toEqual([]);
});

it("The evidence as a PDF breaks no id over lines, and no table without its head; no heading stands last on a page", () => {
  const { bodies, shown } = demo();
  const { pieces, joints, lots } = shown.evidence;
  expect(bodies.flatMap((body) => body.split("\n")).filter((line) => /\b(?:B|D|O|[A-Z]{2})-$/.test(line))).toEqual([]);
  const rows = [pieces, joints, lots].flatMap((of) => [...of.keys()]);
  const begins = bodies.map((body) => body.trim().split(/\s/)[0] ?? "");
  expect(begins.filter((word) => rows.includes(word))).toEqual([]);
  const headings = bookmarksOf(pdf);
  const last = bodies.map((body) => body.trim().split("\n").at(-1) ?? "");
  expect(last.filter((line) => headings.includes(oneLine(line)))).toEqual([]);
});

it("The evidence as a PDF keeps each block to be signed on one page", () => {
  const lines = [
    "Signed / not signed",
    "Name and authority",
    "Reference of this look",
    "To be closed by, or looked at again",
  ];
  const pages = demo()
    .bodies.map(oneLine)
    .filter((text) => lines.some((line) => text.includes(line)));
  expect(pages.length).toBeGreaterThan(2);
  const counts = pages.map((text) => lines.map((line) => text.split(line).length - 1));
  expect(counts.filter(([first, ...rest]) => rest.some((count) => count !== first))).toEqual([]);
});

it("The evidence as a PDF is sound to qpdf, tagged, and declares no standard that nothing here has checked", () => {
  for (const name of readdirSync(join(folder, "paper"))) {
    const path = join(folder, "paper", name);
    expect(faultsOf(path), name).toBe("");
    expect(infoOf(path).get("Tagged"), name).toBe("yes");
    expect(readFileSync(path, "latin1"), name).not.toMatch(/pdfaid|pdfuaid/);
  }
});

it("The evidence as a PDF embeds the shapes of its letters, which are open, and no others", () => {
  const fonts = poppler("pdffonts", pdf).split("\n").slice(2, -1);
  expect(fonts.length).toBeGreaterThan(1);
  const open = /^\w{6}\+(?:LibertinusSerif|DejaVuSansMono)\S* .* yes yes yes /;
  expect(fonts.filter((line) => !open.test(line))).toEqual([]);
});

it("The evidence as a PDF shows every drawing with its joints, and in the archive the photographs of pieces", () => {
  const { shown, text } = demo();
  const photographs = new Set([...shown.evidence.pieces.values()].flatMap(({ test }) => test?.photo ?? []));
  expect(photographs.size).toBeGreaterThan(3);
  expect(poppler("pdfimages", "-list", pdf).match(/ jpeg /g)?.length).toBeGreaterThanOrEqual(photographs.size);
  const drawn = [...shown.record.assemblies.values()].filter(({ drawing }) => drawing !== undefined);
  expect(drawn.length).toBeGreaterThan(10);
  const marks = drawn.map(({ joints }) =>
    bare(joints.flatMap(({ id, at }) => (at === undefined ? [] : [id.slice(id.lastIndexOf("-") + 1)])).join("")),
  );
  expect(marks.filter((line) => !text.includes(line))).toEqual([]);
});

it("The evidence as a PDF comes with one of each hold point, which has its joints, their batches, what is open and a place to sign", () => {
  const { shown, papersOf } = demo();
  const points = [...shown.evidence.holdPoints.values()];
  expect(papersOf.length).toBe(points.length + 1);
  for (const { holdPoint, joints, needs, state } of points) {
    const text = bare(bodiesOf(join(folder, `paper/hold-point-${holdPoint.id}.pdf`)).join(""));
    const batches = joints
      .flatMap((id) => shown.evidence.joints.get(id)?.batches ?? [])
      .flatMap((id) => shown.evidence.batches.get(id) ?? [])
      .map((file) =>
        apart([file]).rest.length > 0 ? `${file.batch.id} ${dateShort(file.batch.day)}` : `Batch ${file.batch.id},`,
      );
    const words = [
      holdPoint.title,
      ...joints,
      ...batches,
      ...needs.map((need) => (["entry", "assembly"].includes(need.about.kind) ? shown.say(need) : need.about.id)),
    ];
    expect(
      words.filter((one) => !text.includes(bare(one))),
      holdPoint.id,
    ).toEqual([]);
    if (state !== "passed") expect(text).toContain(bare("Signed / not signed"));
  }
});

it("A hold point as a PDF says every finding of its batches and their pieces that is not met, in whole", () => {
  const { shown } = demo();
  const { holdPoints, joints, batches } = shown.evidence;
  for (const { holdPoint, joints: asked } of holdPoints.values()) {
    const text = bare(bodiesOf(join(folder, `paper/hold-point-${holdPoint.id}.pdf`)).join(""));
    const files = asked.flatMap((id) => joints.get(id)?.batches ?? []).flatMap((id) => batches.get(id) ?? []);
    const found = files.flatMap(({ findings, pieces }) =>
      [findings, ...pieces.map((one) => one.findings)].flatMap(unmet),
    );
    expect(found.length, holdPoint.id).toBeGreaterThan(0);
    expect(
      found.map(shown.say).filter((one) => !text.includes(bare(one))),
      holdPoint.id,
    ).toEqual([]);
  }
});

it("Rows of batches that are shown stand in the order they were mixed in", () => {
  const { shown, papersOf } = demo();
  let count = 0;
  const mixed = shown.record.entries.flatMap(({ batches }) => batches.map(({ id }) => id));
  for (const path of papersOf) {
    const text = bodiesOf(join(folder, path)).join("\n");
    const rows = [...text.matchAll(/^(B-\d+) \d+ [A-Z][a-z]{2} 20\d\d /gm)].map(([, id = ""]) => id);
    expect(rows, path).toEqual(mixed.filter((id) => rows.includes(id)));
    count += rows.length;
  }
  expect(count).toBeGreaterThan(80);
});

it("A hold point as a PDF calls no batch without test pieces that has some", () => {
  const { shown } = demo();
  const { holdPoints, joints, batches } = shown.evidence;
  for (const { holdPoint, joints: asked } of holdPoints.values()) {
    const text = bodiesOf(join(folder, `paper/hold-point-${holdPoint.id}.pdf`)).join("\n");
    const ids = new Set(asked.flatMap((id) => joints.get(id)?.batches ?? []));
    const without = [...ids].filter((id) => batches.get(id)?.pieces.length === 0);
    expect(text.match(/No test pieces/g)?.length ?? 0, holdPoint.id).toBeLessThanOrEqual(without.length);
  }
});
