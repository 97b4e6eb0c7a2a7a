/** One logger file from text to readings, or all that is wrong with it. */
import { HOUR_SECONDS } from "../facts/quantity/conversions.ts";
import type { Problem } from "../problem.ts";
import type { Fault } from "../facts/reading.ts";
import { shown } from "../facts/reading.ts";
import { type Bound, boundOf, columnsFault, unreadFault } from "../record/table/report.ts";
import { fromLine, type Rows, rowsOf } from "../record/table/csv.ts";
import type { Stated } from "./sidecar.ts";
import { type Layout, layoutOf } from "./layout.ts";
import { momentsOf } from "./moments.ts";
import { numericReader, orderOf } from "./cell.ts";
import { readingsOf, stampIn } from "./readings.ts";
import { HEADER, Report } from "../record/table/report.ts";
import { type Series, seriesOf } from "./series.ts";
import type { StampReader } from "../facts/time/stamp.ts";
import { statedReader } from "../facts/time/stated-stamp.ts";

/** The longest time between two readings that is no gap where the builder states none, s: this program's default. */
export const USUAL_GAP = 2 * HOUR_SECONDS;

export interface Workshop {
  readonly timeZone: string;
  /** The last second of today: no reading can be later. */
  readonly latest: number;
}

export interface Log extends Series {
  readonly text: string;
  readonly layout: Layout;
  readonly gap: number;
}

/** `text` begins without a byte order mark and has LF line ends. */
export function readLog(file: string, text: string, stated: Stated, workshop: Workshop): Log | readonly Problem[] {
  const report = new Report();
  const bound = boundOf(text);
  if (bound !== undefined) return [toldOf(file, bound)];
  const layout = layoutOf(text, stated);
  if ("fault" in layout) {
    report.say(HEADER, layout.cell, layout.fault);
    return report.problems(file, text, layout);
  }
  const wide = columnsFault(layout.header.length);
  if (wide !== undefined) return [toldOf(file, { line: layout.headerLine, fault: wide })];
  const rows = rowsOf(fromLine(text, layout.bodyLine), layout.delimiter);
  if ("line" in rows) return [toldOf(file, { line: rows.line + layout.bodyLine - 1, fault: unreadFault(rows) })];
  const series = seriesIn(rows, layout, stated, workshop, report);
  const gap = stated.gap ?? USUAL_GAP;
  if (series !== undefined && report.isEmpty) checkSeries(series, layout, stated, workshop, report);
  return series !== undefined && report.isEmpty
    ? { ...series, text, layout, gap }
    : report.problems(file, text, layout);
}

function toldOf(file: string, { line, fault }: Bound): Problem {
  return { file, line, column: 1, ...fault };
}

function seriesIn(rows: Rows, layout: Layout, stated: Stated, workshop: Workshop, report: Report): Series | undefined {
  const stamp = stampReader(rows, layout, stated);
  if ("fault" in stamp) {
    report.say(rows.length > 0 ? 0 : HEADER, layout.columns.time[0] ?? 0, stamp.fault);
    return undefined;
  }
  const readings = readingsOf(rows, layout, stated, stamp.read, report);
  return seriesOf(readings, momentsOf(readings, layout, stated, workshop.timeZone, report), report);
}

function stampReader(
  rows: Rows,
  { columns }: Layout,
  stated: Stated,
): { readonly read: StampReader } | { readonly fault: Fault } {
  if (stated.time !== undefined) {
    const read = statedReader(stated.time);
    return read === undefined
      ? {
          fault: {
            code: "climate-stamp",
            message: "the form of the time in climate/NAME.md leaves the moment open",
            expected: "a form such as DD/MM/YYYY HH:mm, or MM/DD/YYYY hh:mm A",
            found: stated.time,
            mend: "name year, month, day, hour and minute in it once each",
          },
        }
      : { read };
  }
  const order = orderOf(stampsOf(rows, columns.time));
  if (typeof order !== "string") return { read: numericReader(order.order, order.mark) };
  const message = {
    unclear: "nothing tells whether the day or the month comes first",
    both: "the day comes first in some stamps and the month in others",
    "two-digit years": "a year of two digits leaves open which figure is the year",
    "no stamp": "no stamp of a form known here was found",
  }[order];
  const year = order === "two-digit years" ? "YY" : "YYYY";
  const expected = "a form such as 2025-03-08 14:20, or one that is stated";
  return {
    fault: {
      code: "climate-stamp",
      message,
      expected,
      found: shown(firstOf(stampsOf(rows, columns.time)) ?? "no line after the header"),
      mend: `say the form in a file beside it, climate/NAME.md: \`time: DD/MM/${year} HH:mm\` or \`time: MM/DD/${year} HH:mm\``,
    },
  };
}

/** One by one: most files tell the order by the first, and a file may have two million. */
function* stampsOf(rows: Rows, time: Layout["columns"]["time"]): Generator<string> {
  for (const line of rows) yield stampIn(line, time);
}

function firstOf(stamps: Iterable<string>): string | undefined {
  for (const typed of stamps) if (typed !== "") return typed;
  return undefined;
}

function checkSeries(
  { times, rows }: Series,
  layout: Layout,
  stated: Stated,
  { latest }: Workshop,
  report: Report,
): void {
  const last = times.length - 1;
  if (last < 0)
    report.say(HEADER, 0, {
      code: "climate-empty",
      message: "no reading follows the header",
      mend: "export the file again, or take it out of climate/",
    });
  if ((times[last] ?? 0) > latest)
    report.say(rows[last] ?? 0, layout.columns.time[0] ?? 0, {
      code: "climate-time",
      message: "the reading lies after today",
      mend: "set the logger's clock, or say the form of its stamps in climate/NAME.md",
    });
  const usual = usualStep(times);
  if (stated.gap === undefined && usual > USUAL_GAP) {
    report.say(HEADER, 0, {
      code: "climate-gap",
      message: `the readings are mostly ${Number((usual / HOUR_SECONDS).toFixed(1))} h apart, and what is more than 2 h counts as a gap unless you say otherwise`,
      mend: "say in a file beside it, climate/NAME.md, how long may lie between two readings, such as `gap: 6 h`",
    });
  }
}

/** The middle one of the steps between readings, s; 0 where there are none. */
function usualStep(times: Float64Array): number {
  const steps = times
    .subarray(1)
    .map((time, i) => time - (times[i] ?? 0))
    .sort();
  return steps[steps.length >> 1] ?? 0;
}
