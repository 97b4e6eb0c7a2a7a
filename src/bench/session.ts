/** What a session at the bench has come to, by the taps that count. */
import { nextId } from "../desk/entry/next-id.ts";
import type { AdhesivePart } from "../facts/build/adhesive-kind.ts";
import type { FailureMode } from "../facts/types.ts";
import { type BenchEvent, inOrder, liveEvents, type PiecesSaid, type Reading, type Said } from "./event.ts";
import { clocksIn, wentBack } from "./clocks.ts";
import { type Correction, correctionsIn } from "./corrections.ts";
import type { Tins } from "./snapshot.ts";

export interface Cup {
  readonly id: string;
  readonly amounts: { readonly [part in AdhesivePart]?: string };
  /** When the last part went in, or spreading began, s since 1970-01-01T00:00Z. */
  readonly mixed?: number;
  /** By which of the phone's clocks that was: see `Session.clock`. */
  readonly clock?: number;
  readonly poured: boolean;
  /** Whether a mix that does not pass was looked at and left. */
  readonly leftAsItIs: boolean;
  readonly closed: readonly ({ readonly joint: string } & Moment)[];
  readonly discarded?: string;
  readonly pieces?: PiecesSaid & Moment;
}

/** How long lies between two moments is known only where they are by one clock. */
export interface Moment {
  /** s since 1970-01-01T00:00Z */
  readonly at: number;
  readonly clock: number;
}

/** A photograph that was taken here, by the name of its file; `shows` once it was said what is on it. */
interface Taking {
  readonly name: string;
  /** s since 1970-01-01T00:00Z */
  readonly at: number;
  readonly shows?: string;
}

interface Break {
  readonly piece: string;
  readonly at?: number;
  readonly failure?: FailureMode;
  /** Whether it was asked how much of the face is torn wood, and what was said. */
  readonly share?: { readonly typed?: string };
  /** Whether the load was asked, and what it was. */
  readonly load?: { readonly typed?: string };
  readonly left: boolean;
}

export interface Session {
  readonly id: string;
  readonly of: "gluing" | "breaking";
  readonly began: number;
  /** Number of taps kept: of two files of one session the one with more is the later. */
  readonly revision: number;
  readonly record: string;
  readonly tins?: Omit<Tins, "amounts">;
  readonly firstBatch: string;
  readonly joints: readonly string[];
  readonly chosen: boolean;
  readonly readings: { readonly [of in Reading]?: string };
  /** What was asked, and nobody has read or knows. */
  readonly unknown: readonly (Reading | "prepared")[];
  readonly prepared?: Moment;
  readonly timber?: readonly string[];
  readonly cups: readonly Cup[];
  readonly ended: boolean;
  readonly breaks: readonly Break[];
  readonly photos: readonly Taking[];
  readonly watched?: { readonly who?: string };
  readonly worked?: { readonly who: readonly string[]; readonly task?: string; readonly until: number };
  readonly out: boolean;
  readonly arrived: boolean;
  /** What was taken back later than within its step, in words. */
  readonly corrections: readonly Correction[];
  /** By how many seconds the phone's clock went back, where it did. */
  readonly wentBack: number;
  /** How often it did: each time it is another clock from then on, and nobody knows by how much. */
  readonly clock: number;
  /** What it showed at the last tap, ms since 1970-01-01T00:00Z. */
  readonly lastTap: number;
}

type Draft = { -readonly [key in keyof Session]: Session[key] };

const seconds = ({ instant }: BenchEvent): number => Math.floor(instant / 1000);

/** Undefined before anything has begun. */
export function sessionOf(events: readonly BenchEvent[]): Session | undefined {
  const live = liveEvents(events);
  const [first] = live;
  if (first?.said.kind !== "began") return undefined;
  const { said } = first;
  const clocks = clocksIn(events);
  const clockOf = ({ id }: BenchEvent): number => clocks.get(id) ?? 0;
  const last = inOrder(events).at(-1) ?? first;
  const draft: Draft = {
    id: first.session,
    of: said.of,
    began: seconds(first),
    revision: events.filter(({ said: { kind } }) => kind !== "out" && kind !== "arrived").length,
    record: first.record,
    firstBatch: said.of === "gluing" ? said.firstBatch : "",
    joints: [],
    chosen: false,
    readings: {},
    unknown: live.flatMap((event) => unknownIn(event.said)),
    cups: [],
    ended: false,
    breaks: said.of === "breaking" ? said.pieces.map((piece) => ({ piece, left: false })) : [],
    photos: [],
    out: false,
    arrived: false,
    corrections: correctionsIn(events),
    wentBack: wentBack(events),
    clock: clockOf(last),
    lastTap: last.instant,
    ...(said.of === "gluing" && { tins: said.tins }),
  };
  if (said.of === "gluing") draft.cups = [emptyCup(said.firstBatch)];
  for (const event of live.slice(1)) take(draft, event.said, { at: seconds(event), clock: clockOf(event) });
  return draft;
}

function unknownIn(said: Said): Session["unknown"] {
  if (said.kind === "reading") return said.typed === undefined ? [said.of] : [];
  return said.kind === "prepared" && said.at === undefined ? [said.kind] : [];
}

const emptyCup = (id: string): Cup => ({ id, amounts: {}, poured: false, leftAsItIs: false, closed: [] });

function take(draft: Draft, said: Said, moment: Moment): void {
  const { at, clock } = moment;
  switch (said.kind) {
    case "joint":
      draft.joints = said.on ? [...draft.joints, said.joint] : draft.joints.filter((joint) => joint !== said.joint);
      return;
    case "joints chosen":
      draft.chosen = true;
      return;
    case "scale":
      if (draft.tins) draft.tins = { ...draft.tins, scale: said.typed };
      return;
    case "reading":
      if (said.typed === undefined) return;
      draft.readings = { ...draft.readings, [said.of]: said.typed };
      return;
    case "prepared":
      if (said.at !== undefined) draft.prepared = { at: said.at, clock };
      return;
    case "timber":
      draft.timber = said.lots;
      return;
    case "another cup":
      draft.cups = [...draft.cups, emptyCup(cupId(draft.firstBatch, draft.cups.length))];
      return;
    case "nothing more":
      draft.ended = true;
      return;
    case "photographed":
      draft.photos = [...draft.photos, { name: said.name, at }];
      return;
    case "shows":
      draft.photos = draft.photos.map((one) => (one.name === said.photo ? { ...one, shows: said.what } : one));
      return;
    case "watched":
      draft.watched = said.who === undefined ? {} : { who: said.who };
      return;
    case "worked":
      draft.worked = { who: said.who, until: at, ...(said.task !== undefined && { task: said.task }) };
      return;
    case "out":
    case "arrived":
      draft[said.kind] = true;
      return;
    default:
      if ("cup" in said) draft.cups = draft.cups.map((cup, n) => (n === said.cup ? cupAfter(cup, said, moment) : cup));
      if ("piece" in said)
        draft.breaks = draft.breaks.map((one) => (one.piece === said.piece ? breakAfter(one, said, at) : one));
  }
}

type OfCup = Extract<Said, { readonly cup: number }>;

function cupAfter(cup: Cup, said: OfCup, moment: Moment): Cup {
  switch (said.kind) {
    case "amount":
      return { ...cup, amounts: { ...cup.amounts, [said.part]: said.typed }, leftAsItIs: false };
    case "again": {
      const { [said.part]: _, ...amounts } = cup.amounts;
      return { ...cup, amounts };
    }
    case "mixed":
      return { ...cup, mixed: moment.at, clock: moment.clock };
    case "poured":
      return { ...cup, poured: true };
    case "left as it is":
      return { ...cup, leftAsItIs: true };
    case "closed":
      return {
        ...cup,
        closed: [...cup.closed.filter(({ joint }) => joint !== said.joint), { joint: said.joint, ...moment }],
      };
    case "discarded":
      return { ...cup, discarded: said.why };
    case "pieces": {
      const { kind: _, cup: __, ...pieces } = said;
      return { ...cup, pieces: { ...pieces, ...moment } };
    }
  }
}

type OfPiece = Extract<Said, { readonly piece: string }>;

function breakAfter(one: Break, said: OfPiece, at: number): Break {
  switch (said.kind) {
    case "broke":
      return { ...one, failure: said.failure, at };
    case "share":
    case "load":
      return { ...one, [said.kind]: said.typed === undefined ? {} : { typed: said.typed } };
    case "not broken":
      return { ...one, left: true };
  }
}

/** Ids count on from the first, as a pen on the cups does. */
function cupId(first: string, at: number): string {
  let id = first;
  for (let n = 0; n < at; n += 1) id = nextId([id], id);
  return id;
}
