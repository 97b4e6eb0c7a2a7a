/**
 * Equivalent age: how long a cure at the reference temperature would have taken to get as far, s.
 *
 *   te = Σ rate(T, Tref)·Δt
 *
 * over stretches of one temperature each; see cure-rate.ts for the rate and its source. Check of the summation: EN
 * 1992-1-1
 * eq. B.10, 19, 20, 20, 21, 22, 23 °C for 1, 2, 1, 1, 1, 2 d → 8.3799 d (second-hand: worked examples).
 * Domain: temperatures above absolute zero, times not negative, else undefined. No stretch at all is 0.
 */
import { cureRate, type CureLaw } from "./cure-rate.ts";
import { notNegative } from "../domain.ts";

export interface Stretch {
  /** °C */
  readonly temperature: number;
  /** s */
  readonly time: number;
}

export function equivalentAge(stretches: readonly Stretch[], law: CureLaw, reference: number): number | undefined {
  let age = 0;
  for (const { temperature, time } of stretches) {
    const rate = cureRate(law, temperature, reference);
    if (rate === undefined || !notNegative(time)) return undefined;
    age += rate * time;
  }
  return age;
}
