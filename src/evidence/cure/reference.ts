/** The temperature at which a least cure is counted, and how the rate of cure depends on temperature. */
import { cureLaw, type CureLaw } from "../../reckoning/cure/cure-rate.ts";
import type { Adhesive, Procedure } from "../../facts/types.ts";
import { DOUBLING, procedureOf, sheetOf, USUAL_ROOM } from "../sources.ts";
import type { LimitValues } from "../codes/limits.ts";
import type { Coded } from "../codes/coded.ts";
import type { Source } from "../types/source.ts";

export interface Reference {
  readonly temperature: number;
  readonly from: Source;
}

/** Room temperature for want of any other, °C, and how far a sheet's cure may lie from it and still be one at room temperature. */
const ROOM = 20;
const ROOMS = { least: 15, most: 30 };

/**
 * That of the procedure; else that of the data sheet's cure nearest to room temperature, of two as near the warmer; else room
 * temperature. A sheet that gives only a cure by heating says nothing of days in a shop.
 */
export function referenceOf(procedure: Procedure | undefined, adhesive: Adhesive): Reference {
  const stated = procedure?.leastCure?.temperature;
  if (procedure && stated) return { temperature: stated.value, from: procedureOf(procedure) };
  const rows = adhesive.cure
    .map(({ temperature }) => temperature.value)
    .filter((t) => t >= ROOMS.least && t <= ROOMS.most);
  const [nearest] = rows.sort((a, b) => Math.abs(a - ROOM) - Math.abs(b - ROOM) || b - a);
  return nearest === undefined
    ? { temperature: ROOM, from: USUAL_ROOM }
    : { temperature: nearest, from: sheetOf(adhesive) };
}

export function lawOf(adhesive: Adhesive): CureLaw {
  const cure = adhesive.cure.map(({ temperature, time }) => ({ temperature: temperature.value, time: time.value }));
  // How long a glue stays open says nothing of how it cures, where it is no mix of resin and hardener.
  const rows = adhesive.kind === "two-part" ? adhesive.workingLife : [];
  const life = rows.flatMap(({ temperature, mass, time }) =>
    mass === undefined ? [] : [{ temperature: temperature.value, mass: mass.value, time: time.value }],
  );
  return cureLaw(cure, life, adhesive.temperature?.least);
}

/** Where the law comes from, and its source. */
export function lawSource(
  law: CureLaw,
  adhesive: Adhesive,
): Coded<LimitValues, "limit/doubling" | "limit/sheet-times"> & { readonly from: Source } {
  if (law.from === "doubling") return { code: "limit/doubling", values: {}, from: DOUBLING };
  const times = law.from === "cure times" ? "cure times" : "working life";
  return { code: "limit/sheet-times", values: { times }, from: sheetOf(adhesive) };
}
