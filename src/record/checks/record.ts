/** The files of the record held against each other. */
import { inOrder, type Note, type Problem } from "../../problem.ts";
import type { Draft } from "../filed.ts";
import type { Form } from "../text/bytes.ts";
import type { Folder } from "../folder.ts";
import { collectIds } from "../ids.ts";
import { doubledNotes } from "../earlier/doubled.ts";
import type { EarlierTable } from "../earlier/read.ts";
import { notesOf } from "../notes.ts";
import type { FileIndex } from "../file-index.ts";
import type { Day } from "../../facts/types.ts";
import { checkAssemblies } from "./assemblies.ts";
import { checkBatches } from "./batches.ts";
import { checkCredit } from "./credit.ts";
import { checkCuts } from "./cuts.ts";
import { checkRemains } from "./materials/remains.ts";
import { checkDays } from "./days.ts";
import type { CheckContext } from "./context.ts";
import { checkDepartures, checkOpenItems } from "./later.ts";
import { checkEntries } from "./entries.ts";
import { checkFiles } from "./files.ts";
import { checkHours } from "./hours.ts";
import { checkJoints } from "./joints.ts";
import { checkMeasurements } from "./measurements.ts";
import { checkProse, filesNamed } from "./prose.ts";
import { checkSettings } from "./settings.ts";
import { checkCoats } from "./materials/coats.ts";
import { checkFitted } from "./materials/fitted.ts";
import { checkTests } from "./tests.ts";
import { checkThermometers } from "./thermometer.ts";
import { checkGlueUps } from "./session/glue-up.ts";
import { checkInUse } from "./session/in-use.ts";
import { checkWeights } from "./weights.ts";

const CHECKS = [
  checkFiles,
  checkSettings,
  checkAssemblies,
  checkDays,
  checkEntries,
  checkHours,
  checkCuts,
  checkRemains,
  checkInUse,
  checkBatches,
  checkGlueUps,
  checkTests,
  checkThermometers,
  checkJoints,
  checkOpenItems,
  checkDepartures,
  checkMeasurements,
  checkWeights,
  checkFitted,
  checkCoats,
  checkCredit,
  checkProse,
];

export interface Checked {
  readonly problems: readonly Problem[];
  readonly notes: readonly Note[];
}

/** `forms` are those of tables. */
export function checkRecord(
  draft: Draft,
  folder: Folder,
  fileIndex: FileIndex,
  today: Day | undefined,
  earlier: readonly EarlierTable[],
  forms: ReadonlyMap<string, readonly Form[]>,
): Checked {
  const ids = collectIds(draft.files);
  const context: CheckContext = { draft, folder, ids, fileIndex, earlier, today, problems: [...ids.problems] };
  for (const check of CHECKS) check(context);
  const told = new Set(context.problems.map(({ file }) => file));
  const silent = folder.files.filter((file) => !told.has(file));
  const notes = notesOf(draft.files, silent, () => filesNamed(context), new Map([...draft.forms, ...forms]));
  const doubled = doubledNotes(context).filter(({ file }) => !told.has(file));
  return { problems: context.problems, notes: inOrder([...notes, ...doubled]) };
}
