/** What the search finds of the chronicle: entries, assemblies, and the pages that stand once. */
import { defined } from "../../defined.ts";
import type { OwnPage, Shown, Site } from "../../editions/shown.ts";
import { lotsOf } from "../../evidence/batch/lots.ts";
import type { Assembly, Entry } from "../../facts/types.ts";
import { dateWords } from "../../words/dates.ts";
import { plain } from "../../words/plain.ts";
import { addressOf } from "../address.ts";
import { idsShown, leadOf, prose, said, type Searched } from "./thing.ts";
import { dayEvents } from "../story/day-events.ts";

/** Pages that stand once, by what they tell of. */
const PAGES: readonly (readonly [path: string, title: string, lead: string])[] = [
  ["hours.html", "Hours", "Hours by part, person and task, week by week."],
  ["forecast.html", "Forecast", "When the work may be done, and how sure that is."],
  ["evidence.html", "Evidence", "What the record proves of each joint and batch, and what it does not."],
  ["hold-points.html", "Hold points", "What each inspection still needs."],
  ["charts.html", "Statistics", "Mixing ratios and test pieces over time."],
  ["climate.html", "Climate of the workshop", "Temperature and humidity over time."],
  ["stock.html", "Stock", "What is left of the lots."],
  ["measurements.html", "Measurements", "Found against drawn, left against right."],
  ["weight.html", "Weight", "Parts weighed, and the centre of gravity."],
  ["credit.html", "Major portion", "Who did how much of each task."],
  ["appendix.html", "Appendix", "All of the evidence for paper."],
  ["about.html", "About this record", "Rules, sources, adhesives, finishes, procedures, cautions."],
];

export function searchedStory(site: Site): Searched[] {
  const { entries, assemblies } = site.shown.record;
  return [
    ...entries.map((entry) => searchedEntry(site, entry)),
    ...[...assemblies.values()].map((assembly) => searchedAssembly(site, assembly)),
    ...PAGES.map(([path, title, lead]): Searched => ({ kind: "Page", path, title, lead, words: [] })),
    ...(site.own?.pages ?? []).filter(({ path }) => path.endsWith(".html")).map(searchedOwn),
  ];
}

function searchedOwn({ path, title, description, content }: OwnPage): Searched {
  const text = plain(content);
  return { kind: "Page", path, title, lead: leadOf(description ?? text), words: [text] };
}

function searchedAssembly(site: Site, assembly: Assembly): Searched {
  const { id, title, parent, joints, holdPoints, coats, tasks, body } = assembly;
  const text = prose(site, body);
  return {
    kind: "Assembly",
    path: addressOf({ kind: "assembly", id }) ?? "",
    title,
    lead: leadOf(text),
    words: [
      id,
      text,
      ...idsShown(site.shown, "assembly", [parent]),
      ...joints.flatMap((joint) => said(joint.id, joint.title, joint.drawing)),
      ...holdPoints.flatMap((point) => [point.id, point.title]),
      ...coats.map(({ where }) => where),
      ...tasks.map((task) => task.title),
    ],
  };
}

function searchedEntry(site: Site, entry: Entry): Searched {
  const { shown } = site;
  const text = prose(site, entry.body);
  return defined({
    kind: "Entry" as const,
    path: addressOf({ kind: "entry", id: entry.id }) ?? "",
    title: entry.title,
    day: entry.day,
    lead: leadOf(text),
    words: [
      text,
      entry.day,
      dateWords(entry.day),
      ...assemblyWords(shown, entry),
      ...glued(shown, entry),
      ...gone(shown, entry),
      ...found(shown, entry),
      ...pictured(entry),
      ...dayEvents(entry, shown).flatMap(({ what, word }) => [what, word]),
      ...entry.amendments.flatMap(({ why }) => [why]),
    ],
  });
}

const assemblyWords = ({ record, nameOf }: Shown, { assembly, hours, visits }: Entry): string[] => [
  ...new Set([
    ...said(record.assemblies.get(assembly ?? "")?.title),
    ...[...hours, ...visits].flatMap(({ who, task, where, note }) => said(nameOf(who), task, where, note)),
  ]),
];

/** Batches, what they went into and were made of; pieces broken, and what they speak for. */
function glued(shown: Shown, { batches, tests, stages, postCures }: Entry): string[] {
  const broken = tests.flatMap(({ piece }) => shown.evidence.pieces.get(piece)?.piece.batch ?? []);
  const spokenFor = broken.flatMap((id) => shown.evidence.batches.get(id)?.batch.joints ?? []);
  const into = batches.flatMap(({ joints }) => joints);
  return [
    ...batches.flatMap(({ id, note, discarded }) => said(id, note, discarded)),
    ...batches.flatMap(({ pieces }) => pieces.flatMap(({ id, note }) => said(id, note))),
    ...tests.flatMap(({ piece, note }) => said(piece, note)),
    ...stages.flatMap(({ note }) => said(note)),
    ...postCures.flatMap(({ note }) => said(note)),
    ...once(
      idsShown(shown, "joint", [
        ...into,
        ...spokenFor,
        ...stages.map(({ joint }) => joint),
        ...postCures.flatMap(({ joints }) => joints),
      ]),
    ),
    ...once(
      idsShown(
        shown,
        "lot",
        batches.flatMap((batch) => lotsOf({ batch })),
      ),
    ),
  ];
}

/** Lots cut, recalled and left; what was fitted, put on, taken out. */
function gone(shown: Shown, entry: Entry): string[] {
  const { cuts, remains, recalls, fitted, coats, reworks, rejections } = entry;
  const lots = [...cuts, ...remains, ...recalls, ...fitted].map(({ lot }) => lot);
  return [
    ...once(idsShown(shown, "lot", [...lots, ...coats.flatMap((coat) => coat.lots)])),
    ...[...cuts, ...remains].flatMap(({ note }) => said(note)),
    ...recalls.flatMap(({ why, note }) => said(why, note)),
    ...fitted.flatMap(({ where, serial, why, note }) => said(where, serial, why, note)),
    ...coats.flatMap(({ where, bare, stripped, note }) => said(where, bare, stripped, note)),
    ...idsShown(
      shown,
      "joint",
      reworks.flatMap(({ joints }) => joints),
    ),
    ...[...reworks, ...rejections].flatMap(({ why, note }) => said(why, note)),
  ];
}

/** Measured, weighed, departed from, put off, looked at. */
const found = (shown: Shown, { measurements, weighed, departures, raised, closed, inspections }: Entry): string[] => [
  ...measurements.flatMap(({ what, joint, note }) => [...said(what, note), ...idsShown(shown, "joint", [joint])]),
  ...weighed.flatMap(({ part, note }) => said(part, note)),
  ...departures.flatMap(({ id, what, why, condition, note }) => said(id, what, why, condition, note)),
  ...raised.flatMap(({ id, what, note }) => said(id, what, note)),
  ...closed,
  ...idsShown(
    shown,
    "hold point",
    inspections.map(({ holdPoint }) => holdPoint),
  ),
  ...inspections.flatMap(({ reference, remarks }) => said(reference, remarks)),
];

const pictured = ({ photos, clips, attachments }: Entry): string[] => [
  ...[...photos, ...clips].flatMap(({ alt, caption }) => said(alt, caption)),
  ...attachments.map(({ title }) => title),
];

const once = (words: readonly string[]): string[] => [...new Set(words)];
