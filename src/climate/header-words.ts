/**
 * What one cell of a header names. Only a wording that can mean one thing is taken; anything else is left to the
 * builder.
 */
import type { TemperatureUnit } from "./form.ts";

const TEMPERATURE =
  /^(?:(?:air|room|shop|indoor|ambient|raum|luft) ?)?(?:temperature|temperatur|temperatura|température|temp\.?|t)(?![\p{L}\d])/u;
const HUMIDITY =
  /^(?:(?:air|room|shop|indoor|relative|rel\.?) ?)*(?:humidity|hum\.?|rh|r\.h\.|luftfeuchte|luftfeuchtigkeit|feuchte|feuchtigkeit|humidité|humidade|humedad|umidità)(?![\p{L}\d])(?: relativ[ea])?/u;
const STAMP =
  /^(?:date ?[-/&+,]? ?(?:and )?time|datetime|time ?stamp|recorded(?: at)?|zeitstempel|datum ?[-/,]? ?(?:und )?(?:uhr)?zeit|data ?[-/]? ?hora|date ?[-/]? ?heure|fecha ?[-/]? ?(?:y )?hora|horodatage)(?![\p{L}\d])/u;
const DAY = /^(?:date|datum|data|fecha)(?![\p{L}\d])/u;
const CLOCK = /^(?:time|zeit|uhrzeit|hora|heure)(?![\p{L}\d])/u;
const ZONE = /^(?:local|z|(?:utc|gmt)? ?(?:[+\-−]\d{1,2}(?::?\d{2})?)?|[a-z]+\/[a-z_/]+)$/u;

const UNITS: { readonly [unit: string]: TemperatureUnit | "%" } = {
  "°c": "°C",
  ºc: "°C",
  "℃": "°C",
  degc: "°C",
  c: "°C",
  celsius: "°C",
  "°f": "°F",
  ºf: "°F",
  "℉": "°F",
  degf: "°F",
  f: "°F",
  fahrenheit: "°F",
  k: "K",
  kelvin: "K",
  "%": "%",
  "%rh": "%",
  "%r.h.": "%",
  "%rf": "%",
  "%r.f.": "%",
  "rh%": "%",
  "%hr": "%",
  percent: "%",
  percentrh: "%",
};

export type Named =
  | { readonly kind: "stamp" | "day" | "clock"; readonly zone?: string }
  | { readonly kind: "temperature"; readonly unit?: TemperatureUnit }
  | { readonly kind: "humidity"; readonly unit?: "%" };

/** A unit as typed in a header or beside a figure. */
export function unitOf(typed: string): TemperatureUnit | "%" | undefined {
  const key = typed.toLowerCase().replaceAll(/\s/gu, "");
  return Object.hasOwn(UNITS, key) ? UNITS[key] : undefined;
}

export function named(cell: string): Named | undefined {
  const text = cell.toLowerCase().replaceAll(/\s+/gu, " ").trim();
  return timeNamed(text) ?? valueNamed(text.replaceAll("_", " "));
}

function timeNamed(text: string): Named | undefined {
  for (const [kind, pattern] of [
    ["stamp", STAMP],
    ["day", DAY],
    ["clock", CLOCK],
  ] as const) {
    const rest = restAfter(text, pattern);
    if (rest === undefined) continue;
    if (rest === "") return { kind };
    if (ZONE.test(rest)) return { kind, zone: rest };
  }
  return undefined;
}

function valueNamed(text: string): Named | undefined {
  const alone = text.length > 1 ? unitIn(text) : undefined;
  if (alone !== undefined)
    return alone === "%" ? { kind: "humidity", unit: "%" } : { kind: "temperature", unit: alone };
  const temperature = restAfter(text, TEMPERATURE);
  const humidity = restAfter(text, HUMIDITY);
  if (temperature === "") return { kind: "temperature" };
  if (humidity === "") return { kind: "humidity" };
  const unit = unitIn(temperature ?? humidity ?? "");
  if (temperature !== undefined && unit !== undefined && unit !== "%") return { kind: "temperature", unit };
  return humidity !== undefined && unit === "%" ? { kind: "humidity", unit } : undefined;
}

/** A unit, with nothing after it but a remark in brackets, such as the number of a sensor. */
const unitIn = (text: string): TemperatureUnit | "%" | undefined =>
  unitOf(text) ?? unitOf(text.replace(/[)\]}]? ?\([^)]*\)?$/u, ""));

/**
 * What follows a name, without the brackets, comma or stroke that set it off; undefined where the name does not stand
 * there.
 */
function restAfter(text: string, pattern: RegExp): string | undefined {
  const found = pattern.exec(text);
  return found === null
    ? undefined
    : text
        .slice(found[0].length)
        .replace(/^[\s,/:([{]+/u, "")
        .replace(/[\s)\]}]+$/u, "");
}
