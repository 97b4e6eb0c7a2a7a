/** Joints through time: glued, opened, glued again. */
import type { Path } from "../text/yaml.ts";
import { type CheckContext, doubtful, type EntryFile, expectId, report, soundOf, whereIs } from "./context.ts";

/** Where a joint was last glued; undefined once it has been opened. */
type Last = Map<string, { readonly filed: EntryFile; readonly path: Path; readonly batch: string } | undefined>;

export function checkJoints(context: CheckContext): void {
  const last: Last = new Map();
  const batchDays = new Map<string, EntryFile>();
  for (const filed of soundOf(context, "entry"))
    for (const batch of filed.spec.batches ?? []) if (!batchDays.has(batch.id)) batchDays.set(batch.id, filed);
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.reworks ?? []).forEach(({ joints }, at) =>
      joints.forEach((joint, index) => opened(context, filed, ["reworks", at, "joints", index], joint, last)),
    );
    (filed.spec.batches ?? []).forEach(({ id, joints }, at) => {
      const here = new Set<string>();
      (joints ?? []).forEach((joint, index) => {
        const path = ["batches", at, "joints", index];
        if (here.has(joint))
          report(context, filed, path, {
            code: "joint-twice",
            message: `${joint} stands in this list twice`,
            found: joint,
            mend: "take one away",
          });
        else glued(context, filed, path, joint, id, last);
        here.add(joint);
      });
    });
    (filed.spec.rejects ?? []).forEach(({ batch }, index) =>
      checkRejected(context, filed, ["rejects", index, "batch"], batch, batchDays),
    );
  }
}

function opened(context: CheckContext, filed: EntryFile, path: Path, joint: string, last: Last): void {
  if (!expectId(context, filed, path, ["joint"], joint)) return;
  if (!last.has(joint) && !doubtful(context, joint)) {
    report(context, filed, path, {
      code: "not-glued",
      message: `${joint} was never glued before`,
      expected: "a joint that an earlier entry glued",
      found: joint,
      mend: "write the joint that was opened, or add it to the batch that glued it",
    });
  }
  last.set(joint, undefined);
}

function glued(context: CheckContext, filed: EntryFile, path: Path, joint: string, batch: string, last: Last): void {
  if (!expectId(context, filed, path, ["joint"], joint)) return;
  const before = last.get(joint);
  if (before && before.filed !== filed && !doubtful(context, joint)) {
    report(context, filed, path, {
      code: "glued-twice",
      message: `${joint} is already glued`,
      expected: "`reworks:` before a joint is glued again",
      found: `${joint}, glued with ${before.batch} at ${whereIs(before.filed, before.path)}`,
      mend: "if it was opened and cleaned, say so under `reworks`; else write the joint that was glued",
    });
  }
  last.set(joint, { filed, path, batch });
}

function checkRejected(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: string,
  days: ReadonlyMap<string, EntryFile>,
): void {
  if (!expectId(context, filed, path, ["batch"], batch)) return;
  const mixedIn = days.get(batch);
  if (mixedIn && mixedIn.spec.date > filed.spec.date) {
    report(context, filed, path, {
      code: "rejected-before-mixed",
      message: `${batch} was rejected before it was mixed`,
      expected: `a batch mixed by ${filed.spec.date}`,
      found: `${batch}, mixed ${mixedIn.spec.date}`,
      mend: `correct this entry or ${mixedIn.file}`,
    });
  }
}
