/** Which columns a table of earlier hours has, by the names they have here or by what its builder says they are called. */
import type * as z from "zod";
import type { earlierHoursSchema } from "../../facts/build/earlier-hours.ts";
import { EARLIER_KEYS } from "../../facts/values.ts";
import { nearest } from "../../facts/nearest.ts";
import { type Fault, meaning, onlyYouKnow, shown } from "../../facts/reading.ts";
import type { Delimiter } from "../table/csv.ts";

export type EarlierSpec = z.output<typeof earlierHoursSchema>;

const KEYS = EARLIER_KEYS;
export type Key = (typeof KEYS)[number];
const NEEDED: readonly Key[] = ["span", "who", "task", "time"];
export const DELIMITERS: readonly Delimiter[] = [",", ";", "\t"];

export interface Columns {
  /** Place in a row of each column that is there. */
  readonly at: ReadonlyMap<Key, number>;
  readonly count: number;
}

/** A fault of the header, at one of its cells. */
export interface HeaderFault {
  readonly cell: number;
  readonly fault: Fault;
}

/** What is wrong with the header, all of it; or the columns. */
export function columnsOf(cells: readonly string[], spec: EarlierSpec | undefined): Columns | readonly HeaderFault[] {
  const names = namesOf(spec);
  const passed = new Set((spec?.unread ?? []).map(folded));
  const at = new Map<Key, number>();
  const faults: HeaderFault[] = [];
  cells.forEach((cell, i) => {
    const key = names.get(folded(cell));
    if (key === undefined) {
      if (cell.trim() !== "" && !passed.has(folded(cell))) faults.push({ cell: i, fault: unknown(cell, names) });
    } else if (at.has(key)) faults.push({ cell: i, fault: twice(cell) });
    else at.set(key, i);
  });
  const missing = NEEDED.filter((key) => !at.has(key) && !isOfEachLine(key, spec));
  if (missing.length > 0) faults.unshift({ cell: 0, fault: without(missing, cells) });
  return faults.length > 0 ? faults : { at, count: cells.length };
}

const isOfEachLine = (key: Key, spec: EarlierSpec | undefined): boolean =>
  (key === "who" || key === "task") && spec?.every_line?.[key] !== undefined;

/** How many of the columns a header names. */
export function known(cells: readonly string[], spec: EarlierSpec | undefined): number {
  const names = namesOf(spec);
  return cells.filter((cell) => names.has(folded(cell))).length;
}

const folded = (cell: string): string => cell.normalize("NFC").trim().toLowerCase();

const namesOf = (spec: EarlierSpec | undefined): ReadonlyMap<string, Key> =>
  new Map(KEYS.map((key) => [folded(spec?.columns?.[key] ?? key), key]));

const HEADER = "a header line such as `span,who,task,time,assembly,source`";

function without(missing: readonly Key[], cells: readonly string[]): Fault {
  return {
    code: "earlier-header",
    message: `no column is called ${missing.join(", nor ")}`,
    expected: HEADER,
    found: shown(cells.join(" ")),
    mend: "put that line above the others, or say under `columns` in a file beside it what its columns are called",
  };
}

function unknown(cell: string, names: ReadonlyMap<string, Key>): Fault {
  const meant = nearest(cell.trim(), names.keys());
  return {
    code: "earlier-header",
    message: "nothing says what is in this column",
    expected: HEADER,
    found: shown(cell),
    ...(meant === undefined
      ? onlyYouKnow("name it under `columns` in a file beside it, or under `unread` if it holds none of these")
      : meaning(meant)),
  };
}

const twice = (cell: string): Fault => ({
  code: "earlier-header",
  message: "two columns have this name",
  expected: HEADER,
  found: shown(cell),
  mend: "give one of them another name, and say under `unread` what is to be passed over",
});
