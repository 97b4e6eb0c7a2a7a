/** Whether the lots of a coat are known, in date and not recalled. */
import type { Lot } from "../../facts/types.ts";
import { entryRef, lotRef } from "../batch/case.ts";
import { lastDay } from "../lots/lot-life.ts";
import { lookUp } from "../record-index.ts";
import type { Finding } from "../types.ts";
import type { CoatCase } from "./case.ts";

export function lotsRule(c: CoatCase): Finding[] {
  const { coat, finish, index, find } = c;
  const { lots } = coat;
  if (lots.length === 0) return [find("coat-lots/not-noted", "unproven", { finish: finish.title })];
  const known = lots.map((id) => lookUp(index.record.lots, id));
  const recalls = lots.flatMap((id) => index.recalls.get(id) ?? []);
  return [
    find("coat-lots/noted", "meets", { lots }, { alsoOn: lots.map(lotRef) }),
    ...known.map((lot) => inDate(c, lot)),
    ...recalls.map(({ lot, day, why, entry }) =>
      find("coat-lots/recalled", "rejects", { lot, day, why }, { alsoOn: [lotRef(lot), entryRef(entry)] }),
    ),
  ];
}

function inDate({ coat, finish, find }: CoatCase, lot: Lot): Finding {
  const last = lastDay(lot, finish);
  const alsoOn = [lotRef(lot.id)];
  if (!last) return find("coat-lots/no-date", "unproven", { lot: lot.id }, { alsoOn });
  const values = { lot: lot.id, used: coat.day, until: last.day };
  const beside = { limit: last.limit, alsoOn };
  return coat.day <= last.day
    ? find("coat-lots/good", "meets", values, beside)
    : find("coat-lots/past", "rejects", values, beside);
}
