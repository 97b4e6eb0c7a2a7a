/**
 * Mix ratio: hardener over resin, by mass or by volume; dimensionless.
 *
 * Amounts in any one unit. Domain: all positive, else undefined.
 */
import { positive } from "../domain.ts";

/** hardener / resin. */
export function mixRatio(resin: number, hardener: number): number | undefined {
  return positive(resin, hardener) ? hardener / resin : undefined;
}

/**
 * Mass ratio of a mix measured by volume: mB/mA = (VB/VA)·(ρB/ρA), from the definition of density.
 * A is the resin, B the hardener; densities in any one unit.
 */
export function massRatioOfVolumes(
  volumeRatio: number,
  resinDensity: number,
  hardenerDensity: number,
): number | undefined {
  return positive(volumeRatio, resinDensity, hardenerDensity)
    ? (volumeRatio * hardenerDensity) / resinDensity
    : undefined;
}

/** Volume ratio of a mix weighed: VB/VA = (mB/mA)·(ρA/ρB). */
export function volumeRatioOfMasses(
  massRatio: number,
  resinDensity: number,
  hardenerDensity: number,
): number | undefined {
  return positive(massRatio, resinDensity, hardenerDensity) ? (massRatio * resinDensity) / hardenerDensity : undefined;
}

/** Error of a mix as a share of the nominal ratio: found / nominal − 1. Positive: too much hardener. */
export function ratioError(found: number, nominal: number): number | undefined {
  return positive(found, nominal) ? found / nominal - 1 : undefined;
}
