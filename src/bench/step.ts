/** What a session is asked next. Each tap answers one step; which comes next follows from what has been said alone. */
import { type AdhesivePart, MADE } from "../facts/build/adhesive-kind.ts";
import type { Reading } from "./event.ts";
import type { Cup, Session } from "./session.ts";
import type { Snapshot } from "./snapshot.ts";

export type Step =
  | { readonly step: "joints" }
  | { readonly step: "scale" }
  | { readonly step: "reading"; readonly of: Reading }
  | { readonly step: "prepared" }
  | { readonly step: "timber" }
  | { readonly step: "amount"; readonly cup: number; readonly part: AdhesivePart }
  | { readonly step: "read back"; readonly cup: number }
  | { readonly step: "pour"; readonly cup: number; readonly part: AdhesivePart }
  | { readonly step: "mix told"; readonly cup: number }
  | { readonly step: "clock" }
  | { readonly step: "pieces"; readonly cup: number }
  | { readonly step: "broke"; readonly piece: string }
  | { readonly step: "share"; readonly piece: string }
  | { readonly step: "load"; readonly piece: string }
  | { readonly step: "photograph"; readonly photo: string }
  | { readonly step: "watched" }
  | { readonly step: "hours" }
  | { readonly step: "out" }
  | { readonly step: "over" };

const READINGS = ["temperature", "humidity", "moisture"] as const;

/** `passes`: whether the mix of a cup is shown by ratio and scale. */
export function stepOf(session: Session, given: Snapshot, passes: (cup: Cup) => boolean): Step {
  if (session.arrived) return { step: "over" };
  const photo = session.photos.find(({ shows }) => shows === undefined)?.name;
  if (photo !== undefined) return { step: "photograph", photo };
  const open = session.of === "gluing" ? gluing(session, given, passes) : breaking(session, given);
  if (open !== undefined) return open;
  return session.worked === undefined ? { step: "hours" } : { step: "out" };
}

function gluing(session: Session, given: Snapshot, passes: (cup: Cup) => boolean): Step | undefined {
  if (!session.chosen) return { step: "joints" };
  if (session.tins?.scale === undefined) return { step: "scale" };
  const reading = READINGS.find((of) => session.readings[of] === undefined && !session.unknown.includes(of));
  if (reading !== undefined) return { step: "reading", of: reading };
  const isPreparedAsked = session.prepared === undefined && !session.unknown.includes("prepared");
  if (isPreparedAsked && asksPrepared(session, given)) return { step: "prepared" };
  if (session.timber === undefined) return { step: "timber" };
  const parts = partsOf(session, given);
  for (const [at, cup] of session.cups.entries()) {
    const next = cup.discarded === undefined ? mixing(cup, at, parts, passes) : undefined;
    if (next !== undefined) return next;
  }
  if (!session.ended) return { step: "clock" };
  const cup = session.cups.findIndex(({ discarded, pieces }) => discarded === undefined && pieces === undefined);
  return cup < 0 ? undefined : { step: "pieces", cup };
}

/** The clock starts before the last part goes in, or before the first face is spread. */
function mixing(cup: Cup, at: number, parts: readonly AdhesivePart[], passes: (cup: Cup) => boolean): Step | undefined {
  const [first, second] = parts;
  if (first !== undefined && cup.amounts[first] === undefined) return { step: "amount", cup: at, part: first };
  if (cup.mixed === undefined) return { step: "read back", cup: at };
  if (second === undefined) return undefined;
  if (!cup.poured) return { step: "pour", cup: at, part: second };
  if (cup.amounts[second] === undefined) return { step: "amount", cup: at, part: second };
  return cup.leftAsItIs || passes(cup) ? undefined : { step: "mix told", cup: at };
}

/** Of one builder alone it is not asked who watched. */
function breaking({ breaks, watched }: Session, { people }: Snapshot): Step | undefined {
  for (const { piece, failure, share, load, left } of breaks) {
    if (left) continue;
    if (failure === undefined) return { step: "broke", piece };
    if (share === undefined && isShareAsked(failure)) return { step: "share", piece };
    if (load === undefined) return { step: "load", piece };
  }
  const isAny = breaks.some(({ left }) => !left);
  return watched === undefined && isAny && people.length > 1 ? { step: "watched" } : undefined;
}

/** Of a piece that was crushed, or that nobody looked into, and of one that let go along the glue, no share is asked. */
const isShareAsked = (failure: string): boolean => failure === "wood" || failure === "mixed" || failure === "face ply";

export function partsOf({ tins }: Session, { adhesives }: Snapshot): readonly AdhesivePart[] {
  const adhesive = adhesives.find(({ id }) => id === tins?.adhesive);
  return adhesive === undefined ? [] : MADE[adhesive.kind].parts;
}

/** Whether the sheet, or the drawing of a joint, asks when the surfaces were finished. */
function asksPrepared({ tins, joints }: Session, { adhesives, assemblies }: Snapshot): boolean {
  const glued = assemblies.flatMap((one) => one.joints).filter(({ id }) => joints.includes(id));
  const asks = [adhesives.find(({ id }) => id === tins?.adhesive)?.asks, ...glued.map((joint) => joint.asks)];
  return asks.some((each) => each?.preparedWithin !== undefined);
}
