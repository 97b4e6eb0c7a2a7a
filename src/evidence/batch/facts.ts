/** What is reckoned of one batch before anything is held against a limit. A figure is undefined where the record cannot give it. */
import { dewPoint } from "../../reckoning/climate/dew-point.ts";
import { equilibriumMoisture } from "../../reckoning/climate/equilibrium-moisture.ts";
import { massRatioOfVolumes, mixRatio, ratioError, volumeRatioOfMasses } from "../../reckoning/mixing/mix-ratio.ts";
import { ratioDoubt } from "../../reckoning/mixing/ratio-doubt.ts";
import { isEstimate, provenEnds, saidEnds } from "../../facts/quantity/ends.ts";
import { lifeRow } from "../../reckoning/mixing/working-life.ts";
import { type AdhesivePart, MADE, type PartPair } from "../../facts/build/adhesive-kind.ts";
import type { Adhesive, Batch, Ends, MixRatio, Moment, Noted, Quantity } from "../../facts/types.ts";
import type { BatchFile } from "../types.ts";

export interface BatchFacts extends Pick<BatchFile, "moistureEstimate" | "dewPoint"> {
  /** Where both ends were noted. */
  readonly open?: Open;
  readonly life?: Life;
  /** How both parts of the ratio were measured. */
  readonly measuredBy?: Way;
  readonly ratio?: Ratio;
  /** What of temperature and amounts the working life rests on is only estimated, as typed. */
  readonly lifeEstimates: readonly Noted[];
  /** Of all parts together. */
  readonly mass?: Mass;
  /** What was there to spread: the same, but of parts applied apart that of the first alone, by which their sheets give it. */
  readonly forSpread?: Mass;
  /** Of that, what was not spread, kg, at the most. */
  readonly waste?: number;
  /** Of the air and the surfaces, at the worse ends; unlike `dewPoint` also of what is only estimated. */
  readonly aboveDew?: AboveDew;
}

/** `openFor` is the time between, s. */
interface Open {
  readonly mixed: Moment;
  readonly closed: Moment;
  readonly openFor: number;
}

/** kg */
interface Mass extends Ends {
  readonly isProven: boolean;
  readonly estimates: readonly Noted[];
}

interface AboveDew {
  readonly dewPoint: number;
  readonly apart: number;
  readonly isProven: boolean;
}

/** Parts, all measured in the same way. */
interface Measured {
  readonly by: Way;
  readonly amounts: readonly { readonly part: AdhesivePart; readonly amount: Noted }[];
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
  /** What was only estimated of the amounts, as typed. */
  readonly estimates: readonly string[];
  readonly tolerance?: Quantity;
  readonly asTyped: string;
  readonly converted: boolean;
  /** `noted` as typed, where it was. */
  readonly step?: { readonly value: number; readonly noted?: string };
  readonly doubt?: number;
}

/**
 * `logged` is the greatest that the logger read while it was glued, °C: the working life is that of the warmest of it,
 * the note, the resin, the surfaces and the wood.
 */
export function factsOf(batch: Batch, adhesive: Adhesive, logged?: number): BatchFacts {
  const { parts, pair, mixed } = MADE[adhesive.kind];
  const whole = measuredOf(batch, parts);
  const mass = whole && massOf(whole, adhesive);
  const counted = mixed ? whole : measuredOf(batch, parts.slice(0, 1));
  const forSpread = mixed ? mass : counted && massOf(counted, adhesive);
  const measured = pair && measuredOf(batch, pair);
  const warmest = warmestOf(batch, logged);
  const dew = aboveDew(batch);
  return {
    measuredBy: measured?.by,
    mass,
    forSpread,
    waste: counted && forSpread !== undefined ? wasteOf(batch, counted, forSpread) : undefined,
    ratio: pair && measured && ratioOf(batch, adhesive, pair, measured),
    moistureEstimate: settled(batch),
    dewPoint: dew?.isProven === true ? dew.dewPoint : undefined,
    aboveDew: dew,
    open: openOf(batch, mixed),
    life: warmest === undefined ? undefined : lifeOf(adhesive, warmest, mass?.most ?? Number.POSITIVE_INFINITY),
    lifeEstimates: [
      ...(logged === undefined && isEstimate(batch.temperature) && batch.temperature ? [batch.temperature] : []),
      ...(mass?.estimates ?? []),
    ],
  };
}

/** When the adhesive began to stand; of one that is not mixed in a cup that is when the first face was spread, by whichever note says sooner. */
export function begunAt({ mixed, glueUp }: Batch, isMixed: boolean): Moment | undefined {
  const spread = isMixed ? undefined : glueUp?.spread;
  return mixed && spread && spread.epoch < mixed.epoch ? spread : mixed;
}

function openOf(batch: Batch, isMixed: boolean): Open | undefined {
  const mixed = begunAt(batch, isMixed);
  const { closed } = batch;
  return mixed && closed && { mixed, closed, openFor: closed.epoch - mixed.epoch };
}

/** Resin, surfaces and wood that were warmer than the air make it go off as warm; alone they say nothing of the air. */
function warmestOf({ temperature, glueUp, surface, wood }: Batch, logged: number | undefined): number | undefined {
  const air = [temperature && saidEnds(temperature).most, logged].filter((value) => value !== undefined);
  const touching = [glueUp?.resin, surface, wood].flatMap((one) => (one ? [saidEnds(one).most] : []));
  return air.length === 0 ? undefined : Math.max(...air, ...touching);
}

function lifeOf({ workingLife }: Adhesive, warmest: number, most: number): Life | undefined {
  const rows = workingLife.map((row) => ({
    temperature: row.temperature.value,
    // A sheet that names no mass gives the time for any.
    mass: row.mass?.value ?? Number.POSITIVE_INFINITY,
    time: row.time.value,
    row,
  }));
  return lifeRow(rows, warmest, most);
}

/** What wood would settle at in the shop's air, where that was read; of a range the damper end: that air alone shows the wood dry enough is never said. */
function settled({ temperature, humidity }: Batch): number | undefined {
  const [warmth, damp] = [temperature && provenEnds(temperature), humidity && provenEnds(humidity)];
  return warmth && damp && equilibriumMoisture(warmth.least, damp.most);
}

/** The surfaces are as cold as they may be in air as warm and damp as it may be; where only the air was read they are as warm as it is. */
function aboveDew({ temperature, humidity, surface }: Batch): AboveDew | undefined {
  if (!temperature || !humidity) return undefined;
  const damp = saidEnds(humidity).most;
  const cases = [saidEnds(temperature).least, saidEnds(temperature).most].flatMap((air) => {
    const dew = dewPoint(air, damp);
    return dew === undefined ? [] : [{ dewPoint: dew, apart: (surface ? saidEnds(surface).least : air) - dew }];
  });
  if (cases.length < 2) return undefined;
  const worst = cases.reduce((a, b) => (b.apart < a.apart ? b : a));
  return { ...worst, isProven: ![temperature, humidity, surface].some(isEstimate) };
}

function measuredOf(batch: Batch, parts: readonly AdhesivePart[]): Measured | undefined {
  for (const by of ["mass", "volume"] as const) {
    const amounts: { part: AdhesivePart; amount: Noted }[] = [];
    for (const part of parts) {
      const amount = batch[part]?.[by];
      if (amount !== undefined) amounts.push({ part, amount });
    }
    if (amounts.length === parts.length) return { by, amounts };
  }
  return undefined;
}

function massOf({ by, amounts }: Measured, { density }: Adhesive): Mass | undefined {
  let [least, most] = [0, 0];
  for (const { part, amount } of amounts) {
    const ends = saidEnds(amount);
    const unit = by === "mass" ? 1 : (density?.[part]?.value ?? Number.NaN);
    least += ends.least * unit;
    most += ends.most * unit;
  }
  const estimates = amounts.map(({ amount }) => amount).filter(isEstimate);
  return Number.isNaN(most) ? undefined : { least, most, estimates, isProven: estimates.length === 0 };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Waste is measured as the mix was (`record/checks/batches`): of a mix by volume the same share of its mass. */
function wasteOf({ waste }: Batch, { amounts }: Measured, { least }: Mass): number | undefined {
  return waste && (least * saidEnds(waste).most) / sum(amounts.map(({ amount }) => saidEnds(amount).least));
}

function ratioOf(batch: Batch, adhesive: Adhesive, parts: PartPair, { by, amounts }: Measured): Ratio | undefined {
  const [first, second] = amounts;
  if (!first || !second) return undefined;
  const sheet = sheetRatio(adhesive, by, parts);
  const [one, other] = [saidEnds(first.amount), saidEnds(second.amount)];
  const [lean, rich] = [mixRatio(one.most, other.least), mixRatio(one.least, other.most)];
  if (!sheet || lean === undefined || rich === undefined) return undefined;
  const [less, more] = [ratioError(lean, sheet.nominal), ratioError(rich, sheet.nominal)];
  if (less === undefined || more === undefined) return undefined;
  const [found, error] = Math.abs(less) > Math.abs(more) ? [lean, less] : [rich, more];
  const step = stepOf(batch, first.amount, second.amount);
  const relative = step && ratioDoubt(one.least, other.least, step.value);
  const doubt = relative === undefined ? undefined : relative * (1 + more);
  return {
    by,
    parts,
    amounts: [first.amount.typed, second.amount.typed],
    found,
    error,
    estimates: [first.amount, second.amount].filter(isEstimate).map(({ typed }) => typed),
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
function stepOf({ scale }: Batch, first: Noted, second: Noted): Ratio["step"] {
  if (scale?.unit !== first.unit) return undefined;
  const typed = Math.max(first.step, second.step);
  return typed > scale.value * (1 + 1e-9) ? { value: typed } : { value: scale.value, noted: scale.typed };
}
