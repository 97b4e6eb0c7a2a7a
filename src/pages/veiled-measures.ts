/** Measurements and pairs of sides as an edition shows them. */
import type { MeasurementFile, PairFile } from "../evidence/types.ts";
import type { Measurement } from "../record/types.ts";
import type { Veil } from "./veil.ts";
import type { VeiledRecord } from "./veiled-record.ts";

type Facts = VeiledRecord["facts"];

export function veiledMeasurement({ again, ...file }: MeasurementFile, veil: Veil, facts: Facts): MeasurementFile {
  return {
    ...file,
    measurement: facts.measurement(file.measurement),
    ...(again && veil.entries.has(again.entry) ? { again: facts.measurement(again) } : {}),
  };
}

/** A pair of which a side is shown keeps its verdict; what was reckoned from a hidden side goes with it. */
export function veiledPairs(
  pairs: ReadonlyMap<string, PairFile>,
  veil: Veil,
  facts: Facts,
): ReadonlyMap<string, PairFile> {
  const shown = (all: readonly Measurement[]): Measurement[] =>
    all.filter(({ entry }) => veil.entries.has(entry)).map(facts.measurement);
  const out = new Map<string, PairFile>();
  for (const [id, { difference, tolerance, ...file }] of pairs) {
    const now = shown(file.now);
    const before = shown(file.before);
    if (now.length + before.length === 0) continue;
    out.set(id, {
      ...file,
      now,
      before,
      ...(tolerance && veil.entries.has(tolerance.entry) ? { tolerance } : {}),
      ...(difference !== undefined && now.length === file.now.length ? { difference } : {}),
    });
  }
  return out;
}
