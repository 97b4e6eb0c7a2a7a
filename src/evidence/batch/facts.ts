/** What is reckoned of one batch before anything is held against a limit. A figure is undefined where the record cannot give it. */
import { dewPoint } from "../../reckoning/climate/dew-point.ts";
import { equilibriumMoisture } from "../../reckoning/climate/equilibrium-moisture.ts";
import { massRatioOfVolumes, mixRatio, ratioError, volumeRatioOfMasses } from "../../reckoning/mixing/mix-ratio.ts";
import { ratioDoubt } from "../../reckoning/mixing/ratio-doubt.ts";
import { lifeRow } from "../../reckoning/mixing/working-life.ts";
import { type AdhesivePart, MADE, type PartPair } from "../../facts/build/adhesive-kind.ts";
import type { Adhesive, Batch, MixRatio, Quantity } from "../../facts/types.ts";
import type { BatchFile } from "../types.ts";

export interface BatchFacts extends Pick<BatchFile, "moistureEstimate" | "dewPoint" | "openFor"> {
  readonly life?: Life;
  /** How both parts of the ratio were measured. */
  readonly measuredBy?: Way;
  readonly ratio?: Ratio;
  /** Of all parts together, kg. */
  readonly mass?: number;
  /** What was there to spread, kg: the same, but of parts applied apart that of the first alone, by which their sheets give it. */
  readonly forSpread?: number;
  /** Of that, what was not spread, kg. */
  readonly waste?: number;
}

/** Parts, all measured in the same way. */
interface Measured {
  readonly by: Way;
  readonly amounts: readonly { readonly part: AdhesivePart; readonly amount: Quantity }[];
}

type Way = "mass" | "volume";

/** The row of the data sheet that gives the working life. */
interface Life {
  readonly time: number;
  readonly row: Adhesive["workingLife"][number];
}

/** `doubt` is a share of the nominal ratio, as is `error`; undefined where no reading step is known. */
export interface Ratio {
  readonly by: Way;
  readonly parts: PartPair;
  /** As typed, in the order of the parts. */
  readonly amounts: readonly [string, string];
  readonly found: number;
  readonly nominal: number;
  readonly error: number;
  readonly tolerance?: Quantity;
  readonly asTyped: string;
  readonly converted: boolean;
  /** `noted` as typed, where it was. */
  readonly step?: { readonly value: number; readonly noted?: string };
  readonly doubt?: number;
}

/** `logged` is the greatest that the logger read while it was glued, °C: the working life is that of the warmer of it and the note. */
export function factsOf(batch: Batch, adhesive: Adhesive, logged?: number): BatchFacts {
  const { parts, pair, mixed } = MADE[adhesive.kind];
  const whole = measuredOf(batch, parts);
  const mass = whole && massOf(whole, adhesive);
  const counted = measuredOf(batch, mixed ? parts : parts.slice(0, 1));
  const forSpread = counted && massOf(counted, adhesive);
  const known = [batch.temperature?.value, logged].filter((value) => value !== undefined);
  const warmest = known.length === 0 ? undefined : Math.max(...known);
  const climate =
    batch.temperature && batch.humidity ? ([batch.temperature.value, batch.humidity.value] as const) : undefined;
  const rows = adhesive.workingLife.map((row) => ({
    temperature: row.temperature.value,
    // A sheet that names no mass gives the time for any.
    mass: row.mass?.value ?? Number.POSITIVE_INFINITY,
    time: row.time.value,
    row,
  }));
  return {
    measuredBy: pair && measuredOf(batch, pair)?.by,
    mass,
    forSpread,
    waste: counted && forSpread !== undefined ? wasteOf(batch, counted, forSpread) : undefined,
    ratio: pair && ratioOf(batch, adhesive, pair),
    moistureEstimate: climate && equilibriumMoisture(...climate),
    dewPoint: climate && dewPoint(...climate),
    openFor: batch.mixed && batch.closed ? batch.closed.epoch - batch.mixed.epoch : undefined,
    life: warmest === undefined ? undefined : lifeRow(rows, warmest, mass ?? Number.POSITIVE_INFINITY),
  };
}

function measuredOf(batch: Batch, parts: readonly AdhesivePart[]): Measured | undefined {
  for (const by of ["mass", "volume"] as const) {
    const amounts = parts.flatMap((part) => {
      const amount = batch[part]?.[by];
      return amount === undefined ? [] : [{ part, amount }];
    });
    if (amounts.length === parts.length) return { by, amounts };
  }
  return undefined;
}

function massOf({ by, amounts }: Measured, { density }: Adhesive): number | undefined {
  const masses = amounts.map(
    ({ part, amount }) => amount.value * (by === "mass" ? 1 : (density?.[part]?.value ?? Number.NaN)),
  );
  const mass = sum(masses);
  return Number.isNaN(mass) ? undefined : mass;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Waste is measured as the mix was (`record/checks/batches`): of a mix by volume the same share of its mass. */
function wasteOf({ waste }: Batch, { amounts }: Measured, mass: number): number | undefined {
  return waste && (mass * waste.value) / sum(amounts.map(({ amount }) => amount.value));
}

function ratioOf(batch: Batch, adhesive: Adhesive, parts: PartPair): Ratio | undefined {
  const measured = measuredOf(batch, parts);
  const [first, second] = measured?.amounts ?? [];
  if (!measured || !first || !second) return undefined;
  const { by } = measured;
  const sheet = sheetRatio(adhesive, by, parts);
  const found = mixRatio(first.amount.value, second.amount.value);
  if (!sheet || found === undefined) return undefined;
  const error = ratioError(found, sheet.nominal);
  if (error === undefined) return undefined;
  const step = stepOf(batch, first.amount, second.amount);
  const relative = step && ratioDoubt(first.amount.value, second.amount.value, step.value);
  const doubt = relative === undefined ? undefined : relative * (1 + error);
  return {
    by,
    parts,
    amounts: [first.amount.typed, second.amount.typed],
    found,
    error,
    step,
    doubt,
    nominal: sheet.nominal,
    tolerance: sheet.from.tolerance,
    asTyped: sheet.from.typed,
    converted: sheet.converted,
  };
}

interface SheetRatio {
  readonly nominal: number;
  readonly from: MixRatio;
  readonly converted: boolean;
}

/** The sheet's ratio in the measure that was used; from the other measure by the densities where it gives only that. */
function sheetRatio({ byMass, byVolume, density }: Adhesive, by: Way, parts: PartPair): SheetRatio | undefined {
  const [own, other] = by === "mass" ? [byMass, byVolume] : [byVolume, byMass];
  if (own) return { nominal: own.secondOverFirst, from: own, converted: false };
  const [first, second] = parts.map((part) => density?.[part]?.value);
  if (!other || first === undefined || second === undefined) return undefined;
  const convert = by === "mass" ? massRatioOfVolumes : volumeRatioOfMasses;
  const nominal = convert(other.secondOverFirst, first, second);
  return nominal === undefined ? undefined : { nominal, from: other, converted: true };
}

/** The coarser of the noted reading step and of the last digits as typed; where none is noted, digits alone show nothing of the scale. */
function stepOf({ scale }: Batch, first: Quantity, second: Quantity): Ratio["step"] {
  if (scale?.unit !== first.unit) return undefined;
  const typed = Math.max(first.step, second.step);
  return typed > scale.value * (1 + 1e-9) ? { value: typed } : { value: scale.value, noted: scale.typed };
}
