/** What the checks work on and where they put what they find. */
import { placed, type Problem } from "../../problem.ts";
import type { EarlierTable } from "../earlier/read.ts";
import type { Draft, Filed, Files, Sound } from "../filed.ts";
import type { Folder } from "../folder.ts";
import type { Ids } from "../ids.ts";
import type { Spec } from "../../facts/kinds.ts";
import { type Fault, isFault } from "../../facts/reading.ts";
import type { FileIndex } from "../file-index.ts";
import type { Path } from "../text/yaml.ts";
import type { Day, Kind } from "../../facts/types.ts";

export interface CheckContext {
  readonly draft: Draft;
  readonly folder: Folder;
  readonly ids: Ids;
  readonly fileIndex: FileIndex;
  readonly earlier: readonly EarlierTable[];
  readonly today: Day | undefined;
  readonly problems: Problem[];
}

export type EntryFile = Sound<Spec<"entry">>;
export type BatchSpec = NonNullable<Spec<"entry">["batches"]>[number];
export type PieceSpec = NonNullable<BatchSpec["pieces"]>[number];

/** The files of a kind of which at least a part is sound, in the order of their names. */
export function soundOf<K extends keyof Files>(context: CheckContext, kind: K): Sound<Spec<K>>[] {
  const files = context.draft.files[kind] as readonly Filed<Spec<K>>[];
  return files.flatMap((filed) => (filed.spec === undefined ? [] : [filed as Sound<Spec<K>>]));
}

export function report(context: CheckContext, filed: Filed<unknown>, path: Path, fault: Fault): void {
  context.problems.push(placed(filed.at(path), fault, filed.typedAt(path)));
}

/** Reports an id that names nothing of these kinds, unless it may stand in a file that could not be read; true where it names one. */
export function expectId(
  context: CheckContext,
  filed: Filed<unknown>,
  path: Path,
  kinds: readonly Kind[],
  id: string | undefined,
): id is string {
  if (id === undefined) return false;
  const fault = idFaultOf(context, kinds, id);
  if (fault) report(context, filed, path, fault);
  return context.ids.fault(kinds, id) === undefined;
}

/** What is wrong with an id, unless it may stand in a file that could not be read. */
export function idFaultOf(context: CheckContext, kinds: readonly Kind[], id: string): Fault | undefined {
  const fault = context.ids.fault(kinds, id);
  return fault && !isExcused(context, kinds, id) ? fault : undefined;
}

function isExcused(context: CheckContext, kinds: readonly Kind[], id: string): boolean {
  if (context.ids.get(id) !== undefined) return false;
  return (
    (kinds.includes("person") && context.draft.files.aircraft.length === 0) ||
    context.draft.unread.some((text) => text.includes(id))
  );
}

/** Whether a thing stands in a file with problems, so that nothing may be said of what seems to be missing. */
export function doubtful(context: CheckContext, id: string): boolean {
  return context.draft.unsound.some((text) => text.includes(id));
}

export function expectPicture(
  context: CheckContext,
  filed: Filed<unknown>,
  path: Path,
  typed: string | undefined,
): void {
  expectFile(context, filed, path, typed, (file) => context.fileIndex.pictureFault(file));
}

export function expectClip(context: CheckContext, filed: Filed<unknown>, path: Path, typed: string | undefined): void {
  expectFile(context, filed, path, typed, (file) => context.fileIndex.clipFault(file));
}

export function expectAttachment(
  context: CheckContext,
  filed: Filed<unknown>,
  path: Path,
  typed: string | undefined,
): void {
  expectFile(context, filed, path, typed, (file) => context.fileIndex.attachmentFault(file));
}

function expectFile(
  context: CheckContext,
  filed: Filed<unknown>,
  path: Path,
  typed: string | undefined,
  faultOf: (file: string) => Fault | undefined,
): void {
  if (typed === undefined) return;
  const found = context.fileIndex.find(filed.file, typed);
  const fault = isFault(found) ? found.fault : faultOf(found.value);
  if (fault) report(context, filed, path, fault);
}

/** `entries/2025-03-08-caps.md:12`, to name another place in a message. */
export function whereIs(filed: Filed<unknown>, path: Path): string {
  const { file, line } = filed.at(path);
  return `${file}:${line}`;
}
