/** The files of the record, read and held against their schemas, but not yet against each other. */
import { inOrder, type Place, type Problem } from "../problem.ts";
import { LIMITS } from "../facts/limits.ts";
import { FOLDERS, type FileKind, SCHEMAS, type Spec } from "../facts/kinds.ts";
import { bytesOf } from "./file-bytes.ts";
import type { Folder } from "./folder.ts";
import { spelledOut } from "./usual/short-forms.ts";
import { type Readings, readingKey } from "./readings.ts";
import { parse, type Parsed, type StandIns } from "./schema/parse.ts";
import { type Form, readText } from "./text/bytes.ts";
import { frontMatterAgain, readFrontMatter } from "./text/front-matter.ts";
import { readPassages } from "./text/passages.ts";
import { type Mention, mentionsIn } from "./text/prose.ts";
import type { Source } from "./text/source.ts";
import type { Data, FrontMatter, Path } from "./text/yaml.ts";
import type { Passage } from "../facts/types.ts";

/** One file. `spec` is what is sound in it; `whole` says that this is all of it. */
export interface Filed<S> {
  readonly file: string;
  /** The file's name without `.md`. */
  readonly id: string;
  readonly source: Source;
  readonly front: FrontMatter;
  readonly data: Data;
  readonly spec: S | undefined;
  readonly whole: boolean;
  readonly body: readonly Passage[];
  /** Of each passage. */
  readonly mentions: readonly (readonly Mention[])[];
  /** Where the value at a path of `spec` stands. */
  readonly at: (path: Path) => Place;
  /** Where the value at a path of `data` stands. */
  readonly rawAt: (path: Path) => Place;
  readonly typedAt: (path: Path) => string;
  /** The entry whose `in_use` put the value at a path of `spec` there. */
  readonly usualFrom: (path: Path) => string | undefined;
}

/** A file of which at least a part is sound. */
export interface Sound<S> extends Filed<S> {
  readonly spec: S;
}

export type Files = { readonly [K in FileKind]: readonly Filed<Spec<K>>[] };

export interface Draft {
  readonly files: Files;
  /** Texts of files with problems, of which a part may be missing in `files`. */
  readonly unsound: readonly string[];
  /** Texts of those of which nothing is known, not even the ids within. */
  readonly unread: readonly string[];
  readonly problems: readonly Problem[];
  /** In what form each file was written, where that is another than plain UTF-8. */
  readonly forms: ReadonlyMap<string, readonly Form[]>;
}

/**
 * What each file was read as, for whoever reads a record again and again: a file whose bytes are the same is not parsed a second time.
 * Bytes are compared, and not times, since a disk's clock may be too coarse to tell two savings apart.
 */
export type Memory = Map<
  string,
  { readonly bytes: Buffer; readonly standIns: StandIns; readonly read: ReadOne<FileKind> }
>;

/** What may be known of files from before. */
export interface Known {
  readonly memory?: Memory;
  readonly readings?: Readings;
}

export function readFiles(folder: Folder, known: Known = {}): Draft {
  const files: { [K in FileKind]: Filed<Spec<K>>[] } = {
    aircraft: [],
    assembly: [],
    adhesive: [],
    finish: [],
    procedure: [],
    lot: [],
    trial: [],
    entry: [],
    climate: [],
    hours: [],
  };
  const problems: Problem[] = [];
  const unsound: string[] = [];
  const unread: string[] = [];
  const forms = new Map<string, readonly Form[]>();
  for (const file of folder.files) {
    const kind = kindOf(file);
    if (kind === undefined) continue;
    const read = readFile(
      folder,
      file,
      kind,
      known,
      kind === "entry" ? { date: nameOf(file).slice(0, 10), title: "-" } : {},
    );
    for (const problem of read.problems) problems.push(problem);
    if (read.forms.length > 0) forms.set(file, read.forms);
    if (read.filed === undefined || !read.filed.whole) unsound.push(read.text);
    if (read.filed === undefined || read.filed.spec === undefined) unread.push(read.text);
    if (read.filed) (files[kind] as Filed<unknown>[]).push(read.filed);
  }
  forget(known.memory, folder);
  known.readings?.close();
  return { files, unsound, unread, problems: inOrder(problems), forms };
}

function forget(memory: Memory | undefined, folder: Folder): void {
  const there = new Set(folder.files);
  for (const file of memory?.keys() ?? []) if (!there.has(file)) memory?.delete(file);
}

/** The kind of file that a path promises, for Markdown files where the record expects them. */
export function kindOf(file: string): FileKind | undefined {
  if (file === "aircraft.md") return "aircraft";
  const parts = file.split("/");
  return parts.length === 2 && file.endsWith(".md") ? FOLDERS[parts[0] ?? ""] : undefined;
}

/** Whether a path is that of a table, of which every line is read. */
export const isTable = (file: string): boolean => /^(?:climate|hours)\/[^/]+\.csv$/iu.test(file);

export function nameOf(file: string): string {
  return file.slice(file.lastIndexOf("/") + 1).replace(/\.md$/, "");
}

interface ReadOne<K extends FileKind> {
  readonly filed?: Filed<Spec<K>>;
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly forms: readonly Form[];
}

function readFile<K extends FileKind>(
  folder: Folder,
  file: string,
  kind: K,
  { memory, readings }: Known,
  standIns: StandIns,
): ReadOne<K> {
  const bytes = bytesOf(folder, file, LIMITS.fileBytes);
  if ("problem" in bytes) return { text: bytes.head.toString("latin1"), problems: [bytes.problem], forms: [] };
  const known = memory?.get(file);
  if (known?.bytes.equals(bytes) === true && known.standIns["assembly"] === standIns["assembly"])
    return known.read as ReadOne<K>;
  const read = parseFile(file, bytes, kind, standIns, readings);
  memory?.set(file, { bytes, standIns, read });
  return read;
}

function parseFile<K extends FileKind>(
  file: string,
  bytes: Buffer,
  kind: K,
  standIns: StandIns,
  readings: Readings | undefined,
): ReadOne<K> {
  const text = readText(file, bytes);
  if ("problem" in text) return { text: bytes.toString("latin1"), problems: [text.problem], forms: [] };
  const { source, forms } = text;
  const key = readings && readingKey(kind, bytes);
  const known = key === undefined ? undefined : readings?.find(key);
  const read = known ? frontMatterAgain(source, known.front, known.bodyLine) : readFrontMatter(source);
  if ("problem" in read) return { text: source.text, problems: [read.problem], forms };
  const passages = readPassages(source, read.body, read.bodyLine);
  const front = kind === "entry" ? spelledOut(read.front) : read.front;
  const parsed = known ? soundAs(known.spec, front) : parsedAs(kind, front, standIns, read.syntax);
  const problems = [...read.problems, ...parsed.problems, ...passages.problems];
  const whole = problems.length === 0;
  const mentions = known?.mentions ?? passages.body.map(({ markdown }) => mentionsIn(markdown));
  if (key !== undefined && known === undefined && whole)
    readings?.keep(key, { bodyLine: read.bodyLine, front: read.value, spec: parsed.spec, mentions });
  const filed = {
    file,
    id: nameOf(file),
    source,
    front,
    data: front.data,
    spec: parsed.spec as Spec<K> | undefined,
    whole,
    body: passages.body,
    mentions,
    at: parsed.placeOf,
    rawAt: front.placeOf,
    typedAt: parsed.typedAt,
    usualFrom: parsed.usualFrom,
  };
  return { filed, text: source.text, problems, forms };
}

function parsedAs(kind: FileKind, front: FrontMatter, standIns: StandIns, syntax: boolean): Parsed<unknown> {
  return syntax ? soundAs(undefined, front) : parse(SCHEMAS[kind], front, standIns);
}

function soundAs(spec: unknown, { placeOf, typedAt, usualFrom }: FrontMatter): Parsed<unknown> {
  return { spec, problems: [], placeOf, typedAt, usualFrom };
}
