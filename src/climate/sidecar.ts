/** What must be known of a logger's file, and what a builder may say of it in the file beside it. */
import { defined } from "../defined.ts";
import type * as z from "zod";
import { type Place, type Problem, placed } from "../problem.ts";
import { nearest } from "../facts/nearest.ts";
import { type Fault, meaning, onlyYouKnow, shown } from "../facts/reading.ts";
import type { Delimiter } from "../record/table/csv.ts";
import type { climateSchema } from "../facts/build/climate-log.ts";
import type { Path } from "../record/text/yaml.ts";
import type { Passage } from "../facts/types.ts";

/** Stands in problem texts for the file beside a logger file, until it is known which that is. */
export const BESIDE = "climate/NAME.md";

export type TemperatureUnit = "°C" | "°F" | "K";
export type Mark = "." | ",";

/**
 * What a builder says in `climate/NAME.md` of a file whose form does not show by itself. Everything may be left out.
 */
export interface Stated {
  readonly delimiter?: Delimiter;
  readonly decimal?: Mark;
  /** Such as `DD/MM/YYYY HH:mm`. */
  readonly time?: string;
  readonly timeColumn?: string;
  /** `local`, `UTC`, `+01:00` or the name of a time zone. */
  readonly zone?: string;
  /** Of the hour that the clock passes twice in autumn, where only one passage was written down. */
  readonly doubledHour?: "first" | "second";
  /** The header of the column that names the sensor of a line. */
  readonly sensorColumn?: string;
  readonly temperature?: StatedColumn<TemperatureUnit>;
  readonly humidity?: StatedColumn<"%">;
  /** s */
  readonly gap?: number;
}

/** `of` is the word in the column of sensors in whose lines it stands. */
interface StatedColumn<U> {
  readonly column?: string;
  readonly of?: string;
  readonly unit?: U;
}

/** Columns by their place in a row, with what the header says of them. */
export interface Columns {
  /** One for a whole stamp, or two for a day and a time of day. */
  readonly time: readonly number[];
  /** The zone that the header of the time names, as typed. */
  readonly zone?: string;
  readonly sensor?: number;
  readonly temperature?: { readonly at: number; readonly unit?: TemperatureUnit };
  readonly humidity?: { readonly at: number; readonly unit?: "%" };
}

export type ClimateSpec = z.output<typeof climateSchema>;

/** A sidecar as read; the record's other files have more, which is not needed here. */
export interface Sidecar {
  readonly file: string;
  readonly spec: ClimateSpec | undefined;
  /** Whether nothing is wrong with it. */
  readonly whole: boolean;
  readonly body: readonly Passage[];
  readonly at: (path: Path) => Place;
  readonly typedAt: (path: Path) => string;
}

/** The sidecar of each logger file; a file that two of them claim, and a sidecar that names none, are problems. */
export function sidecarsOf(
  files: readonly string[],
  sidecars: readonly Sidecar[],
): { readonly of: ReadonlyMap<string, Sidecar>; readonly problems: readonly Problem[] } {
  const of = new Map<string, Sidecar>();
  const problems: Problem[] = [];
  for (const sidecar of sidecars) {
    if (sidecar.spec === undefined) continue;
    const { file } = sidecar.spec;
    const claimed = files.filter((each) => matches(each, file));
    if (claimed.length === 0)
      problems.push(placed(sidecar.at(["file"]), noFile(file, files), sidecar.typedAt(["file"])));
    for (const each of claimed) {
      const other = of.get(each);
      if (other === undefined) of.set(each, sidecar);
      else
        problems.push({
          ...sidecar.at(["file"]),
          code: "climate-sidecar",
          message: `${other.file} already tells of ${each}`,
          expected: "one file beside each logger file",
          found: shown(file),
          mend: "name the files so that each is named once",
        });
    }
  }
  return { of, problems };
}

/** `*` stands for any part of a name. */
function matches(file: string, pattern: string): boolean {
  const name = file.slice(file.lastIndexOf("/") + 1);
  const [head = "", ...parts] = pattern.split("*");
  const tail = parts.pop();
  if (tail === undefined) return name === head;
  let at = head.length;
  for (const part of parts) {
    const found = name.indexOf(part, at);
    if (found < 0) return false;
    at = found + part.length;
  }
  return name.startsWith(head) && name.endsWith(tail) && at + tail.length <= name.length;
}

function noFile(pattern: string, files: readonly string[]): Fault {
  const names = files.map((file) => file.slice(file.lastIndexOf("/") + 1));
  const meant = nearest(pattern, names);
  return {
    code: "climate-sidecar",
    message: "no such logger file lies in climate/",
    expected: "the name of a .csv file in climate/",
    found: shown(pattern),
    ...(meant === undefined ? onlyYouKnow("put the logger's file there, or take this file out") : meaning(meant)),
  };
}

export function statedIn(spec: ClimateSpec | undefined): Stated {
  if (spec === undefined) return {};
  const { time, time_column, sensor_column, zone, doubled_hour, temperature, humidity, delimiter, decimal, gap } = spec;
  return defined({
    time,
    timeColumn: time_column,
    sensorColumn: sensor_column,
    zone,
    doubledHour: doubled_hour,
    temperature: temperature === undefined ? undefined : without(temperature),
    humidity: humidity === undefined ? undefined : without(humidity),
    delimiter: delimiter === undefined ? undefined : delimiter === "tab" ? "\t" : delimiter,
    decimal,
    gap: gap?.value,
  });
}

const without = <U>({
  column,
  of,
  unit,
}: {
  readonly column?: string | undefined;
  readonly of?: string | undefined;
  readonly unit?: U | undefined;
}): StatedColumn<U> => defined({ column, of, unit });
