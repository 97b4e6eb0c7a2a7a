/** Everything in `hours/`: tables of hours from before the record was kept, and what stands beside them. */
import { idFault } from "../../facts/id.ts";
import { LIMITS } from "../../facts/limits.ts";
import { type Fault, isFault, type Reading } from "../../facts/reading.ts";
import type { Worked } from "../../facts/time/hours.ts";
import type { Span } from "../../facts/time/span.ts";
import { placed, type Problem } from "../../problem.ts";
import { bytesOf } from "../file-bytes.ts";
import type { Filed } from "../filed.ts";
import { type Form, readText } from "../text/bytes.ts";
import type { Folder } from "../folder.ts";
import { cellsBy, partsOfTime } from "./cells.ts";
import type { EarlierSpec, Key } from "./columns.ts";
import { type Row, type Table, tableOf } from "./table.ts";

/** A row as far as it is sound. */
export interface EarlierRow {
  readonly row: Row;
  readonly span: Span | undefined;
  readonly who: readonly string[];
  readonly task: string | undefined;
  readonly time: Worked | undefined;
  /** Minutes of each of `who`. */
  readonly minutes: readonly number[];
  readonly assembly: string | undefined;
  readonly source: string | undefined;
}

export interface EarlierTable {
  readonly file: string;
  readonly id: string;
  readonly beside: Filed<EarlierSpec> | undefined;
  readonly rows: readonly EarlierRow[];
  /** How many lines are set aside. */
  readonly setAside: number;
}

export interface Earlier {
  /** Tables whose layout is sound, by name. */
  readonly tables: readonly EarlierTable[];
  readonly problems: readonly Problem[];
  readonly forms: ReadonlyMap<string, readonly Form[]>;
}

export function readEarlier(folder: Folder, sidecars: readonly Filed<EarlierSpec>[]): Earlier {
  const csv = folder.files.filter((file) => /^hours\/[^/]+\.csv$/iu.test(file));
  const problems: Problem[] = alone(csv, sidecars);
  const tables: EarlierTable[] = [];
  const forms = new Map<string, readonly Form[]>();
  for (const file of csv) {
    const id = file.slice("hours/".length).replace(/\.csv$/iu, "");
    const beside = sidecars.find((one) => one.id === id);
    const misnamed = idFault(id, "notebook-1");
    if (misnamed) problems.push(named(file, misnamed));
    // What is wrong beside a table would be told again as a fault of its header.
    if (misnamed || beside?.whole === false) continue;
    const bytes = bytesOf(folder, file, LIMITS.fileBytes);
    const text = "problem" in bytes ? bytes : readText(file, bytes, { isTable: true });
    if ("problem" in text) {
      problems.push(text.problem);
      continue;
    }
    forms.set(file, text.forms);
    const table = tableOf(file, text.source.text, beside?.spec);
    if (!("rows" in table)) {
      for (const problem of table) problems.push(problem);
      continue;
    }
    for (const { at, fault } of table.astray)
      if (beside) problems.push(placed(beside.at(["set_aside", at, "line"]), fault));
    tables.push({ file, id, beside, rows: rowsOf(table, beside?.spec, problems), setAside: table.setAside });
  }
  return { tables, problems, forms };
}

function named(file: string, { instead, ...fault }: Fault): Problem {
  const place = { file, line: 1, column: 1 };
  if (fault.code === "limit" || instead === undefined)
    return { ...place, ...fault, mend: "give the file another name" };
  return {
    ...place,
    ...fault,
    code: "file-name",
    mend: `rename it to ${instead}.csv`,
    edit: { rename: `hours/${instead}.csv` },
  };
}

function alone(csv: readonly string[], sidecars: readonly Filed<EarlierSpec>[]): Problem[] {
  const names = new Set(csv.map((file) => file.replace(/\.csv$/iu, "")));
  return sidecars
    .filter(({ id }) => !names.has(`hours/${id}`))
    .map(({ file, id }) => ({
      file,
      line: 1,
      column: 1,
      code: "earlier-alone",
      message: "no table lies beside this file",
      expected: `hours/${id}.csv`,
      mend: "put the table there, name this file as the table is named, or take it out",
    }));
}

function rowsOf(table: Table, spec: EarlierSpec | undefined, problems: Problem[]): EarlierRow[] {
  const cells = cellsBy(spec);
  return table.rows.map((row) => {
    const tell = (key: Key, fault: Fault): undefined => {
      problems.push(placed(row.place(key), fault, row.cell(key) ?? ""));
    };
    const sound = <T>(key: Key, reading: Reading<T>): T | undefined =>
      isFault(reading) ? tell(key, reading.fault) : reading.value;
    const value = <T>(key: Key, read: (typed: string) => Reading<T>): T | undefined => {
      const typed = row.cell(key);
      return typed === undefined ? tell(key, empty(key)) : sound(key, read(typed));
    };
    if (row.over > 0) tell("span", beyondHeader(row.over));
    const source = row.cell("source") ?? table.source;
    if (source === undefined) tell("source", NO_SOURCE);
    const { who: all, task, assembly } = spec?.every_line ?? {};
    const who = all ?? value("who", (typed) => ({ value: cells.people(typed) })) ?? [];
    const time = value("time", cells.time);
    const place = row.cell("assembly");
    return {
      row,
      span: value("span", cells.span),
      who,
      task: task ?? value("task", (typed) => ({ value: cells.task(typed) })),
      time,
      minutes: (time && sound("time", partsOfTime(time, who.length, spec))) ?? [],
      assembly: assembly ?? (place === undefined ? undefined : cells.assembly(place)),
      source,
    };
  });
}

const EXAMPLES: { readonly [key in Key]: string } = {
  span: "a day, a month or a year, such as 2021-03-14, 2021-03 or 2021",
  who: "the id of a person, or several with + between them",
  task: "one of the aircraft's tasks",
  time: "hours, such as 2:45, 2.75, 2h45 or 165 min",
  assembly: "the id of an assembly",
  source: "where the line comes from",
};

const empty = (key: Key): Fault => ({
  code: "earlier-cell",
  message: `this row has nothing under ${key}`,
  expected: EXAMPLES[key],
  mend: "fill it in as far as you know it, or take the row out",
});

const NO_SOURCE: Fault = {
  code: "earlier-cell",
  message: "nothing says where this line comes from",
  expected: "a notebook and its page, or whatever it was copied from",
  mend: "say it in the column `source`, or for all lines with `source:` in a file beside the table",
};

const beyondHeader = (over: number): Fault => ({
  code: "earlier-cell",
  message: `this row has ${over === 1 ? "a cell" : `${over} cells`} beyond the header`,
  expected: "as many cells as the header has",
  mend: "look for a comma within a cell, and put such a cell into quotation marks",
});
