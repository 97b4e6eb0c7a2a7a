/** The rows of the ledgers of cuts, of what was weighed as left and of what should be left of each lot. */
import { allStood } from "../../evidence/lots/fitted.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import { reckonStock } from "../../evidence/lots/stock.ts";
import { UNITS } from "./ledger-measures.ts";
import type { Row } from "./ledger-rows.ts";
import type { Shown } from "../../editions/shown.ts";

export function cutRows({ record }: Shown): Row[] {
  return record.entries.flatMap((entry) =>
    entry.cuts.map(({ day, lot, amount }) => ({
      entry: entry.id,
      day,
      lot,
      unit: UNITS[amount.unit] ?? amount.unit,
      amount_typed: amount.typed,
      amount: amount.value,
    })),
  );
}

export function remainRows({ record }: Shown): Row[] {
  return record.entries.flatMap((entry) =>
    entry.remains.map(({ day, lot, amount }) => ({
      entry: entry.id,
      day,
      lot,
      unit: UNITS[amount.unit] ?? amount.unit,
      left_typed: amount.typed,
      left: amount.value,
    })),
  );
}

/** A row for each part bought in, at each place where it was fitted. */
export function fittedRows({ record }: Shown): Row[] {
  return allStood(record.entries).map(({ fitting, out }) => ({
    entry: fitting.entry,
    day: fitting.day,
    assembly: fitting.assembly,
    where: fitting.where,
    lot: fitting.lot === WITHHELD ? "withheld" : fitting.lot,
    serial: fitting.serial ?? null,
    count: fitting.count,
    replaces: fitting.replaces === WITHHELD ? "withheld" : (fitting.replaces ?? null),
    why: fitting.why ?? null,
    taken_out_day: out?.day ?? null,
    taken_out_entry: out?.entry ?? null,
  }));
}

/**
 * A row for each lot. Where batches took what nobody noted, they stand in a column of their own and what is left is
 * null.
 */
export function stockRows(shown: Shown): Row[] {
  return reckonStock(shown.record, shown.evidence).lots.map(
    ({ lot, unit, received, used, left, unknown, lastDay, recalled }) => {
      const isNoted = received !== undefined || used !== undefined;
      return {
        lot: lot.id,
        title: lot.title,
        material: lot.material,
        received_day: lot.received,
        good_until_day: lastDay ?? null,
        recalled: recalled ? "yes" : "no",
        unit: isNoted ? (UNITS[unit] ?? unit) : null,
        received_typed: lot.amount?.typed ?? null,
        received: received ?? null,
        used: used ?? null,
        used_unknown_batches: unknown,
        left_at_most: left ?? null,
        cost_typed: lot.cost?.typed ?? null,
        cost: lot.cost === undefined ? null : lot.cost.hundredths / 100,
        currency: lot.cost?.currency ?? null,
      };
    },
  );
}
