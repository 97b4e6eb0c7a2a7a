/** Cross references over what an edition shows, made once for all of its pages. */
import type { MeasurementFile, PieceFile } from "../../evidence/types.ts";
import type { Batch, Cut, Entry, FilePath, Photo, Record, Stage } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";

export interface TraceIndex {
  readonly entries: ReadonlyMap<string, Entry>;
  /** Batches in the order they were mixed in. */
  readonly batches: readonly Batch[];
  /** Hold points that ask for a joint. */
  readonly holdPointsOf: ReadonlyMap<string, readonly string[]>;
  /** Pieces made for a trial. */
  readonly piecesOf: ReadonlyMap<string, readonly PieceFile[]>;
  /** What was cut from a lot, in the order of entries. */
  readonly cutsOf: ReadonlyMap<string, readonly Cut[]>;
  /** Stages of joints, in the order of entries. */
  readonly stagesOf: ReadonlyMap<string, readonly Stage[]>;
  /** Every measurement once, in the order of entries. */
  readonly measurements: readonly MeasurementFile[];
  /** What is said of a photograph in the entry that shows it. */
  readonly photos: ReadonlyMap<FilePath, Photo>;
  /** Assemblies with their parents before them. */
  readonly assemblies: readonly string[];
}

export const traceIndex = (shown: Shown): TraceIndex => shown.memo.once(shown, indexed);

function indexed(shown: Shown): TraceIndex {
  const { record, evidence } = shown;
  return {
    entries: new Map(record.entries.map((entry) => [entry.id, entry])),
    batches: record.entries.flatMap((entry) => entry.batches),
    holdPointsOf: grouped(
      [...evidence.holdPoints.values()].flatMap((file) =>
        file.joints.map((joint) => [joint, file.holdPoint.id] as const),
      ),
    ),
    piecesOf: grouped(
      [...evidence.pieces.values()].flatMap((file) =>
        file.piece.trial === undefined ? [] : [[file.piece.trial, file] as const],
      ),
    ),
    cutsOf: grouped(record.entries.flatMap((entry) => entry.cuts.map((cut) => [cut.lot, cut] as const))),
    stagesOf: grouped(record.entries.flatMap(({ stages }) => stages.map((stage) => [stage.joint, stage] as const))),
    measurements: measurementsIn(shown),
    photos: new Map(record.entries.flatMap((entry) => entry.photos.map((photo) => [photo.file, photo]))),
    assemblies: parentsFirst(record),
  };
}

/** An assembly's path of titles from the outermost, such as `Wing › Left panel › Main spar`. */
export function assemblyPath(record: Record, id: string): string {
  const titles: string[] = [];
  for (
    let at = record.assemblies.get(id);
    at !== undefined;
    at = at.parent === undefined ? undefined : record.assemblies.get(at.parent)
  )
    titles.unshift(at.title);
  return titles.join(" › ");
}

function grouped<T>(pairs: readonly (readonly [string, T])[]): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const [key, value] of pairs) {
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [value]);
    else group.push(value);
  }
  return groups;
}

/** Assemblies hold the measurements of those within them too, so each is met more than once. */
function measurementsIn({ record, evidence }: Shown): MeasurementFile[] {
  const order = new Map(record.entries.map((entry, at) => [entry.id, at]));
  const once = new Map<string, MeasurementFile>();
  for (const assembly of evidence.assemblies.values()) {
    for (const file of assembly.measurements) {
      const { file: name, line, column } = file.measurement.place;
      once.set(`${name}:${line}:${column}`, file);
    }
  }
  const at = ({ measurement }: MeasurementFile): number => order.get(measurement.entry) ?? order.size;
  return [...once.values()].sort(
    (a, b) =>
      at(a) - at(b) ||
      a.measurement.place.line - b.measurement.place.line ||
      a.measurement.place.column - b.measurement.place.column,
  );
}

function parentsFirst(record: Record): string[] {
  const children = grouped(
    [...record.assemblies.values()].flatMap(({ id, parent }) => (parent === undefined ? [] : [[parent, id] as const])),
  );
  const below = (id: string): string[] => [id, ...(children.get(id) ?? []).flatMap(below)];
  return [...record.assemblies.values()].filter(({ parent }) => parent === undefined).flatMap(({ id }) => below(id));
}
