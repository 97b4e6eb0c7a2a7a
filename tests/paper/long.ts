/** A record so long that its evidence stands in many papers, and what the sheet of one of its hold points says. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { holdPointSheet } from "../../layouts/appendix/hold-point-sheet.tsx";
import { editionOf } from "../../src/editions/edition.ts";
import type { Site } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { BatchFile, HoldPointFile } from "../../src/evidence/types.ts";
import { layOut } from "../../src/publish/publish.ts";
import { textOf, type Tree, treeOf } from "../../src/publish/paper/tree.ts";
import { readRecord } from "../../src/record/read.ts";
import { writeRecord } from "../bench/record.mjs";
import { bare } from "./pdf.ts";

const ENTRIES = 900;

/** Its hold points lie within each other; `alone` leaves the outermost alone. */
export async function longSite(content: string, of: "nested" | "alone"): Promise<Site> {
  writeRecord(content, ENTRIES);
  if (of === "alone") dropInner(join(content, "assemblies"));
  const read = await readRecord(content, { today: "2099-01-01" });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  const shown = editionOf(read.record, reckon(read.record), "inspector", undefined);
  return layOut(shown, { pictures: new Map(), documents: new Map(), clips: new Map() }).site;
}

function dropInner(folder: string): void {
  for (const name of readdirSync(folder).filter((one) => one !== "part-0.md")) {
    const text = readFileSync(join(folder, name), "utf8");
    writeFileSync(join(folder, name), text.replace(/^hold_points:\n.*\n/m, ""));
  }
}

export const holdPointOf = ({ shown }: Site, id: string): HoldPointFile =>
  shown.evidence.holdPoints.get(id) ?? expect.unreachable();

export function sheetOf(site: Site, id: string): { readonly trees: readonly Tree[]; readonly text: string } {
  const trees = treeOf(holdPointSheet(site, holdPointOf(site, id), `paper/hold-point-${id}.pdf`).body);
  return { trees, text: bare(textOf(trees)) };
}

/** Its joints, and the batches in them. */
export function filesOf(site: Site, id: string): { readonly joints: readonly string[]; readonly batches: BatchFile[] } {
  const { evidence } = site.shown;
  const { joints } = holdPointOf(site, id);
  const files = joints.flatMap((one) => evidence.joints.get(one)?.batches ?? []);
  return { joints, batches: [...new Set(files)].flatMap((one) => evidence.batches.get(one) ?? []) };
}

/** What is not met of batches and their pieces. */
export const unmetOf = (batches: readonly BatchFile[]): BatchFile["findings"] =>
  batches.flatMap(({ findings, pieces }) =>
    [findings, ...pieces.map((one) => one.findings)].flat().filter(({ severity }) => severity !== "meets"),
  );
