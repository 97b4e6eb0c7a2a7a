/** An entry that was written elsewhere, as a rule at the bench: kept as it is, or told why it is not. */
import { readFileSync } from "node:fs";
import { basename, extname, join, posix } from "node:path";
import { idFault } from "../../facts/id.ts";
import { plainly } from "../../problem.ts";
import { readText } from "../../record/text/bytes.ts";
import { readFrontMatter } from "../../record/text/front-matter.ts";
import { pathOf } from "../entry/text.ts";
import { added, keep } from "../keep.ts";
import { difference } from "./difference.ts";
import type { Given } from "./given.ts";
import { type Desk, left, type Outcome } from "./outcome.ts";
import { standingAs } from "./standing.ts";

/** `photographs` are those that were given with it: which of them it names, they are named by. */
export async function takeEntry(given: Given, photographs: readonly Given[], desk: Desk): Promise<readonly Outcome[]> {
  const there = standingAs(desk, "entries", given.bytes);
  const read = entryIn(given);
  if ("says" in read) return [left(given.path, [read.says], read.problems)];
  const { target, text } = read;
  const standing = there === undefined ? sameSession(read, desk) : undefined;
  if (standing !== undefined) return [left(given.path, laterWords(standing, given, text, desk))];
  if (there === undefined && desk.files.includes(target))
    return [
      left(given.path, [
        `${target} is another entry, and is left as it is. If both are to stand, give one a name of its own.`,
      ]),
    ];
  const named = namedBy(there ?? target, text, photographs, desk);
  const wanted = new Map(named.flatMap(({ path, bytes, stands }) => (stands ? [] : [[path, bytes] as const])));
  const files = there === undefined ? new Map([...wanted, [target, given.bytes]]) : wanted;
  const problems = await added(desk.content, files, desk.today);
  if (problems.length > 0)
    return [
      left(
        given.path,
        [
          `With ${target} the record would have these problems, so it was not taken.`,
          ...(problems.some(({ code }) => code === "duplicate-id") ? [BY_PEN] : []),
        ],
        problems,
      ),
      ...named.filter(({ stands }) => !stands).map(({ from }) => left(from, [`It goes with ${given.path}.`])),
    ];
  await keep(desk.content, files);
  return [
    there === undefined
      ? { from: given.path, became: "taken", says: [target] }
      : { from: given.path, became: "there", says: [there] },
    ...named.map(({ from, path, stands }): Outcome => ({ from, became: stands ? "there" : "taken", says: [path] })),
  ];
}

const BY_PEN =
  "Two things have one number. It stands on cups and sticks by pen: look which carry it, and give the others one of their own.";

interface Written {
  readonly text: string;
  readonly target: string;
  readonly date: string;
  readonly session?: Session;
}

interface Session {
  readonly id: string;
  readonly revision: number;
}

function entryIn({ path, name, bytes }: Given): Written | (Pick<Outcome, "problems"> & { readonly says: string }) {
  const source = readText(path, bytes);
  if ("problem" in source) return { says: "It is no text of a record.", problems: [source.problem] };
  const read = readFrontMatter(source.source);
  if ("problem" in read) return { says: "It is no entry.", problems: [read.problem] };
  const { date, title } = read.front.data as { readonly [key: string]: unknown };
  if (typeof date !== "string" || typeof title !== "string" || !/^\d{4}-\d\d-\d\d$/u.test(date))
    return { says: "It is no entry: one has its `date` and its `title`. Nothing else is taken as Markdown." };
  const { text } = source.source;
  const stem = basename(name, extname(name)).replace(/\.md$/iu, "");
  const isName = stem.startsWith(date) && idFault(stem, "2026-03-14-first-glue") === undefined;
  const session = sessionIn(text);
  const target = isName ? `entries/${stem}.md` : pathOf(date, title);
  return session === undefined ? { text, target, date } : { text, target, date, session };
}

/** The bench page names the session that its file is of in a comment. */
function sessionIn(text: string): Session | undefined {
  const [, id, revision] = /^# .*\bsession ([\w-]+), revision (\d+)\b/mu.exec(text) ?? [];
  return id === undefined ? undefined : { id, revision: Number(revision) };
}

interface Standing extends Session {
  readonly path: string;
  readonly text: string;
}

/** An entry of the record that is of the same session and day. */
function sameSession({ session, date }: Written, { content, record }: Desk): Standing | undefined {
  if (session === undefined) return undefined;
  return record.entries
    .filter(({ file }) => file.startsWith(`entries/${date}`))
    .flatMap(({ file }) => {
      const text = readFileSync(join(content, file), "utf8");
      const one = sessionIn(text);
      return one?.id === session.id ? [{ ...one, path: file, text }] : [];
    })[0];
}

function laterWords({ path, text, revision }: Standing, given: Given, later: string, { content }: Desk): string[] {
  const own = sessionIn(later)?.revision ?? 0;
  const which =
    own > revision ? "a later one, and differs" : own < revision ? "an earlier one" : "the same, and differs";
  const lines = difference({ name: join(content, path), text }, { name: given.path, text: later }).split("\n");
  return [
    `${path} is of the same session, in revision ${revision}; this is revision ${own}, ${which}. It is left as it is:`,
    ...lines.map((line) => `  ${plainly(line)}`),
    ...(own > revision
      ? ["What is right of it is yours to write there; once that entry is sealed, a later entry amends it."]
      : []),
  ];
}

interface Named {
  readonly from: string;
  readonly path: string;
  readonly bytes: Buffer;
  readonly stands: boolean;
}

/** Photographs that were given and that the entry names where they are not yet, or are the same. */
function namedBy(entry: string, text: string, photographs: readonly Given[], desk: Desk): Named[] {
  return [...text.matchAll(/\bfile: *["']?([^"'\n,}]+?)["']? *(?=[,}\n])/gu)].flatMap(([, typed = ""]) => {
    const path = posix.join(posix.dirname(entry), typed.trim());
    const own = photographOf(posix.basename(path), photographs);
    if (own === undefined || path.startsWith("..") || !path.includes("/")) return [];
    const stands = desk.files.includes(path);
    if (stands && !readFileSync(join(desk.content, path)).equals(own.bytes)) return [];
    return [{ from: own.path, path, bytes: own.bytes, stands }];
  });
}

/** What another download of it would be called may be another photograph too: its own name comes first, and of several that differ none is taken. */
function photographOf(wanted: string, photographs: readonly Given[]): Given | undefined {
  const own = photographs.find(({ path }) => basename(path) === wanted);
  const [first, ...others] = photographs.filter(({ name }) => name === wanted);
  return own ?? (others.every(({ bytes }) => first?.bytes.equals(bytes)) ? first : undefined);
}
