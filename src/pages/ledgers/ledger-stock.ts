/** The ledgers of cuts, of what was weighed as left, of what should be left of each lot, and of parts bought in. */
import { allStood, type Stood } from "../../evidence/lots/fitted.ts";
import { reckonStock } from "../../evidence/lots/stock.ts";
import type { LotStock } from "../../evidence/types/stock.ts";
import type { Cut, Remainder } from "../../facts/types.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import { type Column, figure, type Ledger, ledger, told, typed, UNITS } from "./column.ts";

const IN_UNIT = "see the column unit";

interface InEntry<T> {
  readonly entry: string;
  readonly of: T;
}

/** Columns that any amount of a lot on a day has. */
const onDay = <T extends Cut | Remainder>(): Column<InEntry<T>>[] => [
  told("entry", "Id of the entry that notes it.", ({ entry }) => entry),
  told("day", "The day of that.", ({ of }) => of.day, "day"),
  told("lot", "Id of the lot.", ({ of }) => of.lot),
  told("unit", "The unit of the figure in this row.", ({ of }) => UNITS[of.amount.unit] ?? of.amount.unit),
];

export const CUTS: Ledger = ledger<InEntry<Cut>>(
  "cuts",
  "What was sawn from one lot of timber or plywood on one day.",
  ({ record }) => record.entries.flatMap(({ id, cuts }) => cuts.map((of) => ({ entry: id, of }))),
  [
    ...onDay<Cut>(),
    typed("amount_typed", "entry: cut[].amount", ({ of }) => of.amount.typed),
    figure("amount", "The figure of amount_typed.", ({ of }) => of.amount.value, IN_UNIT),
  ],
);

export const REMAINS: Ledger = ledger<InEntry<Remainder>>(
  "remains",
  "What was weighed as left in one lot of adhesive on one day.",
  ({ record }) => record.entries.flatMap(({ id, remains }) => remains.map((of) => ({ entry: id, of }))),
  [
    ...onDay<Remainder>(),
    typed("left_typed", "entry: remains[].amount", ({ of }) => of.amount.typed),
    figure("left", "The figure of left_typed.", ({ of }) => of.amount.value, IN_UNIT),
  ],
);

function unitOf({ received, used, unit }: LotStock): string | undefined {
  return received === undefined && used === undefined ? undefined : (UNITS[unit] ?? unit);
}

/**
 * A row for each lot. Where batches took what nobody noted, they stand in a column of their own and what is left is
 * empty.
 */
export const STOCK: Ledger = ledger<LotStock>(
  "stock",
  "One lot: what came, what batches took of it or was cut from it, and what is left at most.",
  ({ record, evidence }) => reckonStock(record, evidence).lots,
  [
    told("lot", "Id of the lot: the name of its file.", ({ lot }) => lot.id),
    typed("title", "lot: title", ({ lot }) => lot.title),
    typed("material", "lot: material", ({ lot }) => lot.material),
    typed("received_day", "lot: received", ({ lot }) => lot.received, "day"),
    told("good_until_day", "The last day it may be used, by its tin or its sheet.", ({ lastDay }) => lastDay, "day"),
    told("recalled", "Whether it was recalled.", ({ recalled }) => (recalled ? "yes" : "no"), "yes or no"),
    told("unit", "The unit of the figures in this row.", unitOf),
    typed("received_typed", "lot: amount", ({ lot }) => lot.amount?.typed),
    figure("received", "The figure of received_typed.", ({ received }) => received, IN_UNIT),
    figure("used", "What batches took of it or was cut from it, as far as that is noted.", ({ used }) => used, IN_UNIT),
    told("used_unknown_batches", "Batches that took of it what nobody noted.", ({ unknown }) => unknown, "ids"),
    figure("left_at_most", "What is left at most; empty where that is not known.", ({ left }) => left, IN_UNIT),
    typed("cost_typed", "lot: cost", ({ lot }) => lot.cost?.typed),
    figure(
      "cost",
      "The figure of cost_typed.",
      ({ lot }) => (lot.cost === undefined ? undefined : lot.cost.hundredths / 100),
      "see the column currency",
    ),
    told("currency", "The currency of that, by ISO 4217.", ({ lot }) => lot.cost?.currency),
  ],
  "lot",
);

const orWithheld = (lot: string | undefined): string | undefined => (lot === WITHHELD ? "withheld" : lot);

export const FITTED: Ledger = ledger<Stood>(
  "fitted",
  "One part that was bought in, at one place where it was fitted.",
  ({ record }) => allStood(record.entries),
  [
    told("entry", "Id of the entry that notes it.", ({ fitting }) => fitting.entry),
    told("day", "The day it was fitted.", ({ fitting }) => fitting.day, "day"),
    typed("assembly", "entry: fitted[].assembly", ({ fitting }) => fitting.assembly),
    typed("where", "entry: fitted[].where", ({ fitting }) => fitting.where),
    typed("lot", "entry: fitted[].lot", ({ fitting }) => orWithheld(fitting.lot)),
    typed("serial", "entry: fitted[].serial", ({ fitting }) => fitting.serial),
    typed("count", "entry: fitted[].count", ({ fitting }) => fitting.count, "integer"),
    typed("replaces", "entry: fitted[].replaces", ({ fitting }) => orWithheld(fitting.replaces)),
    typed("why", "entry: fitted[].why", ({ fitting }) => fitting.why),
    told("taken_out_day", "The day it was taken out; empty while it is there.", ({ out }) => out?.day, "day"),
    told("taken_out_entry", "Id of the entry that notes that.", ({ out }) => out?.entry),
  ],
);
