/** What links in prose lead to. */
import { posix } from "node:path";
import { FOLDERS } from "../facts/kinds.ts";
import type { FilePath, Record, Ref } from "../facts/types.ts";

/** A thing of the record, a file that lies beside it, or an address elsewhere. */
export type Target = { readonly ref: Ref } | { readonly file: FilePath } | { readonly web: string };

/** What can be linked to: things by their ids, and the files that the record declares. */
export interface LinkIndex {
  readonly refOf: (id: string) => Ref | undefined;
  readonly isDeclared: (file: FilePath) => boolean;
}

const WEB = /^(?:https?:\/\/|mailto:)/i;

/**
 * What a link in a file of the record leads to; undefined if nothing. Tried in turn: an address of the web, an id,
 * a file of the record by its path or an entry by its file name alone, a declared file by its path.
 */
export function resolveTarget(index: LinkIndex, from: FilePath, href: string): Target | undefined {
  if (WEB.test(href)) return { web: href };
  const plain = decoded(href);
  const ref = index.refOf(plain);
  if (ref && ref.kind !== "person") return { ref };
  const path = posix.join(posix.dirname(from), plain);
  for (const candidate of plain.includes("/") ? [path] : [path, `entries/${plain}`]) {
    const page = fileRef(candidate);
    if (page && index.refOf(page.id)?.kind === page.kind) return { ref: page };
  }
  return index.isDeclared(path) ? { file: path } : undefined;
}

function fileRef(path: string): Ref | undefined {
  const [, folder = "", id = ""] = /^([^/]+)\/([^/]+)\.md$/.exec(path) ?? [];
  const kind = FOLDERS[folder];
  return kind === undefined || kind === "climate" || kind === "hours" ? undefined : { kind, id };
}

function decoded(href: string): string {
  try {
    return decodeURIComponent(href).normalize("NFC");
  } catch {
    return href;
  }
}

const INDEXES = new WeakMap<Record, LinkIndex>();

/** What a link in a passage leads to, in a record that has been read; `passageFile` is the file that the passage stands in. */
export function targetOf(record: Record, passageFile: FilePath, href: string): Target | undefined {
  let index = INDEXES.get(record);
  if (!index) INDEXES.set(record, (index = indexOf(record)));
  return resolveTarget(index, passageFile, href);
}

function indexOf(record: Record): LinkIndex {
  const refs = new Map<string, Ref>();
  const add = (kind: Ref["kind"], things: Iterable<{ readonly id: string }>): void => {
    for (const { id } of things) refs.set(id, { kind, id });
  };
  add("adhesive", record.adhesives.values());
  add("finish", record.finishes.values());
  add("procedure", record.procedures.values());
  add("lot", record.lots.values());
  add("trial", record.trials.values());
  add("assembly", record.assemblies.values());
  for (const assembly of record.assemblies.values()) {
    add("joint", assembly.joints);
    add("hold point", assembly.holdPoints);
  }
  add("entry", record.entries);
  for (const entry of record.entries) {
    add("batch", entry.batches);
    entry.batches.forEach((batch) => add("piece", batch.pieces));
    add("departure", entry.departures);
    add("open item", entry.raised);
  }
  const files = new Set(declaredIn(record));
  return { refOf: (id) => refs.get(id), isDeclared: (file) => files.has(file) };
}

function declaredIn(record: Record): FilePath[] {
  const files = [
    record.aircraft.photo?.file,
    ...[...record.assemblies.values()].map(({ drawing }) => drawing?.file),
    ...[...record.adhesives.values()].map(({ sheetFile }) => sheetFile),
    ...[...record.finishes.values()].map(({ sheetFile }) => sheetFile),
    ...[...record.lots.values()].map(({ certificate }) => certificate),
    ...record.entries.flatMap((entry) =>
      [...entry.photos, ...entry.clips, ...entry.attachments].map(({ file }) => file),
    ),
    ...record.entries.flatMap((entry) => entry.clips.map(({ poster }) => poster)),
    ...record.entries.flatMap((entry) => [
      ...entry.tests.map(({ photo }) => photo),
      ...entry.inspections.map(({ scan }) => scan),
    ]),
  ];
  return files.filter((file) => file !== undefined);
}
