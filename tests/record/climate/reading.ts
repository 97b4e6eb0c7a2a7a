/** Reads a logger's file in a test and says in short what came of it. */
import type { Stated } from "../../../src/climate/sidecar.ts";
import { readLog, type Workshop } from "../../../src/climate/log.ts";

const LISBON: Workshop = { timeZone: "Europe/Lisbon", latest: Date.UTC(2026, 0, 1) / 1000 };

/** `2025-03-08T14:20Z 20 0.55` for each reading, or `line:column code` for each problem. */
export function readings(text: string, stated: Stated = {}, workshop: Workshop = LISBON): string[] {
  const log = readLog("climate/shop.csv", text, stated, workshop);
  if (!("times" in log)) return log.map(({ line, column, code }) => `${line}:${column} ${code}`);
  return Array.from(
    log.times,
    (time, i) => `${stamp(time)} ${figure(log.temperatures[i])} ${figure(log.humidities[i])}`,
  );
}

export function messages(text: string, stated: Stated = {}): string[] {
  const log = readLog("climate/shop.csv", text, stated, LISBON);
  return "times" in log ? [] : log.map(({ message }) => message);
}

const stamp = (time: number): string => new Date(time * 1000).toISOString().replace(/(?::00)?\.000Z$/u, "Z");
const figure = (value = Number.NaN): string => (Number.isNaN(value) ? "-" : String(Number(value.toFixed(6))));
