/** What the page on one joint says. */
import { lotsOf } from "../../evidence/batch/lots.ts";
import type { BatchFile, HoldPointFile, JointFile } from "../../evidence/types.ts";
import type { Clip, Entry, Lot, Photo, Stage } from "../../facts/types.ts";
import { peopleAt } from "./batch-page.ts";
import type { Shown } from "../../editions/shown.ts";
import { assemblyPath, traceIndex } from "./trace-index.ts";

export interface JointBatch {
  readonly file: BatchFile;
  readonly entry: Entry | undefined;
  readonly people: readonly string[];
  /** False once rework has taken it out. */
  readonly now: boolean;
}

export interface JointPage {
  readonly file: JointFile;
  readonly assemblyTitle: string;
  /** Those in the joint now before those taken out. */
  readonly batches: readonly JointBatch[];
  /** Lots with the batch that brought them, those in the joint now first. */
  readonly lots: readonly { readonly lot: Lot; readonly batch: string; readonly now: boolean }[];
  /** In the order of entries. */
  readonly stages: readonly Stage[];
  readonly holdPoints: readonly HoldPointFile[];
  /** Photographs and clips of the sessions in which it was glued, each once. */
  readonly photos: readonly Photo[];
  readonly clips: readonly Clip[];
  /** The joint was glued, but with a batch that the edition does not show. */
  readonly glueHidden: boolean;
}

export function jointPage(shown: Shown, file: JointFile): JointPage {
  const { record, evidence } = shown;
  const index = traceIndex(shown);
  const batches = [
    ...file.batches.map((id) => ({ id, now: true })),
    ...file.superseded.map((id) => ({ id, now: false })),
  ].flatMap(({ id, now }) => {
    const batch = evidence.batches.get(id);
    if (batch === undefined) return [];
    const entry = index.entries.get(batch.batch.entry);
    return [{ file: batch, entry, people: peopleAt(shown, entry), now }];
  });
  const sessions = new Set(batches.flatMap(({ entry }) => (entry === undefined ? [] : [entry])));
  return {
    file,
    batches,
    assemblyTitle: assemblyPath(record, file.joint.assembly),
    lots: batches.flatMap(({ file: of, now }) =>
      lotsOf(of).flatMap((id) => {
        const lot = record.lots.get(id);
        return lot === undefined
          ? []
          : [{ lot, batch: of.batch.id, now: now || (file.lots.includes(id) && of.batch.timber.includes(id)) }];
      }),
    ),
    stages: index.stagesOf.get(file.joint.id) ?? [],
    holdPoints: (index.holdPointsOf.get(file.joint.id) ?? []).flatMap((id) => evidence.holdPoints.get(id) ?? []),
    photos: once([...sessions].flatMap((entry) => entry.photos)),
    clips: once([...sessions].flatMap((entry) => entry.clips)),
    glueHidden: file.batches.length === 0 && file.state !== "not glued" && file.state !== "opened",
  };
}

function once<T extends { readonly file: string }>(things: readonly T[]): T[] {
  return [...new Map(things.map((thing) => [thing.file, thing])).values()];
}
