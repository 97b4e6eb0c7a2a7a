/** Readings of an instrument: numbers that it can show, as they are typed. */

/** A number with its unit as typed; `decimals` as many as the instrument shows. */
export interface Shown {
  readonly value: number;
  readonly decimals: number;
  readonly unit: string;
}

/** Undefined for what is no plain number with a unit, such as a range. */
export function shownBy(typed: string | undefined): Shown | undefined {
  const [, number = "", unit = ""] = /^(\d+(?:\.\d+)?) *(\D.*)$/.exec(typed?.trim() ?? "") ?? [];
  if (number === "" || / to |\d/.test(unit.replace(/[²³]/g, ""))) return undefined;
  return { value: Number(number), decimals: (number.split(".")[1] ?? "").length, unit };
}

/** The number on as many decimals as the instrument has; never below nought. */
export const typedBy = ({ decimals, unit }: Omit<Shown, "value">, value: number): string =>
  `${Math.max(0, value).toFixed(decimals)} ${unit}`;

/** Readings around one, `step` apart, `each` of them to each side, as typed: what the instrument may well show now. */
export function ladder(around: Shown, step: number, each: number): readonly string[] {
  const centre = Math.round(around.value / step);
  const first = Math.max(0, centre - each);
  return Array.from({ length: 2 * each + 1 }, (_, at) => typedBy(around, (first + at) * step));
}

/** What a pad has typed, with a comma or a point, as a reading; undefined for what is no number. */
export function padded(typed: string, unit: string): string | undefined {
  const text = typed.replace(",", ".");
  if (!/^\d{1,6}(?:\.\d{1,4})?$/.test(text)) return undefined;
  const [whole = "", fraction] = text.split(".");
  const number = String(Number(whole)) + (fraction === undefined ? "" : `.${fraction}`);
  return `${number} ${unit}`;
}
