/** Whether the lots are known, in date and not recalled. */
import { count, ended, list } from "../../words/figure.ts";
import type { Lot } from "../../facts/types.ts";
import { lastDay } from "../lots/lot-life.ts";
import type { Finding } from "../types.ts";
import { componentLots, entryRef, lotRef, type BatchCase } from "./case.ts";

export function lotKnown(c: BatchCase): Finding[] {
  const findings = componentLots(c).map(({ material, lot }) => {
    if (!lot) return c.find("lot-known", "unproven", { sentence: `The lot of the ${material} is not noted.` });
    return c.find("lot-known", "meets", { sentence: `The ${material} is of lot ${lot.id}.`, alsoOn: [lotRef(lot.id)] });
  });
  return [...findings, ...timberKnown(c)];
}

function timberKnown({ batch, find }: BatchCase): Finding[] {
  const { timber, joints } = batch;
  if (timber.length > 0) {
    return [
      find("lot-known", "meets", {
        sentence: `The parts are of ${timber.length === 1 ? "lot" : "lots"} ${list(timber)}.`,
        alsoOn: timber.map(lotRef),
      }),
    ];
  }
  if (joints.length === 0) return [];
  return [
    find("lot-known", "caution", {
      sentence: "The timber that was glued is not noted, so a recall of timber would not find this batch.",
    }),
  ];
}

export function lotInDate(c: BatchCase): Finding[] {
  return componentLots(c).flatMap(({ lot }) => (lot ? [inDate(c, lot)] : []));
}

function inDate(c: BatchCase, lot: Lot): Finding {
  const last = lastDay(lot, c.adhesive);
  const alsoOn = [lotRef(lot.id)];
  if (!last)
    return c.find("lot-in-date", "unproven", {
      sentence: `Lot ${lot.id} has no expiry date and the data sheet gives no shelf life: nothing shows that it was in date.`,
      alsoOn,
    });
  const limit = { text: last.text, from: last.from };
  const used = `Lot ${lot.id} was used on ${c.batch.day}`;
  if (c.batch.day <= last.day)
    return c.find("lot-in-date", "meets", { sentence: `${used} and is good until ${last.day}.`, limit, alsoOn });
  return c.find("lot-in-date", "rejects", { sentence: `${used} but was good only until ${last.day}.`, limit, alsoOn });
}

export function lotRecalled(c: BatchCase): Finding[] {
  const recalls = lotsOf(c).flatMap((lot) => c.index.recalls.get(lot) ?? []);
  if (recalls.length === 0) {
    const known = lotsOf(c);
    const sentence = `${known.length === 1 ? "The lot noted is" : `None of the ${count(known.length, "lot")} noted is`}${known.length === 1 ? " not" : ""} recalled.`;
    return known.length === 0 ? [] : [c.find("lot-recalled", "meets", { sentence, alsoOn: known.map(lotRef) })];
  }
  return recalls.map((recall) => {
    const sentence = `Lot ${recall.lot} was recalled on ${recall.day}: ${ended(recall.why)}`;
    return c.find("lot-recalled", "caution", { sentence, alsoOn: [lotRef(recall.lot), entryRef(recall.entry)] });
  });
}

/** Components and timber, each once. */
export function lotsOf({ batch }: Pick<BatchCase, "batch">): string[] {
  return [...new Set([batch.resin?.lot, batch.hardener?.lot, ...batch.timber].filter((id) => id !== undefined))];
}
