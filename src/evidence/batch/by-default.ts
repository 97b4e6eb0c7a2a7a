/** Tells what of a batch was typed nowhere in it: one sentence for each entry that says what was in use. */
import type { Ref } from "../../facts/types.ts";
import { lookUp } from "../record-index.ts";
import type { Finding } from "../types.ts";
import { type BatchCase, entryRef, lotRef } from "./case.ts";

export function byDefaultRule({ batch, index, find }: BatchCase): Finding[] {
  const all = batch.byDefault ?? [];
  return [...new Set(all.map(({ entry }) => entry))].map((from) => {
    const own = all.filter(({ entry }) => entry === from);
    const each = <T>(of: readonly (T | undefined)[]): T[] => [...new Set(of.flatMap((one) => one ?? []))] as T[];
    const pieces = each(own.map(({ piece }) => piece));
    const alsoOn: Ref[] = [
      entryRef(from),
      ...each(own.map(({ lot }) => lot)).map(lotRef),
      ...pieces.map((id) => ({ kind: "piece", id }) as const),
    ];
    const { day } = lookUp(index.entries, from);
    return find("by-default/in-use", "caution", { day, what: each(own.map(({ what }) => what)), pieces }, { alsoOn });
  });
}
