/** Whether work may go on past a hold point, and what it still needs, as a list that can be worked down. */
import { ended } from "../../words/figure.ts";
import type { Assembly, Departure, HoldPoint, Inspection, Measurement, OpenItem, Ref } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import { distinct } from "../finding.ts";
import { askedOf, measurementFile } from "../measures/measurement.ts";
import { changesSince, entriesOf, pairSentence, type Scope } from "./sign-off.ts";
import type { BatchFile, Change, HoldPointFile, HoldState, JointFile, Need, PairFile } from "../types.ts";
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

const JOINT_NEEDS = {
  "not glued": { needs: "glue it", blocks: false },
  pending: { needs: "break the test pieces of its batches", blocks: false },
  unproven: { needs: "complete what the record lacks of its batches, or rework it", blocks: true },
  quarantined: { needs: "rework it with a batch of its own", blocks: true },
  opened: { needs: "glue it again", blocks: true },
} as const;

function jointNeed(file: JointFile): Need[] {
  if (file.state === "accepted") return [];
  const about: Ref = { kind: "joint", id: file.joint.id };
  const told = file.findings.filter((finding) => finding.severity !== "meets" && finding.severity !== "caution");
  const sentence = [`Joint ${file.joint.id} is ${file.state}.`, ...told.map((finding) => finding.sentence)].join(" ");
  return [
    {
      about,
      sentence,
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
    sentence: `${item.id} is open since ${item.day}: ${ended(item.what)}`,
    needs: "do it and close it in an entry",
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
  const sentence = `Departure ${departure.id} of ${departure.day} is not accepted: ${ended(departure.what)}`;
  return {
    about,
    sentence,
    needs: "have it accepted, and note by whom",
    blocks: true,
    restsOn: [about, entry(departure.entry)],
  };
}

function measurementNeed(index: RecordIndex, measurement: Measurement): Need[] {
  const { verdict, again } = measurementFile(index, measurement);
  if (measurement.departure !== undefined || verdict !== "out" || again) return [];
  const sentence = `${measurement.what} measures ${measurement.found.typed}, outside ${askedOf(measurement)}.`;
  return [
    {
      about: entry(measurement.entry),
      sentence,
      needs: "mend it and measure again, or note it as a departure",
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
        sentence: pairSentence(pair),
        needs: "mend it and measure again, or note it as a departure",
        blocks: true,
        restsOn,
      },
    ];
  if (pair.verdict !== "one side") return [];
  return [
    {
      about: entry(last),
      sentence: `Of ${pair.id} only the ${first.side} side is measured.`,
      needs: "measure the other side",
      blocks: false,
      restsOn,
    },
  ];
}

function reopenedNeed(signed: Inspection): Need {
  const about: Ref = { kind: "hold point", id: signed.holdPoint };
  return {
    about,
    sentence: `It was signed on ${signed.day}, and what was looked at has changed since.`,
    needs: "have it looked at again, with what has changed",
    blocks: true,
    restsOn: [about, entry(signed.entry)],
  };
}

function inspectionNeed(last: Inspection | undefined): Need[] {
  if (last?.result !== "not signed") return [];
  const sentence = ended(
    `It was looked at on ${last.day} and not signed${last.remarks === undefined ? "" : `: ${last.remarks}`}`,
  );
  return [
    {
      about: { kind: "hold point", id: last.holdPoint },
      sentence,
      needs: "answer what was found and have it looked at again",
      blocks: true,
      restsOn: [{ kind: "hold point", id: last.holdPoint }, entry(last.entry)],
    },
  ];
}
