/** In how many ways a logger's file can be read: what it leaves open is tried, and the record's own reader judges. */
import { HOUR_SECONDS } from "../../../facts/quantity/conversions.ts";
import { layoutOf } from "../../../climate/layout.ts";
import { stampIn } from "../../../climate/readings.ts";
import { statedReader } from "../../../facts/time/stated-stamp.ts";
import { readLog, type Workshop } from "../../../climate/log.ts";
import type { Stated } from "../../../climate/sidecar.ts";
import { zoneClock } from "../../../facts/time/wall-clock.ts";
import type { Problem } from "../../../problem.ts";
import { fromLine, rowsOf } from "../../../record/table/csv.ts";
import { tableHead, type TableHead } from "./table-head.ts";

/** A reading of the whole file, by what must be stated for it. */
export type Way = Stated;

export interface Ways {
  readonly ways: readonly Way[];
  /** What is wrong where there is no way. */
  readonly problems: readonly Problem[];
}

/** More than these nobody could choose from. */
const MOST = 60;
/** What a file of a million lines leaves open shows in its first ones; the whole is read once more by each way that is left. */
const SAMPLE = 5000;

export function waysToRead(text: string, workshop: Workshop): Ways {
  const head = text.split("\n", SAMPLE).join("\n");
  const table = tableHead(head);
  const found: Way[] = [];
  const open: Stated[] = [{}];
  let problems: readonly Problem[] = [];
  while (open.length > 0 && found.length < MOST) {
    const stated = open.shift() ?? {};
    const log = readLog("climate/NAME.csv", head, stated, workshop);
    if ("times" in log) found.push(stated);
    else {
      if (problems.length === 0) problems = log;
      open.push(...stepsFrom(stated, log, head, table, workshop));
    }
  }
  if (head.length === text.length) return { ways: found, problems };
  const whole = found.map((stated) => ({ stated, log: readLog("climate/NAME.csv", text, stated, workshop) }));
  const ways = whole.flatMap(({ stated, log }) => ("times" in log ? [stated] : []));
  return { ways, problems: ways.length > 0 ? [] : whole.flatMap(({ log }) => ("times" in log ? [] : log)) };
}

/** What more could be stated, where what is told says that something is open; nothing where the file itself is wrong. */
function stepsFrom(
  stated: Stated,
  problems: readonly Problem[],
  text: string,
  table: TableHead | undefined,
  workshop: Workshop,
): Stated[] {
  const codes = new Set(problems.map(({ code }) => code));
  if (codes.has("climate-header")) return columnSteps(stated, text, table);
  if (codes.has("climate-twice") && stated.sensorColumn === undefined) return table?.sensorSteps(stated) ?? [];
  if ((codes.has("climate-stamp") || codes.has("climate-time")) && stated.time === undefined)
    return FORMS.filter((time) => readsAll(time, stated, text)).map((time) => ({ ...stated, time }));
  if (codes.has("climate-unit")) return unitSteps(stated, problems);
  if (codes.has("climate-zone") && stated.zone === undefined)
    return zonesOf(workshop).map((zone) => ({ ...stated, zone }));
  if (codes.has("climate-hour") && stated.doubledHour === undefined && stated.zone !== undefined)
    return (["first", "second"] as const).map((doubledHour) => ({ ...stated, doubledHour }));
  const gap = GAP.exec(problems.find(({ code }) => code === "climate-gap")?.message ?? "")?.[1];
  return gap === undefined || Number(gap) > 6 ? [] : [{ ...stated, gap: Math.ceil(Number(gap)) * HOUR_SECONDS }];
}

const GAP = /mostly ([\d.]+) h apart/u;

const DAYS = ["D/M/YYYY", "M/D/YYYY", "D/M/YY", "M/D/YY", "YY/M/D", "YYYY/M/D"];
const CLOCKS = ["H:mm", "H:mm:ss", "h:mm A", "h:mm:ss A"];
/** One figure stands for two as well. */
const FORMS = [
  "epoch s",
  "epoch ms",
  ...DAYS.flatMap((form) => ["/", ".", "-"].map((mark) => form.replaceAll("/", mark)))
    .flatMap((form) => [form, `${form},`])
    .flatMap((form) => CLOCKS.map((clock) => `${form} ${clock}`)),
];
/** No logger of a build ran before it, s; what reads so is read wrongly. */
const FIRST = Date.UTC(2000, 0, 1) / 1000;

function readsAll(time: string, stated: Stated, text: string): boolean {
  const read = statedReader(time);
  const layout = layoutOf(text, { ...stated, time });
  if (read === undefined || "fault" in layout) return false;
  const rows = rowsOf(fromLine(text, layout.bodyLine), layout.delimiter);
  if ("line" in rows) return false;
  return rows
    .filter((row) => row.some((cell) => cell.trim() !== ""))
    .every((row) => (read(stampIn(row, layout.columns.time))?.wall ?? 0) >= FIRST);
}

function unitSteps(stated: Stated, problems: readonly Problem[]): Stated[] {
  const told = problems.filter(({ code }) => code === "climate-unit").map(({ message }) => message);
  if (told.includes("no unit is given for the temperature") && stated.temperature?.unit === undefined)
    return (["°C", "°F"] as const).map((unit) => ({ ...stated, temperature: { ...stated.temperature, unit } }));
  if (told.includes("no unit is given for the humidity") && stated.humidity?.unit === undefined)
    return [{ ...stated, humidity: { ...stated.humidity, unit: "%" } }];
  return [];
}

/** The workshop's clock, UTC, and the workshop's clock without summer time, which is the lesser of its offsets. */
function zonesOf({ timeZone }: Workshop): string[] {
  const clock = zoneClock(timeZone, ...YEAR);
  const offsets = YEAR.map((wall) => wall - (clock(wall)[0] ?? wall));
  const least = Math.min(...offsets);
  return least === 0 ? ["local", "UTC"] : ["local", "UTC", offsetWords(least)];
}

/** A day in winter and one in summer. */
const YEAR = [Date.UTC(2025, 0, 15) / 1000, Date.UTC(2025, 6, 15) / 1000] as const;

function offsetWords(seconds: number): string {
  const minutes = Math.abs(seconds) / 60;
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${seconds < 0 ? "-" : "+"}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** Columns that could be meant, where the header leaves it open. */
function columnSteps(stated: Stated, text: string, table: TableHead | undefined): Stated[] {
  const layout = layoutOf(text, stated);
  const { what, columns } = ("open" in layout ? layout.open : undefined) ?? {};
  if (columns !== undefined)
    return columns.map((column) =>
      what === "time"
        ? { ...stated, timeColumn: column }
        : { ...stated, [what ?? ""]: { ...stated[what ?? "humidity"], column } },
    );
  return stated.temperature === undefined && stated.humidity === undefined ? (table?.columnSteps(text) ?? []) : [];
}
