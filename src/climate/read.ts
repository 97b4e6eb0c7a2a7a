/** Everything in `climate/`: logger files as CSV, and what stands beside them. */
import { inOrder, type Problem } from "../problem.ts";
import { idFault, isWindowsName } from "../facts/id.ts";
import { HOUR_SECONDS } from "../facts/quantity/conversions.ts";
import { LIMITS } from "../facts/limits.ts";
import { bytesOf } from "../record/file-bytes.ts";
import type { Folder } from "../record/folder.ts";
import { type Form, type ReadText, readText } from "../record/text/bytes.ts";
import { Zone } from "../facts/time/zone.ts";
import type { ClimateLog, Day } from "../facts/types.ts";
import { BESIDE, type Stated } from "./sidecar.ts";
import { readLog, USUAL_GAP, type Workshop } from "./log.ts";
import { type FiledLog, overlapProblems } from "./overlap.ts";
import { type Sidecar, sidecarsOf, statedIn } from "./sidecar.ts";

export interface Climate {
  /** By their first reading; of files with problems there is none. */
  readonly logs: readonly ClimateLog[];
  readonly problems: readonly Problem[];
  /** In what form each logger file was written, where that is another than plain UTF-8. */
  readonly forms: ReadonlyMap<string, readonly Form[]>;
}

/** What readings are held against; nothing where the aircraft's time zone is not known, which is a problem already. */
export function workshopOf(timeZone: string | undefined, today: Day | undefined): Workshop | undefined {
  if (timeZone === undefined) return undefined;
  return { timeZone, latest: today === undefined ? Number.POSITIVE_INFINITY : Zone.of(timeZone).end(today) };
}

export function readClimate(folder: Folder, sidecars: readonly Sidecar[], workshop: Workshop | undefined): Climate {
  const csv = folder.files.filter((file) => /^climate\/[^/]+\.csv$/iu.test(file));
  const beside = sidecarsOf(csv, sidecars);
  const unread = sidecars.some(({ spec }) => spec === undefined);
  // A sidecar with problems of its own would make problems here that mending it would mend.
  const ready = csv.filter((file) => beside.of.get(file)?.whole ?? !unread);
  const read =
    workshop === undefined
      ? []
      : ready.map((file) => ({ file, ...readOne(folder, file, beside.of.get(file), workshop) }));
  const logs = read.flatMap((one) => ("log" in one ? [one.log] : []));
  const problems = [
    ...beside.problems,
    ...read.flatMap((one) => ("log" in one ? [] : one.problems)),
    ...overlapProblems(logs),
  ];
  const typed = logs.map((log) => typedLog(log, beside.of.get(log.file)));
  return {
    logs: typed.sort((a, b) => (a.times[0] ?? 0) - (b.times[0] ?? 0) || (a.file < b.file ? -1 : 1)),
    problems: inOrder(problems),
    forms: new Map(read.map(({ file, forms }) => [file, forms])),
  };
}

function readOne(
  folder: Folder,
  file: string,
  sidecar: Sidecar | undefined,
  workshop: Workshop,
): ({ readonly log: FiledLog } | { readonly problems: readonly Problem[] }) & { readonly forms: readonly Form[] } {
  const fault = idFault(idOf(file), "shop-2025");
  if (!isWindowsName(idOf(file))) return { problems: [], forms: [] };
  if (fault?.code === "limit")
    return { problems: [{ file, line: 1, column: 1, ...fault, mend: "give it a shorter name" }], forms: [] };
  if (fault !== undefined) {
    const { instead, ...rest } = fault;
    return {
      problems: [
        {
          file,
          line: 1,
          column: 1,
          ...rest,
          code: "file-name",
          message:
            "the name of this file is the logger file's id, and an id has only the letters A to Z, digits, - and . in it",
          ...(instead !== undefined && {
            mend: `rename it to ${instead}.csv`,
            edit: { rename: `climate/${instead}.csv` },
          }),
        },
      ],
      forms: [],
    };
  }
  const text = logText(folder, file);
  if ("problem" in text) return { problems: [text.problem], forms: [] };
  const { forms, source } = text;
  const log = readAgain(file, source.text, statedIn(sidecar?.spec), workshop);
  return "times" in log
    ? { log: { ...log, file }, forms }
    : { forms, problems: log.map((problem) => named(problem, sidecar?.file ?? file.replace(/\.csv$/iu, ".md"))) };
}

type Log = ReturnType<typeof readLog>;

/** What each file was read as last: whoever reads a record again and again, as a preview does, changes its logs least. */
const last = new Map<string, { readonly text: string; readonly of: string; readonly log: Log }>();

function readAgain(file: string, text: string, stated: Stated, workshop: Workshop): Log {
  const of = JSON.stringify([stated, workshop.timeZone, `${workshop.latest}`]);
  const known = last.get(file);
  if (known?.text === text && known.of === of) return known.log;
  const log = readLog(file, text, stated, workshop);
  last.set(file, { text, of, log });
  return log;
}

/** What a file is told to be mended in is the file that is there, or the one to be written. */
const named = ({ message, mend, ...problem }: Problem, beside: string): Problem => ({
  ...problem,
  message: message.replaceAll(BESIDE, beside),
  mend: mend.replaceAll(BESIDE, beside),
});

function logText(folder: Folder, file: string): ReadText | { readonly problem: Problem } {
  const bytes = bytesOf(folder, file, LIMITS.tableBytes);
  return "problem" in bytes ? bytes : readText(file, bytes, { isTable: true });
}

const idOf = (file: string): string => file.slice("climate/".length).replace(/\.csv$/iu, "");

/** Whatever is said beside a file, so much between two readings is a gap, s: a night fits into more. This program's own measure; common practice, no source. */
const LONGEST_GAP = 6 * HOUR_SECONDS;

function typedLog(log: FiledLog, sidecar: Sidecar | undefined): ClimateLog {
  const { file, times, temperatures, humidities, gap } = log;
  const id = idOf(file);
  return {
    id,
    file,
    times,
    temperatures,
    humidities,
    gap: Math.min(gap, LONGEST_GAP),
    gapIsDefault: sidecar?.spec?.gap === undefined && gap === USUAL_GAP,
    place: { file, line: 1, column: 1 },
    audience: sidecar?.spec?.for ?? "public",
    title: sidecar?.spec?.title ?? id,
    body: sidecar?.body ?? [],
  };
}
