/** The builder's own decision that a batch is not to be trusted. */
import type { Finding } from "../types.ts";
import { entryRef, type BatchCase } from "./case.ts";

export function buildersRejection(c: BatchCase): Finding[] {
  return (c.index.rejections.get(c.batch.id) ?? []).map(({ day, why, entry }) =>
    c.find("builders-rejection/rejected", "rejects", { day, why }, { alsoOn: [entryRef(entry)] }),
  );
}
