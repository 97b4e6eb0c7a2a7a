/** Quantities as the reader would hand them over, made from their typed figure. */
import type { Moment, Quantity, Range } from "../../src/facts/types.ts";

const maker =
  (word: string, unit: string, scale: number, offset = 0) =>
  (typed: string): Quantity => {
    const decimals = typed.split(".")[1]?.length ?? 0;
    return { typed: `${typed} ${word}`, value: (Number(typed) + offset) * scale, unit, step: 10 ** -decimals * scale };
  };

export const g = maker("g", "kg", 0.001);
export const ml = maker("ml", "m³", 1e-6);
export const mm = maker("mm", "m", 0.001);
export const celsius = maker("°C", "°C", 1);
export const fahrenheit = maker("°F", "°C", 1 / 1.8, -32);
export const pc = maker("%", "1", 0.01);
export const newton = maker("N", "N", 1);
export const mpa = maker("MPa", "Pa", 1e6);
export const min = maker("min", "s", 60);
export const d = maker("d", "s", 86_400);
export const gcc = maker("g/cm³", "kg/m³", 1000);

/** A fraction has no last digit. */
export const inches = (over: number, under: number): Quantity => ({
  typed: `${over}/${under} in`,
  value: (over / under) * 0.0254,
  unit: "m",
  step: 0,
});

export const range = (typed: string, least?: number, most?: number): Range => ({ typed, least, most });

export const epochOf = (day: string, time = "00:00"): number => {
  const [hours = "0", minutes = "0"] = time.split(":");
  return Date.parse(`${day}T00:00:00Z`) / 1000 + Number(hours) * 3600 + Number(minutes) * 60;
};

export const moment = (day: string, time: string): Moment => ({ typed: time, epoch: epochOf(day, time) });
