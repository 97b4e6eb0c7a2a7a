/** The one reader of the record's folder. */
import { inOrder, type Problem } from "../problem.ts";
import { amend } from "./amend/amend.ts";
import { filesBefore } from "./amend/unseconded.ts";
import { onlyKnown } from "./known.ts";
import { readClimate, workshopOf } from "../climate/read.ts";
import { checkRecord } from "./checks/record.ts";
import { type Memory, readFiles } from "./filed.ts";
import { listFolder } from "./folder.ts";
import { FileIndex } from "./file-index.ts";
import type { Day, Record } from "../facts/types.ts";
import { recordOf } from "./typed.ts";

export interface ReadOptions {
  /** The day after which nothing can have happened yet, `YYYY-MM-DD`; without it no day is too late. */
  readonly today?: Day;
  /** The date of the record; without it that of its last entry. */
  readonly day?: Day;
  /** Kept by whoever reads the same record again. */
  readonly memory?: Memory;
}

/** A record that may be trusted, or all that is wrong with it. Only files within `content` are read; none is changed. */
export async function readRecord(
  content: string,
  options: ReadOptions = {},
): Promise<{ record: Record } | { problems: Problem[] }> {
  const folder = listFolder(content);
  if ("problem" in folder) return { problems: [folder.problem] };
  const asWritten = readFiles(folder, options.memory);
  const amended = amend(asWritten);
  const { draft, amendments, problems: misamended } = amended;
  const fileIndex = new FileIndex(folder.root, folder.files);
  const climate = readClimate(
    folder.root,
    folder.files,
    draft.files.climate,
    workshopOf(draft.files.aircraft[0]?.spec?.time_zone, options.today),
  );
  const problems = [
    ...folder.problems,
    ...draft.problems,
    ...misamended,
    ...climate.problems,
    ...checkRecord(draft, folder, fileIndex, options.today),
  ];
  if (problems.length > 0) return { problems: inOrder(problems) };
  const record = recordOf(draft.files, climate.logs, amendments, fileIndex, options.day);
  const before = filesBefore(asWritten, amended).map((files) =>
    onlyKnown(recordOf(files, climate.logs, amendments, fileIndex, record.day)),
  );
  return { record: before.length === 0 ? record : { ...record, before } };
}
