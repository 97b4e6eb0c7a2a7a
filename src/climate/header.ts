/** Which columns a header line names, by itself or by what the builder says of it. */
import { defined } from "../defined.ts";
import type { Columns, Stated, TemperatureUnit } from "./form.ts";
import { named, unitOf, type Named } from "./header-words.ts";

/** The columns; or several of them of which each could be the one meant; undefined where the row is no header. */
export type Header = { readonly columns: Columns } | { readonly what: string; readonly could: readonly number[] };

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
  ];
  if (time.length === 0 || temperatures.length + humidities.length === 0 || asked.includes(true)) return undefined;
  for (const [what, could] of [
    ["the time", stamps],
    ...split.map((found) => ["the time", found] as const),
    ["the temperature", temperatures],
    ["the humidity", humidities],
  ] as const) {
    if (could.length > 1) return { what, could };
  }
  return { columns: columnsOf(cells, names, time, temperatures[0], humidities[0]) };
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
