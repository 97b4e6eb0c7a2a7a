/** A measurement against its drawing: found minus drawing, within the tolerance or out of it. Equal to a limit is within. */
import { against } from "../reckoning/compare.ts";
import type { Measurement } from "../record/types.ts";
import type { MeasurementFile } from "./types.ts";

export function measurementFile(measurement: Measurement): MeasurementFile {
  const { drawing, tolerance, found } = measurement;
  if (!drawing) return { measurement, verdict: "no tolerance" };
  const off = found.value - drawing.value;
  if (!tolerance) return { measurement, off, verdict: "no tolerance" };
  const where = against(found.value, { least: drawing.value + tolerance.minus, most: drawing.value + tolerance.plus });
  return { measurement, off, verdict: where === "within" ? "within" : "out" };
}
