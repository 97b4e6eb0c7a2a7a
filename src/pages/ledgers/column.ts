/**
 * Columns of ledgers: each says its name, what stands in it, in which unit and where it comes from, and takes its value.
 */
import * as z from "zod";
import { figureRead } from "../../facts/quantity/ends.ts";
import { type FileKind, SCHEMAS } from "../../facts/kinds.ts";
import type { Moment, Noted } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { formAt } from "../../record/schema/form.ts";

export type Cell = string | number | readonly string[] | null;
export interface Row {
  readonly [column: string]: Cell;
}

/** `ids`: a list, in CSV with blanks between. `day`: as ISO 8601 has it. */
export type ColumnType = "text" | "number" | "integer" | "day" | "ids" | "yes or no";

/** A field of the record by the kind of its file, such as `entry: hours[].task`. */
export type FieldName = `${FileKind}: ${string}`;

/** What a reader is told of a column. */
export interface ColumnTold {
  readonly name: string;
  readonly type: ColumnType;
  readonly unit?: string;
  readonly says: string;
  /** The field that the builder typed; undefined of what was reckoned. */
  readonly field?: FieldName;
}

export interface Column<T> extends ColumnTold {
  readonly of: (thing: T, shown: Shown) => Cell | undefined;
}

type Of<T, C> = (thing: T, shown: Shown) => C | undefined;

/** Units by the ending of a column's name, the longer first. */
export const ENDINGS: readonly (readonly [ending: string, unit: string, says: string])[] = [
  ["_kg_m", "kg m", "kilogram metres"],
  ["_epoch_s", "s", "seconds since the beginning of 1970, UTC"],
  ["_share", "1", "1 is 100 %"],
  ["_degc", "°C", "degrees Celsius"],
  ["_kg", "kg", "kilograms"],
  ["_m2", "m²", "square metres"],
  ["_m3", "m³", "cubic metres"],
  ["_pa", "Pa", "pascals"],
  ["_m", "m", "metres"],
  ["_n", "N", "newtons"],
  ["_s", "s", "seconds"],
];

/** Units as cells of a column `unit` have them. */
export const UNITS: { readonly [unit: string]: string } = {
  "m²": "m2",
  "m³": "m3",
  N: "n",
  Pa: "pa",
  "°C": "degc",
  "1": "share",
  "kg/m³": "kg_m3",
  "kg/m²": "kg_m2",
  "1/m": "per_m",
};

/**
 * What the record’s own form says of a field; it throws where there is none, so that no column names one that is not.
 */
function fieldSays(field: FieldName): string {
  const [kind, path = ""] = field.split(": ") as [FileKind, string?];
  const steps = path.split(/\.|(?=\[\])/).map((step) => (step === "[]" ? 0 : step));
  const form = formAt(SCHEMAS[kind], steps);
  const says = form && z.globalRegistry.get(form)?.description;
  if (says === undefined) throw new Error(`no field ${field} says what it is`);
  return says;
}

const unitOf = (name: string): { readonly unit?: string } => {
  const unit = ENDINGS.find(([ending]) => name.endsWith(ending))?.[1];
  return unit === undefined ? {} : { unit };
};

/** What was reckoned, or follows from where a thing stands. */
export function told<T>(name: string, says: string, of: Of<T, Cell>, type: ColumnType = "text"): Column<T> {
  return { name, type, ...unitOf(name), says, of };
}

/** A number that was reckoned; its unit is given, or ends the column's name. */
export function figure<T>(name: string, says: string, of: Of<T, number>, unit?: string): Column<T> {
  return { ...told<T>(name, says, of, "number"), ...(unit === undefined ? {} : { unit }) };
}

/** What a builder typed in a field, which says what it is. */
export function typed<T>(name: string, field: FieldName, of: Of<T, Cell>, type: ColumnType = "text"): Column<T> {
  return { name, type, ...unitOf(name), says: fieldSays(field), field, of };
}

/**
 * A quantity as typed, and its figure in the unit of reckoning where one was read: a range and an estimate are as
 * typed.
 */
export function quantity<T>(word: string, unit: string, field: FieldName, of: Of<T, Noted>): Column<T>[] {
  return [
    typed<T>(`${word}_typed`, field, (...from) => of(...from)?.typed),
    {
      ...figure<T>(
        `${word}_${unit}`,
        `The figure of ${word}_typed; empty where a range or an estimate was noted.`,
        (...from) => figureRead(of(...from)),
      ),
      field,
    },
  ];
}

/** A time of day as typed, and as a moment. */
export function moment<T>(word: string, field: FieldName, of: Of<T, Moment>): Column<T>[] {
  return [
    typed<T>(`${word}_typed`, field, (...from) => of(...from)?.typed),
    { ...figure<T>(`${word}_epoch_s`, `The moment of ${word}_typed.`, (...from) => of(...from)?.epoch), field },
  ];
}

/** One ledger: what its rows are, and its columns. */
export interface Ledger {
  readonly name: string;
  /** What a row is. */
  readonly says: string;
  readonly columns: readonly ColumnTold[];
  /** The column that tells its rows apart, where one does. */
  readonly key?: string;
  readonly rows: (shown: Shown) => Row[];
  /** How many rows, of which none is made. */
  readonly count: (shown: Shown) => number;
}

export function ledger<T>(
  name: string,
  says: string,
  things: (shown: Shown) => readonly T[],
  columns: readonly Column<T>[],
  key?: string,
): Ledger {
  const rowOf = (thing: T, shown: Shown): Row => {
    const row: { [column: string]: Cell } = {};
    for (const { name: column, of } of columns) row[column] = of(thing, shown) ?? null;
    return row;
  };
  const rows = (shown: Shown): Row[] => things(shown).map((thing) => rowOf(thing, shown));
  const count = (shown: Shown): number => things(shown).length;
  return { name, says, columns, rows, count, ...(key !== undefined && { key }) };
}
