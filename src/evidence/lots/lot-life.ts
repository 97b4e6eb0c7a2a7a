/** The last day on which a lot may be used. */
import { DAY_SECONDS } from "../../facts/quantity/conversions.ts";
import { addDays } from "../../reckoning/time/calendar.ts";
import type { Adhesive, Day, Finish, Lot } from "../../facts/types.ts";
import type { Limit } from "../types/source.ts";
import { FROM_RECORD, sheetOf } from "../sources.ts";

export interface LastDay {
  readonly limit: Limit;
  readonly day: Day;
}

/** The expiry date, else the day received and the sheet's shelf life in whole days; undefined where neither is known. */
export function lastDay(
  lot: Lot,
  product: Pick<Adhesive | Finish, "sheet" | "shelfLife"> | undefined,
): LastDay | undefined {
  if (lot.expiry !== undefined)
    return { day: lot.expiry, limit: { code: "limit/expiry", values: { day: lot.expiry }, from: FROM_RECORD } };
  const shelfLife = product?.shelfLife;
  const day = shelfLife && addDays(lot.received, Math.floor(shelfLife.value / DAY_SECONDS + 1e-9));
  return day === undefined || !shelfLife || !product
    ? undefined
    : {
        day,
        limit: {
          code: "limit/shelf-life",
          values: { life: shelfLife.typed, received: lot.received },
          from: sheetOf(product),
        },
      };
}
