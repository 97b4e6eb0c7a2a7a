/** The demonstration's record as its own reader reads it; every sum of these tests is their own. */
import type { Batch, Entry, Lot, Record } from "../../src/facts/types.ts";
import type { Noted, Quantity } from "../../src/facts/values.ts";
import { readRecord } from "../../src/record/read.ts";

const read = await readRecord("content", { today: "2026-11-26" });
if ("problems" in read) throw new Error("the demo has problems");
export const demo: Record = read.record;

export const entries: readonly Entry[] = demo.entries;
export const batches: readonly Batch[] = entries.flatMap((entry) => entry.batches);
export const joints = new Map(
  [...demo.assemblies.values()].flatMap((assembly) => assembly.joints).map((joint) => [joint.id, joint]),
);
export const lotOf = (id: string): Lot => {
  const lot = demo.lots.get(id);
  if (lot === undefined) throw new Error(`no lot ${id}`);
  return lot;
};

const proseOf = (body: Entry["body"]): string => body.map(({ markdown }) => markdown).join("\n");
export const prose = (entry: string): string => {
  const found = entries.find(({ id }) => id === entry);
  if (found === undefined) throw new Error(`no entry ${entry}`);
  return proseOf(found.body).replace(/\s+/gu, " ");
};
/** What was noted as one figure. */
export function figure(noted: Noted | Quantity | undefined): number | undefined {
  if (noted === undefined) return undefined;
  if (!("value" in noted)) throw new Error(`${noted.typed}: not one figure`);
  return noted.value;
}

/** What went into a cup of one part, kg: as weighed, or by its volume and the sheet's density. */
export function massOf(batch: Batch, part: "resin" | "hardener"): number {
  const noted = batch[part];
  const density = demo.adhesives.get(batch.adhesive)?.density?.[part]?.value ?? Number.NaN;
  const mass = figure(noted?.mass);
  return noted === undefined ? 0 : (mass ?? (figure(noted.volume) ?? Number.NaN) * density);
}
