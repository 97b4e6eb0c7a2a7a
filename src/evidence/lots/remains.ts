/** Whether what was weighed as left in a lot of adhesive is what the batches have left of it. */
import { provenEnds } from "../../facts/quantity/ends.ts";
import { isLotPart, type LotPart, partsNoted } from "../../facts/build/adhesive-kind.ts";
import type { Adhesive, Batch, Component, Lot, Record, Ref, Remainder } from "../../facts/types.ts";
import { atLeast, atMost } from "../../reckoning/compare.ts";
import { finder } from "../finding.ts";
import type { Finding } from "../types.ts";
import { taken } from "./stock.ts";

/** What scrapings, sticks and readings of the scale may explain, as a share of what came: this program's own measure. */
const ALLOWED = 0.05;

export function remainsOf(record: Record, lot: Lot, told: readonly Remainder[], batches: readonly Batch[]): Finding[] {
  const { material } = lot;
  if (!isLotPart(material)) return [];
  const adhesive = record.adhesives.get(lot.adhesive ?? "");
  return told.map((one) => remainder(one, lot, material, adhesive, batches));
}

/** Of the same day nothing says whether it was weighed before or after the cups. */
function remainder(
  one: Remainder,
  lot: Lot,
  part: LotPart,
  adhesive: Adhesive | undefined,
  batches: readonly Batch[],
): Finding {
  const until = batches.filter(({ day }) => day <= one.day);
  const about: Ref = { kind: "lot", id: lot.id };
  const find = finder(about, [
    { kind: "entry", id: one.entry },
    ...until.map(({ id }): Ref => ({ kind: "batch", id })),
  ]);
  const typed = { lot: lot.id, day: one.day, left: one.amount.typed };
  const came = lot.amount;
  const all = sum(until, lot.id, part, adhesive, one.amount.unit);
  const before = sum(
    until.filter(({ day }) => day < one.day),
    lot.id,
    part,
    adhesive,
    one.amount.unit,
  );
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

/** What they took of it, where each of them says one figure and no estimate. */
function sum(
  batches: readonly Batch[],
  lot: string,
  part: LotPart,
  adhesive: Adhesive | undefined,
  unit: string,
): number | undefined {
  const density = adhesive?.density?.[part]?.value;
  const each = batches
    .flatMap((batch) => partsNoted<Component>(batch))
    .filter(({ noted }) => noted.lot === lot)
    .map(({ noted }) => (isOneFigure(noted) ? taken(noted, unit, density) : undefined));
  return each.reduce<number | undefined>(
    (total, one) => (total === undefined || one === undefined ? undefined : total + one),
    0,
  );
}

const isOneFigure = ({ mass, volume }: Component): boolean =>
  [mass, volume].every((noted) => {
    const ends = noted && provenEnds(noted);
    return noted === undefined || (ends !== undefined && ends.least === ends.most);
  });
