/** What a hold point still needs, each need with what it takes. */
import type { Departure, Inspection, Measurement, OpenItem, Ref } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import { distinct } from "../finding.ts";
import { asAnswered, askedOf, measurementFile } from "../measures/measurement.ts";
import { departuresOf, entriesOf, isPairAnswered, pairValues } from "../measures/pair.ts";
import type { Coded } from "../codes/coded.ts";
import type { FindingValues } from "../codes/findings.ts";
import type { Finding, HoldPointFile, JointFile, Need, PairFile } from "../types.ts";
import { acceptedBefore, isAnswered, standingOf } from "./answering.ts";
import { takes } from "./takes.ts";

const entry = (id: string): Ref => ({ kind: "entry", id });

const JOINT_NEEDS = {
  "not glued": { takes: takes("take/glue"), blocks: false },
  pending: { takes: takes("take/break-pieces"), blocks: false },
  "not shown": { takes: takes("take/complete"), blocks: true },
  quarantined: { takes: takes("take/rework"), blocks: true },
  opened: { takes: takes("take/glue-again"), blocks: true },
} as const;

const coded = ({ code, values }: Finding): Coded<FindingValues>[] =>
  code === "withheld" ? [] : [{ code, values } as Coded<FindingValues>];

/** Of findings those that are neither met nor a caution: as they are told, and what they rest on with the thing itself. */
export function openFindings(about: Ref, findings: readonly Finding[]) {
  const open = findings.filter(({ severity }) => severity !== "meets" && severity !== "caution");
  return { open, told: open.flatMap(coded), restsOn: distinct([about, ...open.flatMap(({ restsOn }) => restsOn)]) };
}

export function jointNeed(file: JointFile): Need[] {
  if (file.state === "shown") return [];
  const about: Ref = { kind: "joint", id: file.joint.id };
  const { open, told, restsOn } = openFindings(about, file.findings);
  return [
    {
      about,
      code: "need/joint",
      values: { joint: file.joint.id, state: file.state, told },
      ...whatItTakes(file.state, open),
      restsOn,
    },
  ];
}

/** Of a pending one by what is still to come: a stage before pieces, and these before its own cure. */
function whatItTakes(state: keyof typeof JOINT_NEEDS, findings: readonly Finding[]) {
  if (state !== "pending") return JOINT_NEEDS[state];
  if (findings.some(({ rule }) => rule === "joint-stages")) return { takes: takes("take/glue-stages"), blocks: false };
  const isOnlyCuring = findings.every(({ rule }) => rule === "joint-cure");
  return isOnlyCuring ? { takes: takes("take/let-cure"), blocks: false } : JOINT_NEEDS.pending;
}

export function openItemNeed(item: OpenItem): Need {
  const about: Ref = { kind: "open item", id: item.id };
  return {
    about,
    code: "need/open-item",
    values: { id: item.id, day: item.day, what: item.what },
    takes: takes("take/close-item"),
    blocks: true,
    restsOn: [about, entry(item.entry)],
  };
}

const DEPARTURE_NEEDS = {
  "not accepted": { code: "need/departure", takes: takes("take/acceptance") },
  "accepted by no inspector": { code: "need/departure-role", takes: takes("take/acceptance") },
  "accepted by one who worked on it": { code: "need/departure-worked", takes: takes("take/inspector") },
  "changed since it was accepted": { code: "need/departure-changed", takes: takes("take/accept-again") },
  "told by the builder": { code: "need/departure-told", takes: takes("take/paper") },
} as const;

export function departureNeed(index: RecordIndex, departure: Departure): Need[] {
  const standing = standingOf(index, departure);
  if (standing === "accepted") return [];
  const { id, day, what, acceptedIn, condition = "" } = departure;
  const about: Ref = { kind: "departure", id };
  const restsOn = distinct([about, entry(departure.entry), ...(acceptedIn === undefined ? [] : [entry(acceptedIn)])]);
  const values = { id, day, what };
  if (standing === "accepted on a condition") {
    const told = { code: "need/departure-condition", values: { ...values, condition } } as const;
    return [{ about, ...told, takes: takes("take/meet-condition"), blocks: true, restsOn }];
  }
  return [{ about, values, ...DEPARTURE_NEEDS[standing], blocks: true, restsOn }];
}

export function measurementNeed(index: RecordIndex, measurement: Measurement): Need[] {
  const { verdict, again } = measurementFile(index, measurement);
  if (again || isAnswered(index, asAnswered(measurement))) return [];
  const about = entry(measurement.entry);
  const values = { what: measurement.what, found: measurement.found.typed, asked: askedOf(measurement) };
  if (verdict === "estimated") {
    const told = { code: "need/measure-estimated", takes: takes("take/measure-estimated") } as const;
    return [{ about, values, ...told, blocks: false, restsOn: [about] }];
  }
  if (verdict !== "out") return [];
  const before = acceptedBefore(index, asAnswered(measurement));
  if (before !== undefined) {
    const told = { code: "need/measure-after", takes: takes("take/accept-again") } as const;
    const restsOn = [about, ...departureRefs([before])];
    return [{ about, values: { ...values, departures: [before] }, ...told, blocks: true, restsOn }];
  }
  const beside = besideOf(index, measurement);
  return [
    {
      about,
      code: "need/measure-out",
      values: { ...values, beside },
      takes: takes("take/mend-measure"),
      blocks: true,
      restsOn: [about, ...departureRefs(beside)],
    },
  ];
}

/** Departures noted in the same entry, which it does not name: they do not count for it. */
const besideOf = (index: RecordIndex, { entry: id }: Measurement): string[] =>
  (index.entries.get(id)?.departures ?? []).map((one) => one.id);

const departureRefs = (ids: readonly string[]): Ref[] => ids.map((id) => ({ kind: "departure", id }));

function pairOutNeed(index: RecordIndex, pair: PairFile, about: Ref): Need {
  // None of them answers for it: each was accepted before one of the sides was noted.
  const departures = departuresOf(pair);
  const beside = [...new Set(pair.now.flatMap((one) => besideOf(index, one)))];
  const named = departures.length > 0;
  const told = named
    ? ({ code: "need/pair-after", values: { ...pairValues(pair), departures } } as const)
    : ({ code: "need/pair-out", values: { ...pairValues(pair), beside } } as const);
  const restsOn = distinct([...entriesOf(pair), ...departureRefs(named ? departures : beside)]);
  return { about, ...told, takes: takes(named ? "take/accept-again" : "take/mend-measure"), blocks: true, restsOn };
}

/** A pair is answered for by a departure that a side names, accepted when all sides were noted. */
export function pairNeed(index: RecordIndex, pair: PairFile): Need[] {
  const [first] = pair.now;
  const last = pair.now
    .map((one) => one.entry)
    .sort()
    .at(-1);
  if (!first || last === undefined || isPairAnswered(index, pair)) return [];
  const restsOn = distinct(entriesOf(pair));
  if (pair.verdict === "out") return [pairOutNeed(index, pair, entry(last))];
  if (pair.verdict === "estimated")
    return [
      {
        about: entry(last),
        code: "need/pair-estimated",
        values: { pair: pair.id },
        takes: takes("take/measure-pair"),
        blocks: false,
        restsOn,
      },
    ];
  if (pair.verdict !== "one side") return [];
  return [
    {
      about: entry(last),
      code: "need/pair-one-side",
      values: { pair: pair.id, side: first.side },
      takes: takes("take/other-side"),
      blocks: false,
      restsOn,
    },
  ];
}

export function reopenedNeed(signed: Inspection): Need {
  const about: Ref = { kind: "hold point", id: signed.holdPoint };
  return {
    about,
    code: "need/reopened",
    values: { day: signed.day },
    takes: takes("take/look-again"),
    blocks: true,
    restsOn: [about, entry(signed.entry)],
  };
}

export function inspectionNeed(last: Inspection | undefined): Need[] {
  if (last?.result !== "not signed") return [];
  return [
    {
      about: { kind: "hold point", id: last.holdPoint },
      code: "need/not-signed",
      values: { day: last.day, remarks: last.remarks },
      takes: takes("take/answer"),
      blocks: true,
      restsOn: [{ kind: "hold point", id: last.holdPoint }, entry(last.entry)],
    },
  ];
}

export function signedOpenNeed({ holdPoint, day, entry: signedIn }: Inspection): Need {
  const about: Ref = { kind: "hold point", id: holdPoint };
  const saying = { code: "need/signed-open", values: { day } } as const;
  return { about, ...saying, takes: takes("take/look-again"), blocks: true, restsOn: [about, entry(signedIn)] };
}

/** Of a hold point that comes first. */
export function holdPointNeed({ holdPoint, state }: HoldPointFile): Need[] {
  if (state === "passed") return [];
  const about: Ref = { kind: "hold point", id: holdPoint.id };
  return [
    {
      about,
      code: "need/hold-point",
      values: { holdPoint: holdPoint.id, state },
      takes: takes("take/pass-first"),
      blocks: state !== "ready" && state !== "ahead",
      restsOn: [about],
    },
  ];
}

/** Of one within that need not come first. */
export function withinNeed(look: Inspection | undefined): Need[] {
  if (look?.result !== "not signed") return [];
  const about: Ref = { kind: "hold point", id: look.holdPoint };
  return [
    {
      about,
      code: "need/within-not-signed",
      values: { holdPoint: look.holdPoint, day: look.day },
      takes: takes("take/answer"),
      blocks: true,
      restsOn: [about, entry(look.entry)],
    },
  ];
}
