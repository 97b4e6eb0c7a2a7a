/** Whether each file lies where the record looks for it, under a name that is an id. */
import { nameOf, kindOf } from "../filed.ts";
import { FOLDERS } from "../../facts/kinds.ts";
import { nearest } from "../../facts/nearest.ts";
import { idFault, isWindowsName } from "../../facts/field.ts";
import { readDay } from "../../facts/time/day.ts";
import { type Fault, isFault, shown } from "../../facts/reading.ts";
import type { CheckContext } from "./context.ts";

const EXPECTED =
  "aircraft.md, and .md files in assemblies/, adhesives/, procedures/, lots/, trials/, entries/ and climate/";

export function checkFiles(context: CheckContext): void {
  const { files } = context.folder;
  if (!files.includes("aircraft.md")) {
    const empty = files.length === 0;
    put(context, empty ? "." : "aircraft.md", {
      code: "no-aircraft",
      message: empty ? "the record's folder is empty" : "the record has no aircraft.md",
      expected: "aircraft.md with the aircraft's name, type, units, time_zone, start, people and tasks",
      mend: "write aircraft.md, as the README shows it",
    });
  }
  for (const file of files) {
    const fault = windowsFault(file) ?? (kindOf(file) === undefined ? strayFault(file) : nameFault(file));
    if (fault) put(context, file, fault);
  }
}

function put(context: CheckContext, file: string, fault: Fault): void {
  context.problems.push({ file, line: 1, column: 1, ...fault });
}

/** Of every file of the record, so that the record and its bags can be unpacked anywhere. */
function windowsFault(file: string): Fault | undefined {
  const name = file.split("/").find((part) => !isWindowsName(part));
  if (name === undefined) return undefined;
  return {
    code: "windows-name",
    message: "Windows can hold no file of this name",
    expected: "a name that is no device's (con, prn, aux, nul, com1, lpt1) and ends in no point or blank",
    found: shown(name),
    mend: "give it another name, here and wherever it is named",
  };
}

/** Markdown in a wrong place, or a text in a folder of the record that only looks like one of its files. */
function strayFault(file: string): Fault | undefined {
  const parts = file.split("/");
  const [top = ""] = parts;
  if (top === "climate" && !/\.md$/i.test(file))
    return parts.length === 2 && /\.csv$/i.test(file)
      ? undefined
      : {
          code: "stray-file",
          message: "this file is not read",
          expected: "logger files as .csv, directly in climate/",
          mend: "save it as CSV in climate/, or move it out of that folder",
        };
  const inFolder = parts.length === 2 && FOLDERS[top] !== undefined;
  if (!/\.(?:md|markdown|mdown|mkd)$/i.test(file)) {
    const like =
      inFolder &&
      /\.(?:ya?ml|json|mdx|md\.txt|md~|md\.bak|txt)$/i.test(file) &&
      /^(?:ya?ml|json|mdx)$/i.test(file.split(".").at(-1) ?? "");
    return like
      ? {
          code: "stray-file",
          message: "this file is not read",
          expected: EXPECTED,
          mend: `name it ${nameOf(file).replace(/\.\w+$/, "")}.md, or move it to another folder`,
        }
      : undefined;
  }
  if (inFolder)
    return {
      code: "stray-file",
      message: "the name of a record file ends in .md",
      expected: EXPECTED,
      mend: `rename it to ${file.replace(/\.\w+$/, ".md")}`,
    };
  return {
    code: "stray-file",
    message: "nothing in the record is read from here",
    expected: EXPECTED,
    mend: mendFor(file, parts),
  };
}

function mendFor(file: string, parts: readonly string[]): string {
  const [top = ""] = parts;
  if (parts.length === 1 && file.toLowerCase() === "aircraft.md") return "rename it to aircraft.md";
  if (FOLDERS[top] !== undefined) return `move it up to ${top}/${parts.at(-1)}`;
  const meant = parts.length > 1 ? nearest(top, [...Object.keys(FOLDERS), ...Object.values(FOLDERS)]) : undefined;
  const folder = Object.entries(FOLDERS).find(([name, kind]) => name === meant || kind === meant)?.[0];
  return folder === undefined
    ? "move it to the folder of its kind, or out of the record"
    : `did you mean the folder ${folder}/?`;
}

function nameFault(file: string): Fault | undefined {
  const id = nameOf(file);
  if (file.startsWith("entries/")) return entryNameFault(id);
  const fault = file === "aircraft.md" ? undefined : idFault(id, "TP-1");
  return (
    fault && {
      ...fault,
      code: "file-name",
      message: "the file's name is an id and has only the letters A to Z, digits, - and . in it",
      found: `${id}.md`,
      mend: fault.mend.replace(/^write (.+)$/, "rename it to $1.md"),
    }
  );
}

function entryNameFault(id: string): Fault | undefined {
  const match = /^(\d{4}-\d{2}-\d{2})-(.+)$/.exec(id);
  const day = match?.[1];
  const asId = idFault(id, "2025-03-08-rear-spar-caps");
  if (day !== undefined && !isFault(readDay(day)) && asId === undefined) return undefined;
  const mend =
    asId !== undefined && day !== undefined
      ? asId.mend.replace(/^write (.+)$/, "rename it to $1.md")
      : "rename it to the date, a hyphen and a word or two";
  return {
    code: "file-name",
    message: "the name of an entry is its date and a few words with hyphens",
    expected: "a name such as 2025-03-08-rear-spar-caps.md",
    found: `${id}.md`,
    mend,
  };
}
