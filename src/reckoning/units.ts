/** Exact conversions by definition: the international pound and inch, standard gravity (NIST SP 811, appendix B). */

/** Pascals in one pound-force per square inch: 0.45359237 kg · 9.80665 m/s² / (0.0254 m)². */
export const PSI = (0.45359237 * 9.80665) / 0.0254 ** 2;
