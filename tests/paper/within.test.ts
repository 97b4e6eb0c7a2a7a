/** Hold points within each other: each paper tells what no other within tells, and names whatever is not shown or is open. */
import { beforeAll, expect, it } from "vitest";
import { appendixSheet } from "../../layouts/appendix/appendix.tsx";
import type { Site } from "../../src/editions/shown.ts";
import { apart, sheetsOf } from "../../src/pages/appendix/sheets.ts";
import { findAll, textOf, treeOf } from "../../src/publish/paper/tree.ts";
import { toldNeed } from "../../src/words/findings/told.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { filesOf, holdPointOf, longSite, sheetOf, unmetOf } from "./long.ts";
import { bare } from "./pdf.ts";

const scratch = scratchFolders();
const made: { site?: Site } = {};

beforeAll(async () => {
  made.site = await longSite(scratch(), "nested");
}, 60_000);

const site = (): Site => made.site ?? expect.unreachable();

/** A word of an id, and not the beginning of another. */
const names = (text: string, id: string): boolean => new RegExp(`${id}(?![\\d/])`).test(text);

/** Of the rows that send a reader to another paper: what each names, and what stands on that paper. */
function within(id: string): { readonly row: string; readonly text: string }[] {
  return findAll(sheetOf(site(), id).trees, ({ tag }) => tag === "tr").flatMap((tr) => {
    const row = textOf([tr]);
    const point = /hold-point-(?<point>[\w-]+)\.pdf$/.exec(row)?.groups?.point;
    return point === undefined ? [] : [{ row: bare(row), text: sheetOf(site(), point).text }];
  });
}

it("A hold point with very much inside it names every joint and batch that is not shown, on its own paper", () => {
  const { joints, batches } = filesOf(site(), "P0-H1");
  const { exceptions } = apart(batches);
  expect(exceptions.length).toBeGreaterThan(60);
  const { evidence } = site().shown;
  const open = joints.filter((id) => evidence.joints.get(id)?.state !== "shown");
  const { text } = sheetOf(site(), "P0-H1");
  expect([...open, ...exceptions.map(({ batch }) => batch.id)].filter((id) => !names(text, id))).toEqual([]);
});

it("Whatever it needs stands in whole on its own paper, or on that of the hold point beside which it is named", () => {
  const { needs } = holdPointOf(site(), "P0-H1");
  expect(new Set(needs.map(({ about }) => about.kind)).size).toBeGreaterThan(2);
  const { text } = sheetOf(site(), "P0-H1");
  const rows = within("P0-H1");
  expect(rows.length).toBeGreaterThan(7);
  const lost = needs.filter((need) => {
    const { sentence, needs: takes } = toldNeed(site().shown.say, need);
    const isIn = (paper: string): boolean =>
      [sentence, takes].every((words) => paper.toLowerCase().includes(bare(words).toLowerCase()));
    return !(isIn(text) || rows.some((one) => names(one.row, need.about.id) && isIn(one.text)));
  });
  expect(lost).toEqual([]);
});

it("Every joint, and every finding of its batches that is not met, stands on its own paper or on one that it names", () => {
  const { joints, batches } = filesOf(site(), "P0-H1");
  const texts = [sheetOf(site(), "P0-H1").text, ...within("P0-H1").map(({ text }) => text)];
  expect(joints.filter((id) => !texts.some((text) => names(text, id)))).toEqual([]);
  const { say } = site().shown;
  const lost = batches.flatMap((file) =>
    unmetOf([file])
      .map((finding) => bare(say(finding)))
      .filter((words) => !texts.some((text) => names(text, file.batch.id) && text.includes(words))),
  );
  expect(lost).toEqual([]);
});

it("So does every departure and open item of its parts", () => {
  const texts = [sheetOf(site(), "P0-H1").text, ...within("P0-H1").map(({ text }) => text)];
  const { departures, openItems } = site().shown.evidence;
  expect(departures.size).toBeGreaterThan(20);
  expect([...departures.keys(), ...openItems.keys()].filter((id) => !texts.some((text) => names(text, id)))).toEqual(
    [],
  );
});

it("No batch is told in full on its paper and on that of a hold point within", () => {
  const toldIn = (id: string): string[] =>
    findAll(sheetOf(site(), id).trees, ({ attributes }) => /^batch-B-\d+$/.test(String(attributes.id))).map((one) =>
      String(one.attributes.id),
    );
  const outer = toldIn("P0-H1");
  expect(outer.length).toBeGreaterThan(5);
  const inner = [...site().shown.evidence.holdPoints.keys()].filter((id) => id !== "P0-H1").flatMap(toldIn);
  expect(outer.filter((id) => inner.includes(id))).toEqual([]);
});

it("A hold point with few batches that are not shown still tells each of them in full", () => {
  const few = [...site().shown.evidence.holdPoints.keys()].find((id) => {
    const count = apart(filesOf(site(), id).batches).exceptions.length;
    return count > 0 && count <= 40;
  });
  const { text } = sheetOf(site(), few ?? expect.unreachable());
  const { exceptions } = apart(filesOf(site(), few ?? "").batches);
  expect(exceptions.filter(({ batch }) => !text.includes(bare(`Batch ${batch.id},`)))).toEqual([]);
});

it("The evidence of a long record counts what a hold point with many needs asks for, and names the PDF that has each", () => {
  const [first] = sheetsOf(site().shown);
  const evidence = textOf(treeOf(appendixSheet(site(), first ?? expect.unreachable()).body));
  const points = [...site().shown.evidence.holdPoints.values()];
  const many = points.filter(({ needs }) => needs.length > 20);
  expect(many.length).toBeGreaterThan(1);
  for (const { holdPoint, needs } of many) {
    const blocking = needs.filter(({ blocks }) => blocks).length;
    expect(evidence).toContain(
      `To be put right: ${blocking}. Still to be done: ${needs.length - blocking}. Each stands on the page of this hold point, and in its PDF, paper/hold-point-${holdPoint.id}.pdf.`,
    );
    const { text } = sheetOf(site(), holdPoint.id);
    expect(needs.filter(({ about }) => !text.includes(bare(about.id)))).toEqual([]);
  }
  const few = points.filter(({ needs }) => needs.length > 0 && needs.length <= 20);
  expect(few.flatMap(({ needs }) => needs).filter(({ about }) => !evidence.includes(about.id))).toEqual([]);
});
