/** A measurement against its drawing: within its limits or out of them. Equal to a limit is within. */
import { defined } from "../../defined.ts";
import { against } from "../../reckoning/compare.ts";
import type { Measurement, Range } from "../../facts/types.ts";
import { orderOf, type RecordIndex } from "../record-index.ts";
import type { MeasurementFile } from "../types.ts";

export function measurementFile(index: RecordIndex, measurement: Measurement): MeasurementFile {
  const { drawing, found } = measurement;
  const verdict = verdictOf(measurement);
  const again = verdict === "out" ? measuredAgain(index, measurement) : undefined;
  return defined({ measurement, off: drawing ? found.value - drawing.value : undefined, verdict, again });
}

/** The limits that the drawing gives, or its measure with the tolerance about it. */
function limitsOf({ drawing, limits, tolerance }: Measurement): Pick<Range, "least" | "most"> | undefined {
  if (limits) return limits;
  return drawing && tolerance && { least: drawing.value + tolerance.minus, most: drawing.value + tolerance.plus };
}

function verdictOf(measurement: Measurement): MeasurementFile["verdict"] {
  const limits = limitsOf(measurement);
  if (!limits) return "no tolerance";
  return against(measurement.found.value, limits) === "within" ? "within" : "out";
}

/** A later measurement of the same in the same words, on the same assembly and against the same limits, that is within them. */
function measuredAgain(index: RecordIndex, out: Measurement): Measurement | undefined {
  const limits = limitsOf(out);
  return (index.measurementsOf.get(out.assembly) ?? []).find((one) => {
    const same = limitsOf(one);
    return (
      one.what === out.what &&
      orderOf(index, one.entry) > orderOf(index, out.entry) &&
      same?.least === limits?.least &&
      same?.most === limits?.most &&
      verdictOf(one) === "within"
    );
  });
}

/** `62.0 mm ±0.5 mm`, `at least 12 mm`: what was asked, as typed. */
export function askedOf({ drawing, limits, tolerance }: Measurement): string {
  return [drawing?.typed ?? limits?.typed, tolerance?.typed].filter((text) => text !== undefined).join(" ");
}
