/** Words longer than a cell, as they are set. */
import { join } from "node:path";
import { expect, it } from "vitest";
import { appendixSheet } from "../../layouts/appendix/appendix.tsx";
import type { Record } from "../../src/facts/types.ts";
import { sheetsOf } from "../../src/pages/appendix/sheets.ts";
import { dataOf } from "../../src/publish/paper/blocks.ts";
import { paperOf } from "../../src/publish/paper/papers.ts";
import { openMaker } from "../../src/publish/paper/typst.ts";
import { wordsOf } from "../../src/publish/paper/words.ts";
import { exampleRecord, exampleSite } from "../pages/example.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { bare, bodiesOf, poppler } from "./pdf.ts";

const scratch = scratchFolders();

const JOINT = "Höhenleitwerksvorderholmanschluss";
const WHY = "Seitenleitwerksbeplankungsunterseitenverstärkungsleistenverklebungsfugen";
const LOT = `L${"1".repeat(99)}`;

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where each word or piece of one lies on its page, in points. */
const boxesOf = (pdf: string): Box[][] =>
  poppler("pdftotext", "-bbox", pdf, "-")
    .split("<page")
    .slice(1)
    .map((page) =>
      [...page.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)"/g)].map(
        ([, left, top, right, bottom]) => ({
          left: Number(left),
          top: Number(top),
          right: Number(right),
          bottom: Number(bottom),
        }),
      ),
    );

/** One is set over the other, by more than the space that letters of two lines share. */
const isOver = (one: Box, other: Box): boolean =>
  Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1 &&
  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 4;

it("A word longer than its cell is broken in a PDF: it is set over no other and past no edge, and is read whole", async () => {
  const made = exampleRecord();
  const record: Record = {
    ...made,
    lots: new Map([...made.lots].map(([id, lot]) => [id, { ...lot, title: `${lot.title} ${LOT}` }])),
    assemblies: new Map(
      [...made.assemblies].map(([id, one]) => [
        id,
        { ...one, joints: one.joints.map((joint) => ({ ...joint, title: JOINT })) },
      ]),
    ),
    entries: made.entries.map((entry) => ({
      ...entry,
      departures: entry.departures.map((one) => ({ ...one, what: WHY, why: WHY })),
    })),
  };
  const site = exampleSite("archive", record);
  const [sheet] = sheetsOf(site.shown);
  const maker = (await openMaker()) ?? expect.unreachable();
  const { paper, drawn } = paperOf(site, appendixSheet(site, sheet ?? expect.unreachable()), () => undefined);
  const folder = scratch();
  writeAll(folder, { "evidence.pdf": Buffer.from(await maker.set(dataOf(paper), drawn)) });
  const pdf = join(folder, "evidence.pdf");
  const text = bare(bodiesOf(pdf).join(""));
  expect([JOINT, WHY, LOT].filter((word) => !text.includes(word))).toEqual([]);
  const pages = boxesOf(pdf);
  expect(Math.max(...pages.flat().map(({ right }) => right))).toBeLessThan(595.3 - 36);
  const over = pages.flatMap((boxes) =>
    boxes.filter((one, at) => boxes.slice(at + 1).some((other) => isOver(one, other))),
  );
  expect(over).toEqual([]);
});

it("Only what no line is broken within is taken in pieces, and no sign that turns the direction of writing is in one", () => {
  expect(wordsOf("Holm- und Rippenanschlüsse, B-001")).toEqual(["Holm- und Rippenanschlüsse, B-001"]);
  expect(wordsOf("Vorderholmanschluss-Verklebung links")).toEqual(["Vorderholmanschluss-Verklebung links"]);
  expect(wordsOf(`x ${JOINT}.`)).toEqual([
    "x ",
    { i: "id", t: "Höhenleitwer" },
    { i: "id", t: "ksvorderholm" },
    { i: "id", t: "anschluss." },
  ]);
  expect(wordsOf(`\u202e${"e\u0301".repeat(26)}`)).toEqual([
    "\u2068\u202e",
    ...[12, 12, 2].map((letters) => ({ i: "id", t: "e\u0301".repeat(letters) })),
    "\u202c\u2069",
  ]);
});
