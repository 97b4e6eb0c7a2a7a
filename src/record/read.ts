/** The one reader of the record's folder. */
import { inOrder, type Note, type Problem } from "../problem.ts";
import { beyond, inThousands, LIMITS } from "../facts/limits.ts";
import { amend } from "./amend/amend.ts";
import { filesBefore } from "./amend/unseconded.ts";
import { onlyKnown } from "./known.ts";
import { readClimate, workshopOf } from "../climate/read.ts";
import { readEarlier } from "./earlier/read.ts";
import { earlierOf } from "./earlier/typed.ts";
import { checkRecord } from "./checks/record.ts";
import { type Known, readFiles } from "./filed.ts";
import { listFolder, withFiles } from "./folder.ts";
import { FileIndex } from "./file-index.ts";
import type { Day, Record } from "../facts/types.ts";
import { recordOf } from "./typed.ts";
import { withUsual } from "./usual/in-use.ts";

export interface ReadOptions extends Known {
  /** The day after which nothing can have happened yet, `YYYY-MM-DD`; without it no day is too late. */
  readonly today?: Day;
  /** The date of the record; without it that of its last entry. */
  readonly day?: Day;
  /** Files that are read as if they lay in the record: what somebody is about to write there. */
  readonly asIf?: ReadonlyMap<string, Buffer>;
}

/** A record that may be trusted, or all that is wrong with it; beside either what is told of how it was read. */
export type Read = ({ readonly record: Record } | { readonly problems: readonly Problem[] }) & {
  readonly notes: readonly Note[];
};

/** Only files within `content` are read; none is changed. */
export async function readRecord(content: string, options: ReadOptions = {}): Promise<Read> {
  const listed = listFolder(content);
  if ("problem" in listed) return { problems: [listed.problem], notes: [] };
  const folder = options.asIf === undefined ? listed : withFiles(listed, options.asIf);
  const asWritten = withUsual(readFiles(folder, options));
  const amended = amend(asWritten);
  const { draft, amendments, problems: misamended } = amended;
  const fileIndex = new FileIndex(folder);
  const climate = readClimate(
    folder,
    draft.files.climate,
    workshopOf(draft.files.aircraft[0]?.spec?.time_zone, options.today),
  );
  const earlier = readEarlier(folder, draft.files.hours);
  const forms = new Map([...climate.forms, ...earlier.forms]);
  const { problems: found, notes } = checkRecord(draft, folder, fileIndex, options.today, earlier.tables, forms);
  const problems = each(
    [folder.problems, draft.problems, misamended, climate.problems, earlier.problems, found].flat(),
  );
  if (problems.length > 0) return { problems: few(inOrder(problems)), notes };
  const tables = { climate: climate.logs, earlier: earlier.tables.map(earlierOf) };
  const record = recordOf(draft.files, tables, amendments, fileIndex, options.day);
  const before = filesBefore(asWritten, amended).map((files) =>
    onlyKnown(recordOf(files, tables, amendments, fileIndex, record.day)),
  );
  return { record: before.length === 0 ? record : { ...record, before }, notes };
}

/** As many problems as are told one by one, and one that stands for the others. */
function few(problems: readonly Problem[]): readonly Problem[] {
  const next = problems[LIMITS.problems];
  if (next === undefined) return problems;
  const { file, line, column } = next;
  const more = problems.length - LIMITS.problems;
  const most = `${LIMITS.problems} problems told one by one`;
  const fault = beyond(
    `and ${inThousands(more)} more ${more === 1 ? "problem" : "problems"}, of which this is the place of the first`,
    most,
    "mend those above, then look again",
  );
  return [...problems.slice(0, LIMITS.problems), { file, line, column, ...fault, more }];
}

/** What several batches take from one `in_use` is told once. */
function each(problems: readonly Problem[]): Problem[] {
  const told = new Set<string>();
  return problems.filter((problem) => {
    const one = JSON.stringify(problem);
    return !told.has(one) && told.add(one);
  });
}
