/** A record that was not held against itself, with only those facts in it whose names it knows. */
import { partsNoted } from "../facts/build/adhesive-kind.ts";
import { defined } from "../defined.ts";
import type { Batch, Component, Piece, Record, Rework } from "../facts/types.ts";

/** Names of lots that are not known go, so that what they stood for is not shown; a piece or a batch that cannot be judged goes, and what is of an unknown assembly. */
export function onlyKnown(record: Record): Record {
  const joints = new Set([...record.assemblies.values()].flatMap((assembly) => assembly.joints.map(({ id }) => id)));
  const lot = <T extends { readonly lot?: string }>(part: T): T => {
    if (part.lot === undefined || record.lots.has(part.lot)) return part;
    const { lot: _, ...rest } = part;
    return rest as T;
  };
  const piece = (one: Piece): Piece =>
    lot(one.legs?.some((leg) => leg.lot !== undefined && !record.lots.has(leg.lot)) ? { ...one, legs: [] } : one);
  const batch = (one: Batch): Batch => ({
    ...one,
    ...Object.fromEntries(partsNoted<Component>(one).map(({ part, noted }) => [part, lot(noted)])),
    timber: one.timber.filter((id) => record.lots.has(id)),
    joints: one.joints.filter((id) => joints.has(id)),
    pieces: one.pieces.filter(({ procedure }) => record.procedures.has(procedure)).map(piece),
  });
  const rework = (one: Rework): Rework =>
    defined({
      ...one,
      joints: one.joints.filter((id) => joints.has(id)),
      replaced: one.replaced?.filter(({ lot: out, with: put }) => record.lots.has(out) && record.lots.has(put)),
    });
  const entries = record.entries.map((entry) => ({
    ...entry,
    coats: entry.coats
      .filter(({ finish }) => record.finishes.has(finish))
      .map((one) => ({ ...one, lots: one.lots.filter((id) => record.lots.has(id)) })),
    batches: entry.batches.filter(({ adhesive }) => record.adhesives.has(adhesive)).map(batch),
    reworks: entry.reworks.map(rework),
    departures: entry.departures.filter(({ assembly }) => record.assemblies.has(assembly)),
    measurements: entry.measurements.filter(({ assembly }) => record.assemblies.has(assembly)),
  }));
  return { ...record, entries };
}
