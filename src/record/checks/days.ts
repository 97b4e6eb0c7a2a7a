/** Days against the start of the build and today. */
import { type Fault, isFault, shown } from "../reading.ts";
import { readDay } from "../time/day.ts";
import type { Path } from "../text/yaml.ts";
import type { Day } from "../types.ts";
import type { Filed } from "../filed.ts";
import { type Desk, report, soundOf } from "./desk.ts";

export function checkDays(desk: Desk): void {
  const start = soundOf(desk, "aircraft")[0]?.spec.start;
  for (const filed of soundOf(desk, "aircraft")) notAfterToday(desk, filed, ["start"], filed.spec.start);
  for (const filed of soundOf(desk, "lot")) notAfterToday(desk, filed, ["received"], filed.spec.received);
  for (const filed of soundOf(desk, "trial")) notAfterToday(desk, filed, ["stated"], filed.spec.stated);
  for (const filed of soundOf(desk, "assembly")) {
    if (filed.spec.finished === undefined) continue;
    notBeforeStart(desk, filed, ["finished"], filed.spec.finished, start);
    notAfterToday(desk, filed, ["finished"], filed.spec.finished);
  }
  for (const filed of soundOf(desk, "entry")) {
    const named = filed.id.slice(0, 10);
    const isAsWritten = filed.at(["date"]).file === filed.file;
    if (isAsWritten && !isFault(readDay(named)) && named !== filed.spec.date)
      report(desk, filed, ["date"], otherDay(named, filed.spec.date));
    notBeforeStart(desk, filed, ["date"], filed.spec.date, start);
    notAfterToday(desk, filed, ["date"], filed.spec.date);
  }
}

function otherDay(named: string, typed: string): Fault {
  return {
    code: "date",
    message: "the date is not that of the file's name",
    expected: named,
    found: shown(typed),
    mend: `write date: ${named}, or rename the file to begin with ${typed}`,
  };
}

function notBeforeStart(desk: Desk, filed: Filed<unknown>, path: Path, day: Day, start: Day | undefined): void {
  if (start === undefined || day >= start) return;
  report(desk, filed, path, {
    code: "date",
    message: "this is before the build began",
    expected: `a day from ${start} on, the start in aircraft.md`,
    found: day,
    mend: "correct this date, or the start in aircraft.md",
  });
}

function notAfterToday(desk: Desk, filed: Filed<unknown>, path: Path, day: Day): void {
  if (desk.today === undefined || day <= desk.today) return;
  report(desk, filed, path, {
    code: "date",
    message: "this day has not come yet",
    expected: `a day up to today, ${desk.today}`,
    found: day,
    mend: "write the day on which it happened",
  });
}
