/**
 * Which columns a header line names, by itself or by what the builder says of it. Of the words of a cell only a wording that can
 * mean one thing is taken.
 */
import { defined } from "../defined.ts";
import type { Columns, Stated, TemperatureUnit } from "./sidecar.ts";

/** The columns; or several of them of which each could be the one meant; undefined where the row is no header. */
export type Header =
  | { readonly columns: Columns }
  | { readonly what: "time" | "temperature" | "humidity"; readonly could: readonly number[] };

export function headerOf(cells: readonly string[], stated: Stated): Header | undefined {
  const names = cells.map(named);
  const where = (kind: Named["kind"], column?: string): number[] =>
    column === undefined ? places(names, kind) : placesOf(cells, column);
  const stamps = where("stamp", stated.timeColumn);
  const split = stamps.length === 0 ? [where("day"), where("clock")] : [];
  const temperatures = where("temperature", stated.temperature?.column);
  const humidities = where("humidity", stated.humidity?.column);
  const time = stamps.length > 0 ? stamps.slice(0, 1) : split.flatMap((found) => found.slice(0, 1));
  const asked = [
    stated.temperature?.column !== undefined && temperatures.length === 0,
    stated.humidity?.column !== undefined && humidities.length === 0,
    stated.sensorColumn !== undefined && placesOf(cells, stated.sensorColumn).length !== 1,
  ];
  if (time.length === 0 || temperatures.length + humidities.length === 0 || asked.includes(true)) return undefined;
  for (const [what, could] of [
    ["time", stamps],
    ...split.map((found) => ["time", found] as const),
    ["temperature", temperatures],
    ["humidity", humidities],
  ] as const) {
    if (could.length > 1) return { what, could };
  }
  const [sensor] = stated.sensorColumn === undefined ? [] : placesOf(cells, stated.sensorColumn);
  return { columns: defined({ ...columnsOf(cells, names, time, temperatures[0], humidities[0]), sensor }) };
}

function columnsOf(
  cells: readonly string[],
  names: readonly (Named | undefined)[],
  time: readonly number[],
  temperature: number | undefined,
  humidity: number | undefined,
): Columns {
  const zone = time
    .map((at) => names[at])
    .map((name) => (name !== undefined && "zone" in name ? name.zone : undefined))
    .find((typed) => typed !== undefined);
  return defined({
    time,
    zone,
    temperature:
      temperature === undefined
        ? undefined
        : { at: temperature, ...temperatureUnit(names[temperature], cells[temperature]) },
    humidity: humidity === undefined ? undefined : { at: humidity, ...humidityUnit(names[humidity], cells[humidity]) },
  });
}

function temperatureUnit(name: Named | undefined, cell = ""): { unit?: TemperatureUnit } {
  const unit = name?.kind === "temperature" ? name.unit : bracketed(cell);
  return unit === undefined || unit === "%" ? {} : { unit };
}

function humidityUnit(name: Named | undefined, cell = ""): { unit?: "%" } {
  const unit = name?.kind === "humidity" ? name.unit : bracketed(cell);
  return unit === "%" ? { unit } : {};
}

/**
 * The unit in brackets that a header ends with, where the builder chose the column and its name means nothing by
 * itself.
 */
const bracketed = (cell: string): TemperatureUnit | "%" | undefined =>
  unitOf(/[([]([^)\]]+)[)\]]\s*$/u.exec(cell)?.[1] ?? "");

const places = (names: readonly (Named | undefined)[], kind: Named["kind"]): number[] =>
  names.flatMap((name, at) => (name?.kind === kind ? [at] : []));

const placesOf = (cells: readonly string[], column: string): number[] =>
  cells.flatMap((cell, at) => (cell.trim().toLowerCase() === column.trim().toLowerCase() ? [at] : []));

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

type Named =
  | { readonly kind: "stamp" | "day" | "clock"; readonly zone?: string }
  | { readonly kind: "temperature"; readonly unit?: TemperatureUnit }
  | { readonly kind: "humidity"; readonly unit?: "%" };

/** A unit as typed in a header or beside a figure. */
export function unitOf(typed: string): TemperatureUnit | "%" | undefined {
  const key = typed.toLowerCase().replaceAll(/\s/gu, "");
  return Object.hasOwn(UNITS, key) ? UNITS[key] : undefined;
}

/** What a word by itself names, where it can mean one thing. */
export function quantityNamed(cell: string): "temperature" | "humidity" | undefined {
  const kind = named(cell)?.kind;
  return kind === "temperature" || kind === "humidity" ? kind : undefined;
}

function named(cell: string): Named | undefined {
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
