/** What the page on stock says. */
import { LOSS, LOSS_SOURCE, reckonStock, SOON } from "../../evidence/lots/stock.ts";
import type { AdhesiveNeed, LotStock, Part, Stock } from "../../evidence/types/stock.ts";
import { toldFinding, type ToldFinding } from "../../words/findings/told.ts";
import { atMost } from "../../reckoning/compare.ts";
import { isLotPart } from "../../facts/build/adhesive-kind.ts";
import type { Lot, Material } from "../../facts/types.ts";
import { type CoatRow, coatRows } from "./coats.ts";
import { type FittedRow, fittedRows } from "./fitted.ts";
import { type Remains, remainsIn } from "./remains.ts";
import type { Shown } from "../../editions/shown.ts";
import { defined } from "../../defined.ts";
import { dateWords } from "../../words/dates.ts";
import { counted, listed } from "../../words/lists.ts";
import { grouped, percent } from "../../words/numbers.ts";
import { inUnits, quantityWords, timberInUnits } from "../../words/quantities.ts";

export interface StockPage {
  readonly adhesives: readonly { readonly title: string; readonly lots: readonly StockRow[] }[];
  readonly others: readonly StockRow[];
  readonly finishes: readonly StockRow[];
  readonly coats: readonly CoatRow[];
  readonly remains: Remains;
  readonly fitted: readonly FittedRow[];
  readonly findings: readonly ToldFinding[];
  /** How much is to be glued yet, in words; and what that asks of each adhesive. */
  readonly ahead: string;
  readonly needs: readonly NeedRow[];
  readonly soon: string;
  /** What lots cost together, in words; none where no cost is shown. */
  readonly cost?: string;
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

interface NeedRow {
  readonly title: string;
  readonly mixed: string;
  readonly parts: string;
}

/** What all lots cost of which that is noted, by currency. */
function costWords({ record }: Shown): string | undefined {
  const lots = [...record.lots.values()];
  const noted = lots.flatMap(({ cost }) => cost ?? []);
  if (noted.length === 0) return undefined;
  const sums = new Map<string, number>();
  for (const { currency, hundredths } of noted) sums.set(currency, (sums.get(currency) ?? 0) + hundredths);
  const told = [...sums].map(([currency, hundredths]) => `${grouped(hundredths / 100, 2)} ${currency}`);
  const without = lots.length - noted.length;
  const rest = without === 0 ? "" : ` Of ${counted(without, "lot")} no cost is noted.`;
  return `${counted(noted.length, "lot")} cost ${listed(told)}.${rest}`;
}

/** Lots of these have tables of their own. */
const ELSEWHERE: readonly Material[] = ["part", "finish"];

const stockOf = (shown: Shown): Stock => reckonStock(shown.record, shown.evidence);

/** What is found of the stock of one lot: that more was used of it than came, by what the edition shows. */
export const foundOfLot = (shown: Shown, lot: string): readonly ToldFinding[] =>
  shown.memo
    .once(shown, stockOf)
    .findings.filter(({ about }) => about.kind === "lot" && about.id === lot)
    .map((finding) => toldFinding(shown.say, finding));

export function stockPage(shown: Shown): StockPage {
  const { record } = shown;
  const stock = stockOf(shown);
  const row = (each: LotStock): StockRow => rowOf(shown, each);
  return defined({
    adhesives: [...record.adhesives.values()]
      .map(({ id, title }) => ({
        title,
        lots: stock.lots.filter((each) => isPart(each) && each.lot.adhesive === id).map(row),
      }))
      .filter(({ lots }) => lots.length > 0),
    others: stock.lots.filter((each) => !isPart(each) && !ELSEWHERE.includes(each.lot.material)).map(row),
    finishes: stock.lots.filter(({ lot }) => lot.material === "finish").map((each) => putOn(shown, row(each))),
    coats: coatRows(shown),
    remains: remainsIn(shown),
    fitted: fittedRows(shown),
    findings: stock.findings.map((finding) => toldFinding(shown.say, finding)),
    ahead: aheadWords(shown, stock),
    needs: stock.needs.map((need) => needRow(shown, need)),
    soon: `within ${SOON} days of ${dateWords(record.day)}`,
    cost: costWords(shown),
  });
}

/** How much of it was put on nothing notes. */
function putOn(shown: Shown, row: StockRow): StockRow {
  const coats = coatRows(shown, ({ lots }) => lots.includes(row.lot.id)).length;
  return { ...row, used: coats === 0 ? "in no coat" : `in ${counted(coats, "coat")}; how much is not noted` };
}

function rowOf(shown: Shown, stock: LotStock): StockRow {
  const { lot, unit, received, used, left, lastDay, life, recalled } = stock;
  const { units } = shown.record.aircraft;
  const inUnit = isPart(stock) ? inUnits : timberInUnits;
  return {
    lot,
    received: lot.amount === undefined ? "not noted" : quantityWords(lot.amount, units, inUnit),
    used: usedWords(stock, (value) => inUnit(value, unit, units)),
    left:
      left === undefined
        ? "not known"
        : received !== undefined && used !== undefined && !atMost(used, received)
          ? "nothing, and more was used than came"
          : inUnit(left, unit, units),
    keeps: [recalled ? "recalled" : "", keepsWords(lastDay, life)].filter((words) => words !== "").join("; "),
    urgent: recalled || life === "past" || life === "soon",
  };
}

const isPart = ({ lot }: LotStock): boolean => isLotPart(lot.material);

function usedWords(stock: LotStock, amount: (value: number) => string): string {
  const { used, unknown, batches, cuts } = stock;
  if (used === undefined)
    return batches.length === 0
      ? "in no batch"
      : `in ${counted(batches.length, "batch", "batches")}; how much is not noted`;
  if (cuts.length === 0 && batches.length === 0) return isPart(stock) ? "nothing" : "nothing noted";
  if (unknown.length === 0) return amount(used);
  return isPart(stock)
    ? `${amount(used)} and what ${listed(unknown)} took, which is not noted`
    : `${amount(used)} and, before a cut was noted, what went into ${unknown.length > 3 ? counted(unknown.length, "batch", "batches") : listed(unknown)}`;
}

function keepsWords(lastDay: string | undefined, life: LotStock["life"]): string {
  if (lastDay === undefined) return "";
  if (life === "past") return `was good until ${dateWords(lastDay)}`;
  return life === "soon" ? `only until ${dateWords(lastDay)}` : `until ${dateWords(lastDay)}`;
}

function aheadWords(shown: Shown, { planned, withoutArea, area }: ReturnType<typeof reckonStock>): string {
  if (planned.length + withoutArea.length === 0) return "No joint waits to be glued.";
  const rest =
    withoutArea.length === 0
      ? ""
      : ` ${counted(withoutArea.length, "joint")} more ${withoutArea.length === 1 ? "waits" : "wait"} without an area noted, which nothing here counts.`;
  if (planned.length === 0) return `No joint that waits to be glued has its area noted.${rest}`;
  return `${counted(planned.length, "joint")} with ${inUnits(area, "m²", shown.record.aircraft.units)} of glue line ${planned.length === 1 ? "waits" : "wait"} to be glued.${rest}`;
}

function needRow(shown: Shown, { adhesive, mixed, parts }: AdhesiveNeed): NeedRow {
  const { units } = shown.record.aircraft;
  const mass = (value: number): string => inUnits(value, "kg", units);
  const one = ({ part, needed, usable }: Part): string =>
    `${mass(needed)} of ${part}; ${usable === undefined ? "how much there is cannot be told" : usable >= needed ? `there are ${mass(usable)}` : `there are ${mass(usable)}, ${mass(needed - usable)} too little`}`;
  return {
    title: shown.record.adhesives.get(adhesive)?.title ?? adhesive,
    mixed: mass(mixed),
    parts: (parts ?? []).map((part) => `${one(part)}.`).join(" "),
  };
}

export const LOSS_WORDS = `Area times the sheet’s spread for both faces together, and ${percent(LOSS)} more for what stays in the cup and is squeezed out (${LOSS_SOURCE.known}, this program’s default). Only lots in date and not recalled are counted as there.`;

export const WOOD_WORDS =
  "Used is what entries note as cut. Where a batch was glued with wood of a lot before any cut from it was noted, that wood is not counted, and what is left is not known.";
