/** Joints that were glued on an assembly after something had been put on it: which faces were coated nobody notes. */
import type { Batch, Coat, FinishKind, JointSpec } from "../../facts/types.ts";
import type { Finder } from "../finding.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import type { Finding } from "../types.ts";
import { putOn } from "./case.ts";
import { coatsStood, type CoatStood } from "./standing.ts";

const SPREADS: readonly FinishKind[] = ["primer", "varnish", "dope", "paint"];

/** Each place once for a batch, by the first coat there. */
export function coatedFaces(
  index: RecordIndex,
  { assembly }: JointSpec,
  batches: readonly Batch[],
  find: Finder,
): Finding[] {
  const coats = coatsStood(index, assembly).filter(
    ({ coat }) => coat.bare === undefined && SPREADS.includes(lookUp(index.record.finishes, coat.finish).kind),
  );
  return batches.flatMap((batch) => {
    const first = new Map<string, Coat>();
    for (const one of coats)
      if (!first.has(one.coat.where) && wasThere(index, one, batch)) first.set(one.coat.where, one.coat);
    return [...first.values()].map((coat) => found(index, coat, batch, find));
  });
}

/** Where both were done by one entry, unless their times tell that it was put on later. */
function wasThere(index: RecordIndex, { coat, off }: CoatStood, batch: Batch): boolean {
  const glued = orderOf(index, batch.entry);
  if (off !== undefined && orderOf(index, off.entry) <= glued) return false;
  if (coat.entry !== batch.entry) return orderOf(index, coat.entry) < glued;
  const closed = batch.closed ?? batch.mixed;
  return coat.at === undefined || closed === undefined || putOn(index, coat).from < closed.epoch;
}

function found(index: RecordIndex, coat: Coat, batch: Batch, find: Finder): Finding {
  const { title } = lookUp(index.record.finishes, coat.finish);
  const values = { batch: batch.id, where: coat.where, finish: title, day: coat.day };
  const alsoOn = [{ kind: "batch", id: batch.id } as const, { kind: "entry", id: coat.entry } as const];
  return find("coated-faces/not-bare", "caution", values, { alsoOn });
}
