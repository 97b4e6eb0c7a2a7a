/** What the search finds of the evidence: joints, hold points, batches, lots, departures, open items, trials. */
import { defined } from "../../defined.ts";
import type { Shown, Site } from "../../editions/shown.ts";
import { lotsOf } from "../../evidence/batch/lots.ts";
import type { BatchFile, Finding, HoldPointFile, JointFile, LotFile } from "../../evidence/types.ts";
import type { Ref, Trial } from "../../facts/types.ts";
import { capital } from "../../words/capital.ts";
import { dateWords } from "../../words/dates.ts";
import { addressOf } from "../address.ts";
import { batchMark, deciding } from "../evidence/verdict-words.ts";
import { idsShown, leadOf, prose, said, type Searched, type SearchedKind } from "./thing.ts";

export function searchedEvidence(site: Site): Searched[] {
  const { shown } = site;
  const { joints, holdPoints, batches, lots } = shown.evidence;
  return [
    ...[...joints.values()].map((file) => searchedJoint(shown, file)),
    ...[...holdPoints.values()].map((file) => searchedHoldPoint(shown, file)),
    ...[...batches.values()].map((file) => searchedBatch(shown, file)),
    ...[...lots.values()].map((file) => searchedLot(site, file)),
    ...items(shown),
    ...[...shown.record.trials.values()].map((trial) => searchedTrial(site, trial)),
  ];
}

const path = (ref: Ref): string => addressOf(ref) ?? "";

/** Sentences of what was found, but for limits that were held: those would find every batch alike. */
const sentences = ({ say }: Shown, findings: readonly Finding[]): string[] => [
  ...new Set(findings.filter(({ severity }) => severity !== "meets").map((finding) => say(finding))),
];

/** Why it is so, in a sentence where there is one. */
const because = (shown: Shown, state: string, findings: readonly Finding[]): string =>
  leadOf([`${capital(state)}.`, ...sentences(shown, deciding(findings)).slice(0, 1)].join(" "));

function searchedJoint(shown: Shown, file: JointFile): Searched {
  const { joint, state, findings, batches, superseded, lots, reworks } = file;
  return {
    kind: "Joint",
    path: path({ kind: "joint", id: joint.id }),
    id: joint.id,
    title: joint.title,
    lead: because(shown, state, findings),
    words: [
      ...said(joint.drawing, shown.record.assemblies.get(joint.assembly)?.title),
      ...sentences(shown, findings),
      ...idsShown(shown, "batch", [...batches, ...superseded]),
      ...idsShown(shown, "lot", lots),
      ...reworks.flatMap(({ why, note }) => said(why, note)),
    ],
  };
}

function searchedHoldPoint(shown: Shown, file: HoldPointFile): Searched {
  const { holdPoint, state, joints, needs, changes, remarks, inspections } = file;
  const { say, nameOf } = shown;
  const { id, title, assembly } = holdPoint;
  return {
    kind: "Hold point",
    path: path({ kind: "hold point", id }),
    id,
    title,
    lead: `${capital(state)}.`,
    words: [
      ...said(shown.record.assemblies.get(assembly)?.title),
      ...idsShown(shown, "joint", joints),
      ...new Set([...needs, ...changes, ...remarks].map((one) => say(one))),
      ...inspections.flatMap(({ by, reference, remarks: words }) => said(nameOf(by), reference, words)),
    ],
  };
}

function searchedBatch(shown: Shown, file: BatchFile): Searched {
  const { batch, findings, pieces, rejection } = file;
  const title = shown.record.adhesives.get(batch.adhesive)?.title ?? "";
  return {
    kind: "Batch",
    path: path({ kind: "batch", id: batch.id }),
    id: batch.id,
    title,
    day: batch.day,
    lead: because(shown, batchMark(file).word, findings),
    words: [
      batch.day,
      ...said(batch.note, batch.discarded, rejection?.why),
      ...idsShown(shown, "joint", batch.joints),
      ...idsShown(shown, "lot", lotsOf({ batch })),
      ...sentences(shown, [...findings, ...pieces.flatMap((piece) => piece.findings)]),
      ...pieces.flatMap(({ piece, test }) => said(piece.id, piece.note, test?.note)),
    ],
  };
}

function searchedLot(site: Site, file: LotFile): Searched {
  const { shown } = site;
  const { lot, recalls, findings, joints, holdPoints } = file;
  const recalled = recalls.length === 0 ? "" : " Recalled.";
  return {
    kind: "Lot",
    path: path({ kind: "lot", id: lot.id }),
    id: lot.id,
    title: lot.title,
    day: lot.received,
    lead: `${capital(lot.material)}, received on ${dateWords(lot.received)}.${recalled}`,
    words: [
      ...said(lot.material, lot.number, lot.supplier, lot.species, prose(site, lot.body)),
      ...sentences(shown, findings),
      ...recalls.flatMap(({ why, reference, note }) => said(why, reference, note)),
      ...idsShown(shown, "joint", joints),
      ...idsShown(shown, "hold point", holdPoints),
    ],
  };
}

interface Item {
  readonly id: string;
  readonly day: string;
  readonly what: string;
  readonly assembly: string;
}

function items(shown: Shown): Searched[] {
  const { departures, openItems } = shown.evidence;
  const one = (kind: SearchedKind, at: Ref, { id, day, what, assembly }: Item, lead: string, ...more: string[]) => ({
    kind,
    path: path(at),
    id,
    title: leadOf(what),
    day,
    lead,
    words: [what, ...said(shown.record.assemblies.get(assembly)?.title), ...more],
  });
  return [
    ...[...departures.values()].map((item) =>
      one(
        "Departure",
        { kind: "departure", id: item.id },
        item,
        leadOf(item.why),
        ...said(item.why, item.condition, item.reference, item.note),
      ),
    ),
    ...[...openItems.values()].map((item) =>
      one(
        "Open item",
        { kind: "open item", id: item.id },
        item,
        item.closedIn === undefined ? "Open." : "Closed.",
        ...said(item.note, ...idsShown(shown, "hold point", [item.before])),
      ),
    ),
  ];
}

function searchedTrial(site: Site, trial: Trial): Searched {
  const { id, title, question, expectation, preparations, stated, body } = trial;
  return defined({
    kind: "Trial" as const,
    path: path({ kind: "trial", id }),
    title,
    day: stated,
    lead: leadOf(question),
    words: [id, question, expectation, ...preparations.map(({ what }) => what), prose(site, body)],
  });
}
