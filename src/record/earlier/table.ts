/** A table of earlier hours as it stands in its file: rows of cells, each with its place. */
import { defined } from "../../defined.ts";
import { beyond, inThousands, LIMITS } from "../../facts/limits.ts";
import { type Fault, shown } from "../../facts/reading.ts";
import type { Place, Problem } from "../../problem.ts";
import { columnOf, type Delimiter, fromLine, linesOf, type Rows, rowsOf, type Unread } from "../table/csv.ts";
import { unreadFault } from "../table/report.ts";
import { columnsOf, type Columns, DELIMITERS, type EarlierSpec, type Key, known } from "./columns.ts";

export interface Row {
  /** What stands in a column; undefined where nothing does. */
  readonly cell: (key: Key) => string | undefined;
  readonly place: (key: Key) => Place;
  /** The line of the file that it begins on, from 1. */
  readonly line: number;
  /** How many cells it has beyond those of the header. */
  readonly over: number;
}

export interface Table {
  readonly file: string;
  /** Said of all lines that do not say it themselves. */
  readonly source?: string;
  readonly rows: readonly Row[];
  /** How many lines are set aside. */
  readonly setAside: number;
}

/** What is wrong with a line that is set aside, by its place among those that are. */
export interface AsideFault {
  readonly at: number;
  readonly fault: Fault;
}

/** The table, or all that is wrong with how it is laid out. */
export function tableOf(
  file: string,
  text: string,
  spec: EarlierSpec | undefined,
): (Table & { readonly astray: readonly AsideFault[] }) | readonly Problem[] {
  const first = Number(spec?.header_line ?? 1);
  const lines = text.split("\n");
  const delimiter = delimiterOf(lines[first - 1] ?? "", spec);
  const rest = fromLine(text, first);
  const rows = rowsOf(rest, delimiter);
  if ("line" in rows) return [unreadRow(file, { ...rows, line: rows.line + first - 1 })];
  const starts = linesOf(rest, delimiter).map((line) => line + first - 1);
  const [header = [], ...body] = rows;
  const placeOf = (row: number, cell: number): Place => placeIn(file, lines, starts[row] ?? first, delimiter, cell);
  const columns = columnsOf(header, spec);
  if (!("count" in columns)) return columns.map(({ cell, fault }) => ({ ...placeOf(0, cell), ...fault }));
  if (body.length > LIMITS.earlierRows) return [{ ...placeOf(LIMITS.earlierRows + 1, 0), ...tooMany(body.length) }];
  const aside = new Set(spec?.set_aside?.map(({ line }) => line));
  const all = filled(body, columns, spec?.below ?? [], placeOf);
  return defined({
    file,
    rows: all.filter(({ line }) => !aside.has(line)),
    setAside: aside.size,
    astray: astrayIn(spec?.set_aside ?? [], new Set(starts.slice(1)), lines),
    source: spec?.source,
  });
}

function placeIn(file: string, lines: readonly string[], line: number, delimiter: Delimiter, cell: number): Place {
  const text = lines[line - 1] ?? "";
  const column = columnOf(text, delimiter, cell);
  const before = /^[ \t]*"?/u.exec(text.slice(column - 1))?.[0].length ?? 0;
  return { file, line, column: text[column - 1 + before] === undefined ? column : column + before };
}

/** A line that is set aside must still be the one that was: else another one is left out of the sums. */
function astrayIn(
  aside: NonNullable<EarlierSpec["set_aside"]>,
  starts: ReadonlySet<number>,
  lines: readonly string[],
): AsideFault[] {
  return aside.flatMap(({ line, typed }, at) => {
    const stands = lines[line - 1] ?? "";
    if (starts.has(line) && stands.trim().startsWith(typed.trim())) return [];
    const fault: Fault = {
      code: "earlier-aside",
      message: `line ${line} of the table is another one now`,
      expected: "the line that was set aside, beginning as it did then",
      found: shown(stands),
      mend: "look where that line is, and say its number; or take it out of `set_aside`",
    };
    return [{ at, fault }];
  });
}

function unreadRow(file: string, row: Unread): Problem {
  const fault = unreadFault(row);
  return { file, line: row.line, column: 1, ...fault, code: row.isLong ? fault.code : "earlier-cell" };
}

const tooMany = (rows: number) =>
  beyond(
    "this table has more rows than are read",
    `${inThousands(LIMITS.earlierRows)} rows`,
    "part it over several files",
    inThousands(rows),
  );

/** What parts the cells of the header so that most of its names are known. */
function delimiterOf(header: string, spec: EarlierSpec | undefined): Delimiter {
  const found = DELIMITERS.map((delimiter) => {
    const rows = rowsOf(header, delimiter);
    return { delimiter, names: "line" in rows ? 0 : known(rows[0] ?? [], spec) };
  });
  return found.reduce((best, one) => (one.names > best.names ? one : best)).delimiter;
}

/** Rows of nothing but delimiters, as spreadsheets write them, hold no line. */
function filled(
  rows: Rows,
  { at, count }: Columns,
  below: readonly Key[],
  placeOf: (row: number, cell: number) => Place,
): Row[] {
  const above = new Map<Key, string>();
  return rows.flatMap((cells, index) => {
    if (cells.every((cell) => cell.trim() === "")) return [];
    const typedIn = (key: Key): string | undefined => {
      const typed = cells[at.get(key) ?? -1]?.trim();
      return typed === "" ? undefined : typed;
    };
    for (const key of below) {
      const typed = typedIn(key);
      if (typed !== undefined) above.set(key, typed);
    }
    const merged = new Map(above);
    const cell = (key: Key): string | undefined => typedIn(key) ?? merged.get(key);
    const over = cells.slice(count).filter((one) => one.trim() !== "").length;
    const place = (key: Key): Place => placeOf(index + 1, at.get(key) ?? 0);
    return [{ cell, place, line: place("span").line, over }];
  });
}
