/** What a joint holds by all entries up to a place in the order of the record. */
import type { Batch, JointSpec, Rework, Stage } from "../facts/types.ts";
import { lotsOf } from "./batch/lots.ts";
import { orderOf, type RecordIndex } from "./record-index.ts";

interface Held {
  readonly batches: readonly Batch[];
  readonly superseded: readonly Batch[];
  readonly reworks: readonly Rework[];
  readonly lots: readonly string[];
  /** Those said since it was last opened all along. */
  readonly stages: readonly Stage[];
  /** Whether it was ever said to be glued in stages, before it was opened too. */
  readonly inStages: boolean;
}

/**
 * Batches of the entry of the last rework, or of a later one, are in it; a rework comes before the batches of its own entry. A rework of some
 * stages takes out the glue that is of these alone. Timber stays until a rework says what it was replaced by.
 */
export function heldBy(index: RecordIndex, joint: JointSpec, until = Number.POSITIVE_INFINITY): Held {
  const isSeen = ({ entry }: { readonly entry: string }): boolean => orderOf(index, entry) <= until;
  const all = (index.batchesOfJoint.get(joint.id) ?? []).filter(isSeen);
  const reworks = (index.reworks.get(joint.id) ?? []).filter(isSeen);
  const said = (index.stages.get(joint.id) ?? []).filter(isSeen);
  const isBefore = ({ entry }: Batch | Stage, rework: Rework): boolean =>
    orderOf(index, entry) < orderOf(index, rework.entry);
  const isOut = (batch: Batch): boolean =>
    reworks.some((rework) => isBefore(batch, rework) && opens(rework, batch, said));
  const batches = all.filter((batch) => !isOut(batch));
  return {
    batches,
    superseded: all.filter(isOut),
    reworks,
    lots: [...new Set([...batches.flatMap((batch) => lotsOf({ batch })), ...timberIn(index, all, reworks)])],
    stages: said.filter((stage) => !reworks.some((one) => one.stages === undefined && isBefore(stage, one))),
    inStages: said.length > 0 || joint.stages !== undefined,
  };
}

/** Glue that is of no stage, or of another too, stays in where only some were opened. */
export function opens({ stages: opened }: Rework, { id }: Batch, said: readonly Stage[]): boolean {
  if (opened === undefined) return true;
  const own = said.filter(({ batches }) => batches.includes(id));
  return own.length > 0 && own.every(({ stage }) => opened.includes(stage));
}

function timberIn(index: RecordIndex, batches: readonly Batch[], reworks: readonly Rework[]): ReadonlySet<string> {
  const steps = [
    ...reworks.map(({ entry, replaced = [] }) => ({ entry, replaced, timber: [] as readonly string[] })),
    ...batches.map(({ entry, timber }) => ({ entry, replaced: [], timber })),
  ].sort((a, b) => orderOf(index, a.entry) - orderOf(index, b.entry));
  const found = new Set<string>();
  for (const { replaced, timber } of steps) {
    for (const { lot } of replaced) found.delete(lot);
    for (const lot of [...replaced.map((one) => one.with), ...timber]) found.add(lot);
  }
  return found;
}
