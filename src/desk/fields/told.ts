/** Tables of fields, as they are told on a terminal and on a page. */
import { type FileKind, FOLDERS } from "../../facts/kinds.ts";
import { type FieldRow, fieldRows, KINDS } from "./rows.ts";

const AIRCRAFT = "aircraft.md";

/** Where files of a kind stand: `lots/ID.md`. */
function fileOf(kind: FileKind): string {
  const folder = Object.entries(FOLDERS).find(([, one]) => one === kind)?.[0];
  return folder === undefined ? AIRCRAFT : `${folder}/${kind === "climate" || kind === "hours" ? "NAME" : "ID"}.md`;
}

/** All kinds, a line each. */
export function kindsText(): string {
  const width = Math.max(...KINDS.map((kind) => kind.length));
  return KINDS.map((kind) => `${kind.padEnd(width)}  ${fileOf(kind)}\n`).join("");
}

/** Columns that the longest words may take before those after them are moved aside. */
const WIDEST = { path: 30, form: 40 };

export function kindText(kind: FileKind, columns: number): string {
  const rows = fieldRows(kind);
  const wide = (of: (row: FieldRow) => string, most: number): number =>
    Math.max(...rows.map((row) => of(row).length).filter((length) => length <= most));
  const path = wide(nameOf, WIDEST.path);
  const form = wide((row) => row.form, WIDEST.form);
  const line = (cells: readonly [string, string, string]): string =>
    `${cells[0].padEnd(path)}  ${cells[1].padEnd(form)}  ${cells[2]}`.trimEnd();
  return [
    fileOf(kind),
    "",
    line(["field", "what it is", "such as"]),
    "-".repeat(Math.min(columns, path + form + 20)),
    ...rows.flatMap((row) => [
      line([nameOf(row), row.form, row.example]),
      ...wrapped(`${row.says}${row.from === undefined ? "" : ` [${row.from}]`}`, columns - 4).map((l) => `    ${l}`),
    ]),
    "",
    ...wrapped(LEGEND, columns),
    "",
  ].join("\n");
}

const LEGEND =
  "* must be there, wherever that is of which it is a part; [] after a name: one for each in a list. [inspector] or [archive]: by default the first edition that shows it; all others are shown by every edition that shows the file or the block with `for`.";

const nameOf = ({ path, needed }: FieldRow): string => (needed ? `${path} *` : path);

function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** A page in Markdown with all of them. */
export function markdownPage(): string {
  return [
    "# What may stand in each file of a record",
    "",
    "Made from the forms that every file is held against, by `scarfline fields --markdown`; `scarfline fields KIND`",
    "tells the same on a terminal. All values are read as the text that stands there, quantities with their unit. A mark",
    "`[]` after a name: one for each in a list. *Needed*: must be there, wherever that is of which it is a part. *From*:",
    "by default the first edition that shows it; where there is none, every edition that shows the file, or the block",
    "with `for`.",
    ...KINDS.flatMap((kind) => [
      "",
      `## ${kind}`,
      "",
      `In \`${fileOf(kind)}\`.`,
      "",
      ...markdownTable(fieldRows(kind)),
    ]),
    "",
  ].join("\n");
}

function markdownTable(rows: readonly FieldRow[]): string[] {
  return [
    "| field | needed | what it is | such as | says | from |",
    "| --- | --- | --- | --- | --- | --- |",
    ...rows.map(
      ({ path, needed, form, example, says, from = "" }) =>
        `| \`${path}\` | ${needed ? "needed" : ""} | ${cell(form)} | ${cell(example)} | ${cell(says)} | ${from} |`,
    ),
  ];
}

/** Marks of Markdown stand as they are within code, but for the one that parts cells. */
const cell = (text: string): string =>
  text
    .split(/(`[^`]*`)/)
    .map((part) => part.replaceAll(part.startsWith("`") ? /\|/g : /[\\|*_<[\]]/g, "\\$&"))
    .join("");
