/** Numbers for sentences and tables: the same text on every machine, no locale. */
import { atMost } from "../reckoning/compare.ts";

const MINUS = "\u2212";

/** A number with a fixed count of decimals; the minus is a true minus and zero has none. */
export function figure(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  if (Number(text) === 0) return text.replace("-", "");
  return text.replace("-", MINUS);
}

/** Digits in groups of three with a comma. */
export function grouped(number: number, decimals = 0): string {
  const [whole = "0", fraction] = Math.abs(number).toFixed(decimals).split(".");
  const parts = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  const sign = number < 0 && Number(Math.abs(number).toFixed(decimals)) !== 0 ? MINUS : "";
  return sign + parts + (fraction === undefined ? "" : `.${fraction}`);
}

/**
 * A number with as many decimals, from `decimals` up to 6, as it takes not to look as if it were on the other side of
 * `limit`:
 * 5.004 beside 5 reads 5.004 and not 5.0.
 */
export function apart(value: number, limit: number, decimals: number): string {
  for (let d = decimals; d < 6; d += 1) {
    const rounded = Number(value.toFixed(d));
    if (atMost(rounded, limit) === atMost(value, limit) && atMost(limit, rounded) === atMost(limit, value))
      return figure(value, d);
  }
  return figure(value, 6);
}

/** A share → `83 %`, with a true minus sign. */
export function percent(share: number, decimals = 0): string {
  return `${grouped(share * 100, decimals)} %`;
}

/** As `percent`, but never rounded onto or over `limit`. */
export const percentApart = (share: number, limit: number, decimals = 1): string =>
  `${apart(share * 100, limit * 100, decimals)} %`;

/** A signed share → `+1.2 %`, `−0.4 %`, `0.0 %`. */
export function signedPercent(share: number, decimals = 1): string {
  const text = percent(share, decimals);
  return share > 0 && Number((share * 100).toFixed(decimals)) !== 0 ? `+${text}` : text;
}

/** `4.6 MB` */
export function bytesWords(bytes: number): string {
  const step = bytes < 1000 ? 0 : Math.min(4, Math.floor(Math.log10(bytes) / 3));
  const amount = bytes / 1000 ** step;
  return `${step === 0 ? Math.round(amount) : amount.toFixed(1)} ${["bytes", "kB", "MB", "GB", "TB"][step] ?? ""}`;
}
