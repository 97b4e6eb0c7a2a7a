/** What must hold of whatever is read: places within their files, and values that are what was typed. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { Read } from "../../../src/record/read.ts";

/** Lines of a file as its builder's editor shows them, whatever its bytes are; nothing where there is no file. */
function linesOf(path: string): readonly string[] | undefined {
  if (!existsSync(path)) return undefined;
  const bytes = readFileSync(path);
  const wide = { fffe: "utf-16le", feff: "utf-16be" }[bytes.toString("hex", 0, 2)];
  return new TextDecoder(wide ?? "utf-8").decode(bytes).split(/\r?\n/);
}

/** Problems and notes are told in words, at a place that is there. */
export function expectTold(read: Read, folder: string): void {
  const problems = "problems" in read ? read.problems : [];
  if ("problems" in read) expect(problems.length).toBeGreaterThan(0);
  for (const { message, mend } of problems) expect([message, mend]).not.toContain("");
  for (const { file, line, column, message } of [...problems, ...read.notes]) {
    const lines = linesOf(join(folder, file)) ?? [];
    const where = `${file}:${line}:${column} ${message}`;
    expect(line, where).toBeGreaterThan(0);
    expect(line, where).toBeLessThanOrEqual(Math.max(1, lines.length));
    expect(column, where).toBeGreaterThan(0);
    if (lines.length > 0) expect(column, where).toBeLessThanOrEqual((lines[line - 1] ?? "").length + 1);
  }
}

/** What one of each unit is in the unit of reckoning, by hand: kg, m, m², m³, N, Pa, s, 1. */
const UNITS: { readonly [unit: string]: number } = {
  mg: 1e-6,
  g: 1e-3,
  kg: 1,
  oz: 0.45359237 / 16,
  lb: 0.45359237,
  mm: 1e-3,
  cm: 1e-2,
  m: 1,
  in: 0.0254,
  ft: 0.3048,
  "cm²": 1e-4,
  "m²": 1,
  ml: 1e-6,
  l: 1e-3,
  N: 1,
  kN: 1000,
  lbf: 0.45359237 * 9.80665,
  kgf: 9.80665,
  MPa: 1e6,
  psi: (0.45359237 * 9.80665) / 0.0254 ** 2,
  "%": 0.01,
  s: 1,
  min: 60,
  h: 3600,
  d: 86_400,
  "g/cm³": 1000,
  "kg/m³": 1,
  "g/m²": 1e-3,
};
const QUANTITY = /^([+-]?)(?:(\d+)[ -])?(\d+(?:\.\d+)?|\.\d+)(?:\/(\d+))?\s*(\S+)$/;

/** A quantity as a reader of the text would have it; undefined where this reading of it is too simple. */
function byHand(typed: string): number | undefined {
  const [, sign, whole = "0", number = "", under = "1", unit = ""] = QUANTITY.exec(typed) ?? [];
  const factor = Object.hasOwn(UNITS, unit) ? UNITS[unit] : undefined;
  if (factor === undefined || (whole !== "0" && under === "1")) return undefined;
  return (sign === "-" ? -1 : 1) * (Number(whole) + Number(number) / Number(under)) * factor;
}

/** Minutes of `2:45`, `2h45`, `2.75` and `165 min`. */
function minutesByHand(typed: string): number | undefined {
  const [, hours, minutes] = /^(\d+)(?::|\s*h\s*)(\d{1,2})$/.exec(typed) ?? [];
  if (hours !== undefined) return Number(hours) * 60 + Number(minutes);
  const [, decimal] = /^(\d+(?:\.\d+)?)(?:\s*h)?$/.exec(typed) ?? [];
  if (decimal !== undefined) return Number(decimal) * 60;
  const [, alone] = /^(\d+)\s*min$/.exec(typed) ?? [];
  return alone === undefined ? undefined : Number(alone);
}

/** Looks through a whole record; gives how many values were held against what was typed. */
export function expectAsTyped(value: unknown, seen = new Set<unknown>()): number {
  if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
  if (typeof value !== "object" || value === null || seen.has(value) || ArrayBuffer.isView(value)) return 0;
  seen.add(value);
  const fact = value as {
    readonly typed?: unknown;
    readonly value?: unknown;
    readonly minutes?: unknown;
    readonly day?: unknown;
  };
  let held = 0;
  if (typeof fact.typed === "string") {
    const [quantity, minutes] = [byHand(fact.typed.trim()), minutesByHand(fact.typed.trim())];
    if (quantity !== undefined && typeof fact.value === "number") {
      expect(Math.abs(fact.value - quantity), fact.typed).toBeLessThanOrEqual(Math.abs(quantity) * 1e-12);
      held += 1;
    }
    if (minutes !== undefined && typeof fact.minutes === "number") {
      expect(Math.abs(fact.minutes - minutes), fact.typed).toBeLessThanOrEqual(minutes * 1e-12);
      held += 1;
    }
  }
  const parts: Iterable<unknown> = value instanceof Map || Array.isArray(value) ? value.values() : Object.values(value);
  for (const part of parts) held += expectAsTyped(part, seen);
  return held;
}
