import { stringify } from "csv-stringify/sync";
import { AMENDMENTS } from "./amendment-rows.ts";
import type { Cell, Ledger, Row } from "./column.ts";
import { dataPackage } from "./data-package.ts";
import { BATCHES } from "./ledger-batches.ts";
import { COATS } from "./ledger-coats.ts";
import { EARLIER_HOURS, HOURS } from "./ledger-hours.ts";
import { FINDINGS, HOLD_POINTS, JOINTS } from "./ledger-joints.ts";
import { MEASUREMENTS } from "./ledger-measures.ts";
import { PIECES } from "./ledger-pieces.ts";
import { CUTS, FITTED, REMAINS, STOCK } from "./ledger-stock.ts";
import { SCALES, TASKS, WEIGHTS } from "./ledger-weights.ts";
import { RULES_VERSION } from "../../evidence/version.ts";
import type { Shown } from "../../editions/shown.ts";
import { given, type Made, noting } from "../../reads.ts";

export interface LedgerFile {
  /** From the site's root, such as `data/hours.csv`. */
  readonly path: string;
  /** Made whenever it is asked for: all of them together take as much room as the record. */
  readonly text: string;
}

/** Raised when a column goes or comes to mean something else. Ledgers without it are of the first form. */
const LEDGER_FORM = 2;

const LEDGERS: readonly Ledger[] = [
  HOURS,
  EARLIER_HOURS,
  BATCHES,
  PIECES,
  JOINTS,
  FINDINGS,
  AMENDMENTS,
  MEASUREMENTS,
  HOLD_POINTS,
  WEIGHTS,
  SCALES,
  TASKS,
  CUTS,
  REMAINS,
  STOCK,
  FITTED,
  COATS,
];

export const NO_LEDGER = "The record has nothing to be put into a ledger yet.";

interface Filled {
  readonly ledger: Ledger;
  /** Of its rows. */
  readonly count: number;
}

/** Whether an edition says what stands in each column: the archive, which is read without anyone to ask. */
const hasDictionary = ({ edition }: Pick<Shown, "edition">): boolean => edition === "archive";

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
 * Columns that end in `_typed` hold what the builder typed; those beside them the value in the unit their name ends in, by `ENDINGS`.
 * Measurements, cuts, remains and stock have their unit in a column of its own. Tasks are shared out in points of one.
 * Numbers are not rounded. Findings carry the id of their rule; `rests_on` lists `kind:id`.
 *
 * CSV (RFC 4180, UTF-8, one heading row): lists are ids with blanks between them, null is an empty field. A text that
 * a spreadsheet
 * would take for a formula, one that begins with `=`, `+`, `-`, `@`, a tab or a carriage return, has an apostrophe
 * before it; numbers never do.
 */
export function ledgersOf(shown: Shown): LedgerFile[] {
  const ledgers = filledLedgers(shown).map(({ ledger }) => ledger);
  const rowsOf = keepingLast(shown);
  const files = ledgers.flatMap((ledger) => [
    lazily(`data/${ledger.name}.json`, () => jsonOf(shown, rowsOf(ledger))),
    lazily(`data/${ledger.name}.csv`, () => csvOf(ledger.columns, rowsOf(ledger))),
  ]);
  if (!hasDictionary(shown) || ledgers.length === 0) return files;
  return [...files, lazily("data/datapackage.json", () => dataPackage(shown, ledgers))];
}

/** The rows of a ledger, which its other file asks for right after the one. */
function keepingLast(shown: Shown): (ledger: Ledger) => readonly Row[] {
  let last: { readonly ledger: Ledger; readonly rows: Made<readonly Row[]> } | undefined;
  return (ledger) => {
    const rows = last?.ledger === ledger ? last.rows : noting(() => ledger.rows(shown));
    last = last?.ledger === ledger ? undefined : { ledger, rows };
    return given(rows);
  };
}

const lazily = (path: string, make: () => string): LedgerFile => ({
  path,
  get text() {
    return make();
  },
});

/** Ledgers that an edition has and that have rows, in their order. */
export const filledLedgers = (shown: Shown): readonly Filled[] => shown.memo.once(shown, filled);

function filled(shown: Shown): readonly Filled[] {
  if (!hasLedgers(shown)) return [];
  return LEDGERS.map((ledger) => ({ ledger, count: ledger.count(shown) })).filter(({ count }) => count > 0);
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

function csvOf(columns: Ledger["columns"], rows: readonly Row[]): string {
  const names = columns.map(({ name }) => name);
  return stringify([names, ...rows.map((row) => names.map((name) => field(row[name])))], {
    escape_formulas: true,
    record_delimiter: "\r\n",
  });
}

function field(cell: Cell | undefined): string | number {
  if (cell === null || cell === undefined) return "";
  return typeof cell === "string" || typeof cell === "number" ? cell : cell.join(" ");
}
