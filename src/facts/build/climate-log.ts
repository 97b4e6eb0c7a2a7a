/** What a logger in the workshop wrote down, and what its files do not tell of their own form (`climate/NAME.md`). */
import { type Decisions, prose, show } from "../decisions.ts";
import { audience, block, choice, field, quantity, words } from "../field.ts";
import { file } from "../id.ts";
import { type Reading, shown } from "../reading.ts";
import { statedReader } from "../time/stated-stamp.ts";
import { isZone, offsetOf } from "../time/wall-clock.ts";
import type { Audience, FilePath, Passage, Placed } from "../values.ts";
import type { Visibility } from "../visibility.ts";

const FORM = "DD/MM/YYYY HH:mm";
const SENSOR = "The word in `sensor_column` that stands in the lines that hold it.";

function readForm(typed: string): Reading<string> {
  if (statedReader(typed) !== undefined) return { value: typed };
  return {
    fault: {
      code: "climate-stamp",
      message: "this form leaves the moment open",
      expected: `year, month, day, hour and minute once each, such as ${FORM} or MM/DD/YYYY hh:mm A`,
      found: shown(typed),
      mend: "use YYYY or YY, MM or M, DD or D, HH or H (hh or h with A), mm, ss; or `epoch s` or `epoch ms`",
    },
  };
}

function readLoggerZone(typed: string): Reading<string> {
  if (/^local$/iu.test(typed) || offsetOf(typed) !== undefined || isZone(typed)) return { value: typed };
  return {
    fault: {
      code: "climate-zone",
      message: "this is no zone of a clock",
      expected: "local, UTC, an offset such as +01:00, or a time zone such as Europe/Lisbon",
      found: shown(typed),
      mend: "say `local` where the logger's clock goes with the workshop's, summer time and all",
    },
  };
}

export const climateSchema = block({
  file: file("The logger's file, or several of one form with * for what differs in their names.", "shop-*.csv"),
  title: words("Where the logger hangs.", "Over the bench, 1.5 m up").optional(),
  time: field(readForm, "a form of stamps", "The form of the stamps.", [
    FORM,
    "MM/DD/YYYY hh:mm A",
    "epoch s",
  ]).optional(),
  time_column: words("The header of the column with the stamps.", "Logged at").optional(),
  sensor_column: words(
    "The header of the column that names the sensor, where each line is of one sensor.",
    "Sensor",
  ).optional(),
  zone: field(readLoggerZone, "a zone", "The zone that the logger's clock ran in.", [
    "local",
    "UTC",
    "+01:00",
    "Europe/Lisbon",
  ]).optional(),
  doubled_hour: choice(
    ["first", "second"],
    "Which passage was written down of the hour that comes twice in autumn, where only one was.",
  ).optional(),
  temperature: block({
    column: words("Its header, as spelt in the file.", "Ch 1").optional(),
    of: words(SENSOR, "T1").optional(),
    unit: choice(["°C", "°F", "K"], "Its unit.").optional(),
  })
    .meta({ description: "The column with temperatures." })
    .optional(),
  humidity: block({
    column: words("Its header, as spelt in the file.", "Ch 2").optional(),
    of: words(SENSOR, "H1").optional(),
    unit: choice(["%"], "Its unit.").optional(),
  })
    .meta({ description: "The column with relative humidity." })
    .optional(),
  delimiter: choice([",", ";", "tab"], "What parts the cells.").optional(),
  decimal: choice([".", ","], "The decimal mark.").optional(),
  gap: quantity(
    { dimension: "duration", example: "2 h" },
    "The longest time between two readings that is no gap, 6 h at most.",
  ).optional(),
  for: audience().optional(),
});

/**
 * The readings of one file in `climate/`, oldest first, one a moment. The arrays are of one length; NaN stands where
 * a reading was missing. All files of a record tell of one workshop: where two overlap they say the same.
 */
export interface ClimateLog extends Placed {
  readonly file: FilePath;
  readonly audience: Audience;
  /** Where the logger hangs and what else the builder says of it. */
  readonly title: string;
  /** Seconds since 1970-01-01T00:00Z, rising. */
  readonly times: Float64Array;
  /** °C */
  readonly temperatures: Float64Array;
  /** Relative humidity as a share. */
  readonly humidities: Float64Array;
  /** The longest time between two readings that is no gap, s; and whether that is the program's default. */
  readonly gap: number;
  readonly gapIsDefault: boolean;
  readonly body: readonly Passage[];
}

export const climateLogShown: Decisions<ClimateLog> = {
  id: show,
  place: show,
  file: show,
  audience: show,
  title: show,
  times: show,
  temperatures: show,
  humidities: show,
  gap: show,
  gapIsDefault: show,
  body: prose("climate"),
};

export const isLogShown = ({ id }: ClimateLog, seer: Visibility): boolean => seer.logs.has(id);
