/** One batch in a joint, and what is found of it. */
import { reckon } from "./reckoned.ts";
import type { SaidBatch } from "./reckoned.ts";
import type { Adhesive, Batch } from "../../src/facts/types.ts";
import { adhesive, batch, glued, type Made, test } from "./make.ts";

export function fileOf(change: Partial<Batch> = {}, sheet: Partial<Adhesive> = {}, made: Made = {}): SaidBatch {
  const file = reckon(
    glued([batch("B-1", change)], [test("B-1/1")], { adhesives: [adhesive(sheet)], ...made }),
  ).batches.get("B-1");
  if (!file) throw new Error("no batch");
  return file;
}

export const severities = (file: SaidBatch, rule: string) =>
  file.findings.filter((one) => one.rule === rule).map((one) => one.severity);
export const sentence = (file: SaidBatch, rule: string) => file.findings.find((one) => one.rule === rule)?.sentence;

/** Verdict and severities of one rule after one change. */
export const after = (rule: string, change: Partial<Batch>, sheet?: Partial<Adhesive>, made?: Made) => {
  const file = fileOf(change, sheet, made);
  return [file.verdict, ...severities(file, rule)];
};
