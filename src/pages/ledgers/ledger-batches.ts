/** The ledger of batches. */
import type { AdhesivePart } from "../../facts/build/adhesive-kind.ts";
import type { BatchFile } from "../../evidence/types.ts";
import { figureRead } from "../../facts/quantity/ends.ts";
import type { Component, Noted } from "../../facts/types.ts";
import { traceIndex } from "../evidence/trace-index.ts";
import { type Column, figure, type Ledger, ledger, moment, quantity, told, typed } from "./column.ts";

type Part = Exclude<AdhesivePart, "water">;

function lotOf(part: Part): Column<BatchFile> {
  return typed(`${part}_lot`, `entry: batches[].${part}.lot`, ({ batch }) => batch[part]?.lot);
}

/** What was typed, and its figure as a mass or as a volume. */
function amount(part: AdhesivePart): Column<BatchFile>[] {
  const of = ({ batch }: BatchFile): Component | undefined => batch[part];
  return [
    told(`${part}_typed`, "How much, as typed.", (file) => of(file)?.mass?.typed ?? of(file)?.volume?.typed),
    figure(`${part}_kg`, "How much, where it was weighed.", (file) => figureRead(of(file)?.mass)),
    figure(`${part}_m3`, "How much, where it was measured by volume.", (file) => figureRead(of(file)?.volume)),
  ];
}

/** What is a mass in one batch and a volume in another. */
function either(word: "scale" | "waste"): Column<BatchFile>[] {
  const inUnit = (noted: Noted | undefined, unit: string): number | undefined =>
    noted?.unit === unit ? figureRead(noted) : undefined;
  return [
    typed(`${word}_typed`, `entry: batches[].${word}`, ({ batch }) => batch[word]?.typed),
    figure(`${word}_kg`, `The figure of ${word}_typed, where that is a mass.`, ({ batch }) =>
      inUnit(batch[word], "kg"),
    ),
    figure(`${word}_m3`, `The figure of ${word}_typed, where that is a volume.`, ({ batch }) =>
      inUnit(batch[word], "m³"),
    ),
  ];
}

const RATIO: readonly Column<BatchFile>[] = [
  told("ratio_by", "Whether the ratio was reckoned by mass or by volume.", ({ ratio }) => ratio?.by),
  figure(
    "ratio_hardener_over_resin",
    "Hardener over resin, as mixed.",
    ({ ratio }) => (ratio?.parts[1] === "hardener" ? ratio.found : undefined),
    "1",
  ),
  figure("ratio_nominal", "The same by the data sheet.", ({ ratio }) => ratio?.nominal, "1"),
  figure("ratio_error_share", "As mixed over the data sheet’s, less one.", ({ ratio }) => ratio?.error),
  figure("ratio_tolerance_share", "How far the data sheet lets it be off.", ({ ratio }) => ratio?.tolerance),
  figure("ratio_doubt_share", "How far it may be off by the steps of the scale.", ({ ratio }) => ratio?.doubt),
];

const CLIMATE: readonly Column<BatchFile>[] = [
  ...quantity<BatchFile>(
    "shop_temperature",
    "degc",
    "entry: batches[].shop.temperature",
    ({ batch }) => batch.temperature,
  ),
  ...quantity<BatchFile>("shop_humidity", "share", "entry: batches[].shop.humidity", ({ batch }) => batch.humidity),
  ...quantity<BatchFile>("surface_temperature", "degc", "entry: batches[].shop.surface", ({ batch }) => batch.surface),
  ...quantity<BatchFile>("wood_moisture", "share", "entry: batches[].moisture", ({ batch }) => batch.moisture),
  figure(
    "wood_moisture_estimate_share",
    "Moisture that wood comes to in the noted air, of its dry mass.",
    ({ moistureEstimate }) => moistureEstimate,
  ),
  figure("dew_point_degc", "Dew point of the noted air.", ({ dewPoint }) => dewPoint),
  ...quantity<BatchFile>("wood_temperature", "degc", "entry: batches[].shop.wood", ({ batch }) => batch.wood),
];

export const BATCHES: Ledger = ledger<BatchFile>(
  "batches",
  "One batch of adhesive, in the order in which they were mixed.",
  (shown) => traceIndex(shown).batches.flatMap(({ id }) => shown.evidence.batches.get(id) ?? []),
  [
    typed("batch", "entry: batches[].id", ({ batch }) => batch.id),
    told("entry", "Id of the entry that notes it.", ({ batch }) => batch.entry),
    told("day", "The day it was mixed.", ({ batch }) => batch.day, "day"),
    typed("adhesive", "entry: batches[].adhesive", ({ batch }) => batch.adhesive),
    told("verdict", "What the record shows of it.", ({ verdict }) => verdict),
    typed("joints", "entry: batches[].joints", ({ batch }) => batch.joints, "ids"),
    typed("timber_lots", "entry: batches[].timber", ({ batch }) => batch.timber, "ids"),
    told("pieces", "Its test pieces.", ({ batch }) => batch.pieces.map(({ id }) => id), "ids"),
    lotOf("resin"),
    ...amount("resin"),
    lotOf("hardener"),
    ...amount("hardener"),
    ...either("scale"),
    ...RATIO,
    ...moment<BatchFile>("mixed", "entry: batches[].mixed", ({ batch }) => batch.mixed),
    ...moment<BatchFile>("closed", "entry: batches[].closed", ({ batch }) => batch.closed),
    figure("open_for_s", "From mixing to closing.", ({ openFor }) => openFor),
    figure(
      "working_life_s",
      "Working life that the data sheet gives at least for that warmth and mass.",
      ({ workingLife }) => workingLife,
    ),
    ...CLIMATE,
    lotOf("glue"),
    ...amount("glue"),
    lotOf("powder"),
    ...amount("powder"),
    told("water_lot", "Always empty: water comes in no lot.", () => null),
    ...amount("water"),
    figure(
      "ratio_water_over_powder",
      "Water over powder, as mixed.",
      ({ ratio }) => (ratio?.parts[1] === "water" ? ratio.found : undefined),
      "1",
    ),
    ...either("waste"),
  ],
  "batch",
);
