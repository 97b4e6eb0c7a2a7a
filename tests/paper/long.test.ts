/** Of a hold point with very much inside it and no other within: made of its sheet alone, which is what Typst is given. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, it } from "vitest";
import { holdPointSheet } from "../../layouts/appendix/hold-point-sheet.tsx";
import type { Site } from "../../src/editions/shown.ts";
import { apart } from "../../src/pages/appendix/sheets.ts";
import { dataOf } from "../../src/publish/paper/blocks.ts";
import { paperOf } from "../../src/publish/paper/papers.ts";
import { findAll, textOf } from "../../src/publish/paper/tree.ts";
import { openMaker } from "../../src/publish/paper/typst.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { filesOf, holdPointOf, longSite, sheetOf, unmetOf } from "./long.ts";
import { bare, bodiesOf } from "./pdf.ts";

const scratch = scratchFolders();
const made: { site?: Site } = {};

beforeAll(async () => {
  made.site = await longSite(scratch(), "alone");
}, 60_000);

const site = (): Site => made.site ?? expect.unreachable();

it("A hold point with very many batches that are not shown has every joint and batch, and every finding not met in whole", () => {
  const { joints, batches } = filesOf(site(), "P0-H1");
  expect(apart(batches).exceptions.length).toBeGreaterThan(60);
  expect(apart(batches).rest.length).toBeGreaterThan(60);
  const { text } = sheetOf(site(), "P0-H1");
  const { say } = site().shown;
  const unmet = unmetOf(batches);
  expect(unmet.length).toBeGreaterThan(300);
  const words = [...joints, ...batches.map(({ batch }) => batch.id), ...unmet.map(say)];
  expect(words.filter((one) => !text.includes(bare(one)))).toEqual([]);
});

it("Such a hold point is set as a PDF with all of its joints, and each link of it leads to what stands there", async () => {
  const maker = (await openMaker()) ?? expect.unreachable();
  const file = holdPointOf(site(), "P0-H1");
  const { paper, drawn } = paperOf(site(), holdPointSheet(site(), file, "paper/P0-H1.pdf"), () => undefined);
  const pdf = join(scratch(), "long.pdf");
  writeFileSync(pdf, await maker.set(dataOf(paper), drawn));
  const text = bare(bodiesOf(pdf).join(""));
  expect(filesOf(site(), "P0-H1").joints.filter((id) => !text.includes(bare(id)))).toEqual([]);
});

it("A sentence told once of many batches names each of them and of their pieces beside it", () => {
  const { trees } = sheetOf(site(), "P0-H1");
  const rows = findAll(trees, ({ tag }) => tag === "tr").map((row) => bare(textOf([row])));
  const { batches } = filesOf(site(), "P0-H1");
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
  const { trees } = sheetOf(site(), "P0-H1");
  const rows = findAll(trees, ({ tag }) => tag === "tr").map((row) => textOf([row]));
  const { evidence } = site().shown;
  const { exceptions } = apart(filesOf(site(), "P0-H1").batches);
  const wrong = exceptions.filter(({ batch }) => {
    const [joint = ""] = batch.joints;
    const paper = `evidence-${evidence.joints.get(joint)?.joint.assembly}.pdf`;
    return !rows.some((row) => row.startsWith(batch.id) && row.endsWith(paper));
  });
  expect(wrong.map(({ batch }) => batch.id)).toEqual([]);
});
