/**
 * The rows of each ledger. Keys are the columns; their units stand in their names. A value that is not noted is null.
 */
import { figureRead } from "../../facts/quantity/ends.ts";
import type { BatchFile, JointFile, PieceFile } from "../../evidence/types.ts";
import type { Component, Moment, Noted, Stage } from "../../facts/types.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import { toldFinding } from "../../words/findings/told.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "../evidence/trace-index.ts";

export type Cell = string | number | readonly string[] | null;
export interface Row {
  readonly [column: string]: Cell;
}

/** One row for each line of hours: `minutes` as reckoned, `typed` as it stands in the record. */
export function hoursRows({ record, nameOf }: Shown): Row[] {
  return record.entries.flatMap((entry) =>
    entry.hours.map((line) => ({
      entry: entry.id,
      day: entry.day,
      person: line.who,
      name: nameOf(line.who),
      task: line.task,
      assembly: line.assembly ?? null,
      minutes: line.minutes,
      typed: line.typed,
      from: line.from ?? null,
      to: line.to ?? null,
      hand: line.hand ?? null,
      where: line.where ?? null,
    })),
  );
}

/** One row for each person of each line of a table from before the record was kept. */
export function earlierRows({ record, nameOf }: Shown): Row[] {
  return record.earlier.flatMap((table) =>
    table.lines.map((line) => ({
      table: table.id,
      span: line.span.typed,
      from: line.span.from,
      to: line.span.to,
      person: line.who,
      name: nameOf(line.who),
      task: line.task,
      assembly: line.assembly ?? null,
      minutes: line.minutes,
      typed: line.typed,
      source: line.source,
    })),
  );
}

export function batchRows(shown: Shown): Row[] {
  return traceIndex(shown)
    .batches.flatMap(({ id }) => shown.evidence.batches.get(id) ?? [])
    .map(batchRow);
}

function batchRow({ batch, verdict, ratio, moistureEstimate, dewPoint, openFor, workingLife }: BatchFile): Row {
  return {
    batch: batch.id,
    entry: batch.entry,
    day: batch.day,
    adhesive: batch.adhesive,
    verdict,
    joints: batch.joints,
    timber_lots: batch.timber,
    pieces: batch.pieces.map(({ id }) => id),
    ...component("resin", batch.resin),
    ...component("hardener", batch.hardener),
    ...quantity("scale", batch.scale?.unit === "m³" ? "m3" : "kg", batch.scale),
    ratio_by: ratio?.by ?? null,
    ratio_hardener_over_resin: ratio?.parts[1] === "hardener" ? ratio.found : null,
    ratio_nominal: ratio?.nominal ?? null,
    ratio_error_share: ratio?.error ?? null,
    ratio_tolerance_share: ratio?.tolerance ?? null,
    ratio_doubt_share: ratio?.doubt ?? null,
    ...moment("mixed", batch.mixed),
    ...moment("closed", batch.closed),
    open_for_s: openFor ?? null,
    working_life_s: workingLife ?? null,
    ...quantity("shop_temperature", "degc", batch.temperature),
    ...quantity("shop_humidity", "share", batch.humidity),
    ...quantity("surface_temperature", "degc", batch.surface),
    ...quantity("wood_moisture", "share", batch.moisture),
    wood_moisture_estimate_share: moistureEstimate ?? null,
    dew_point_degc: dewPoint ?? null,
    ...quantity("wood_temperature", "degc", batch.wood),
    ...component("glue", batch.glue),
    ...component("powder", batch.powder),
    ...component("water", batch.water),
    ratio_water_over_powder: ratio?.parts[1] === "water" ? ratio.found : null,
    ...quantity("waste", batch.waste?.unit === "m³" ? "m3" : "kg", batch.waste),
  };
}

/**
 * Pieces in the order of their batches. Columns of the test are null where it was not broken, or where the edition
 * does not show its test.
 */
export function pieceRows(shown: Shown): Row[] {
  const files = traceIndex(shown).batches.flatMap(({ id }) => shown.evidence.batches.get(id)?.pieces ?? []);
  return files.map((file) => ({ ...pieceRow(shown, file), ...testRow(shown, file) }));
}

function pieceRow(shown: Shown, { piece, verdict, overlapRatio, atMost: revealing }: PieceFile): Row {
  return {
    piece: piece.id,
    batch: piece.batch,
    verdict,
    procedure: piece.procedure,
    form: shown.record.procedures.get(piece.procedure)?.form ?? null,
    lot: piece.lot ?? null,
    trial: piece.trial ?? null,
    preparation: piece.preparation ?? null,
    ...quantity("thickness", "m", piece.thickness),
    ...quantity("width", "m", piece.width),
    ...quantity("overlap", "m", piece.overlap),
    overlap_over_thickness: overlapRatio ?? null,
    revealing_share: revealing ?? null,
    leg_thickness_typed: piece.legs?.map(({ thickness }) => thickness?.typed ?? "").join("; ") ?? null,
    legs: (piece.legs ?? []).map(({ lot }) => (lot === WITHHELD ? "withheld" : lot)),
    scraps: piece.scraps ? "yes" : "no",
    ...moment("glued", piece.glued),
  };
}

function testRow({ nameOf }: Shown, { test, curedFor, cure, stress }: PieceFile): Row {
  return {
    broken_entry: test?.entry ?? null,
    broken_day: test?.day ?? null,
    ...moment("broken", test?.at),
    cured_for_s: curedFor ?? null,
    cure_worth_s: cure.age ?? null,
    cure_worth_at_degc: cure.reference,
    cure_warmth: cure.warmth ?? null,
    least_cure_s: cure.least,
    failure: test?.failure ?? null,
    ...quantity("wood_failure", "share", test?.woodFailure),
    ...quantity("load", "n", test?.load),
    stress_pa: stress ?? null,
    witness: test?.witness === undefined ? null : nameOf(test.witness),
    note: test?.note ?? null,
    judged_by: test?.judgedBy === undefined ? null : nameOf(test.judgedBy),
  };
}

export function jointRows(shown: Shown): Row[] {
  const { holdPointsOf, stagesOf } = traceIndex(shown);
  return [...shown.evidence.joints.values()].map(({ joint, state, batches, superseded, reworks, lots }: JointFile) => ({
    joint: joint.id,
    title: joint.title,
    assembly: joint.assembly,
    state,
    batches,
    superseded_batches: superseded,
    rework_entries: reworks.map(({ entry }) => entry),
    stages: joint.stages ?? null,
    ...stageColumns(stagesOf.get(joint.id) ?? []),
    lots,
    hold_points: holdPointsOf.get(joint.id) ?? [],
    ...quantity("area", "m2", joint.area),
    drawing: joint.drawing ?? null,
    structure: joint.structure ?? null,
  }));
}

/** `1 of 2: B-031 B-032` of each that was said, by day; and the entries that say that it is complete. */
function stageColumns(stages: readonly Stage[]): Row {
  return {
    stages_glued: stages.map(
      ({ day, stage, of, batches }) => `${day} ${stage}${of === undefined ? "" : ` of ${of}`}: ${batches.join(" ")}`,
    ),
    complete_entries: stages.flatMap(({ complete, entry }) => (complete === true ? [entry] : [])),
  };
}

export function findingRows({ evidence, say }: Shown): Row[] {
  return evidence.findings.map((finding) => {
    const { rule, severity, about, sentence, limit, restsOn } = toldFinding(say, finding);
    return {
      rule,
      severity,
      about_kind: about.kind,
      about: about.id,
      sentence,
      limit: limit?.text ?? null,
      limit_source: limit?.from.text ?? null,
      limit_source_known: limit?.from.known ?? null,
      rests_on: restsOn.map(({ kind, id }) => `${kind.replaceAll(" ", "-")}:${id}`),
    };
  });
}

function component(part: string, noted: Component | undefined): Row {
  return {
    [`${part}_lot`]: noted?.lot ?? null,
    [`${part}_typed`]: noted?.mass?.typed ?? noted?.volume?.typed ?? null,
    [`${part}_kg`]: figureRead(noted?.mass) ?? null,
    [`${part}_m3`]: figureRead(noted?.volume) ?? null,
  };
}

/** The figure stands where one was read: a range and an estimate are as typed. */
function quantity(word: string, unit: string, noted: Noted | undefined): Row {
  return { [`${word}_typed`]: noted?.typed ?? null, [`${word}_${unit}`]: figureRead(noted) ?? null };
}

function moment(word: string, noted: Moment | undefined): Row {
  return { [`${word}_typed`]: noted?.typed ?? null, [`${word}_epoch_s`]: noted?.epoch ?? null };
}
