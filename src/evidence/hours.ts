/** Hours worked, by every cut and over time, as pages chart them. All in minutes; every cut adds up to the same total. */
import {
  byMonth,
  byWeek,
  cumulative,
  groupBy,
  sumBy,
  total,
  type Step,
  type Worked,
} from "../reckoning/hours/hours.ts";
import type { Day, EarlierLine, HoursLine, Record } from "../facts/types.ts";
import { recordIndexOf } from "./record-index.ts";
import { within } from "./readiness/within.ts";

export interface WorkedLine extends HoursLine {
  readonly day: Day;
  readonly entry: string;
}

/** `over` has a step for each day that was worked, by date. */
interface Cut {
  readonly minutes: number;
  readonly over: readonly Step[];
}

export interface Hours {
  readonly lines: readonly WorkedLine[];
  readonly all: Cut;
  /** Every assembly of the record: its own hours, and with those of all assemblies within it. */
  readonly byAssembly: ReadonlyMap<string, { readonly own: Cut; readonly within: Cut }>;
  /** On no assembly: with the own hours of each all there are. */
  readonly ofNone: Cut;
  readonly byPerson: ReadonlyMap<string, Cut>;
  readonly byTask: ReadonlyMap<string, Cut>;
  /** `YYYY-MM` to minutes, by date. */
  readonly byMonth: ReadonlyMap<string, number>;
  /** From the week of the aircraft's start to the week of the record's date, weeks without work included; `day` is the Monday. */
  readonly byWeek: readonly Worked[];
}

export function hoursOf(record: Record): Hours {
  const lines = linesOf(record);
  return {
    lines,
    all: cut(lines),
    byAssembly: assembliesOf(record, lines),
    ofNone: cut(lines.filter(({ assembly }) => assembly === undefined)),
    byPerson: cuts(groupBy(lines, (line) => line.who)),
    byTask: cuts(groupBy(lines, (line) => line.task)),
    byMonth: byMonth(lines),
    byWeek: byWeek(lines, record.aircraft.start, record.day) ?? [],
  };
}

export const linesOf = (record: Record): WorkedLine[] =>
  record.entries.flatMap((entry) => entry.hours.map((line) => ({ ...line, day: entry.day, entry: entry.id })));

/** Lines of tables from before the record was kept, each by the first day of its span. */
export const earlierLinesOf = (record: Record): (EarlierLine & Worked)[] =>
  record.earlier.flatMap(({ lines }) => lines.map((line) => ({ ...line, day: line.span.from })));

/** Minutes of each assembly's own lines, those of before included; what stands on no assembly is in none. */
export function minutesByAssembly({ entries, earlier }: Record): Map<string, number> {
  const lines = [...entries.flatMap(({ hours }) => hours), ...earlier.flatMap((table) => table.lines)];
  return sumBy(
    lines.filter(({ assembly }) => assembly !== undefined),
    ({ assembly }) => assembly ?? "",
  );
}

const cut = (lines: readonly Worked[]): Cut => ({ minutes: total(lines), over: cumulative(lines) });

const cuts = (groups: ReadonlyMap<string, readonly Worked[]>): Map<string, Cut> =>
  new Map([...groups].map(([key, lines]) => [key, cut(lines)]));

function assembliesOf(record: Record, lines: readonly WorkedLine[]): Map<string, { own: Cut; within: Cut }> {
  const index = recordIndexOf(record);
  const own = groupBy(lines, (line) => line.assembly ?? "");
  const of = (id: string): WorkedLine[] => own.get(id) ?? [];
  return new Map(
    [...record.assemblies.keys()].map((id) => [
      id,
      { own: cut(of(id)), within: cut(within(index, id).flatMap((one) => of(one.id))) },
    ]),
  );
}
