/** Areas by the sizes that stand beside each joint's sheet, and what was spread on them. */
import { describe, expect, it } from "vitest";
import { meant, noticed } from "./meant.ts";
import { batches, demo, entries, figure, joints, massOf, prose } from "./told.ts";

const SHEET = /^sheet \d+; [^:]+: (.+)$/u;
const SIZE = /^(\d+) of (\d+(?:\.\d+)?) × (\d+(?:\.\d+)?) mm$/u;

/** m², of `3 of 4100 × 48 mm + 2 of 90 × 48 mm`. */
function areaOf(sizes: string): number {
  const each = sizes.split(" + ").map((one) => {
    const [, count, length, width] = SIZE.exec(one) ?? [];
    if (count === undefined) throw new Error(`no size: ${one}`);
    return (Number(count) * Number(length) * Number(width)) / 1e6;
  });
  return each.reduce((sum, one) => sum + one, 0);
}

describe("Areas of joints", () => {
  const stated = new Map(
    [...joints.values()].map(({ id, drawing = "" }) => [id, areaOf(SHEET.exec(drawing)?.[1] ?? "")] as const),
  );

  it("each has sizes beside its sheet, and they make the area that is noted", () => {
    const told = [...joints.values()].map(({ id, area }) => [id, area?.value, stated.get(id)] as const);
    const off = told.filter(([, area, sizes]) => !area || !sizes || Math.abs(area / sizes - 1) > 0.01);
    expect(off).toEqual([]);
    expect(stated.size).toBe(71);
  });
});

/** Between the sheet's least and what a brush still leaves on: more is told as waste. */
const MOST = 0.48;

function spreads(): string[] {
  const glued = batches.filter((batch) => batch.joints.length > 0);
  const groups = new Map<string, typeof glued>();
  for (const batch of glued) {
    const key = `${batch.entry} ${batch.joints.join(" ")}`;
    groups.set(key, [...(groups.get(key) ?? []), batch]);
  }
  return [...groups.values()].flatMap((cups) => {
    const [first] = cups;
    const least = first && demo.adhesives.get(first.adhesive)?.spread?.value;
    if (first === undefined || least === undefined) throw new Error("no spread is entered");
    const mass = cups.reduce(
      (sum, cup) => sum + massOf(cup, "resin") + massOf(cup, "hardener") - (figure(cup.waste) ?? 0),
      0,
    );
    const area = first.joints.reduce((sum, id) => sum + (joints.get(id)?.area?.value ?? Number.NaN), 0);
    const [found, grams] = [mass / area, Math.round((mass / area) * 1000)];
    if (found >= least && found <= MOST) return [];
    return [`spread ${first.id}: ${grams} g/m² where the sheet wants ${least * 1000}`];
  });
}

describe("What was spread", () => {
  it("lies between the sheet's least and the most that stays on, but where it is meant not to", () => {
    expect(spreads().sort()).toEqual(meant("spread"));
  });
});

describe("What is meant to be wrong", () => {
  it("is told by somebody who noticed, on that day or later", () => {
    const untold = noticed.filter(({ noticed: entry, words }) => !prose(entry).includes(words));
    expect(untold.map(({ fault, words }) => [fault, words])).toEqual([]);
    const early = noticed.filter(({ fault, noticed: entry }) => {
      const batch = batches.find(({ id }) => id === /B-\d+/u.exec(fault)?.[0]);
      return batch !== undefined && batch.entry > entry;
    });
    expect(early).toEqual([]);
    expect(noticed.every(({ noticed: entry }) => entries.some(({ id }) => id === entry))).toBe(true);
  });
});
