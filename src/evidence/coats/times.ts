/** How long after the coat before it was put on, and whether it has dried. Where no time is noted its whole day counts, by its worse end. */
import { atLeast, atMost } from "../../reckoning/compare.ts";
import type { Quantity } from "../../facts/types.ts";
import { sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { Limit } from "../types/source.ts";
import { type CoatCase, putOn } from "./case.ts";

export function intervalRule(c: CoatCase): Finding[] {
  const { coat, before, finish, index, find } = c;
  if (coat.coat === 1) return [];
  if (before === undefined) return [find("coat-interval/none-before", "unproven", { coat: coat.coat })];
  const [one, other] = [putOn(index, before), putOn(index, coat)];
  const between = { coat: coat.coat, least: other.from - one.to, greatest: other.to - one.from };
  const { after, within } = finish.recoat ?? {};
  const alsoOn = [{ kind: "entry", id: before.entry } as const];
  const limited = (asked: Quantity, code: "limit/recoat-after" | "limit/recoat-within") => {
    const limit: Limit = { code, values: { asked: asked.typed }, from: sheetOf(finish) };
    return { values: { ...between, asked: asked.typed }, beside: { limit, alsoOn } };
  };
  const found: Finding[] = [];
  if (after !== undefined) {
    const { values, beside } = limited(after, "limit/recoat-after");
    if (atLeast(between.least, after.value)) found.push(find("coat-interval/within", "meets", between, beside));
    else if (atLeast(between.greatest, after.value))
      found.push(find("coat-interval/not-known", "unproven", values, beside));
    else found.push(find("coat-interval/too-soon", "rejects", values, beside));
  }
  if (within !== undefined) {
    const { values, beside } = limited(within, "limit/recoat-within");
    if (atMost(between.greatest, within.value)) found.push(find("coat-interval/within", "meets", between, beside));
    else if (atMost(between.least, within.value))
      found.push(find("coat-interval/not-known", "unproven", values, beside));
    else found.push(find("coat-interval/too-late", "rejects", values, beside));
  }
  return found;
}

/** When the sheet's time of drying is over, s. */
export function dryFrom({ index, coat, finish }: Pick<CoatCase, "index" | "coat" | "finish">): number {
  return putOn(index, coat).to + (finish.dry?.value ?? 0);
}

export function dryingRule(c: CoatCase): Finding[] {
  const { coat, finish, index, find } = c;
  const { dry } = finish;
  if (dry === undefined) return [];
  const limit: Limit = { code: "limit/drying", values: { asked: dry.typed }, from: sheetOf(finish) };
  const isSlow = coat.dry !== undefined && !atMost(coat.dry.epoch, dryFrom(c));
  return [
    atMost(dryFrom(c), index.now)
      ? find("coat-drying/dried", "meets", { asked: dry.typed }, { limit })
      : find("coat-drying/drying", "waits", { asked: dry.typed }, { limit }),
    ...(isSlow ? [find("coat-drying/slow", "caution", { asked: dry.typed, found: coat.dry.typed }, { limit })] : []),
  ];
}
