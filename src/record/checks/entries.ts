/** What an entry names: people, assemblies, lots, hold points, files. */
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
  for (const filed of soundOf(context, "entry")) {
    expectId(context, filed, ["assembly"], ["assembly"], filed.spec.assembly);
    checkParts(context, filed);
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

/** What stands in the way of a hold point is of a part, which the fact names where its entry is of none. */
function checkParts(context: CheckContext, filed: EntryFile): void {
  const { assembly, measurements, weighed, fitted, coats, departures, open_items } = filed.spec;
  if (assembly !== undefined || !filed.whole) return;
  const lists = [
    [["measurements"], measurements],
    [["weighed"], weighed],
    [["fitted"], fitted],
    [["coats"], coats],
    [["departures"], departures],
    [["open_items", "raise"], open_items?.raise],
  ] as const;
  for (const [path, facts = []] of lists)
    facts.forEach((fact, index) => {
      if (fact.assembly !== undefined) return;
      report(context, filed, [...path, index], {
        code: "no-assembly",
        message: "the entry is of no assembly, and this does not say of which it is",
        expected: "`assembly:` here, or of the whole entry",
        mend: "add `assembly:` with the part that it is about",
      });
    });
}
