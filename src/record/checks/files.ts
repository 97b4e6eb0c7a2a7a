/** Whether each file lies where the record looks for it, under a name that is an id. */
import { isTable, nameOf, kindOf } from "../filed.ts";
import { isOwn } from "../own.ts";
import { FOLDERS } from "../../facts/kinds.ts";
import { nearest } from "../../facts/nearest.ts";
import { idFault, isWindowsName } from "../../facts/id.ts";
import { readDay } from "../../facts/time/day.ts";
import { type Fault, isFault, onlyYouKnow, shown } from "../../facts/reading.ts";
import type { CheckContext } from "./context.ts";

const EXPECTED =
  "aircraft.md, and .md files in assemblies/, adhesives/, finishes/, procedures/, lots/, trials/, entries/, climate/ and hours/";

export function checkFiles(context: CheckContext): void {
  const { files } = context.folder;
  if (!files.includes("aircraft.md")) {
    const empty = files.length === 0;
    put(context, empty ? "." : "aircraft.md", {
      code: "no-aircraft",
      message: empty ? "the record's folder is empty" : "the record has no aircraft.md",
      expected: "aircraft.md with the aircraft's name, type, units, time_zone, start, people and tasks",
      mend: "make aircraft.md, as the README shows it",
    });
  }
  for (const file of files) {
    const fault =
      windowsFault(file) ?? (isOwn(file) ? undefined : kindOf(file) === undefined ? strayFault(file) : nameFault(file));
    if (fault) put(context, file, fault);
  }
}

/** What is wrong with a file's name or place, and the path that would be right. */
interface Misnamed extends Fault {
  readonly rename?: string;
}

/** Never to the name of another file, which would be lost. */
function put(context: CheckContext, file: string, { rename, ...fault }: Misnamed): void {
  const place = { file, line: 1, column: 1 };
  const taken = rename?.toLowerCase();
  if (rename === undefined) context.problems.push({ ...place, ...fault });
  else if (context.folder.files.some((other) => other !== file && other.toLowerCase() === taken))
    context.problems.push({ ...place, ...fault, mend: `give it another name; there is a ${rename} already` });
  else context.problems.push({ ...place, ...fault, edit: { rename } });
}

/** `shown` is as much of the path as has to be told. */
function renames(rename: string, shown = rename): Pick<Misnamed, "mend" | "rename"> {
  return { mend: `rename it to ${shown}`, rename };
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

/** What folders of tables hold. */
const TABLES: { readonly [folder: string]: string } = { climate: "logger files", hours: "earlier hours" };

/** Markdown in a wrong place, or a text in a folder of the record that only looks like one of its files. */
function strayFault(file: string): Misnamed | undefined {
  const parts = file.split("/");
  const [top = ""] = parts;
  const tables = TABLES[top];
  if (tables !== undefined && !/\.md$/i.test(file))
    return isTable(file)
      ? undefined
      : {
          code: "stray-file",
          message: "this file is not read",
          expected: `${tables} as .csv, directly in ${top}/`,
          mend: `save it as CSV in ${top}/, or move it out of that folder`,
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
      ...renames(file.replace(/\.\w+$/, ".md")),
    };
  return {
    code: "stray-file",
    message: "nothing in the record is read from here",
    expected: EXPECTED,
    ...mendFor(file, parts),
  };
}

function mendFor(file: string, parts: readonly string[]): Pick<Misnamed, "mend" | "rename"> {
  const [top = ""] = parts;
  if (parts.length === 1 && file.toLowerCase() === "aircraft.md") return renames("aircraft.md");
  if (FOLDERS[top] !== undefined)
    return { mend: `move it up to ${top}/${parts.at(-1)}`, rename: `${top}/${parts.at(-1)}` };
  const meant = parts.length > 1 ? nearest(top, [...Object.keys(FOLDERS), ...Object.values(FOLDERS)]) : undefined;
  const folder = Object.entries(FOLDERS).find(([name, kind]) => name === meant || kind === meant)?.[0];
  return folder === undefined
    ? onlyYouKnow("move it to the folder of its kind, or out of the record")
    : { mend: `did you mean the folder ${folder}/?`, rename: [folder, ...parts.slice(1)].join("/") };
}

function nameFault(file: string): Misnamed | undefined {
  const id = nameOf(file);
  if (file.startsWith("entries/")) return entryNameFault(id);
  const folder = file.slice(0, file.lastIndexOf("/") + 1);
  const fault = file === "aircraft.md" ? undefined : idFault(id, "TP-1");
  if (fault === undefined) return undefined;
  if (fault.code === "limit") return { ...fault, found: shown(`${id}.md`), mend: "give it a shorter name" };
  const { instead, ...rest } = fault;
  return {
    ...rest,
    code: "file-name",
    message: "the file's name is an id and has only the letters A to Z, digits, - and . in it",
    found: `${id}.md`,
    ...(instead !== undefined && renames(`${folder}${instead}.md`, `${instead}.md`)),
  };
}

function entryNameFault(id: string): Misnamed | undefined {
  const match = /^(\d{4}-\d{2}-\d{2})-(.+)$/.exec(id);
  const day = match?.[1];
  const asId = idFault(id, "2025-03-08-rear-spar-caps");
  if (day !== undefined && !isFault(readDay(day)) && asId === undefined) return undefined;
  if (asId?.code === "limit") return { ...asId, found: shown(`${id}.md`), mend: "give it a shorter name" };
  const better = day === undefined || isFault(readDay(day)) ? undefined : asId?.instead;
  return {
    code: "file-name",
    message: "the name of an entry is its date and a few words with hyphens",
    expected: "a name such as 2025-03-08-rear-spar-caps.md",
    found: `${id}.md`,
    ...(better === undefined
      ? onlyYouKnow("give it the date, a hyphen and a word or two for its name, and .md")
      : renames(`entries/${better}.md`, `${better}.md`)),
  };
}
