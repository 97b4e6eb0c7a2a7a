/**
 * How days, times and quantities are put into words. Fixed English, so that the same record gives the same bytes
 * anywhere.
 */
import { FAHRENHEIT, INCH } from "../facts/quantity/conversions.ts";
import type { Day, Quantity } from "../facts/types.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

function monthName(day: Day): string {
  return MONTHS[Number(day.slice(5, 7)) - 1] ?? "";
}

/** `2025-03-08` → `8 March 2025` */
export function dateWords(day: Day): string {
  return `${Number(day.slice(8, 10))} ${monthName(day)} ${day.slice(0, 4)}`;
}

/** `2025-03-08` → `8 Mar 2025` */
export function dateShort(day: Day): string {
  return `${Number(day.slice(8, 10))} ${monthName(day).slice(0, 3)} ${day.slice(0, 4)}`;
}

/** `2025-03-08` → `8 Mar`, where the year stands near by. */
export function dayAndMonth(day: Day): string {
  return `${Number(day.slice(8, 10))} ${monthName(day).slice(0, 3)}`;
}

/** `2025-03` or a day in it → `March 2025` */
export function monthWords(month: string): string {
  return `${monthName(month)} ${month.slice(0, 4)}`;
}

/** `2025-03` or a day in it → `Mar` */
export function monthShort(month: string): string {
  return monthName(month).slice(0, 3);
}

/** Digits in groups of three with a comma. */
export function grouped(number: number, decimals = 0): string {
  const [whole = "0", fraction] = Math.abs(number).toFixed(decimals).split(".");
  const parts = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  const sign = number < 0 && Number(Math.abs(number).toFixed(decimals)) !== 0 ? "−" : "";
  return sign + parts + (fraction === undefined ? "" : `.${fraction}`);
}

/** Minutes → `2 h 45 min`, `45 min`, `1,204 h`. */
export function hoursWords(minutes: number): string {
  const whole = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (whole === 0) return `${rest} min`;
  return rest === 0 ? `${grouped(whole)} h` : `${grouped(whole)} h ${rest} min`;
}

/** Minutes → hours with one decimal, such as `2.8 h`, for sums where the minute does not matter. */
export function hoursRounded(minutes: number): string {
  return `${grouped(minutes / 60, minutes >= 6000 || minutes % 60 === 0 ? 0 : 1)} h`;
}

/** Seconds → `35 min`, `3 h 20 min`, `4 d 6 h`. */
export function durationWords(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  if (minutes < 2880) return hoursWords(minutes);
  const hours = Math.round(minutes / 60);
  const rest = hours % 24;
  return rest === 0 ? `${Math.floor(hours / 24)} d` : `${Math.floor(hours / 24)} d ${rest} h`;
}

/** A share → `83 %`, with a true minus sign. */
export function percent(share: number, decimals = 0): string {
  return `${grouped(share * 100, decimals)} %`;
}

/** A signed share → `+1.2 %`, `−0.4 %`, `0.0 %`. */
export function signedPercent(share: number, decimals = 1): string {
  const text = percent(share, decimals);
  return share > 0 && Number((share * 100).toFixed(decimals)) !== 0 ? `+${text}` : text;
}

/** `1 joint`, `2 joints`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

type Units = "metric" | "imperial";
type Conversion = readonly [factor: number, unit: string, decimals: number, offset?: number];

/** From the unit of reckoning to the one shown: value × factor + offset. */
const SHOWN_IN: { readonly [units in Units]: { readonly [unit: string]: Conversion } } = {
  metric: {
    kg: [1000, "g", 1],
    m: [1000, "mm", 2],
    "m²": [1e4, "cm²", 0],
    "m³": [1e6, "ml", 1],
    N: [1, "N", 0],
    Pa: [1e-6, "MPa", 1],
    "°C": [1, "°C", 1],
    "kg/m³": [1, "kg/m³", 0],
    "kg/m²": [1000, "g/m²", 0],
    "1/m": [0.01, "/cm", 1],
  },
  imperial: {
    kg: [35.27396195, "oz", 2],
    m: [39.37007874, "in", 3],
    "m²": [1550.0031, "in²", 1],
    "m³": [33814.0227, "fl oz", 2],
    N: [0.2248089431, "lbf", 0],
    Pa: [1.450377377e-4, "psi", 0],
    "°C": [FAHRENHEIT.each, "°F", 1, FAHRENHEIT.atZero],
    "kg/m³": [0.06242796, "lb/ft³", 1],
    "kg/m²": [0.2048161436, "lb/ft²", 3],
    "1/m": [INCH, "/in", 1],
  },
};

const IMPERIAL_TYPED =
  /(?:\d|\s|\/)(?:in|inch|inches|ft|feet|lb|lbs|lbf|oz|psi|ksi|°F|degF|fl oz|in²|in2|sq in|ft²|ft2)\b|["'′″]|°F/;

/** A quantity as typed, and after it the converted figure where it was typed in the other system of units. */
export function quantityWords(quantity: Quantity, units: Units, convert = inUnits): string {
  const conversion = SHOWN_IN[units][quantity.unit];
  const typedIn: Units = IMPERIAL_TYPED.test(quantity.typed) ? "imperial" : "metric";
  if (conversion === undefined || typedIn === units || quantity.unit === "rad") return quantity.typed;
  return `${quantity.typed} (${convert(quantity.value, quantity.unit, units)})`;
}

/** A value in a unit of reckoning, shown in the aircraft's units; a bare number is a share. */
export function inUnits(value: number, unit: string, units: Units): string {
  if (unit === "rad") return `${grouped((value * 180) / Math.PI, 2)}°`;
  const conversion = SHOWN_IN[units][unit];
  if (unit === "1") return percent(value, 1);
  if (conversion === undefined) return `${grouped(value, 3)} ${unit}`;
  const [factor, shownUnit, decimals, offset = 0] = conversion;
  const shown = value * factor + offset;
  if (unit === "kg" && units === "metric" && Math.abs(shown) >= 1000) return `${grouped(value, 2)} kg`;
  return `${grouped(shown, Math.abs(shown) >= 100 ? 0 : decimals)} ${shownUnit}`;
}

const TIMBER_IN: typeof SHOWN_IN = {
  metric: { kg: [1, "kg", 2], m: [1, "m", 2], "m²": [1, "m²", 2], "m³": [1000, "dm³", 1] },
  imperial: {
    kg: [35.27396195 / 16, "lb", 2],
    m: [39.37007874 / 12, "ft", 2],
    "m²": [1550.0031 / 144, "ft²", 2],
    "m³": [61023.74409, "in³", 0],
  },
};

/** As {@link inUnits}, for amounts of timber: by the metre and not by the millimetre. */
export function timberInUnits(value: number, unit: string, units: Units): string {
  const [factor, shownUnit, decimals] = TIMBER_IN[units][unit] ?? [1, unit, 3];
  return `${grouped(value * factor, decimals)} ${shownUnit}`;
}

/** `4.6 MB` */
export function bytesWords(bytes: number): string {
  const step = bytes < 1000 ? 0 : Math.min(4, Math.floor(Math.log10(bytes) / 3));
  const amount = bytes / 1000 ** step;
  return `${step === 0 ? Math.round(amount) : amount.toFixed(1)} ${["bytes", "kB", "MB", "GB", "TB"][step] ?? ""}`;
}

/** How long a clip runs, begun seconds counted: `7 s`, `2 min 5 s`. */
export function playedWords(seconds: number): string {
  const whole = Math.max(1, Math.ceil(seconds - 0.05));
  const [minutes, rest] = [Math.floor(whole / 60), whole % 60];
  return [...(minutes > 0 ? [`${minutes} min`] : []), ...(rest > 0 || minutes === 0 ? [`${rest} s`] : [])].join(" ");
}
