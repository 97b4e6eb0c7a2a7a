/** What is reckoned while a cup is mixed: by the functions that judge it afterwards. */
import { type BatchFacts, factsOf } from "../evidence/batch/facts.ts";
import { mixStanding } from "../evidence/batch/mix-ratio.ts";
import { LOSS, partsNeeded } from "../evidence/lots/stock.ts";
import { type AdhesivePart, MADE } from "../facts/build/adhesive-kind.ts";
import { readNoted } from "../facts/quantity/noted.ts";
import { readQuantity } from "../facts/quantity/quantity.ts";
import { isFault } from "../facts/reading.ts";
import type { Adhesive, Batch, Noted } from "../facts/types.ts";
import { equilibriumMoisture } from "../reckoning/climate/equilibrium-moisture.ts";
import { sessionAmount } from "../reckoning/mixing/session-amount.ts";
import { type Shown, shownBy, typedBy } from "./scale.ts";

/** What is known of a cup, as typed. */
export interface InCup {
  readonly amounts: { readonly [part in AdhesivePart]?: string };
  readonly scale?: string | undefined;
  readonly temperature?: string | undefined;
}

/** The facts that the verdict is reckoned from. */
export function cupFacts(adhesive: Adhesive, { amounts, scale, temperature }: InCup): BatchFacts {
  const parts = Object.entries(amounts).flatMap(([part, typed]) => {
    const noted = notedIn(typed);
    return noted === undefined ? [] : [[part, noted.unit === "kg" ? { mass: noted } : { volume: noted }]];
  });
  const step = scale === undefined ? undefined : readQuantity(scale, { dimensions: ["mass", "volume"] });
  const warmth = temperature === undefined ? undefined : notedIn(temperature);
  const batch: Batch = {
    id: "",
    place: { file: "", line: 1, column: 1 },
    entry: "",
    day: "",
    adhesive: adhesive.id,
    joints: [],
    timber: [],
    pieces: [],
    ...Object.fromEntries(parts),
    ...(step !== undefined && !isFault(step) && { scale: step.value }),
    ...(warmth !== undefined && { temperature: warmth }),
  };
  return factsOf(batch, adhesive);
}

function notedIn(typed: string): Noted | undefined {
  const reading = readNoted(typed, { sign: "any" });
  return isFault(reading) ? undefined : reading.value;
}

/** The moisture that wood comes to in such air, given time; undefined for readings that are no one number. */
export function settlesAt(temperature: string | undefined, humidity: string | undefined): number | undefined {
  const [warmth, damp] = [temperature, humidity].map((typed) => (typed === undefined ? undefined : notedIn(typed)));
  if (warmth === undefined || damp === undefined || !("value" in warmth) || !("value" in damp)) return undefined;
  return equilibriumMoisture(warmth.value, damp.value);
}

/** Whether the record will show that the mix is within the sheet's ratio; also where its sheet asks for none. */
export function mixPasses(adhesive: Adhesive, cup: InCup): boolean {
  const { pair, mixed } = MADE[adhesive.kind];
  if (pair === undefined || !mixed) return true;
  const { ratio } = cupFacts(adhesive, cup);
  return ratio !== undefined && mixStanding(ratio) === "within";
}

/**
 * The working life that the sheet gives a cup, s; of one whose last part is not noted yet that of the fullest cup that
 * passes. Undefined where the sheet gives none for so warm or so much.
 */
export function lifeOfCup(adhesive: Adhesive, cup: InCup): BatchFacts["life"] {
  const [first, second] = MADE[adhesive.kind].parts;
  const read = first && cup.amounts[first];
  const band =
    second === undefined || read === undefined || cup.amounts[second] !== undefined || cup.scale === undefined
      ? undefined
      : bandFor(adhesive, read, cup.scale);
  const amounts = band === undefined || second === undefined ? cup.amounts : { ...cup.amounts, [second]: band.most };
  return cupFacts(adhesive, { ...cup, amounts }).life;
}

/** Why no working life is told of a cup, by the temperature as it was read. */
export const noLife = (temperature: string | undefined): string =>
  temperature === undefined
    ? "how warm it is was not read, so nobody can say how long it can be worked"
    : "the sheet gives no working life for so much and so warm";

/** Least and greatest reading of the second part that passes, as typed. */
export interface Band {
  readonly least: string;
  readonly most: string;
}

const MOST_STEPS = 100_000;

/** Undefined where no reading of this scale passes, or the sheet gives no ratio that can be held. */
export function bandFor(adhesive: Adhesive, first: string, scale: string): Band | undefined {
  const { pair } = MADE[adhesive.kind];
  const step = shownBy(scale);
  if (pair === undefined || step === undefined || step.value <= 0) return undefined;
  const at = (n: number): string => typedBy(step, n * step.value);
  const passes = (n: number): boolean =>
    n > 0 && mixPasses(adhesive, { amounts: { [pair[0]]: first, [pair[1]]: at(n) }, scale });
  const centre = centreOf(adhesive, first, step);
  const middle = centre === undefined ? undefined : [centre, centre + 1, centre - 1].find(passes);
  if (middle === undefined) return undefined;
  const [least, most] = [edge(middle, -1, passes), edge(middle, 1, passes)];
  return { least: at(least), most: at(most) };
}

/** The farthest reading that passes with all between: the error grows to both sides, the doubt hardly changes. */
function edge(middle: number, by: 1 | -1, passes: (n: number) => boolean): number {
  let stride = 1;
  while (stride < MOST_STEPS && passes(middle + by * stride)) stride *= 2;
  let [inside, outside] = [Math.floor(stride / 2), stride];
  while (outside - inside > 1) {
    const half = Math.floor((inside + outside) / 2);
    if (passes(middle + by * half)) inside = half;
    else outside = half;
  }
  return middle + by * inside;
}

/** How many steps of the scale the sheet's own ratio is, for so much of the first part. */
function centreOf(adhesive: Adhesive, first: string, step: Shown): number | undefined {
  const [one, other] = MADE[adhesive.kind].pair ?? [];
  const read = shownBy(first);
  if (one === undefined || other === undefined || read === undefined) return undefined;
  const { ratio } = cupFacts(adhesive, { amounts: { [one]: first, [other]: first } });
  return ratio === undefined ? undefined : Math.round((read.value * ratio.nominal) / step.value);
}

/** The least reading of the first part for which this scale can show a mix, wherever between two of its steps the right one lies; as typed. */
export function leastCup(adhesive: Adhesive, scale: string): string | undefined {
  const { pair } = MADE[adhesive.kind];
  const step = shownBy(scale);
  if (pair === undefined || step === undefined || step.value <= 0) return undefined;
  const at = (n: number): string => typedBy(step, n * step.value);
  const shows = (n: number): boolean => {
    const second = centreOf(adhesive, at(n), step) ?? 0;
    const { ratio } = cupFacts(adhesive, { amounts: { [pair[0]]: at(n), [pair[1]]: at(second) }, scale });
    return ratio?.doubt !== undefined && ratio.tolerance !== undefined && second > 0
      ? ratio.doubt + 1 / (2 * second) <= ratio.tolerance.value
      : false;
  };
  const least = firstThat(shows);
  return least === undefined ? undefined : at(least);
}

/** Of a question that is answered by no up to some number, and by yes from there on. */
function firstThat(holds: (n: number) => boolean): number | undefined {
  let most = 1;
  while (!holds(most)) if ((most *= 2) > MOST_STEPS) return undefined;
  let least = Math.floor(most / 2);
  while (most - least > 1) {
    const half = Math.floor((least + most) / 2);
    if (holds(half)) most = half;
    else least = half;
  }
  return most;
}

/** What to weigh of the first part for so much area, m², with what stays in the cup, kg; undefined where sheet or drawing lack it. */
export function targetOf(adhesive: Adhesive, area: number | undefined): number | undefined {
  const mixed =
    area === undefined || adhesive.spread === undefined ? undefined : sessionAmount(area, adhesive.spread.value, LOSS);
  return mixed === undefined ? undefined : partsNeeded(adhesive, mixed)?.[0]?.[1];
}
