/** Measurements and pairs of sides as an edition shows them. */
import type { MeasurementFile, PairFile } from "../evidence/types.ts";
import type { Measurement } from "../facts/types.ts";
import type { Visibility } from "./visibility.ts";
import type { RedactedRecord } from "./redacted-record.ts";

type Facts = RedactedRecord["facts"];

export function redactedMeasurement(
  { again, ...file }: MeasurementFile,
  visibility: Visibility,
  facts: Facts,
): MeasurementFile {
  return {
    ...file,
    measurement: facts.measurement(file.measurement),
    ...(again && visibility.entries.has(again.entry) ? { again: facts.measurement(again) } : {}),
  };
}

/** A pair of which a side is shown keeps its verdict; what was reckoned from a hidden side goes with it. */
export function redactedPairs(
  pairs: ReadonlyMap<string, PairFile>,
  visibility: Visibility,
  facts: Facts,
): ReadonlyMap<string, PairFile> {
  const shown = (all: readonly Measurement[]): Measurement[] =>
    all.filter(({ entry }) => visibility.entries.has(entry)).map(facts.measurement);
  const out = new Map<string, PairFile>();
  for (const [id, { difference, tolerance, ...file }] of pairs) {
    const now = shown(file.now);
    const before = shown(file.before);
    if (now.length + before.length === 0) continue;
    out.set(id, {
      ...file,
      now,
      before,
      ...(tolerance && visibility.entries.has(tolerance.entry) ? { tolerance } : {}),
      ...(difference !== undefined && now.length === file.now.length ? { difference } : {}),
    });
  }
  return out;
}
