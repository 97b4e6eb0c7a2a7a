/** How long after the coat before it was put on, and whether it has dried. Where no time is noted its whole day counts, by its worse end. */
import { atLeast, atMost } from "../../reckoning/compare.ts";
import type { Quantity } from "../../facts/types.ts";
import { sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { Limit } from "../types/source.ts";
import { type CoatCase, putOn } from "./case.ts";

interface Limited {
  readonly code: "limit/recoat-after" | "limit/recoat-within";
  readonly otherwise: "coat-interval/too-soon" | "coat-interval/too-late";
}

const SOON: Limited = { code: "limit/recoat-after", otherwise: "coat-interval/too-soon" };
const LATE: Limited = { code: "limit/recoat-within", otherwise: "coat-interval/too-late" };

export function intervalRule({ coat, before, finish, index, find }: CoatCase): Finding[] {
  if (coat.coat === 1) return [];
  if (before === undefined) return [find("coat-interval/none-before", "unproven", { coat: coat.coat })];
  const [one, other] = [putOn(index, before), putOn(index, coat)];
  const [least, greatest] = [other.from - one.to, other.to - one.from];
  const between = { coat: coat.coat, least, greatest };
  const held = (asked: Quantity, limited: Limited, isHeld: (seconds: number) => boolean): Finding => {
    const values = { ...between, asked: asked.typed };
    const limit: Limit = { code: limited.code, values: { asked: asked.typed }, from: sheetOf(finish) };
    const beside = { limit, alsoOn: [{ kind: "entry", id: before.entry } as const] };
    const ends = [least, greatest].filter(isHeld).length;
    if (ends === 2) return find("coat-interval/within", "meets", between, beside);
    return ends === 1
      ? find("coat-interval/not-known", "unproven", values, beside)
      : find(limited.otherwise, "rejects", values, beside);
  };
  const { after, within } = finish.recoat ?? {};
  return [
    ...(after === undefined ? [] : [held(after, SOON, (seconds) => atLeast(seconds, after.value))]),
    ...(within === undefined ? [] : [held(within, LATE, (seconds) => atMost(seconds, within.value))]),
  ];
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
