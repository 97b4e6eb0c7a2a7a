/** Whether work may go on past a hold point, and what it still needs, as a list that can be worked down. */
import { ended } from "../reckoning/figure.ts";
import type { Assembly, Departure, HoldPoint, Inspection, Measurement, OpenItem, Ref } from "../record/types.ts";
import type { Book } from "./book.ts";
import { distinct } from "./finding.ts";
import { measurementFile } from "./measurement.ts";
import type { HoldPointFile, HoldState, JointFile, Need } from "./types.ts";
import { within } from "./within.ts";

export function holdPointFile(book: Book, holdPoint: HoldPoint, files: ReadonlyMap<string, JointFile>): HoldPointFile {
  const inside = within(book, holdPoint.assembly);
  const joints = holdPoint.joints ?? inside.flatMap((assembly) => assembly.joints.map((joint) => joint.id));
  const inspections = book.inspections.get(holdPoint.id) ?? [];
  const last = inspections.at(-1);
  const needs = [
    ...joints.flatMap((id) => jointNeed(files.get(id))),
    ...openItemsBefore(book, holdPoint, inside).map(openItemNeed),
    ...departuresIn(book, inside).map(departureNeed),
    ...inside.flatMap((assembly) => (book.measurementsOf.get(assembly.id) ?? []).flatMap(measurementNeed)),
    ...inspectionNeed(last),
  ];
  return { holdPoint, state: stateOf(last, needs), joints, needs, signed: last?.result === "signed" ? last : undefined, inspections };
}

function stateOf(last: Inspection | undefined, needs: readonly Need[]): HoldState {
  if (last?.result === "signed") return "passed";
  if (needs.some((need) => need.blocks)) return "blocked";
  return needs.length > 0 ? "ahead" : "ready";
}

const entry = (id: string): Ref => ({ kind: "entry", id });

const JOINT_NEEDS = {
  "not glued": { needs: "glue it", blocks: false },
  pending: { needs: "break the test pieces of its batches", blocks: false },
  unproven: { needs: "complete what the record lacks of its batches, or rework it", blocks: true },
  quarantined: { needs: "rework it with a batch of its own", blocks: true },
  opened: { needs: "glue it again", blocks: true },
} as const;

function jointNeed(file: JointFile | undefined): Need[] {
  if (!file || file.state === "accepted") return [];
  const about: Ref = { kind: "joint", id: file.joint.id };
  const told = file.findings.filter((finding) => finding.severity !== "meets" && finding.severity !== "caution");
  const sentence = [`Joint ${file.joint.id} is ${file.state}.`, ...told.map((finding) => finding.sentence)].join(" ");
  return [{ about, sentence, ...JOINT_NEEDS[file.state], restsOn: distinct([about, ...told.flatMap((finding) => finding.restsOn)]) }];
}

/** Open items that name this hold point, or its kind from this assembly or from within it, and are not closed. */
function openItemsBefore(book: Book, holdPoint: HoldPoint, inside: readonly Assembly[]): OpenItem[] {
  const named = book.openItemsBefore.get(holdPoint.id) ?? [];
  const ofKind = inside.flatMap((assembly) => (book.openItemsOf.get(assembly.id) ?? []).filter((item) => item.before === holdPoint.kind));
  return [...new Set([...named, ...ofKind])].filter((item) => item.closedIn === undefined);
}

function openItemNeed(item: OpenItem): Need {
  const about: Ref = { kind: "open item", id: item.id };
  return { about, sentence: `${item.id} is open since ${item.day}: ${ended(item.what)}`, needs: "do it and close it in an entry", blocks: true, restsOn: [about, entry(item.entry)] };
}

/** Departures of these assemblies, and those that their measurements name, which nobody has accepted. */
function departuresIn(book: Book, inside: readonly Assembly[]): Departure[] {
  const own = inside.flatMap((assembly) => book.departuresOf.get(assembly.id) ?? []);
  const named = inside.flatMap((assembly) => (book.measurementsOf.get(assembly.id) ?? []).map((m) => (m.departure === undefined ? undefined : book.departures.get(m.departure))));
  return [...new Set([...own, ...named])].filter((departure) => departure !== undefined).filter((departure) => departure.acceptedBy === undefined);
}

function departureNeed(departure: Departure): Need {
  const about: Ref = { kind: "departure", id: departure.id };
  const sentence = `Departure ${departure.id} of ${departure.day} is not accepted: ${ended(departure.what)}`;
  return { about, sentence, needs: "have it accepted, and note by whom", blocks: true, restsOn: [about, entry(departure.entry)] };
}

function measurementNeed(measurement: Measurement): Need[] {
  if (measurement.departure !== undefined || measurementFile(measurement).verdict !== "out") return [];
  const { what, found, drawing, tolerance } = measurement;
  const asked = [drawing?.typed, tolerance?.typed].filter((text) => text !== undefined).join(" ");
  const sentence = `${what} measures ${found.typed}, outside ${asked}.`;
  return [{ about: entry(measurement.entry), sentence, needs: "mend it and measure again, or note it as a departure", blocks: true, restsOn: [entry(measurement.entry)] }];
}

function inspectionNeed(last: Inspection | undefined): Need[] {
  if (last?.result !== "not signed") return [];
  const sentence = ended(`It was looked at on ${last.day} and not signed${last.remarks === undefined ? "" : `: ${last.remarks}`}`);
  return [{ about: { kind: "hold point", id: last.holdPoint }, sentence, needs: "answer what was found and have it looked at again", blocks: true, restsOn: [{ kind: "hold point", id: last.holdPoint }, entry(last.entry)] }];
}
