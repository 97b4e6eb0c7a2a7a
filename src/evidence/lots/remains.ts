/** Whether what was weighed as left in a lot of adhesive is what the batches have left of it. */
import { provenEnds } from "../../facts/quantity/ends.ts";
import { isLotPart, partsNoted } from "../../facts/build/adhesive-kind.ts";
import type { Batch, Component, Lot, Record, Ref, Remainder } from "../../facts/types.ts";
import { atLeast, atMost } from "../../reckoning/compare.ts";
import { finder } from "../finding.ts";
import type { Finding } from "../types.ts";
import { taken } from "./stock.ts";

/** What scrapings, sticks and readings of the scale may explain, as a share of what came: this program's own measure. */
const ALLOWED = 0.05;

export function remainsOf(record: Record, lot: Lot, told: readonly Remainder[], batches: readonly Batch[]): Finding[] {
  const { material } = lot;
  if (!isLotPart(material) || told.length === 0) return [];
  const density = record.adhesives.get(lot.adhesive ?? "")?.density?.[material]?.value;
  const drawn = drawnBy(batches, (noted) => (noted.lot === lot.id ? drawnOf(noted, lot, density) : 0));
  return told.map((one) => remainder(one, lot, drawn));
}

/** A batch, and what it and all before it took of the lot; undefined where one of them does not say one figure. */
interface Drawn {
  readonly batch: Batch;
  readonly sum: number | undefined;
}

/** By their days. */
function drawnBy(batches: readonly Batch[], amountOf: (noted: Component) => number | undefined): readonly Drawn[] {
  let sum: number | undefined = 0;
  return [...batches]
    .sort((a, b) => a.day.localeCompare(b.day, "en"))
    .map((batch) => {
      for (const { noted } of partsNoted<Component>(batch)) sum = plus(sum, amountOf(noted));
      return { batch, sum };
    });
}

const plus = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a + b;

function drawnOf(noted: Component, { amount }: Lot, density: number | undefined): number | undefined {
  return amount && isOneFigure(noted) ? taken(noted, amount.unit, density) : undefined;
}

/** Of the same day nothing says whether it was weighed before or after the cups. */
function remainder(one: Remainder, { id, amount: came }: Lot, drawn: readonly Drawn[]): Finding {
  const until = drawn.slice(0, drawn.findLastIndex(({ batch }) => batch.day <= one.day) + 1);
  const find = finder({ kind: "lot", id }, [
    { kind: "entry", id: one.entry },
    ...until.map(({ batch }): Ref => ({ kind: "batch", id: batch.id })),
  ]);
  const typed = { lot: id, day: one.day, left: one.amount.typed };
  const none: Pick<Drawn, "sum"> = { sum: 0 };
  const { sum: all } = until.at(-1) ?? none;
  const { sum: before } = until.findLast(({ batch }) => batch.day < one.day) ?? none;
  if (came === undefined || came.unit !== one.amount.unit || all === undefined || before === undefined)
    return find("stock/left-not-known", "caution", typed);
  const [least, most] = [Math.max(0, came.value - all), Math.max(0, came.value - before)];
  const allowed = came.value * ALLOWED;
  const values = { ...typed, least, most, unit: came.unit };
  const { value } = one.amount;
  if (!atLeast(value, least - allowed)) return find("stock/left-differs", "caution", { ...values, where: "less" });
  if (!atMost(value, most + allowed)) return find("stock/left-differs", "caution", { ...values, where: "more" });
  return find("stock/left-agrees", "meets", values);
}

const isOneFigure = ({ mass, volume }: Component): boolean =>
  [mass, volume].every((noted) => {
    const ends = noted && provenEnds(noted);
    return noted === undefined || (ends !== undefined && ends.least === ends.most);
  });
