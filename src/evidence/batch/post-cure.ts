/** Whether joints were heated after gluing, where the data sheet asks that. */
import { atLeast, standing } from "../../reckoning/compare.ts";
import type { PostCure, Ref } from "../../facts/types.ts";
import { closedAtLatest } from "../cure/cure.ts";
import { indexBy, type RecordIndex } from "../record-index.ts";
import { sheetOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Finding } from "../types.ts";
import { type BatchCase, entryRef } from "./case.ts";

const byJoint = ({ record }: RecordIndex): ReadonlyMap<string, readonly PostCure[]> =>
  indexBy(
    record.entries.flatMap(({ postCures }) => postCures),
    ({ joints }) => joints,
  );

/** Each of its joints by itself. Too hot is not mended by another heating; too cool or too short is. */
export function postCureRule(c: BatchCase): Finding[] {
  const { adhesive, batch, index, find } = c;
  const asked = adhesive.postCure;
  if (asked === undefined || batch.joints.length === 0) return [];
  const values = { temperature: asked.temperature.typed, time: asked.time.typed };
  const limit: Limit = { code: "limit/post-cure", values, from: sheetOf(adhesive) };
  const closed = closedAtLatest(index, batch);
  const all = index.memo.once(index, byJoint);
  return batch.joints.map((joint) => {
    const heated = (all.get(joint) ?? []).filter(({ from }) => from.epoch >= closed);
    const judged = heated.map((one) => ({ one, how: howHeated(one, asked) }));
    const told = ORDER.flatMap((how) => judged.find((each) => each.how === how) ?? [])[0];
    const ref: Ref = { kind: "joint", id: joint };
    if (told === undefined)
      return find("post-cure/not-noted", "unproven", { joint, ...values }, { limit, alsoOn: [ref] });
    const { one, how } = told;
    const found = { joint, found: one.temperature.typed, lasted: one.to.epoch - one.from.epoch };
    const beside = { limit, alsoOn: [ref, ...heated.map(({ entry }) => entryRef(entry))] };
    if (how === "done") return find("post-cure/done", "meets", found, beside);
    return how === "estimate"
      ? find("post-cure/estimate", "unproven", { ...found, ...values }, beside)
      : find("post-cure/outside", "unproven", { ...found, ...values }, beside);
  });
}

type How = "too hot" | "done" | "estimate" | "too little";
const ORDER: readonly How[] = ["too hot", "done", "estimate", "too little"];

function howHeated({ temperature, from, to }: PostCure, asked: NonNullable<BatchCase["adhesive"]["postCure"]>): How {
  const { most } = asked.temperature;
  if (most !== undefined && standing(temperature, { most }) === "above") return "too hot";
  if (!atLeast(to.epoch - from.epoch, asked.time.value)) return "too little";
  const where = standing(temperature, asked.temperature);
  if (where === "within") return "done";
  return where === "estimate" ? "estimate" : "too little";
}
