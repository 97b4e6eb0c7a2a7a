/** A table of earlier hours as it stands in its file: rows of cells, each with its place. */
import { beyond, inThousands, LIMITS } from "../../facts/limits.ts";
import type { Place, Problem } from "../../problem.ts";
import { columnOf, type Delimiter, linesOf, type Rows, rowsOf, type Unread } from "../table/csv.ts";
import { unreadFault } from "../table/report.ts";
import { columnsOf, type Columns, DELIMITERS, type EarlierSpec, type Key, known } from "./columns.ts";

export interface Row {
  /** What stands in a column; undefined where nothing does. */
  readonly cell: (key: Key) => string | undefined;
  readonly place: (key: Key) => Place;
  /** How many cells it has beyond those of the header. */
  readonly over: number;
}

export interface Table {
  readonly file: string;
  /** Said of all lines that do not say it themselves. */
  readonly source?: string;
  readonly rows: readonly Row[];
}

/** The table, or all that is wrong with how it is laid out. */
export function tableOf(file: string, text: string, spec: EarlierSpec | undefined): Table | readonly Problem[] {
  const delimiter = delimiterOf(text, spec);
  const rows = rowsOf(text, delimiter);
  if ("line" in rows) return [unreadRow(file, rows)];
  const starts = linesOf(text, delimiter);
  const lines = text.split("\n");
  const placeOf = (row: number, cell: number): Place => {
    const line = starts[row] ?? 1;
    const text = lines[line - 1] ?? "";
    const column = columnOf(text, delimiter, cell);
    const before = /^[ \t]*"?/u.exec(text.slice(column - 1))?.[0].length ?? 0;
    return { file, line, column: text[column - 1 + before] === undefined ? column : column + before };
  };
  const [header = [], ...body] = rows;
  const columns = columnsOf(header, spec);
  if (!("count" in columns)) return columns.map(({ cell, fault }) => ({ ...placeOf(0, cell), ...fault }));
  if (body.length > LIMITS.earlierRows) return [{ ...placeOf(LIMITS.earlierRows + 1, 0), ...tooMany(body.length) }];
  const table = { file, rows: filled(body, columns, placeOf) };
  return spec?.source === undefined ? table : { ...table, source: spec.source };
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

/** What parts the cells of the first line so that most of its names are known. */
function delimiterOf(text: string, spec: EarlierSpec | undefined): Delimiter {
  const head = text.split("\n", 1)[0] ?? "";
  const found = DELIMITERS.map((delimiter) => {
    const rows = rowsOf(head, delimiter);
    return { delimiter, names: "line" in rows ? 0 : known(rows[0] ?? [], spec) };
  });
  return found.reduce((best, one) => (one.names > best.names ? one : best)).delimiter;
}

/** Rows of nothing but delimiters, as spreadsheets write them, hold no line. */
function filled(rows: Rows, { at, count }: Columns, placeOf: (row: number, cell: number) => Place): Row[] {
  return rows.flatMap((cells, index) => {
    if (cells.every((cell) => cell.trim() === "")) return [];
    const cell = (key: Key): string | undefined => {
      const typed = cells[at.get(key) ?? -1]?.trim();
      return typed === "" ? undefined : typed;
    };
    const over = cells.slice(count).filter((one) => one.trim() !== "").length;
    return [{ cell, place: (key: Key) => placeOf(index + 1, at.get(key) ?? 0), over }];
  });
}
