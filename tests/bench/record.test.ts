import { expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { readRecord } from "../../src/record/read.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { writeRecord } from "./record.mjs";

const scratch = scratchFolders();

it("The record that builds are measured on is a good one, of the demonstration's kind, and always the same", async () => {
  const content = scratch();
  writeRecord(content, 120);
  const read = await readRecord(content, { today: "2025-01-01" });
  expect("problems" in read ? read.problems : []).toEqual([]);
  if ("problems" in read) return;
  const { batches, pieces, holdPoints } = reckon(read.record);
  expect({
    entries: read.record.entries.length,
    batches: batches.size,
    pieces: pieces.size,
    holdPoints: holdPoints.size,
  }).toEqual({ entries: 120, batches: 40, pieces: 120, holdPoints: 2 });
  expect(new Set([...batches.values()].map(({ verdict }) => verdict))).toEqual(
    new Set(["shown", "rejected", "pending", "not shown"]),
  );
  const again = scratch();
  writeRecord(again, 120);
  expect(contentOf(again)).toEqual(contentOf(content));
});
