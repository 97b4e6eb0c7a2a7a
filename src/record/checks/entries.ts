/** What an entry names: people, tasks, assemblies, lots, hold points, files. */
import { nearest, someOf } from "../../facts/nearest.ts";
import { meaning, onlyYouKnow } from "../../facts/reading.ts";
import {
  type CheckContext,
  type EntryFile,
  expectAttachment,
  expectClip,
  expectId,
  expectPicture,
  report,
  soundOf,
} from "./context.ts";

export function checkEntries(context: CheckContext): void {
  const tasks = soundOf(context, "aircraft")[0]?.spec.tasks;
  for (const filed of soundOf(context, "entry")) {
    expectId(context, filed, ["assembly"], ["assembly"], filed.spec.assembly);
    checkHours(context, filed, tasks);
    (filed.spec.recalls ?? []).forEach(({ lot }, index) =>
      expectId(context, filed, ["recalls", index, "lot"], ["lot"], lot),
    );
    (filed.spec.reworks ?? []).forEach(({ replaced }, index) =>
      (replaced ?? []).forEach(({ lot, with: by }, at) => {
        expectId(context, filed, ["reworks", index, "replaced", at, "lot"], ["lot"], lot);
        expectId(context, filed, ["reworks", index, "replaced", at, "with"], ["lot"], by);
      }),
    );
    (filed.spec.amends ?? []).forEach(({ seen_by }, index) =>
      expectId(context, filed, ["amends", index, "seen_by"], ["person"], seen_by),
    );
    (filed.spec.inspections ?? []).forEach(({ hold_point, by, scan }, index) => {
      expectId(context, filed, ["inspections", index, "hold_point"], ["hold point"], hold_point);
      expectId(context, filed, ["inspections", index, "by"], ["person"], by);
      expectAttachment(context, filed, ["inspections", index, "scan"], scan);
    });
    (filed.spec.photos ?? []).forEach(({ file }, index) =>
      expectPicture(context, filed, ["photos", index, "file"], file),
    );
    (filed.spec.clips ?? []).forEach(({ file, poster }, index) => {
      expectClip(context, filed, ["clips", index, "file"], file);
      expectPicture(context, filed, ["clips", index, "poster"], poster);
    });
    (filed.spec.attachments ?? []).forEach(({ file }, index) =>
      expectAttachment(context, filed, ["attachments", index, "file"], file),
    );
  }
}

function checkHours(context: CheckContext, filed: EntryFile, tasks: readonly string[] | undefined): void {
  (filed.spec.hours ?? []).forEach(({ who, task, assembly }, index) => {
    expectId(context, filed, ["hours", index, "who"], ["person"], who);
    expectId(context, filed, ["hours", index, "assembly"], ["assembly"], assembly);
    if (tasks === undefined || tasks.includes(task)) return;
    const meant = nearest(task, tasks);
    report(context, filed, ["hours", index, "task"], {
      code: "unknown-task",
      message: "this task is not one of the aircraft's",
      expected: `one of ${someOf(tasks, 20)}`,
      found: task,
      ...(meant === undefined
        ? onlyYouKnow("use one of these words, or add this one to `tasks` in aircraft.md")
        : meaning(meant)),
    });
  });
}
