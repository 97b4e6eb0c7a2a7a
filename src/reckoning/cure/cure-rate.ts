/**
 * How fast an adhesive cures at a temperature, as a multiple of how fast it does at a reference temperature.
 *
 *   Arrhenius: exp(−(Ea/R)·(1/T − 1/Tref)), T in K.  Source: the form of ASTM C1074 and of EN 1992-1-1 eq. B.10
 * (seen), which are for
 *   concrete; used here for adhesive by analogy.
 *   Doubling: 2^((T − Tref)/10).  Common practice, no source; one rule of thumb and no law.
 *
 * Temperatures in °C. Domain: above absolute zero, else undefined.
 */
import { activationEnergy, GAS_CONSTANT, type CureRow } from "./activation-energy.ts";
import { KELVIN } from "../domain.ts";
import type { LifeRow } from "../mixing/working-life.ts";

export interface CureLaw {
  /** Apparent activation energy, J/mol; without one the rate doubles every 10 K. */
  readonly energy?: number;
  readonly from: "cure times" | "working life" | "doubling";
}

export function cureRate(law: CureLaw, temperature: number, reference: number): number | undefined {
  const t = temperature + KELVIN;
  const ref = reference + KELVIN;
  if (!(t > 0 && ref > 0 && Number.isFinite(t) && Number.isFinite(ref))) return undefined;
  if (law.energy === undefined) return 2 ** ((temperature - reference) / 10);
  return Math.exp((-law.energy / GAS_CONSTANT) * (1 / t - 1 / ref));
}

/**
 * The law that a data sheet allows: from its cure times at two or more temperatures, else from its working life at
 * two or more
 * temperatures and one mass (the mass with most temperatures, of these the least), else the doubling. Times that do
 * not fall with
 * warmth give no law.
 */
export function cureLaw(cure: readonly CureRow[], life: readonly LifeRow[]): CureLaw {
  const byCure = activationEnergy(cure);
  if (byCure !== undefined && byCure > 0) return { energy: byCure, from: "cure times" };
  const byLife = activationEnergy(alikeInMass(life));
  if (byLife !== undefined && byLife > 0) return { energy: byLife, from: "working life" };
  return { from: "doubling" };
}

function alikeInMass(life: readonly LifeRow[]): readonly LifeRow[] {
  const masses = [...new Set(life.map((row) => row.mass))].sort((a, b) => a - b);
  const groups = masses.map((mass) => life.filter((row) => row.mass === mass));
  const most = Math.max(0, ...groups.map((group) => group.length));
  return groups.find((group) => group.length === most) ?? [];
}
