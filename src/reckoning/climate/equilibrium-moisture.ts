/**
 * Equilibrium moisture content of wood: what wood settles at in air of one temperature and relative humidity, given
 * time.
 * A share of the dry mass (0.12 = 12 %).
 *
 *   EMC % = 1800/W · [Kh/(1−Kh) + (K1·K·h + 2·K1·K2·K²·h²)/(1 + K1·K·h + K1·K2·K²·h²)]
 *   W = 349 + 1.29T + 0.0135T²;  K = 0.805 + 0.000736T − 0.00000273T²
 *   K1 = 6.27 − 0.00938T − 0.000303T²;  K2 = 1.91 + 0.0407T − 0.000293T²
 *
 * T in °C, h relative humidity as a share of one. Source: Wood Handbook, FPL-GTR-190 (2010), eq. 4-5, the two-hydrate
 * form of
 * Hailwood and Horrobin; coefficients seen in a copy that cites FPL-RN-0268.
 * Domain: 0 ≤ h ≤ 0.95 and −1.1 °C ≤ T ≤ 54.4 °C, within the extent of the handbook's Table 4-2 (memory); else
 * undefined.
 * An estimate for wood that has had time to settle; a meter reading is better.
 */
export function equilibriumMoisture(temperature: number, humidity: number): number | undefined {
  if (!(temperature >= -1.1 && temperature <= 54.4 && humidity >= 0 && humidity <= 0.95)) return undefined;
  const t = temperature;
  const w = 349 + 1.29 * t + 0.0135 * t ** 2;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t ** 2;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
  const kh = k * humidity;
  const first = k1 * kh;
  const second = k1 * k2 * kh ** 2;
  return (18 / w) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
}
