/** Whether work may go on past a hold point, and what it still needs, as a list that can be worked down. */
import type { Assembly, Departure, HoldPoint, Inspection, Measurement, OpenItem, Ref } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import { distinct } from "../finding.ts";
import { askedOf, measurementFile } from "../measures/measurement.ts";
import { changesSince, entriesOf, pairValues, type Scope } from "./sign-off.ts";
import type { Coded } from "../codes/coded.ts";
import type { FindingValues } from "../codes/findings.ts";
import type { TakeValues } from "../codes/hold-points.ts";
import type { BatchFile, Change, Finding, HoldPointFile, HoldState, JointFile, Need, PairFile } from "../types.ts";
import { within } from "./within.ts";

export interface Known {
  readonly joints: ReadonlyMap<string, JointFile>;
  readonly batches: ReadonlyMap<string, BatchFile>;
  readonly pairs: ReadonlyMap<string, PairFile>;
}

export function holdPointFile(index: RecordIndex, holdPoint: HoldPoint, known: Known): HoldPointFile {
  const inside = within(index, holdPoint.assembly);
  const joints = holdPoint.joints ?? inside.flatMap((assembly) => assembly.joints.map((joint) => joint.id));
  const inspections = index.inspections.get(holdPoint.id) ?? [];
  const last = inspections.at(-1);
  const signed = last?.result === "signed" ? last : undefined;
  const scope = scopeOf(index, holdPoint, inside, { ...known, asked: joints });
  const changes = signed ? changesSince(index, signed, scope) : [];
  const needs = [
    ...scope.joints.flatMap(jointNeed),
    ...scope.openItems.filter((item) => item.closedIn === undefined).map(openItemNeed),
    ...scope.departures.filter((departure) => departure.acceptedBy === undefined).map(departureNeed),
    ...scope.measurements.flatMap((one) => measurementNeed(index, one)),
    ...scope.pairs.flatMap(pairNeed),
    ...(signed && changes.length > 0 ? [reopenedNeed(signed)] : []),
    ...inspectionNeed(last),
  ];
  return { holdPoint, state: stateOf(last, needs, changes), joints, needs, changes, signed, inspections };
}

function stateOf(last: Inspection | undefined, needs: readonly Need[], changes: readonly Change[]): HoldState {
  if (last?.result === "signed") return changes.length > 0 ? "reopened" : "passed";
  if (needs.some((need) => need.blocks)) return "blocked";
  return needs.length > 0 ? "ahead" : "ready";
}

function scopeOf(
  index: RecordIndex,
  holdPoint: HoldPoint,
  inside: readonly Assembly[],
  known: Known & { readonly asked: readonly string[] },
): Scope {
  const measurements = inside.flatMap((assembly) => index.measurementsOf.get(assembly.id) ?? []);
  const pairs = [...new Set(measurements.flatMap(({ pair }) => pair ?? []))].flatMap((id) => known.pairs.get(id) ?? []);
  return {
    measurements,
    pairs,
    joints: known.asked.flatMap((id) => known.joints.get(id) ?? []),
    batches: known.batches,
    openItems: openItemsBefore(index, holdPoint, inside),
    departures: departuresIn(index, inside, measurements),
  };
}

const entry = (id: string): Ref => ({ kind: "entry", id });

function takes<C extends keyof TakeValues>(code: C) {
  return { code, values: {} };
}

const JOINT_NEEDS = {
  "not glued": { takes: takes("take/glue"), blocks: false },
  pending: { takes: takes("take/break-pieces"), blocks: false },
  "not shown": { takes: takes("take/complete"), blocks: true },
  quarantined: { takes: takes("take/rework"), blocks: true },
  opened: { takes: takes("take/glue-again"), blocks: true },
} as const;

const coded = ({ code, values }: Finding): Coded<FindingValues>[] =>
  code === "withheld" ? [] : [{ code, values } as Coded<FindingValues>];

function jointNeed(file: JointFile): Need[] {
  if (file.state === "shown") return [];
  const about: Ref = { kind: "joint", id: file.joint.id };
  const told = file.findings.filter((finding) => finding.severity !== "meets" && finding.severity !== "caution");
  return [
    {
      about,
      code: "need/joint",
      values: { joint: file.joint.id, state: file.state, told: told.flatMap(coded) },
      ...JOINT_NEEDS[file.state],
      restsOn: distinct([about, ...told.flatMap((finding) => finding.restsOn)]),
    },
  ];
}

/** Open items that name this hold point, or its kind from this assembly or from within it, closed or not. */
function openItemsBefore(index: RecordIndex, holdPoint: HoldPoint, inside: readonly Assembly[]): OpenItem[] {
  const named = index.openItemsBefore.get(holdPoint.id) ?? [];
  const ofKind = inside.flatMap((assembly) =>
    (index.openItemsOf.get(assembly.id) ?? []).filter((item) => item.before === holdPoint.kind),
  );
  return [...new Set([...named, ...ofKind])];
}

function openItemNeed(item: OpenItem): Need {
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

/** Departures of these assemblies, and those that their measurements name, accepted or not. */
function departuresIn(
  index: RecordIndex,
  inside: readonly Assembly[],
  measurements: readonly Measurement[],
): Departure[] {
  const own = inside.flatMap((assembly) => index.departuresOf.get(assembly.id) ?? []);
  const named = measurements.flatMap(({ departure }) =>
    departure === undefined ? [] : (index.departures.get(departure) ?? []),
  );
  return [...new Set([...own, ...named])];
}

function departureNeed(departure: Departure): Need {
  const about: Ref = { kind: "departure", id: departure.id };
  return {
    about,
    code: "need/departure",
    values: { id: departure.id, day: departure.day, what: departure.what },
    takes: takes("take/acceptance"),
    blocks: true,
    restsOn: [about, entry(departure.entry)],
  };
}

function measurementNeed(index: RecordIndex, measurement: Measurement): Need[] {
  const { verdict, again } = measurementFile(index, measurement);
  if (measurement.departure !== undefined || verdict !== "out" || again) return [];
  return [
    {
      about: entry(measurement.entry),
      code: "need/measure-out",
      values: { what: measurement.what, found: measurement.found.typed, asked: askedOf(measurement) },
      takes: takes("take/mend-measure"),
      blocks: true,
      restsOn: [entry(measurement.entry)],
    },
  ];
}

/** A pair is answered for by a departure that either side names. */
function pairNeed(pair: PairFile): Need[] {
  const [first] = pair.now;
  const last = pair.now
    .map((one) => one.entry)
    .sort()
    .at(-1);
  if (!first || last === undefined || pair.now.some(({ departure }) => departure !== undefined)) return [];
  const restsOn = distinct(entriesOf(pair));
  if (pair.verdict === "out")
    return [
      {
        about: entry(last),
        code: "need/pair-out",
        values: pairValues(pair),
        takes: takes("take/mend-measure"),
        blocks: true,
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

function reopenedNeed(signed: Inspection): Need {
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

function inspectionNeed(last: Inspection | undefined): Need[] {
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
