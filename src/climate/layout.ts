/** How a logger's file is laid out: what parts its cells, which line is the header, what the columns are. */
import type { Fault } from "../facts/reading.ts";
import { shown } from "../facts/reading.ts";
import { type Delimiter, linesOf, type Rows, rowsOf } from "../record/table/csv.ts";
import type { Columns, Stated } from "./sidecar.ts";
import { type Header, headerOf } from "./header.ts";
import type { Whereabouts } from "../record/table/report.ts";

export interface Layout extends Whereabouts {
  readonly header: readonly string[];
  readonly columns: Columns;
}

/** A fault of the whole file, at a cell of its header. */
export interface LayoutFault extends Whereabouts {
  readonly cell: number;
  readonly fault: Fault;
  /** The columns of which each could be the one that is meant, where that is what is open. */
  readonly open?: { readonly what: "time" | "temperature" | "humidity"; readonly columns: readonly string[] };
}

const DELIMITERS: readonly Delimiter[] = [",", ";", "\t"];
/** Lines within which the header must stand; loggers write some about themselves before it. */
const PREAMBLE = 100;
const BESIDE = "say in a file beside it, climate/NAME.md,";

export function layoutOf(text: string, stated: Stated): Layout | LayoutFault {
  const head = text.split("\n", PREAMBLE).join("\n");
  const tried = (stated.delimiter === undefined ? DELIMITERS : [stated.delimiter]).flatMap((delimiter) => {
    const rows = rowsOf(head, delimiter);
    const sound = "line" in rows ? rowsOf(head.split("\n", rows.line - 1).join("\n"), delimiter) : rows;
    return "line" in sound ? [] : found(sound, delimiter, stated);
  });
  const [only] = tried;
  if (only === undefined) return { delimiter: ",", headerLine: 1, bodyLine: 1, cell: 0, fault: noHeader(text, stated) };
  const where = whereabouts(head, only);
  if (tried.length > 1)
    return {
      ...where,
      cell: 0,
      fault: {
        code: "climate-header",
        message: "the header can be parted in more than one way",
        mend: `${BESIDE} what parts the cells, such as \`delimiter: ";"\``,
      },
    };
  return "columns" in only.header
    ? { ...where, header: only.cells, columns: only.header.columns }
    : { ...where, ...several(only.cells, only.header) };
}

interface Tried {
  readonly delimiter: Delimiter;
  readonly row: number;
  readonly header: Header;
  readonly cells: readonly string[];
}

function found(rows: Rows, delimiter: Delimiter, stated: Stated): Tried[] {
  for (const [row, cells] of rows.entries()) {
    const header = headerOf(cells, stated);
    if (header !== undefined) return [{ delimiter, row, header, cells }];
  }
  return [];
}

function whereabouts(head: string, { delimiter, row }: Tried): Whereabouts {
  const starts = linesOf(head, delimiter);
  const headerLine = starts[row] ?? 1;
  return { delimiter, headerLine, bodyLine: starts[row + 1] ?? head.split("\n").length + 1 };
}

function several(
  cells: readonly string[],
  { what, could }: Exclude<Header, { columns: unknown }>,
): Pick<LayoutFault, "cell" | "fault" | "open"> {
  const named = could.map((at) => `"${(cells[at] ?? "").trim()}"`).join(" and ");
  const mend =
    what === "time"
      ? `${BESIDE} which column is meant, such as \`time: { column: …, form: YYYY-MM-DD HH:mm }\``
      : `${BESIDE} which is meant, such as \`${what}: { column: … }\``;
  return {
    cell: could[1] ?? 0,
    open: { what, columns: could.map((at) => (cells[at] ?? "").trim()) },
    fault: { code: "climate-header", message: `more than one column could be the ${what}: ${named}`, mend },
  };
}

function noHeader(text: string, stated: Stated): Fault {
  const columns = [stated.timeColumn, stated.temperature?.column, stated.humidity?.column].filter(
    (column) => column !== undefined,
  );
  const expected =
    columns.length > 0
      ? `a header line with ${columns.map((column) => `"${column}"`).join(", ")}`
      : "a line such as `Time (UTC);Temperature (°C);Humidity (%)`";
  return {
    code: "climate-header",
    message: `no header line was found within the first ${PREAMBLE} lines`,
    expected,
    found: shown(text.split("\n", 1)[0] ?? ""),
    mend: `${BESIDE} which columns are the time, the temperature and the humidity, as their header spells them`,
  };
}
