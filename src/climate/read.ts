/** Everything in `climate/`: logger files as CSV, and what stands beside them. */
import { isUtf8 } from "node:buffer";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { inOrder, type Problem } from "../problem.ts";
import { idFault, isWindowsName } from "../facts/field.ts";
import { readText } from "../record/text/bytes.ts";
import { Source } from "../record/text/source.ts";
import { Zone } from "../facts/time/zone.ts";
import type { ClimateLog, Day } from "../facts/types.ts";
import { BESIDE } from "./form.ts";
import { readLog, USUAL_GAP, type Workshop } from "./log.ts";
import { type FiledLog, overlapProblems } from "./overlap.ts";
import { type Sidecar, sidecarsOf, statedIn } from "./sidecar.ts";

export interface Climate {
  /** By their first reading; of files with problems there is none. */
  readonly logs: readonly ClimateLog[];
  readonly problems: readonly Problem[];
}

/** What readings are held against; nothing where the aircraft's time zone is not known, which is a problem already. */
export function workshopOf(timeZone: string | undefined, today: Day | undefined): Workshop | undefined {
  if (timeZone === undefined) return undefined;
  return { timeZone, latest: today === undefined ? Number.POSITIVE_INFINITY : Zone.of(timeZone).end(today) };
}

/** `files` are the paths of all files of the record, relative to `root`. */
export function readClimate(
  root: string,
  files: readonly string[],
  sidecars: readonly Sidecar[],
  workshop: Workshop | undefined,
): Climate {
  const csv = files.filter((file) => /^climate\/[^/]+\.csv$/iu.test(file));
  const beside = sidecarsOf(csv, sidecars);
  const unread = sidecars.some(({ spec }) => spec === undefined);
  // A sidecar with problems of its own would make problems here that mending it would mend.
  const ready = csv.filter((file) => beside.of.get(file)?.whole ?? !unread);
  const read = workshop === undefined ? [] : ready.map((file) => readOne(root, file, beside.of.get(file), workshop));
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
  };
}

function readOne(
  root: string,
  file: string,
  sidecar: Sidecar | undefined,
  workshop: Workshop,
): { readonly log: FiledLog } | { readonly problems: readonly Problem[] } {
  const fault = idFault(idOf(file), "shop-2025");
  const text = logText(root, file);
  if (!isWindowsName(idOf(file))) return { problems: [] };
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
    };
  }
  if (typeof text !== "string") return { problems: [text.problem] };
  const log = readLog(file, text, statedIn(sidecar?.spec), workshop);
  return "times" in log
    ? { log: { ...log, file } }
    : { problems: log.map((problem) => named(problem, sidecar?.file ?? file.replace(/\.csv$/iu, ".md"))) };
}

/** What a file is told to be mended in is the file that is there, or the one to be written. */
const named = ({ message, mend, ...problem }: Problem, beside: string): Problem => ({
  ...problem,
  message: message.replaceAll(BESIDE, beside),
  mend: mend.replaceAll(BESIDE, beside),
});

/**
 * Loggers write byte order marks, which say plainly what follows; a file of the record that a builder types must have
 * none.
 */
function logText(root: string, file: string): string | { readonly problem: Problem } {
  let bytes: Buffer;
  try {
    bytes = readFileSync(join(root, file));
  } catch {
    return {
      problem: {
        file,
        line: 1,
        column: 1,
        code: "unreadable",
        message: "this file cannot be read",
        mend: "look at its permissions",
      },
    };
  }
  const mark = bytes.subarray(0, 3).toString("hex");
  if (mark.startsWith("fffe")) return bytes.subarray(2).toString("utf16le").replaceAll("\r\n", "\n");
  if (mark === "efbbbf" && isUtf8(bytes)) bytes = bytes.subarray(3);
  const source = readText(file, bytes);
  return source instanceof Source ? source.text : source;
}

const idOf = (file: string): string => file.slice("climate/".length).replace(/\.csv$/iu, "");

function typedLog(log: FiledLog, sidecar: Sidecar | undefined): ClimateLog {
  const { file, times, temperatures, humidities, gap } = log;
  const id = idOf(file);
  return {
    id,
    file,
    times,
    temperatures,
    humidities,
    gap,
    gapIsDefault: sidecar?.spec?.gap === undefined && gap === USUAL_GAP,
    place: { file, line: 1, column: 1 },
    audience: sidecar?.spec?.for ?? "public",
    title: sidecar?.spec?.title ?? id,
    body: sidecar?.body ?? [],
  };
}
