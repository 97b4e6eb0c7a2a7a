/** A logger's table by what stands in its columns, for when its header does not name them in words that are known. */
import { figureOf, isEmpty } from "../../../climate/cell.ts";
import { quantityNamed } from "../../../climate/header.ts";
import { layoutOf } from "../../../climate/layout.ts";
import type { Stated } from "../../../climate/sidecar.ts";
import { DELIMITERS } from "../../../record/earlier/columns.ts";
import { type Rows, rowsOf } from "../../../record/table/csv.ts";

/** Where a quantity could stand: in a column, or in those lines of it that are of one sensor. */
interface Source {
  readonly column: string;
  readonly of?: string;
}

const PREAMBLE = 30;
const MOST_SENSORS = 8;
const STAMP = /\d[-./]\d.*\d:\d\d|^\d{10}(?:\d{3})?$/u;

export class TableHead {
  readonly #columns: ReadonlyMap<string, readonly string[]>;

  constructor(header: readonly string[], rows: Rows) {
    this.#columns = new Map(header.map((name, at) => [name.trim(), rows.map((row) => (row[at] ?? "").trim())]));
  }

  /** Columns that the header does not name, or more than one could mean. */
  columnSteps(text: string): Stated[] {
    const ways = [undefined, ...this.#where(isStamp)].flatMap((timeColumn) =>
      [undefined, ...this.#sensors()].flatMap((sensorColumn) =>
        this.#pairs(sensorColumn).map((pair) => without({ timeColumn, sensorColumn, ...pair })),
      ),
    );
    const found = ways.filter((stated) => isLaidOut(text, stated));
    // A header that names the time by itself needs no column stated.
    return found.filter(
      ({ timeColumn }) => timeColumn === undefined || found.every((one) => one.timeColumn !== undefined),
    );
  }

  /** Where two lines tell of one moment: which of the sensors is meant. */
  sensorSteps(stated: Stated): Stated[] {
    return this.#sensors().flatMap((sensorColumn) =>
      this.#words(sensorColumn).map((of) => ({
        ...stated,
        sensorColumn,
        temperature: { ...stated.temperature, of },
        humidity: { ...stated.humidity, of },
      })),
    );
  }

  /** A temperature, with a humidity or without one. What the names of columns or sensors say is held to. */
  #pairs(sensorColumn: string | undefined): Pick<Stated, "temperature" | "humidity">[] {
    const sources = this.#where(isFigure).flatMap((column): Source[] =>
      sensorColumn === undefined ? [{ column }] : this.#words(sensorColumn).map((of) => ({ column, of })),
    );
    const [temperatures, humidities] = (["temperature", "humidity"] as const).map((quantity) => {
      const named = sources.filter((source) => nameOf(source) === quantity);
      return named.length > 0 ? named : sources.filter((source) => nameOf(source) === undefined);
    });
    return (temperatures ?? []).flatMap((temperature) => [
      ...(humidities ?? []).filter((one) => !isSame(one, temperature)).map((humidity) => ({ temperature, humidity })),
      { temperature },
    ]);
  }

  #where(isOf: (cell: string) => boolean): string[] {
    return [...this.#columns].flatMap(([name, cells]) =>
      name !== "" && cells.some(isOf) && cells.every((cell) => isOf(cell) || isEmpty(cell)) ? [name] : [],
    );
  }

  #sensors(): string[] {
    return [...this.#columns.keys()].filter((name) => {
      const words = this.#words(name);
      const cells = this.#columns.get(name) ?? [];
      return (
        words.length > 1 && words.length <= MOST_SENSORS && words.length * 2 <= cells.length && words.every(isWord)
      );
    });
  }

  #words(column: string): string[] {
    return [...new Set(this.#columns.get(column))];
  }
}

const isStamp = (cell: string): boolean => STAMP.test(cell);
const isFigure = (cell: string): boolean => figureOf(cell) !== undefined && !isStamp(cell);
const isWord = (cell: string): boolean => /\p{L}/u.test(cell) && figureOf(cell) === undefined && !isStamp(cell);
const isSame = (a: Source, b: Source): boolean => a.column === b.column && a.of === b.of;
const nameOf = ({ column, of }: Source): ReturnType<typeof quantityNamed> =>
  (of === undefined ? undefined : quantityNamed(of)) ?? quantityNamed(column);
const isLaidOut = (text: string, stated: Stated): boolean => {
  const layout = layoutOf(text, stated);
  return !("fault" in layout) || layout.open !== undefined;
};

const without = (stated: { readonly [key in keyof Stated]: Stated[key] | undefined }): Stated =>
  Object.fromEntries(Object.entries(stated).filter(([, value]) => value !== undefined));

/** The first line of words above one with a moment and a figure in it. */
export function tableHead(text: string): TableHead | undefined {
  const heads = DELIMITERS.flatMap((delimiter) => {
    const rows = rowsOf(text, delimiter);
    if ("line" in rows) return [];
    const at = rows.slice(0, PREAMBLE).findIndex((row, i) => row.some(isWord) && isReading(rows[i + 1] ?? []));
    const header = rows[at];
    return header === undefined
      ? []
      : [{ header, rows: rows.slice(at + 1).filter((row) => row.some((cell) => cell.trim() !== "")) }];
  });
  const [widest] = heads.sort((a, b) => b.header.length - a.header.length);
  return widest === undefined ? undefined : new TableHead(widest.header, widest.rows);
}

const isReading = (row: readonly string[]): boolean =>
  row.some((cell) => isStamp(cell.trim()) || /^\d{1,4}[-./]\d/u.test(cell.trim())) &&
  row.some((cell) => isFigure(cell.trim()));
