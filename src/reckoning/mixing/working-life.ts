/**
 * Working life: seconds that the data sheet gives a mix of at most so much, in a shop at most so warm.
 *
 * A row of the sheet holds for its temperature and mass and for anything cooler and less, since warmth and bulk only
 * shorten the
 * time; of the rows that hold, the longest time. Nothing is interpolated. undefined where no row holds: the sheet
 * gives none for so
 * warm or so much. Units: °C, kg, s. Source: the adhesive's data sheet; that cool and little last longer is common
 * practice.
 */
import { atLeast } from "../compare.ts";

export interface LifeRow {
  readonly temperature: number;
  readonly mass: number;
  readonly time: number;
}

/** The row that gives it; the first of several with the same time. */
export function lifeRow<R extends LifeRow>(rows: readonly R[], temperature: number, mass: number): R | undefined {
  const held = rows.filter((row) => atLeast(row.temperature, temperature) && atLeast(row.mass, mass));
  return held.reduce<R | undefined>(
    (longest, row) => (longest === undefined || row.time > longest.time ? row : longest),
    undefined,
  );
}

export const workingLife = (rows: readonly LifeRow[], temperature: number, mass: number): number | undefined =>
  lifeRow(rows, temperature, mass)?.time;
