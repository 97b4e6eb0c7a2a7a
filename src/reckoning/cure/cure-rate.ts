/**
 * How fast an adhesive cures at a temperature, as a multiple of how fast it does at a reference temperature.
 *
 *   Arrhenius: exp(−(Ea/R)·(1/T − 1/Tref)), T in K. Source: the form of ASTM C1074 and of EN 1992-1-1 eq. B.10 (both second-hand: quoted by
 *   others, not read in a copy), which are for concrete; used here for adhesive by analogy.
 *   Doubling: 2^((T − Tref)/10). Common practice, no source; one rule of thumb and no law.
 *
 * Arrhenius holds between the coldest and the warmest of the rows that it was fitted to. On the way beyond them
 * warmth gains nothing, and cold loses what the slower of both laws loses. Below the sheet's least temperature
 * nothing cures: this program's own choice, on the safe side.
 *
 * Temperatures in °C. Domain: above absolute zero, else undefined.
 */
import { activationEnergy, GAS_CONSTANT, type CureRow } from "./activation-energy.ts";
import { atLeast } from "../compare.ts";
import { KELVIN } from "../../facts/quantity/conversions.ts";
import type { LifeRow } from "../mixing/working-life.ts";

export interface CureLaw {
  /** Apparent activation energy, J/mol; without one the rate doubles every 10 K. */
  readonly energy?: number;
  readonly from: "cure times" | "working life" | "doubling";
  /** The coldest and the warmest temperature that the energy was fitted to, °C; without them it holds anywhere. */
  readonly rows?: { readonly least: number; readonly most: number };
  /** The least temperature at which the sheet lets it cure, °C. */
  readonly least?: number;
}

export function cureRate(law: CureLaw, temperature: number, reference: number): number | undefined {
  if (!isAboveZero(temperature) || !isAboveZero(reference)) return undefined;
  if (law.least !== undefined && !atLeast(temperature, law.least)) return 0;
  const { energy, rows } = law;
  if (energy === undefined) return doubled(temperature, reference);
  if (rows === undefined) return arrhenius(energy, temperature, reference);
  const rate = arrhenius(energy, within(rows, temperature), within(rows, reference));
  if (temperature >= reference) return rate;
  const below = slower(energy, temperature, Math.min(reference, Math.max(rows.least, temperature)));
  const above = slower(energy, Math.max(temperature, Math.min(rows.most, reference)), reference);
  return below * rate * above;
}

const isAboveZero = (temperature: number): boolean => Number.isFinite(temperature) && temperature + KELVIN > 0;
const within = ({ least, most }: NonNullable<CureLaw["rows"]>, temperature: number): number =>
  Math.min(most, Math.max(least, temperature));
const doubled = (temperature: number, reference: number): number => 2 ** ((temperature - reference) / 10);
const arrhenius = (energy: number, temperature: number, reference: number): number =>
  Math.exp((-energy / GAS_CONSTANT) * (1 / (temperature + KELVIN) - 1 / (reference + KELVIN)));
const slower = (energy: number, colder: number, warmer: number): number =>
  Math.min(arrhenius(energy, colder, warmer), doubled(colder, warmer));

/**
 * The law that a data sheet allows: from its cure times at two or more temperatures, else from its working life at
 * two or more temperatures and one mass (the mass with most temperatures, of these the least), else the doubling.
 * Times that do not fall with warmth give no law. `least` is the least temperature at which the sheet lets it cure,
 * °C.
 */
export function cureLaw(cure: readonly CureRow[], life: readonly LifeRow[], least?: number): CureLaw {
  return { ...fitted(cure, life), ...(least !== undefined && { least }) };
}

function fitted(cure: readonly CureRow[], life: readonly LifeRow[]): CureLaw {
  const byCure = activationEnergy(cure);
  if (byCure !== undefined && byCure > 0) return { energy: byCure, from: "cure times", rows: spanned(cure) };
  const alike = alikeInMass(life);
  const byLife = activationEnergy(alike);
  if (byLife !== undefined && byLife > 0) return { energy: byLife, from: "working life", rows: spanned(alike) };
  return { from: "doubling" };
}

function spanned(rows: readonly CureRow[]): CureLaw["rows"] {
  const all = rows.map(({ temperature }) => temperature);
  return { least: Math.min(...all), most: Math.max(...all) };
}

function alikeInMass(life: readonly LifeRow[]): readonly LifeRow[] {
  const masses = [...new Set(life.map((row) => row.mass))].sort((a, b) => a - b);
  const groups = masses.map((mass) => life.filter((row) => row.mass === mass));
  const most = Math.max(0, ...groups.map((group) => group.length));
  return groups.find((group) => group.length === most) ?? [];
}
