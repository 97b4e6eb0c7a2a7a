/** What the builder should know of how the record was read: forms of text that are not plain, and files that are passed over. */
import { FOLDERS } from "../facts/kinds.ts";
import { inOrder, type Note } from "../problem.ts";
import type { Filed, Files } from "./filed.ts";
import { isTable, kindOf } from "./filed.ts";
import { isOwn } from "./own.ts";
import type { Form } from "./text/bytes.ts";
import { htmlIn } from "./text/html.ts";

/** Names that are told of many. */
const MOST_NAMES = 20;

export function notesOf(
  files: Files,
  listed: readonly string[],
  declared: () => ReadonlySet<string>,
  forms: ReadonlyMap<string, readonly Form[]>,
): Note[] {
  return inOrder([...formNotes(forms), ...unreadNotes(listed, declared), ...htmlNotes(files)]);
}

const READ_AS: { readonly [form in Form]: string } = {
  "byte order mark": "begins with a byte order mark, and was read without it",
  "UTF-16": "is UTF-16, and was read as such; most other programs that will read this record want UTF-8",
  CRLF: "has line ends of Windows (CRLF), and was read with them",
  "Windows-1252": "is not UTF-8, and was read as Windows-1252: look whether signs such as ° and µ are right",
};

/** One note for each form, which names the files. */
function formNotes(forms: ReadonlyMap<string, readonly Form[]>): Note[] {
  return (Object.keys(READ_AS) as Form[]).flatMap((form) => {
    const [first, ...others] = [...forms].flatMap(([file, found]) => (found.includes(form) ? [file] : [])).sort();
    if (first === undefined) return [];
    const also = others.length === 0 ? "" : `; so ${others.length === 1 ? "is" : "are"} ${named(others)}`;
    return [{ file: first, line: 1, column: 1, message: `this file ${READ_AS[form]}${also}` }];
  });
}

function named(files: readonly string[]): string {
  const names = files.slice(0, MOST_NAMES).join(", ");
  return files.length > MOST_NAMES ? `${names} and ${files.length - MOST_NAMES} more` : names;
}

/** Files in the folders that the record is read from which are neither read nor named by anything that is. */
function unreadNotes(listed: readonly string[], declared: () => ReadonlySet<string>): Note[] {
  const byFolder = new Map<string, string[]>();
  let names: ReadonlySet<string> | undefined;
  for (const file of listed) {
    const [top = "", ...rest] = file.split("/");
    const isOurs = rest.length === 0 || FOLDERS[top] !== undefined;
    if (!isOurs || kindOf(file) !== undefined || isTable(file) || isOwn(file)) continue;
    names ??= declared();
    if (names.has(file)) continue;
    const folder = rest.length === 0 ? "" : top;
    byFolder.set(folder, [...(byFolder.get(folder) ?? []), file]);
  }
  return [...byFolder.values()].map(([file = "", ...others]) => ({
    file,
    line: 1,
    column: 1,
    message: `nothing reads this file, and nothing in the record names it${others.length === 0 ? "" : `; nor ${named(others)}`}`,
  }));
}

/** One note for each file, at its first HTML. */
function htmlNotes(files: Files): Note[] {
  return (Object.values(files) as (readonly Filed<unknown>[])[]).flat().flatMap(({ body, source }) => {
    const all = body.flatMap(({ markdown, line }) =>
      htmlIn(markdown).map((html) => ({ ...html, at: source.lineStart(line) + html.offset })),
    );
    const [first] = all;
    if (first === undefined) return [];
    const more = all.length === 1 ? "" : ` (and ${all.length - 1} more in this file)`;
    return [{ ...source.at(first.at), message: `HTML is shown as it is typed, as words: ${first.shown}${more}` }];
  });
}
