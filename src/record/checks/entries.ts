/** What an entry names: people, tasks, assemblies, lots, hold points, files; and its measurements. */
import { nearest, someOf } from "../nearest.ts";
import { DIMENSIONS } from "../quantity/units.ts";
import { type Desk, type EntryFile, expectAttachment, expectId, expectPicture, report, soundOf } from "./desk.ts";

export function checkEntries(desk: Desk): void {
  const tasks = soundOf(desk, "aircraft")[0]?.spec.tasks;
  for (const filed of soundOf(desk, "entry")) {
    expectId(desk, filed, ["assembly"], ["assembly"], filed.spec.assembly);
    checkHours(desk, filed, tasks);
    (filed.spec.measurements ?? []).forEach((_, index) => checkMeasurement(desk, filed, index));
    (filed.spec.recalls ?? []).forEach(({ lot }, index) => expectId(desk, filed, ["recalls", index, "lot"], ["lot"], lot));
    (filed.spec.inspections ?? []).forEach(({ hold_point, by, scan }, index) => {
      expectId(desk, filed, ["inspections", index, "hold_point"], ["hold point"], hold_point);
      expectId(desk, filed, ["inspections", index, "by"], ["person"], by);
      expectAttachment(desk, filed, ["inspections", index, "scan"], scan);
    });
    (filed.spec.photos ?? []).forEach(({ file }, index) => expectPicture(desk, filed, ["photos", index, "file"], file));
    (filed.spec.attachments ?? []).forEach(({ file }, index) => expectAttachment(desk, filed, ["attachments", index, "file"], file));
  }
}

function checkHours(desk: Desk, filed: EntryFile, tasks: readonly string[] | undefined): void {
  (filed.spec.hours ?? []).forEach(({ who, task, assembly }, index) => {
    expectId(desk, filed, ["hours", index, "who"], ["person"], who);
    expectId(desk, filed, ["hours", index, "assembly"], ["assembly"], assembly);
    if (tasks === undefined || tasks.includes(task)) return;
    const meant = nearest(task, tasks);
    report(desk, filed, ["hours", index, "task"], {
      code: "unknown-word", message: "this task is not one of the aircraft's", expected: `one of ${someOf(tasks, 20)}`, found: task,
      mend: meant === undefined ? "use one of these words, or add this one to `tasks` in aircraft.md" : `did you mean ${meant}?`,
    });
  });
}

function checkMeasurement(desk: Desk, filed: EntryFile, index: number): void {
  const line = filed.spec.measurements?.[index];
  if (!line) return;
  const path = ["measurements", index];
  expectId(desk, filed, [...path, "assembly"], ["assembly"], line.assembly);
  expectId(desk, filed, [...path, "departure"], ["departure"], line.departure);
  const { name, example } = DIMENSIONS[line.found.dimension];
  for (const key of ["drawing", "tolerance"] as const) {
    const other = line[key];
    if (other === undefined || other.dimension === line.found.dimension) continue;
    report(desk, filed, [...path, key], { code: "wrong-dimension", message: `this is ${DIMENSIONS[other.dimension].name}, but what was found is ${name}`, expected: `${name} with its unit, such as ${key === "tolerance" ? "±" : ""}${example}`, found: other.typed, mend: "write both in units of one kind" });
  }
  if (line.tolerance !== undefined && line.drawing === undefined && filed.whole) {
    report(desk, filed, [...path, "tolerance"], { code: "missing", message: "a tolerance is about the drawing's measure, which is missing", expected: "`drawing:` beside `tolerance:`", found: line.tolerance.typed, mend: "add `drawing:` with the measure that the drawing asks" });
  }
}
