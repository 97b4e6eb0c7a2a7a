/** The rows of a logger's file as figures, still by the logger's own clock. */
import { defined } from "../defined.ts";
import type { ProblemCode } from "../problems/codes.ts";
import { someOf } from "../facts/nearest.ts";
import { shown } from "../facts/reading.ts";
import type { Rows } from "../record/table/csv.ts";
import type { Mark, Stated, TemperatureUnit } from "./sidecar.ts";
import type { Layout } from "./layout.ts";
import { HEADER, type Report } from "../record/table/report.ts";
import type { StampReader } from "../facts/time/stamp.ts";
import { figureOf, inReckoning, isEmpty } from "./cell.ts";

/**
 * One row each: the wall time as if it were UTC, seconds east of Greenwich (NaN where the stamp names none), °C,
 * share, and the row.
 */
export interface Readings {
  count: number;
  readonly walls: Float64Array;
  readonly offsets: Float64Array;
  readonly temperatures: Float64Array;
  readonly humidities: Float64Array;
  readonly rows: Int32Array;
}

const PLAUSIBLE = {
  temperature: { least: -40, most: 60, words: "−40 °C to 60 °C", name: "temperature" },
  humidity: { least: 0, most: 1, words: "0 % to 100 %", name: "humidity" },
} as const;

type Quantity = keyof typeof PLAUSIBLE;

interface Column {
  readonly quantity: Quantity;
  readonly at: number;
  readonly unit?: TemperatureUnit | "%";
}

export function readingsOf(rows: Rows, layout: Layout, stated: Stated, stamp: StampReader, report: Report): Readings {
  const { columns, header } = layout;
  const cells = new CellReader(stated, report);
  const [temperature, humidity] = (["temperature", "humidity"] as const).map((quantity) =>
    columnOf(quantity, layout, stated, report),
  );
  const readings = empty(rows.length);
  const sensors = new Set<string>();
  for (let row = 0; row < rows.length; row += 1) {
    const line = rows[row] ?? [];
    if (line.every((cell) => cell.trim() === "") || !fits(line, header.length, row, layout, report)) continue;
    const sensor = (line[columns.sensor ?? -1] ?? "").trim();
    if (columns.sensor !== undefined) sensors.add(sensor);
    const holds = columns.sensor === undefined ? ALL : holding(sensor, stated);
    if (!holds.temperature && !holds.humidity) continue;
    const typed = stampIn(line, columns.time);
    const read = stamp(typed);
    if (read === undefined) {
      report.say(row, columns.time[0] ?? 0, {
        code: "climate-time",
        message: "this is no moment of the form that the file's other stamps have",
        found: shown(typed),
        mend: "if it is no reading take the line out of the file; else say the form in climate/NAME.md, such as `time: DD/MM/YYYY HH:mm`",
      });
      continue;
    }
    const i = readings.count;
    readings.walls[i] = read.wall;
    readings.offsets[i] = read.offset ?? Number.NaN;
    readings.temperatures[i] =
      temperature === undefined || !holds.temperature ? Number.NaN : cells.value(line, row, temperature);
    readings.humidities[i] = humidity === undefined || !holds.humidity ? Number.NaN : cells.value(line, row, humidity);
    readings.rows[i] = row;
    readings.count += 1;
  }
  if (columns.sensor !== undefined) checkSensors(sensors, columns.sensor, stated, report);
  return readings;
}

function checkSensors(there: ReadonlySet<string>, at: number, stated: Stated, report: Report): void {
  for (const of of new Set([stated.temperature?.of, stated.humidity?.of]))
    if (of !== undefined && !there.has(of))
      report.say(HEADER, at, {
        code: "climate-header",
        message: `no line is of the sensor "${of}"`,
        expected: `one of ${someOf([...there], 12)}`,
        found: shown(of),
        mend: "name it in climate/NAME.md as the file spells it",
      });
}

const ALL = { temperature: true, humidity: true };

/** What a line of one sensor tells of. */
const holding = (sensor: string, { temperature, humidity }: Stated): typeof ALL => ({
  temperature: sensor === temperature?.of,
  humidity: sensor === humidity?.of,
});

/** The cells of a row that say its time, as one stamp. */
export function stampIn(line: readonly string[], time: Layout["columns"]["time"]): string {
  const [only = 0, ...more] = time;
  const first = (line[only] ?? "").trim();
  return more.length === 0 ? first : [first, ...more.map((at) => (line[at] ?? "").trim())].join(" ");
}

function empty(length: number): Readings {
  const numbers = (): Float64Array => new Float64Array(length);
  return {
    count: 0,
    walls: numbers(),
    offsets: numbers(),
    temperatures: numbers(),
    humidities: numbers(),
    rows: new Int32Array(length),
  };
}

/**
 * More cells than the header has is what a decimal comma between commas looks like; too few is what a cut line looks
 * like.
 */
function fits(line: readonly string[], width: number, row: number, { columns }: Layout, report: Report): boolean {
  const needed = Math.max(...columns.time, columns.temperature?.at ?? 0, columns.humidity?.at ?? 0) + 1;
  const extra = line.slice(width).some((cell) => cell.trim() !== "");
  if (line.length >= needed && !extra) return true;
  const found = `${line.length} cells`;
  if (extra)
    report.say(row, width, {
      code: "climate-cells",
      message: "the line has more cells than the header",
      expected: `${width} cells`,
      found,
      mend: "export again with a decimal point, or with a semicolon between the cells",
    });
  else
    report.say(row, 0, {
      code: "climate-cells",
      message: "the line ends early",
      expected: `at least ${needed} cells`,
      found,
      mend: "export the file again, or take the line out",
    });
  return false;
}

function columnOf(quantity: Quantity, { columns }: Layout, stated: Stated, report: Report): Column | undefined {
  const column = columns[quantity];
  if (column === undefined) return undefined;
  const said = stated[quantity]?.unit;
  if (said !== undefined && column.unit !== undefined && said !== column.unit) {
    report.say(HEADER, column.at, {
      code: "climate-unit",
      message: `the header says ${column.unit} and the file beside it ${said}`,
      mend: "take the unit out of climate/NAME.md, or export the file again",
    });
  }
  const unit = said ?? column.unit;
  return defined({ quantity, at: column.at, unit });
}

/** Reads cells and remembers what must not change within a file. */
class CellReader {
  readonly #report: Report;
  #mark: Mark | undefined;

  constructor(stated: Stated, report: Report) {
    this.#report = report;
    this.#mark = stated.decimal;
  }

  /** The value in the unit of reckoning; NaN where there is none. */
  value(line: readonly string[], row: number, column: Column): number {
    const cell = (line[column.at] ?? "").trim();
    if (isEmpty(cell)) return Number.NaN;
    const { name, least, most, words } = PLAUSIBLE[column.quantity];
    const say = (code: ProblemCode, message: string, mend: string): number => {
      this.#report.say(row, column.at, { code, message, found: shown(cell), mend });
      return Number.NaN;
    };
    const figure = figureOf(cell);
    if (figure === undefined)
      return say("climate-value", `this is no ${name}`, "if the logger had no reading leave the cell empty");
    if (figure.mark !== undefined && figure.mark !== (this.#mark ??= figure.mark))
      return say(
        "climate-decimal",
        `the decimal mark was "${this.#mark}" before and is "${figure.mark}" here`,
        "export the file again with one decimal mark",
      );
    const unit = column.unit ?? figure.unit;
    if (unit === undefined)
      return say(
        "climate-unit",
        `no unit is given for the ${name}`,
        `say it in a file beside it, climate/NAME.md: \`${column.quantity}: { unit: ${column.quantity === "humidity" ? '"%"' : "°C"} }\``,
      );
    if ((figure.unit !== undefined && figure.unit !== unit) || (unit === "%") !== (column.quantity === "humidity"))
      return say("climate-unit", `the unit here is not the column's, ${unit}`, "export the file again with one unit");
    const value = inReckoning(figure.value, unit);
    return value >= least && value <= most
      ? value
      : say(
          "climate-value",
          `no workshop has such a ${name}; from ${words} is taken`,
          "look whether the unit is right; if the sensor failed leave the cell empty",
        );
  }
}
