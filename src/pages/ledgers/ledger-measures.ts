/** The ledger of measurements. */
import { figureRead } from "../../facts/quantity/ends.ts";
import type { MeasurementFile } from "../../evidence/types.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "../evidence/trace-index.ts";
import { type Column, figure, type Ledger, ledger, told, typed, UNITS } from "./column.ts";

const IN_UNIT = "see the column unit";

/** A figure in the unit that stands beside it. */
const inItsUnit = (
  name: string,
  says: string,
  of: (file: MeasurementFile, shown: Shown) => number | undefined,
): Column<MeasurementFile> => figure(name, says, of, IN_UNIT);

const pairOf = ({ measurement: { pair } }: MeasurementFile, { evidence }: Shown) =>
  pair === undefined ? undefined : evidence.pairs.get(pair);

/** Measures of any kind stand in one column, with their unit beside them. */
export const MEASUREMENTS: Ledger = ledger<MeasurementFile>(
  "measurements",
  "One measurement, in the order of the record.",
  (shown) => traceIndex(shown).measurements,
  [
    told("entry", "Id of the entry that notes it.", ({ measurement }) => measurement.entry),
    told("day", "The day in the name of that entry.", ({ measurement }) => measurement.entry.slice(0, 10), "day"),
    typed("what", "entry: measurements[].what", ({ measurement }) => measurement.what),
    typed("assembly", "entry: measurements[].assembly", ({ measurement }) => measurement.assembly),
    told(
      "unit",
      "The unit of all figures in this row.",
      ({ measurement: { found } }) => UNITS[found.unit] ?? found.unit,
    ),
    typed(
      "drawing_typed",
      "entry: measurements[].drawing",
      ({ measurement: { drawing, limits } }) => drawing?.typed ?? limits?.typed,
    ),
    inItsUnit("drawing", "The drawing’s measure.", ({ measurement }) => measurement.drawing?.value),
    inItsUnit("limit_least", "The least that the drawing lets it be.", ({ measurement }) => measurement.limits?.least),
    inItsUnit("limit_most", "The most that the drawing lets it be.", ({ measurement }) => measurement.limits?.most),
    typed("tolerance_typed", "entry: measurements[].tolerance", ({ measurement }) => measurement.tolerance?.typed),
    inItsUnit("tolerance_minus", "How far below it may lie.", ({ measurement }) => measurement.tolerance?.minus),
    inItsUnit("tolerance_plus", "How far above it may lie.", ({ measurement }) => measurement.tolerance?.plus),
    typed("found_typed", "entry: measurements[].found", ({ measurement }) => measurement.found.typed),
    inItsUnit("found", "What was found; empty where a range or an estimate was noted.", ({ measurement }) =>
      figureRead(measurement.found),
    ),
    inItsUnit("off", "How far off the drawing it is.", ({ off }) => off),
    told("verdict", "Whether it lies within what is asked.", ({ verdict }) => verdict),
    told("again_entry", "Id of the entry in which it was measured again.", ({ again }) => again?.entry),
    typed("departure", "entry: measurements[].departure", ({ measurement: { departure } }) =>
      departure === WITHHELD ? "withheld" : departure,
    ),
    typed("joint", "entry: measurements[].joint", ({ measurement }) => measurement.joint),
    typed("pair", "entry: measurements[].pair", ({ measurement }) => measurement.pair),
    typed("side", "entry: measurements[].side", ({ measurement }) => measurement.side),
    typed(
      "pair_tolerance_typed",
      "entry: measurements[].pair_tolerance",
      ({ measurement }) => measurement.pairTolerance?.typed,
    ),
    inItsUnit(
      "pair_tolerance",
      "How far the two sides may differ.",
      ({ measurement }) => measurement.pairTolerance?.value,
    ),
    inItsUnit("pair_difference", "How far they do differ.", (file, shown) => pairOf(file, shown)?.difference),
    told("pair_verdict", "Whether the two sides agree as is asked.", (file, shown) => pairOf(file, shown)?.verdict),
  ],
);
