/** What was found of each thing that can be asked of a glue-up. */
import { atLeast, atMost, standing } from "../../reckoning/compare.ts";
import { dayNumber } from "../../reckoning/time/calendar.ts";
import { isEstimate, saidEnds } from "../../facts/quantity/ends.ts";
import type { Ask, Asks, Batch, Ends, GlueUp, Method, Moment, Noted, Quantity, Range, Ref } from "../../facts/types.ts";
import { indexBy, lookUp } from "../record-index.ts";
import type { GlueUpFound } from "../codes/gluing.ts";
import { type BatchCase, entryRef, lotRef } from "./case.ts";

/** What a session said of its glue-up, and the procedure that it says it followed. */
export interface Session {
  readonly c: BatchCase;
  readonly said: GlueUp;
  readonly method: Method;
}

interface Answer {
  /** Undefined where nothing shows what is asked: that is never taken as met. */
  readonly found?: GlueUpFound | undefined;
  /** Of what was found. */
  readonly isMet?: boolean;
  /** What was only estimated, as typed: it shows nothing. */
  readonly estimate?: string;
  /** What it rests on beside its own batch. */
  readonly alsoOn?: readonly Ref[];
}

/** Undefined where it asks of something that this batch has none of. */
type Judged = Answer | undefined;

type Judges = { readonly [ask in Ask]-?: (asked: NonNullable<Asks[ask]>, session: Session) => Judged };

const UNKNOWN: Answer = {};
const answer = (found: GlueUpFound, isMet: boolean, alsoOn: readonly Ref[] = []): Answer => ({ found, isMet, alsoOn });

const between = (from: Moment | undefined, to: Moment | undefined): number | undefined => {
  const over = from && to ? to.epoch - from.epoch : undefined;
  return over === undefined || over < 0 ? undefined : over;
};
/** The one, or the other where that was later. */
const noSooner = (one: Moment | undefined, other: Moment | undefined): Moment | undefined =>
  one && other && other.epoch > one.epoch ? other : one;
const within = (seconds: number | undefined, asked: Quantity): Answer =>
  seconds === undefined ? UNKNOWN : answer({ seconds }, atMost(seconds, asked.value));
const atLeastSo = (seconds: number | undefined, asked: Quantity): Answer =>
  seconds === undefined ? UNKNOWN : answer({ seconds }, atLeast(seconds, asked.value));
const inRange = (found: Noted | undefined, asked: Pick<Range, "least" | "most">): Answer => {
  if (found === undefined) return UNKNOWN;
  const where = standing(found, asked);
  return where === "estimate" ? estimated([found]) : answer({ typed: found.typed }, where === "within");
};
const estimated = (all: readonly Noted[]): Answer => ({
  estimate: all.flatMap((one) => (isEstimate(one) ? [one.typed] : [])).join(", "),
});
const said = (found: string | undefined, asked: string): Answer =>
  found === undefined ? UNKNOWN : answer({ typed: found }, found === asked);

/** As the session says; else as the procedure that it says it followed. */
const asDone = <K extends keyof Method>({ said: own, method }: Session, key: K): Method[K] => own[key] ?? method[key];

const plain = (words: string): string => words.trim().replace(/\s+/g, " ").toLowerCase();
const NO_FILLER = "none";

/** The longest that a surface can have waited, and the shortest, as far as times are noted. */
function waited({ c: { batch }, said: { prepared, spread, spreadTo } }: Session) {
  return {
    most: between(prepared, spreadTo ?? batch.closed),
    least: between(prepared, spreadTo ?? spread ?? batch.mixed),
  };
}

/** The most by which two of them can differ. */
const widest = (all: readonly Ends[]): number =>
  Math.max(...all.flatMap((one, at) => all.filter((_, other) => other !== at).map(({ least }) => one.most - least)));

const JUDGES: Judges = {
  preparedWithin: (asked, session) => {
    const { most, least } = waited(session);
    if (most !== undefined && atMost(most, asked.value)) return answer({ seconds: most }, true);
    return least !== undefined && !atMost(least, asked.value) ? answer({ seconds: least }, false) : UNKNOWN;
  },
  openTime: (asked, { c, said: { spread, spreadTo } }) =>
    within(between(spread, noSooner(c.batch.closed, spreadTo)), asked),
  assemblyTime: (asked, { c, said: { spread, on } }) => within(between(spread, noSooner(on, c.batch.closed)), asked),
  clamped: (asked, { c, said: { on, off } }) => {
    const { now, clock, record } = c.index;
    if (!off || off.epoch <= clock.midnight((dayNumber(record.day) ?? 0) + 1))
      return atLeastSo(between(on, off), asked);
    // What is still to come has not been seen.
    const soFar = on && now - on.epoch;
    return soFar !== undefined && atLeast(soFar, asked.value) ? answer({ seconds: soFar }, true) : UNKNOWN;
  },
  mixing: (asked, { said: { mixedFor } }) => inRange(mixedFor, { least: asked.value }),
  gap: (asked, { said: { gap } }) => inRange(gap, { most: asked.value }),
  moistureDifference: (asked, { c, said: { parts = [] } }) => {
    const isWhole = parts.length > 1 && c.batch.timber.every((lot) => parts.some((one) => one.lot === lot));
    if (!isWhole) return UNKNOWN;
    const all = parts.map(({ moisture }) => moisture);
    const whole = c.batch.moisture;
    // What was read of no part by name is of one of them: it only tells against them.
    const share = widest([...all, ...(whole && !isEstimate(whole) ? [whole] : [])].map(saidEnds));
    const isMet = atMost(share, asked.value);
    if (isMet && all.some(isEstimate)) return estimated(all);
    return answer(
      { share },
      isMet,
      parts.map(({ lot }) => lotRef(lot)),
    );
  },
  fillerMass: (asked, session) => {
    const { c, said: own } = session;
    const kind = asDone(session, "filler");
    if (kind !== undefined && plain(kind) === NO_FILLER && !own.fillerMass) return answer({ typed: kind }, true);
    const { mass } = c.facts;
    if (!own.fillerMass || !mass?.least) return UNKNOWN;
    const share = saidEnds(own.fillerMass).most / mass.least;
    const isMet = atMost(share, asked.value);
    return isMet && (isEstimate(own.fillerMass) || !mass.isProven)
      ? estimated([own.fillerMass, ...mass.estimates])
      : answer({ share }, isMet);
  },
  fillers: (asked, session) => {
    const kind = asDone(session, "filler");
    return kind === undefined
      ? UNKNOWN
      : answer({ typed: kind }, [NO_FILLER, ...asked.map(plain)].includes(plain(kind)));
  },
  pressure: (asked, { said: { pressure } }) => inRange(pressure, asked),
  resin: (asked, { said: { resin } }) => inRange(resin, asked),
  faces: (asked, session) => said(asDone(session, "faces"), asked),
  endGrain: (asked, session) => said(asDone(session, "endGrain"), asked),
  staples: (asked, session) => said(asDone(session, "staples"), asked),
  scraped: (asked, session) => said(asDone(session, "scraped"), asked),
  secondCup: (asked, session) => said(asDone(session, "secondCup"), asked),
  squeezeOut: (asked, { said: { squeezeOut, drySpots } }) =>
    drySpots === undefined ? said(squeezeOut, asked) : answer({ typed: drySpots }, false),
  waterDrop: (_, session) => dropped(session),
  overCured: (_, { c, said: { overCured } }) => {
    const earlier = gluedBefore(c);
    if (overCured === undefined) return earlier.length === 0 ? undefined : { alsoOn: earlier };
    const isDone = overCured.includes("washed") && overCured.includes("abraded") && !overCured.includes("neither");
    return answer({ typed: overCured.join(", ") }, isDone);
  },
};

/** What was found of one thing that is asked. */
export function judged<K extends Ask>(ask: K, asked: NonNullable<Asks[K]>, session: Session): Judged {
  return (JUDGES[ask] as (asked: NonNullable<Asks[K]>, session: Session) => Judged)(asked, session);
}

/** A lot of plywood is tried once a day, for all that is glued then; where drops of one day disagree the worse counts. */
function dropped({ c, said: { beaded } }: Session): Judged {
  const { batch, index } = c;
  const ply = batch.timber.filter((id) => lookUp(index.record.lots, id).material === "plywood");
  const thatDay = index.memo.once(index, triedByDay).get(batch.day) ?? [];
  const repelled = thatDay.filter(({ glueUp }) => glueUp?.beaded.some((lot) => ply.includes(lot)));
  if (beaded.length > 0 || repelled.length > 0) {
    const stood = repelled.flatMap(({ glueUp }) => glueUp?.beaded ?? []).filter((lot) => ply.includes(lot));
    const lots = [...new Set([...beaded, ...stood])];
    return answer({ lots, beaded: true }, false, [...lots.map(lotRef), ...repelled.flatMap(refsOf)]);
  }
  if (ply.length === 0) return undefined;
  const tried = thatDay.filter(({ glueUp }) => glueUp?.drop.some((lot) => ply.includes(lot)));
  const alsoOn = [...ply.map(lotRef), ...tried.flatMap(refsOf)];
  return ply.every((lot) => tried.some(({ glueUp }) => glueUp?.drop.includes(lot)))
    ? answer({ lots: ply, beaded: false }, true, alsoOn)
    : UNKNOWN;
}

const triedByDay = ({ batches }: BatchCase["index"]): ReadonlyMap<string, readonly Batch[]> =>
  indexBy([...batches.values()], ({ day, glueUp }) => (glueUp ? day : undefined));

const refsOf = ({ id, entry }: Batch): Ref[] => [{ kind: "batch", id }, entryRef(entry)];

/** Batches that glued one of its joints on an earlier day: then there is cured adhesive in it. */
const gluedBefore = ({ batch, index }: BatchCase): Ref[] =>
  batch.joints
    .flatMap((joint) => index.batchesOfJoint.get(joint) ?? [])
    .filter(({ day }) => day < batch.day)
    .flatMap(refsOf);
