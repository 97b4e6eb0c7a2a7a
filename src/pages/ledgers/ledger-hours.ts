/** The ledgers of hours, and of tables of hours from before the record was kept. */
import type { EarlierHours, EarlierLine, Entry, HoursLine } from "../../facts/types.ts";
import { figure, type Ledger, ledger, told, typed } from "./column.ts";

interface Worked {
  readonly entry: Entry;
  readonly line: HoursLine;
}

export const HOURS: Ledger = ledger<Worked>(
  "hours",
  "One line of hours that an entry notes, for one person.",
  ({ record }) => record.entries.flatMap((entry) => entry.hours.map((line) => ({ entry, line }))),
  [
    told("entry", "Id of the entry: the name of its file.", ({ entry }) => entry.id),
    typed("day", "entry: date", ({ entry }) => entry.day, "day"),
    typed("person", "entry: hours[].who", ({ line }) => line.who),
    told("name", "That person’s name, as this edition gives it.", ({ line }, { nameOf }) => nameOf(line.who)),
    typed("task", "entry: hours[].task", ({ line }) => line.task),
    typed("assembly", "entry: hours[].assembly", ({ line }) => line.assembly),
    figure("minutes", "How long, as reckoned from what was typed.", ({ line }) => line.minutes, "min"),
    told("typed", "How long, or from when to when, as typed.", ({ line }) => line.typed),
    typed("from", "entry: hours[].from", ({ line }) => line.from),
    typed("to", "entry: hours[].to", ({ line }) => line.to),
    typed("hand", "entry: hours[].hand", ({ line }) => line.hand),
    typed("where", "entry: hours[].where", ({ line }) => line.where),
  ],
);

interface Earlier {
  readonly table: EarlierHours;
  readonly line: EarlierLine;
}

export const EARLIER_HOURS: Ledger = ledger<Earlier>(
  "earlier-hours",
  "One person of one line of a table from before the record was kept.",
  ({ record }) => record.earlier.flatMap((table) => table.lines.map((line) => ({ table, line }))),
  [
    told("table", "Id of the table: the name of its file.", ({ table }) => table.id),
    typed("span", "hours: columns.span", ({ line }) => line.span.typed),
    told("from", "The first day of that span.", ({ line }) => line.span.from, "day"),
    told("to", "The last day of that span.", ({ line }) => line.span.to, "day"),
    typed("person", "hours: columns.who", ({ line }) => line.who),
    told("name", "That person’s name, as this edition gives it.", ({ line }, { nameOf }) => nameOf(line.who)),
    typed("task", "hours: columns.task", ({ line }) => line.task),
    typed("assembly", "hours: columns.assembly", ({ line }) => line.assembly),
    figure("minutes", "How long, as reckoned from what was typed.", ({ line }) => line.minutes, "min"),
    typed("typed", "hours: columns.time", ({ line }) => line.typed),
    typed("source", "hours: source", ({ line }) => line.source),
  ],
);
