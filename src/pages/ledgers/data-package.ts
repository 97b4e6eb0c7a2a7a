/**
 * What stands in the ledgers, for programs: a data package as Frictionless Data describes it
 * (specs.frictionlessdata.io, version 1).
 */
import type { Shown } from "../../editions/shown.ts";
import { RULES_VERSION } from "../../evidence/version.ts";
import type { ColumnTold, ColumnType, Ledger } from "./column.ts";

/** Types of Table Schema; of a list, text with blanks between its ids. */
const TYPES: { readonly [type in ColumnType]: { readonly [property: string]: unknown } } = {
  text: { type: "string" },
  number: { type: "number" },
  integer: { type: "integer" },
  day: { type: "date" },
  ids: { type: "string" },
  "yes or no": { type: "boolean", trueValues: ["yes"], falseValues: ["no"] },
};

/** As RFC 4180 has it. */
const DIALECT = { delimiter: ",", lineTerminator: "\r\n", quoteChar: '"', doubleQuote: true, header: true };

/** The text of `datapackage.json`, which lies beside the ledgers that it tells of. */
export function dataPackage({ record }: Shown, ledgers: readonly Ledger[]): string {
  const told = {
    profile: "data-package",
    name: "ledgers",
    title: `${record.aircraft.name}: ledgers of the record of its building, up to ${record.day}`,
    description:
      "Numbers and verdicts of the record, each ledger as CSV and, under the same name, as JSON. Text that a spreadsheet would take for a formula has an apostrophe before it in CSV. An empty field was not noted, or does not apply.",
    day: record.day,
    rules: RULES_VERSION,
    resources: ledgers.map(resourceOf),
  };
  return `${JSON.stringify(told, undefined, 1)}\n`;
}

function resourceOf({ name, says, columns, key }: Ledger): object {
  return {
    profile: "tabular-data-resource",
    name,
    path: `${name}.csv`,
    description: says,
    format: "csv",
    mediatype: "text/csv",
    encoding: "utf-8",
    dialect: DIALECT,
    schema: { fields: columns.map(fieldOf), missingValues: [""], ...(key !== undefined && { primaryKey: key }) },
  };
}

function fieldOf({ name, type, unit, says, field }: ColumnTold): object {
  const list = type === "ids" ? " Ids with blanks between." : "";
  return {
    name,
    ...TYPES[type],
    description: `${says}${list}`,
    ...(unit !== undefined && { unit }),
    source: field ?? "reckoned",
  };
}
