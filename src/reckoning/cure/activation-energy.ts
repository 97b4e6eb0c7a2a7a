/**
 * Apparent activation energy of cure, J/mol, from times that a data sheet gives at two or more temperatures.
 *
 * At one degree of cure `t = A·exp(Ea/(R·T))`, so ln t lies on a straight line against 1/T with the slope Ea/R; the
 * slope by least squares. T in K from temperatures in °C, t in s (any one unit of time gives the same slope). Source:
 * the Arrhenius equation, as used for maturity in ASTM C1074 (second-hand: described by others). A doubling of the
 * rate for every 10 K between 15 °C and 25 °C is 49.5 kJ/mol (reckoned). Domain: at least two different temperatures
 * above absolute zero and positive times, else undefined. Below 0 where the times grow with warmth: the caller says
 * what follows.
 */
import { KELVIN } from "../../facts/quantity/conversions.ts";
import { positive } from "../domain.ts";

/** Molar gas constant, J/(mol·K), exact since 2019 (SI brochure, 9th ed.; memory). */
export const GAS_CONSTANT = 8.31446261815324;

export interface CureRow {
  readonly temperature: number;
  readonly time: number;
}

export function activationEnergy(rows: readonly CureRow[]): number | undefined {
  if (!rows.every((row) => positive(row.temperature + KELVIN, row.time))) return undefined;
  const points = rows.map((row) => ({ x: 1 / (row.temperature + KELVIN), y: Math.log(row.time) }));
  const x = mean(points.map((point) => point.x));
  const y = mean(points.map((point) => point.y));
  const spread = sum(points.map((point) => (point.x - x) ** 2));
  const together = sum(points.map((point) => (point.x - x) * (point.y - y)));
  return new Set(rows.map((row) => row.temperature)).size < 2 ? undefined : GAS_CONSTANT * (together / spread);
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]): number => sum(values) / values.length;
