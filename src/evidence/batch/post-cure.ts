/** Whether joints were heated after gluing where the sheet asks that, and test pieces with them and never alone. */
import { atLeast, standing } from "../../reckoning/compare.ts";
import type { PostCure, Ref } from "../../facts/types.ts";
import { closedAtLatest } from "../cure/cure.ts";
import { indexBy, lookUp, type RecordIndex } from "../record-index.ts";
import { sheetOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Finding, PieceFile } from "../types.ts";
import { curedBy, limitOf, mostOfCure } from "./cure-temperature.ts";
import { type BatchCase, entryRef, type GlueCase } from "./case.ts";

const all = ({ record }: RecordIndex): PostCure[] => record.entries.flatMap(({ postCures }) => postCures);
const byJoint = (index: RecordIndex): ReadonlyMap<string, readonly PostCure[]> =>
  indexBy(all(index), ({ joints }) => joints);
const byPiece = (index: RecordIndex): ReadonlyMap<string, readonly PostCure[]> =>
  indexBy(all(index), ({ pieces }) => pieces);

const heatingsOf = ({ index }: GlueCase, { piece }: PieceFile): readonly PostCure[] =>
  index.memo.once(index, byPiece).get(piece.id) ?? [];

/** Heatings of a piece between its gluing and its test. Without a time it may have been broken as its day ended. */
function heatedWhole(c: GlueCase, file: PieceFile): readonly PostCure[] {
  const { piece, test } = file;
  const glued = piece.glued?.epoch ?? c.batch.mixed?.epoch ?? Number.NEGATIVE_INFINITY;
  const broken = test?.at?.epoch ?? Number.POSITIVE_INFINITY;
  return heatingsOf(c, file).filter(({ from, to }) => to.epoch > glued && from.epoch < broken);
}

const isWithJoint = ({ batch }: GlueCase, { joints }: PostCure): boolean =>
  joints.some((joint) => batch.joints.includes(joint));

/** Whether a piece was heated without a joint of its batch, by a sheet that asks no heat: it cured as no joint did. */
const isHeatedAlone = (c: GlueCase, file: PieceFile): boolean =>
  c.adhesive.postCure === undefined && heatedWhole(c, file).some((one) => !isWithJoint(c, one));

/** Whether a piece was heated as its joints were: as the sheet asks, or never without them where it asks nothing. */
export const isHeatedAsJoints = (c: GlueCase, file: PieceFile): boolean =>
  isHeatedAsAsked(c, file) && !isHeatedAlone(c, file);

/**
 * Whether a piece was heated as the sheet asks, with a joint of its batch, once it was glued and before it was broken.
 * Without a time it may have been broken as its day began. Too hot counts whenever it was.
 */
function isHeatedAsAsked(c: GlueCase, file: PieceFile): boolean {
  const asked = c.adhesive.postCure;
  if (asked === undefined) return true;
  const { piece, test } = file;
  const glued = piece.glued?.epoch ?? closedAtLatest(c.index, c.batch);
  const broken = test && (test.at?.epoch ?? lookUp(c.index.entries, test.entry).dayStart);
  const judged = heatingsOf(c, file).map((one) => ({ one, how: howHeated(one, asked) }));
  return (
    !judged.some(({ how }) => how === "too hot") &&
    judged.some(
      ({ one, how }) =>
        how === "done" &&
        one.from.epoch >= glued &&
        (broken === undefined || one.to.epoch <= broken) &&
        isWithJoint(c, one),
    )
  );
}

/** Pieces that were not heated as the joints were are no samples of them; that they are there is said. */
function unheated(c: BatchCase): Finding[] {
  const files = c.pieces.filter((file) => file.piece.trial === undefined && !isHeatedAsJoints(c, file));
  if (files.length === 0) return [];
  const alsoOn: Ref[] = files.flatMap((file) => [
    { kind: "piece", id: file.piece.id },
    ...(file.test ? [entryRef(file.test.entry)] : []),
    ...heatingsOf(c, file).map(({ entry }) => entryRef(entry)),
  ]);
  const code = c.adhesive.postCure === undefined ? "post-cure/pieces-alone" : "post-cure/pieces";
  return [c.find(code, "caution", { pieces: files.map(({ piece }) => piece.id) }, { alsoOn })];
}

/** Each of its joints by itself. Too hot is not mended by another heating; too cool or too short is. */
export function postCureRule(c: BatchCase): Finding[] {
  const { adhesive, batch, index, find } = c;
  const asked = adhesive.postCure;
  if (batch.joints.length === 0) return [];
  if (asked === undefined) return [...batch.joints.flatMap((joint) => heatNotAsked(c, joint)), ...unheated(c)];
  const values = { temperature: asked.temperature.typed, time: asked.time.typed };
  const limit: Limit = { code: "limit/post-cure", values, from: sheetOf(adhesive) };
  const closed = closedAtLatest(index, batch);
  const heatings = index.memo.once(index, byJoint);
  const ofJoints = batch.joints.map((joint) => {
    const heated = (heatings.get(joint) ?? []).filter(({ from }) => from.epoch >= closed);
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
  return [...ofJoints, ...unheated(c)];
}

/**
 * Heat that the sheet asks for nowhere, noted of one joint: while it cured it is held against the sheet's temperatures,
 * and once it had against what cured adhesive may see.
 */
function heatNotAsked(c: BatchCase, joint: string): Finding[] {
  const { adhesive, batch, index, find } = c;
  const [most, service] = [mostOfCure(adhesive), adhesive.service];
  const begun = batch.mixed?.epoch ?? closedAtLatest(index, batch);
  const isAbove = ({ temperature }: PostCure, limit: number | undefined): boolean =>
    limit !== undefined && standing(temperature, { most: limit }) === "above";
  const heatings = (index.memo.once(index, byJoint).get(joint) ?? []).filter(({ to }) => to.epoch > begun);
  return heatings.flatMap((one) => {
    const found = { joint, found: one.temperature.typed, lasted: one.to.epoch - one.from.epoch };
    const alsoOn: readonly Ref[] = [{ kind: "joint", id: joint }, entryRef(one.entry)];
    const asked = adhesive.temperature;
    if (asked && one.from.epoch < curedBy(c, joint) && isAbove(one, most))
      return [
        find("post-cure/while-it-cured", "rejects", { ...found, asked: asked.typed }, { limit: limitOf(c), alsoOn }),
      ];
    if (service === undefined || !isAbove(one, service.value)) return [];
    const limit: Limit = { code: "limit/service", values: { asked: service.typed }, from: sheetOf(adhesive) };
    return [find("post-cure/above-service", "caution", { ...found, asked: service.typed }, { limit, alsoOn })];
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
