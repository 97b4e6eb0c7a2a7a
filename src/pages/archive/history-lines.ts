/** What one entry brought to the parts of an aircraft, in lines. */
import type { Entry, FilePath, Ref } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { counted, ended, listed } from "../../words/lists.ts";
import { inUnits, quantityWords } from "../../words/quantities.ts";
import { acceptedWords, drawingWords, NOT_GIVEN } from "../evidence/evidence-lists.ts";
import type { Marked } from "../evidence/marked.ts";
import { stageWords } from "../evidence/verdict-words.ts";
import { dayEvents, type Happening } from "../story/day-events.ts";

export interface HistoryLine {
  readonly what: string;
  readonly about?: Ref;
  readonly mark?: Marked;
  /** The word beside the mark. */
  readonly word?: string;
  readonly says: string;
  /** The paper that it stands on. */
  readonly scan?: FilePath;
  /** Joints that it concerns. */
  readonly joints: readonly string[];
  /** Whether hands were on those joints. */
  readonly isWork: boolean;
}

/** Reckoned once for each entry: every assembly around it tells of it, and its joints. */
export const linesOf = (shown: Shown, entry: Entry): readonly HistoryLine[] => shown.memo.within(shown, entry, made);

/** What was opened before what was glued: a rework takes out no batch of its own entry. */
function made(shown: Shown, entry: Entry): HistoryLine[] {
  const all = dayEvents(entry, shown);
  return [
    ...sawn(entry),
    ...measured(shown, entry),
    ...[...all.filter(isRework), ...all.filter((one) => !isRework(one))].map((one) => happened(shown, entry, one)),
    ...stages(entry),
    ...heated(entry),
    ...fitted(entry),
    ...weighed(shown, entry),
    ...amended(shown, entry),
  ];
}

const isRework = ({ row, about }: Happening): boolean => row === "Taken out" && about.kind === "joint";

function happened(shown: Shown, entry: Entry, happening: Happening): HistoryLine {
  const { mark, word, what, about, scan } = happening;
  return {
    ...(scan !== undefined && { scan }),
    what,
    about,
    mark,
    word,
    says: saysOf(shown, entry, happening),
    joints: jointsOf(shown, about),
    isWork: happening.row === "Batches" || isRework(happening),
  };
}

/** Joints that a thing is in, was in, or asks for. */
function jointsOf({ evidence }: Shown, { kind, id }: Ref): readonly string[] {
  if (kind === "joint") return [id];
  if (kind === "batch") return evidence.batches.get(id)?.batch.joints ?? [];
  if (kind === "piece") return evidence.batches.get(evidence.pieces.get(id)?.piece.batch ?? "")?.batch.joints ?? [];
  if (kind === "hold point") return evidence.holdPoints.get(id)?.joints ?? [];
  if (kind !== "lot") return [];
  const lot = evidence.lots.get(id);
  return lot === undefined ? [] : [...lot.joints, ...lot.formerJoints];
}

function saysOf(shown: Shown, entry: Entry, { row, says, about: { kind, id } }: Happening): string {
  if (says !== undefined) return says;
  const { evidence } = shown;
  if (row === "Batches") return joined(entry.batches.find((batch) => batch.id === id)?.joints ?? []);
  if (kind === "open item") return evidence.openItems.get(id)?.what ?? "";
  if (kind !== "departure") return "";
  const departure = evidence.departures.get(id);
  return departure === undefined ? "" : `${ended(departure.what)} It is ${acceptedWords(shown, departure)}`;
}

const joined = (joints: readonly string[]): string => (joints.length === 0 ? "" : `in ${listed(joints)}`);

const plain = (what: string, says: string, joints: readonly string[] = [], about?: Ref): HistoryLine => ({
  what,
  says,
  joints,
  isWork: false,
  ...(about !== undefined && { about }),
});

function sawn({ cuts }: Entry): HistoryLine[] {
  return cuts.map(({ lot, amount }) => plain(`Cut from lot ${lot}`, amount.typed, [], { kind: "lot", id: lot }));
}

function measured(shown: Shown, { measurements }: Entry): HistoryLine[] {
  const { units } = shown.record.aircraft;
  return measurements.map((one) => {
    const drawing = drawingWords(shown, one);
    const found = quantityWords(one.found, units);
    const says = drawing === NOT_GIVEN ? found : `${found}, drawing ${drawing}`;
    return plain(one.what, says, one.joint === undefined ? [] : [one.joint]);
  });
}

function stages({ stages: all }: Entry): HistoryLine[] {
  return all.map((stage) =>
    plain(
      `Joint ${stage.joint}`,
      `${stageWords(stage)}${stage.complete === true ? ", and with it complete" : ""}`,
      [stage.joint],
      { kind: "joint", id: stage.joint },
    ),
  );
}

function heated({ postCures }: Entry): HistoryLine[] {
  return postCures.map(({ joints, temperature, from, to }) =>
    plain(`Heated ${listed(joints)}`, `${temperature.typed}, ${from.typed} to ${to.typed}`, joints),
  );
}

function fitted({ fitted: all }: Entry): HistoryLine[] {
  return all.map(({ where, lot, serial, count, replaces, why }) =>
    plain(
      `Fitted ${where}`,
      [
        `${counted(count, "part")} of lot ${lot}`,
        ...(serial === undefined ? [] : [`serial number ${serial}`]),
        ...(replaces === undefined ? [] : [`in place of lot ${replaces}`]),
        ...(why === undefined ? [] : [why]),
      ].join(", "),
      [],
      { kind: "lot", id: lot },
    ),
  );
}

function weighed({ record: { aircraft } }: Shown, { weighed: all }: Entry): HistoryLine[] {
  return all.map(({ part, mass }) => plain(`Weighed ${part}`, quantityWords(mass, aircraft.units, inUnits)));
}

/** Of each amendment the things that it changes. */
function amended(shown: Shown, { amendments }: Entry): HistoryLine[] {
  return amendments.map(({ entry, why, changes }) => ({
    ...plain(
      "Amended an earlier entry",
      why,
      changes.flatMap(({ about }) => jointsOf(shown, about)),
      { kind: "entry", id: entry },
    ),
  }));
}
