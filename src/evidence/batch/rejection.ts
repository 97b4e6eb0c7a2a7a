/** The builder's own decision that a batch is not to be trusted. */
import { ended } from "../../words/figure.ts";
import type { Finding } from "../types.ts";
import { entryRef, type BatchCase } from "./case.ts";

export function buildersRejection(c: BatchCase): Finding[] {
  return (c.index.rejections.get(c.batch.id) ?? []).map((rejection) =>
    c.find("builders-rejection", "rejects", {
      sentence: `Rejected by the builder on ${rejection.day}: ${ended(rejection.why)}`,
      alsoOn: [entryRef(rejection.entry)],
    }),
  );
}
