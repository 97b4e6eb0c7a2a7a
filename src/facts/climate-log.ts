/** Front matter of `climate/NAME.md`: what a logger's files do not tell of their own form. */
import { statedReader } from "./time/stated-stamp.ts";
import { isZone, offsetOf } from "./time/wall-clock.ts";
import { type Reading, shown } from "./reading.ts";
import { audience, block, choice, field, file, quantity, words } from "./field.ts";

const FORM = "DD/MM/YYYY HH:mm";

function readForm(typed: string): Reading<string> {
  if (statedReader(typed) !== undefined) return { value: typed };
  return {
    fault: {
      code: "climate-form",
      message: "this form leaves the moment open",
      expected: `year, month, day, hour and minute once each, such as ${FORM} or MM/DD/YYYY hh:mm A`,
      found: shown(typed),
      mend: "write YYYY or YY, MM or M, DD or D, HH or H (hh or h with A), mm, ss",
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
      mend: "write `local` where the logger's clock goes with the workshop's, summer time and all",
    },
  };
}

export const climateSchema = block({
  file: file("The logger's file, or several of one form with * for what differs in their names.", "shop-*.csv"),
  title: words("Where the logger hangs.", "Over the bench, 1.5 m up").optional(),
  time: field(readForm, "The form of the stamps.", [FORM, "MM/DD/YYYY hh:mm A"]).optional(),
  time_column: words("The header of the column with the stamps.", "Logged at").optional(),
  zone: field(readLoggerZone, "The zone that the logger's clock ran in.", [
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
    unit: choice(["°C", "°F", "K"], "Its unit.").optional(),
  }).optional(),
  humidity: block({
    column: words("Its header, as spelt in the file.", "Ch 2").optional(),
    unit: choice(["%"], "Its unit.").optional(),
  }).optional(),
  delimiter: choice([",", ";", "tab"], "What parts the cells.").optional(),
  decimal: choice([".", ","], "The decimal mark.").optional(),
  gap: quantity(
    { dimension: "duration", example: "2 h" },
    "The longest time between two readings that is no gap.",
  ).optional(),
  for: audience().optional(),
});
