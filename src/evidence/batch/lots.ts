/** Whether the lots are known, in date and not recalled. */
import { partsNoted } from "../../facts/build/adhesive-kind.ts";
import type { Component, Lot } from "../../facts/types.ts";
import { gradeOf } from "../lots/grade.ts";
import { lastDay } from "../lots/lot-life.ts";
import { lookUp } from "../record-index.ts";
import type { Finding } from "../types.ts";
import { componentLots, entryRef, lotRef, type BatchCase } from "./case.ts";

export function lotKnown(c: BatchCase): Finding[] {
  const findings = componentLots(c).map(({ material, lot }) => {
    if (!lot) return c.find("lot-known/not-noted", "unproven", { material });
    return c.find("lot-known/noted", "meets", { material, lot: lot.id }, { alsoOn: [lotRef(lot.id)] });
  });
  return [...findings, ...timberKnown(c)];
}

function timberKnown({ batch, find }: BatchCase): Finding[] {
  const { timber, joints } = batch;
  if (timber.length > 0) return [find("lot-known/timber", "meets", { lots: timber }, { alsoOn: timber.map(lotRef) })];
  return joints.length === 0 ? [] : [find("lot-known/no-timber", "caution", {})];
}

export function lotInDate(c: BatchCase): Finding[] {
  return componentLots(c).flatMap(({ lot }) => (lot ? [inDate(c, lot)] : []));
}

function inDate(c: BatchCase, lot: Lot): Finding {
  const last = lastDay(lot, c.adhesive);
  const alsoOn = [lotRef(lot.id)];
  if (!last) return c.find("lot-in-date/no-date", "unproven", { lot: lot.id }, { alsoOn });
  const values = { lot: lot.id, used: c.batch.day, until: last.day };
  const beside = { limit: last.limit, alsoOn };
  return c.batch.day <= last.day
    ? c.find("lot-in-date/good", "meets", values, beside)
    : c.find("lot-in-date/past", "rejects", values, beside);
}

export function lotRecalled(c: BatchCase): Finding[] {
  const known = lotsOf(c);
  const recalls = known.flatMap((lot) => c.index.recalls.get(lot) ?? []);
  if (recalls.length === 0 && known.length > 0)
    return [c.find("lot-recalled/none", "meets", { lots: known.length }, { alsoOn: known.map(lotRef) })];
  return recalls.map(({ lot, day, why, entry }) =>
    c.find("lot-recalled/recalled", "caution", { lot, day, why }, { alsoOn: [lotRef(lot), entryRef(entry)] }),
  );
}

export function timberGrade(c: BatchCase): Finding[] {
  if (c.batch.joints.length === 0) return [];
  const lots = c.batch.timber.map((id) => lookUp(c.index.record.lots, id));
  return lots.flatMap((lot) => gradeOf(lot, c.find));
}

/** Components and timber, each once. */
export function lotsOf({ batch }: Pick<BatchCase, "batch">): string[] {
  const lots = new Set<string>();
  for (const { noted } of partsNoted<Component>(batch)) if (noted.lot !== undefined) lots.add(noted.lot);
  for (const lot of batch.timber) lots.add(lot);
  return [...lots];
}
