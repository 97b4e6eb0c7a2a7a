/** What the page on stock says. */
import { LOSS, LOSS_SOURCE, reckonStock, SOON } from "../evidence/stock.ts";
import type { AdhesiveNeed, LotStock, Part } from "../evidence/types/stock.ts";
import type { Finding } from "../evidence/types.ts";
import type { Lot } from "../record/types.ts";
import type { Shown } from "./shown.ts";
import { counted, dateWords, inUnits, listed, percent, quantityWords } from "./words.ts";

export interface StockPage {
  readonly adhesives: readonly { readonly title: string; readonly lots: readonly StockRow[] }[];
  readonly others: readonly StockRow[];
  readonly findings: readonly Finding[];
  /** How much is to be glued yet, in words; and what that asks of each adhesive. */
  readonly ahead: string;
  readonly needs: readonly NeedRow[];
  readonly soon: string;
}

export interface StockRow {
  readonly lot: Lot;
  readonly received: string;
  readonly used: string;
  readonly left: string;
  readonly keeps: string;
  /** Something to act on: past its date, soon past it, recalled. */
  readonly urgent: boolean;
}

export interface NeedRow {
  readonly title: string;
  readonly mixed: string;
  readonly parts: string;
}

export function stockPage(shown: Shown): StockPage {
  const { record } = shown;
  const stock = reckonStock(record, shown.evidence);
  const isPart = ({ lot }: LotStock): boolean => lot.material === "resin" || lot.material === "hardener";
  const row = (each: LotStock): StockRow => rowOf(shown, each);
  return {
    adhesives: [...record.adhesives.values()].map(({ id, title }) => ({ title, lots: stock.lots.filter((each) => isPart(each) && each.lot.adhesive === id).map(row) })).filter(({ lots }) => lots.length > 0),
    others: stock.lots.filter((each) => !isPart(each)).map(row),
    findings: stock.findings,
    ahead: aheadWords(shown, stock),
    needs: stock.needs.map((need) => needRow(shown, need)),
    soon: `within ${SOON} days of ${dateWords(record.day)}`,
  };
}

function rowOf(shown: Shown, { lot, unit, received, used, left, batches, unknown, lastDay, life, recalled }: LotStock): StockRow {
  const { units } = shown.record.aircraft;
  const amount = (value: number): string => inUnits(value, unit, units);
  const some = unknown.length > 0 ? ` and what ${listed(unknown)} took, which is not noted` : "";
  return {
    lot,
    received: lot.amount === undefined ? "not noted" : quantityWords(lot.amount, units),
    used: used === undefined ? usedIn(batches.length) : batches.length === 0 ? "nothing" : `${amount(used)}${some}`,
    left: left === undefined ? "not known" : received !== undefined && used !== undefined && used > received && left === 0 ? "nothing, and more was used than came" : amount(left),
    keeps: [recalled ? "recalled" : "", keepsWords(lastDay, life)].filter((words) => words !== "").join("; "),
    urgent: recalled || life === "past" || life === "soon",
  };
}

const usedIn = (batches: number): string => (batches === 0 ? "in no batch" : `in ${counted(batches, "batch", "batches")}; how much is not noted`);

function keepsWords(lastDay: string | undefined, life: LotStock["life"]): string {
  if (lastDay === undefined) return "";
  if (life === "past") return `was good until ${dateWords(lastDay)}`;
  return life === "soon" ? `only until ${dateWords(lastDay)}` : `until ${dateWords(lastDay)}`;
}

function aheadWords(shown: Shown, { planned, withoutArea, area }: ReturnType<typeof reckonStock>): string {
  if (planned.length + withoutArea.length === 0) return "No joint waits to be glued.";
  const rest = withoutArea.length === 0 ? "" : ` ${counted(withoutArea.length, "joint")} more ${withoutArea.length === 1 ? "waits" : "wait"} without an area noted, which nothing here counts.`;
  if (planned.length === 0) return `No joint that waits to be glued has its area noted.${rest}`;
  return `${counted(planned.length, "joint")} with ${inUnits(area, "m²", shown.record.aircraft.units)} of glue line ${planned.length === 1 ? "waits" : "wait"} to be glued.${rest}`;
}

function needRow(shown: Shown, { adhesive, mixed, parts }: AdhesiveNeed): NeedRow {
  const { units } = shown.record.aircraft;
  const mass = (value: number): string => inUnits(value, "kg", units);
  const one = (name: string, { needed, usable }: Part): string =>
    `${mass(needed)} of ${name}; ${usable === undefined ? "how much there is cannot be told" : usable >= needed ? `there are ${mass(usable)}` : `there are ${mass(usable)}, ${mass(needed - usable)} too little`}`;
  return {
    title: shown.record.adhesives.get(adhesive)?.title ?? adhesive,
    mixed: mass(mixed),
    parts: parts === undefined ? "" : `${one("resin", parts.resin)}. ${one("hardener", parts.hardener)}.`,
  };
}

export const LOSS_WORDS = `Area times the sheet’s spread for both faces together, and ${percent(LOSS)} more for what stays in the cup and is squeezed out (${LOSS_SOURCE.known}, this program’s default). Only lots in date and not recalled are counted as there.`;
