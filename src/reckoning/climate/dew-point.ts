/**
 * Dew point over water, °C, by the Magnus form:
 *
 *   γ = ln h + 17.62·T/(243.12 + T);  Td = 243.12·γ/(17.62 − γ)
 *
 * T in °C, h relative humidity as a share of one. Coefficients: WMO-No. 8, Annex 4.B, for −45 °C to 60 °C (seen
 * second-hand).
 * Domain: −45 °C ≤ T ≤ 60 °C, 0 < h ≤ 1, else undefined.
 */
const A = 17.62;
const B = 243.12;

export function dewPoint(temperature: number, humidity: number): number | undefined {
  if (!(temperature >= -45 && temperature <= 60 && humidity > 0 && humidity <= 1)) return undefined;
  const gamma = Math.log(humidity) + (A * temperature) / (B + temperature);
  return (B * gamma) / (A - gamma);
}
