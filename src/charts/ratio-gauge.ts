/** Geometry of a mix against its band. */

export interface RatioGauge {
  /**
   * Ends of the tolerance band, the found ratio and the ends of what the scale leaves in doubt: shares of the width,
   * 0 to 1.
   */
  readonly band?: readonly [from: number, to: number];
  readonly nominal: number;
  readonly found: number;
  readonly doubt?: readonly [from: number, to: number];
}

/** Share of the width that stays free beside the outermost thing. */
const MARGIN = 0.12;

/**
 * `error`, `tolerance` and `doubt` are shares of the nominal ratio (0.05 = 5 %). The nominal ratio stands in the
 * middle;
 * the scale widens until the band, the found ratio and its doubt are all in sight.
 */
export function ratioGauge(error: number, doubt?: number, tolerance?: number): RatioGauge {
  const reach = Math.max(Math.abs(error) + (doubt ?? 0), (tolerance ?? 0.05) * 1.5);
  const at = (share: number): number => 0.5 + (share / reach) * (0.5 - MARGIN / 2);
  return {
    nominal: 0.5,
    found: at(error),
    ...(doubt === undefined ? {} : { doubt: [at(error - doubt), at(error + doubt)] as const }),
    ...(tolerance === undefined ? {} : { band: [at(-tolerance), at(tolerance)] as const }),
  };
}
