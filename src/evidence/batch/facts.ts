/** What is reckoned of one batch before anything is held against a limit. A figure is undefined where the record cannot give it. */
import { dewPoint } from "../../reckoning/climate/dew-point.ts";
import { equilibriumMoisture } from "../../reckoning/climate/equilibrium-moisture.ts";
import { massRatioOfVolumes, mixRatio, ratioError, volumeRatioOfMasses } from "../../reckoning/mixing/mix-ratio.ts";
import { ratioDoubt } from "../../reckoning/mixing/ratio-doubt.ts";
import { lifeRow } from "../../reckoning/mixing/working-life.ts";
import type { Adhesive, Batch, MixRatio, Quantity } from "../../facts/types.ts";
import type { BatchFile } from "../types.ts";

export interface BatchFacts extends Pick<BatchFile, "moistureEstimate" | "dewPoint" | "openFor"> {
  readonly life?: Life;
  readonly measured?: Measured;
  readonly ratio?: Ratio;
  /** Of resin and hardener together, kg. */
  readonly mass?: number;
  /** Of the mass, what was not spread, kg. */
  readonly waste?: number;
}

/** Both components, measured in the same way. */
export interface Measured {
  readonly by: "mass" | "volume";
  readonly resin: Quantity;
  readonly hardener: Quantity;
}

/** The row of the data sheet that gives the working life. */
interface Life {
  readonly time: number;
  readonly row: Adhesive["workingLife"][number];
}

/** `doubt` is a share of the nominal ratio, as is `error`; undefined where no reading step is known. */
export interface Ratio {
  readonly by: "mass" | "volume";
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
  const measured = measuredOf(batch);
  const mass = measured && massOf(measured, adhesive);
  const known = [batch.temperature?.value, logged].filter((value) => value !== undefined);
  const warmest = known.length === 0 ? undefined : Math.max(...known);
  const climate =
    batch.temperature && batch.humidity ? ([batch.temperature.value, batch.humidity.value] as const) : undefined;
  const rows = adhesive.workingLife.map((row) => ({
    temperature: row.temperature.value,
    mass: row.mass.value,
    time: row.time.value,
    row,
  }));
  return {
    measured,
    mass,
    waste: measured && mass !== undefined ? wasteOf(batch, measured, mass) : undefined,
    ratio: measured && ratioOf(batch, adhesive, measured),
    moistureEstimate: climate && equilibriumMoisture(...climate),
    dewPoint: climate && dewPoint(...climate),
    openFor: batch.mixed && batch.closed ? batch.closed.epoch - batch.mixed.epoch : undefined,
    life: warmest === undefined || mass === undefined ? undefined : lifeRow(rows, warmest, mass),
  };
}

function measuredOf({ resin, hardener }: Batch): Measured | undefined {
  if (resin?.mass && hardener?.mass) return { by: "mass", resin: resin.mass, hardener: hardener.mass };
  if (resin?.volume && hardener?.volume) return { by: "volume", resin: resin.volume, hardener: hardener.volume };
  return undefined;
}

function massOf({ by, resin, hardener }: Measured, { density }: Adhesive): number | undefined {
  if (by === "mass") return resin.value + hardener.value;
  return density && resin.value * density.resin.value + hardener.value * density.hardener.value;
}

/** Waste is measured as the mix was (`record/checks/batches`): of a mix by volume the same share of its mass. */
function wasteOf({ waste }: Batch, { resin, hardener }: Measured, mass: number): number | undefined {
  return waste && (mass * waste.value) / (resin.value + hardener.value);
}

function ratioOf(batch: Batch, adhesive: Adhesive, { by, resin, hardener }: Measured): Ratio | undefined {
  const sheet = sheetRatio(adhesive, by);
  const found = mixRatio(resin.value, hardener.value);
  if (!sheet || found === undefined) return undefined;
  const error = ratioError(found, sheet.nominal);
  if (error === undefined) return undefined;
  const step = stepOf(batch, resin, hardener);
  const relative = step && ratioDoubt(resin.value, hardener.value, step.value);
  const doubt = relative === undefined ? undefined : relative * (1 + error);
  return {
    by,
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
function sheetRatio({ byMass, byVolume, density }: Adhesive, by: "mass" | "volume"): SheetRatio | undefined {
  const [own, other] = by === "mass" ? [byMass, byVolume] : [byVolume, byMass];
  if (own) return { nominal: own.hardenerOverResin, from: own, converted: false };
  if (!other || !density) return undefined;
  const convert = by === "mass" ? massRatioOfVolumes : volumeRatioOfMasses;
  const nominal = convert(other.hardenerOverResin, density.resin.value, density.hardener.value);
  return nominal === undefined ? undefined : { nominal, from: other, converted: true };
}

/** The coarser of the noted reading step and of the last digits as typed; where none is noted, digits alone show nothing of the scale. */
function stepOf({ scale }: Batch, resin: Quantity, hardener: Quantity): Ratio["step"] {
  if (scale?.unit !== resin.unit) return undefined;
  const typed = Math.max(resin.step, hardener.step);
  return typed > scale.value * (1 + 1e-9) ? { value: typed } : { value: scale.value, noted: scale.typed };
}
