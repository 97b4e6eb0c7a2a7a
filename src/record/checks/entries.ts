/** What an entry names: people, tasks, assemblies, lots, hold points, files. */
import { nearest, someOf } from "../nearest.ts";
import {
  type Desk,
  type EntryFile,
  expectAttachment,
  expectClip,
  expectId,
  expectPicture,
  report,
  soundOf,
} from "./desk.ts";

export function checkEntries(desk: Desk): void {
  const tasks = soundOf(desk, "aircraft")[0]?.spec.tasks;
  for (const filed of soundOf(desk, "entry")) {
    expectId(desk, filed, ["assembly"], ["assembly"], filed.spec.assembly);
    checkHours(desk, filed, tasks);
    (filed.spec.recalls ?? []).forEach(({ lot }, index) =>
      expectId(desk, filed, ["recalls", index, "lot"], ["lot"], lot),
    );
    (filed.spec.inspections ?? []).forEach(({ hold_point, by, scan }, index) => {
      expectId(desk, filed, ["inspections", index, "hold_point"], ["hold point"], hold_point);
      expectId(desk, filed, ["inspections", index, "by"], ["person"], by);
      expectAttachment(desk, filed, ["inspections", index, "scan"], scan);
    });
    (filed.spec.photos ?? []).forEach(({ file }, index) => expectPicture(desk, filed, ["photos", index, "file"], file));
    (filed.spec.clips ?? []).forEach(({ file, poster }, index) => {
      expectClip(desk, filed, ["clips", index, "file"], file);
      expectPicture(desk, filed, ["clips", index, "poster"], poster);
    });
    (filed.spec.attachments ?? []).forEach(({ file }, index) =>
      expectAttachment(desk, filed, ["attachments", index, "file"], file),
    );
  }
}

function checkHours(desk: Desk, filed: EntryFile, tasks: readonly string[] | undefined): void {
  (filed.spec.hours ?? []).forEach(({ who, task, assembly }, index) => {
    expectId(desk, filed, ["hours", index, "who"], ["person"], who);
    expectId(desk, filed, ["hours", index, "assembly"], ["assembly"], assembly);
    if (tasks === undefined || tasks.includes(task)) return;
    const meant = nearest(task, tasks);
    report(desk, filed, ["hours", index, "task"], {
      code: "unknown-word",
      message: "this task is not one of the aircraft's",
      expected: `one of ${someOf(tasks, 20)}`,
      found: task,
      mend:
        meant === undefined
          ? "use one of these words, or add this one to `tasks` in aircraft.md"
          : `did you mean ${meant}?`,
    });
  });
}
