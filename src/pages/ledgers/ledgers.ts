import { stringify } from "csv-stringify/sync";
import { holdPointRows, measurementRows, scaleRows, taskRows, weightRows } from "./ledger-measures.ts";
import {
  batchRows,
  earlierRows,
  findingRows,
  hoursRows,
  jointRows,
  pieceRows,
  type Cell,
  type Row,
} from "./ledger-rows.ts";
import { coatLedger } from "./coats.ts";
import { cutRows, remainRows, fittedRows, stockRows } from "./ledger-stock.ts";
import { amendmentRows } from "./amendment-rows.ts";
import { RULES_VERSION } from "../../evidence/version.ts";
import type { Shown } from "../../editions/shown.ts";

export interface Ledger {
  /** From the site's root, such as `data/hours.csv`. */
  readonly path: string;
  readonly text: string;
}

/** Raised when a column goes or comes to mean something else. Ledgers without it are of the first form. */
const LEDGER_FORM = 2;

const LEDGERS: readonly (readonly [name: string, rows: (shown: Shown) => Row[]])[] = [
  ["hours", hoursRows],
  ["earlier-hours", earlierRows],
  ["batches", batchRows],
  ["pieces", pieceRows],
  ["joints", jointRows],
  ["findings", findingRows],
  ["amendments", amendmentRows],
  ["measurements", measurementRows],
  ["hold-points", holdPointRows],
  ["weights", weightRows],
  ["scales", scaleRows],
  ["tasks", taskRows],
  ["cuts", cutRows],
  ["remains", remainRows],
  ["stock", stockRows],
  ["fitted", fittedRows],
  ["coats", coatLedger],
];

/** Whether an edition has ledgers: public only where the aircraft file says so. */
function hasLedgers({ edition, record }: Shown): boolean {
  return edition !== "public" || record.aircraft.publicShows.includes("ledgers");
}

/**
 * The numbers and verdicts of an edition for other programs, each ledger as JSON and as CSV with the same rows and
 * columns.
 * One without rows is left out.
 *
 * JSON: `{ aircraft, edition, day, form, rules, rows: [{ column: value }] }`: the versions of this form and of the rules that judged. A value is text, a number, a list of ids, or null
 * where nothing was noted.
 * Columns that end in `_typed` hold what the builder typed; those beside them the value in the unit their name ends in:
 * `_kg`, `_m`, `_m2`, `_m3`, `_n`, `_pa`, `_degc` (°C), `_s` (seconds), `_epoch_s` (seconds since 1970-01-01T00:00Z),
 * `_share` (1 = 100 %), `_kg_m`.
 * Measurements, cuts, remains and stock have their unit in a column of its own. Tasks are shared out in points of one.
 * Numbers are not rounded. Findings carry the id of their rule; `rests_on` lists `kind:id`.
 *
 * CSV (RFC 4180, UTF-8, one heading row): lists are ids with blanks between them, null is an empty field. A text that
 * a spreadsheet
 * would take for a formula, one that begins with `=`, `+`, `-`, `@`, a tab or a carriage return, has an apostrophe
 * before it; numbers never do.
 */
export function ledgersOf(shown: Shown): Ledger[] {
  if (!hasLedgers(shown)) return [];
  return LEDGERS.flatMap(([name, make]) => {
    const rows = make(shown);
    if (rows.length === 0) return [];
    return [
      { path: `data/${name}.json`, text: jsonOf(shown, rows) },
      { path: `data/${name}.csv`, text: csvOf(rows) },
    ];
  });
}

function jsonOf({ record, edition }: Shown, rows: readonly Row[]): string {
  const head = JSON.stringify({
    aircraft: record.aircraft.name,
    edition,
    day: record.day,
    form: LEDGER_FORM,
    rules: RULES_VERSION,
  });
  const body = rows.map((row) => JSON.stringify(row)).join(",\n");
  return `${head.slice(0, -1)},"rows":[\n${body}\n]}\n`;
}

function csvOf(rows: readonly Row[]): string {
  const columns = Object.keys(rows[0] ?? {});
  if (columns.length === 0) return "";
  return stringify([columns, ...rows.map((row) => columns.map((column) => field(row[column])))], {
    escape_formulas: true,
    record_delimiter: "\r\n",
  });
}

function field(cell: Cell | undefined): string | number {
  if (cell === null || cell === undefined) return "";
  return typeof cell === "string" || typeof cell === "number" ? cell : cell.join(" ");
}
