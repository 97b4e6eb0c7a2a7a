/** Papers of a record so long that its evidence stands in many: made of the sheets alone, which are what Typst is given. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, it } from "vitest";
import { appendixSheet } from "../../layouts/appendix/appendix.tsx";
import { holdPointSheet } from "../../layouts/appendix/hold-point-sheet.tsx";
import { editionOf } from "../../src/editions/edition.ts";
import type { Site } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { apart, sheetsOf } from "../../src/pages/appendix/sheets.ts";
import { layOut } from "../../src/publish/publish.ts";
import { paperOf } from "../../src/publish/paper/papers.ts";
import { findAll, textOf, type Tree, treeOf } from "../../src/publish/paper/tree.ts";
import { openMaker } from "../../src/publish/paper/typst.ts";
import { readRecord } from "../../src/record/read.ts";
import { writeRecord } from "../bench/record.mjs";
import { scratchFolders } from "../publish/scratch.ts";
import { bare, bodiesOf } from "./pdf.ts";

const scratch = scratchFolders();
const ENTRIES = 900;
const made: { site?: Site } = {};

beforeAll(async () => {
  const content = scratch();
  writeRecord(content, ENTRIES);
  const read = await readRecord(content, { today: "2025-01-01" });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  const shown = editionOf(read.record, reckon(read.record), "inspector", undefined);
  made.site = layOut(shown, { pictures: new Map(), documents: new Map(), clips: new Map() }).site;
}, 60_000);

const site = (): Site => made.site ?? expect.unreachable();

interface Sheet {
  readonly trees: readonly Tree[];
  readonly text: string;
}

function sheetOf(id: string): Sheet {
  const file = site().shown.evidence.holdPoints.get(id) ?? expect.unreachable();
  const trees = treeOf(holdPointSheet(site(), file, `paper/${id}.pdf`).body);
  return { trees, text: bare(textOf(trees)) };
}

const filesOf = (id: string) => {
  const { evidence } = site().shown;
  const { joints } = evidence.holdPoints.get(id) ?? expect.unreachable();
  const files = joints.flatMap((one) => evidence.joints.get(one)?.batches ?? []);
  return { joints, batches: [...new Set(files)].flatMap((one) => evidence.batches.get(one) ?? []) };
};

it("A hold point with very many batches that are not shown has every joint and batch, and every finding not met in whole", () => {
  const { joints, batches } = filesOf("P0-H1");
  expect(apart(batches).exceptions.length).toBeGreaterThan(60);
  expect(apart(batches).rest.length).toBeGreaterThan(60);
  const { text } = sheetOf("P0-H1");
  const { say } = site().shown;
  const unmet = batches.flatMap(({ findings, pieces }) =>
    [findings, ...pieces.map((one) => one.findings)].flat().filter(({ severity }) => severity !== "meets"),
  );
  expect(unmet.length).toBeGreaterThan(300);
  const words = [...joints, ...batches.map(({ batch }) => batch.id), ...unmet.map(say)];
  expect(words.filter((one) => !text.includes(bare(one)))).toEqual([]);
});

it("Such a hold point is set as a PDF with all of its joints, and each link of it leads to what stands there", async () => {
  const maker = (await openMaker()) ?? expect.unreachable();
  const file = site().shown.evidence.holdPoints.get("P0-H1") ?? expect.unreachable();
  const { paper, drawn } = paperOf(site(), holdPointSheet(site(), file, "paper/P0-H1.pdf"), () => undefined);
  const pdf = join(scratch(), "long.pdf");
  writeFileSync(pdf, maker.set(paper, drawn));
  const text = bare(bodiesOf(pdf).join(""));
  expect(filesOf("P0-H1").joints.filter((id) => !text.includes(bare(id)))).toEqual([]);
});

it("A sentence told once of many batches names each of them and of their pieces beside it", () => {
  const { trees } = sheetOf("P0-H1");
  const rows = findAll(trees, ({ tag }) => tag === "tr").map((row) => bare(textOf([row])));
  const { batches } = filesOf("P0-H1");
  const said = apart(batches).rest.flatMap(({ batch, findings, pieces }) =>
    [{ id: batch.id, findings }, ...pieces.map((one) => ({ id: one.piece.id, findings: one.findings }))].flatMap(
      (one) => one.findings.filter(({ severity }) => severity !== "meets").map((finding) => ({ id: one.id, finding })),
    ),
  );
  expect(said.length).toBeGreaterThan(60);
  const lost = said.filter(({ id, finding }) => {
    const words = bare(site().shown.say(finding));
    return !rows.some((row) => row.includes(words) && new RegExp(`${id}(?![/\\d])`).test(row.split(words)[1] ?? ""));
  });
  expect(lost).toEqual([]);
});

it("A row of such a hold point names the PDF in which its batch stands in full, which has its joint's assembly", () => {
  const { trees } = sheetOf("P0-H1");
  const rows = findAll(trees, ({ tag }) => tag === "tr").map((row) => textOf([row]));
  const { evidence } = site().shown;
  const { exceptions } = apart(filesOf("P0-H1").batches);
  const wrong = exceptions.filter(({ batch }) => {
    const [joint = ""] = batch.joints;
    const paper = `evidence-${evidence.joints.get(joint)?.joint.assembly}.pdf`;
    return !rows.some((row) => row.startsWith(batch.id) && row.endsWith(paper));
  });
  expect(wrong.map(({ batch }) => batch.id)).toEqual([]);
});

it("A hold point with few batches that are not shown still tells each of them in full", () => {
  const few = [...site().shown.evidence.holdPoints.keys()].find((id) => {
    const count = apart(filesOf(id).batches).exceptions.length;
    return count > 0 && count <= 40;
  });
  const { text } = sheetOf(few ?? expect.unreachable());
  const { exceptions } = apart(filesOf(few ?? "").batches);
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
    const { text } = sheetOf(holdPoint.id);
    expect(needs.filter(({ about }) => !text.includes(bare(about.id)))).toEqual([]);
  }
  const few = points.filter(({ needs }) => needs.length > 0 && needs.length <= 20);
  expect(few.flatMap(({ needs }) => needs).filter(({ about }) => !evidence.includes(about.id))).toEqual([]);
});
