/** What happened on a day: an entry with all its facts. */
import type * as z from "zod";
import { type Decisions, each, onlyShown, part, show } from "../decisions.ts";
import { type Batch, batchOf, batchShown } from "../glue/batch.ts";
import { type Cut, cutOf, cutShown, isCutShown } from "../glue/cut.ts";
import { isRemainderShown, type Remainder, remainderOf, remainderShown } from "../glue/remainder.ts";
import { type InUse, inUseOf, inUseShown } from "../glue/in-use.ts";
import { isRecallShown, type Recall, recallOf, recallShown } from "../glue/recall.ts";
import { isRejectionShown, type Rejection, rejectionOf, rejectionShown } from "../glue/rejection.ts";
import { type Rework, reworkOf, reworkShown } from "../glue/rework.ts";
import { type Stage, stageOf, stageShown } from "../glue/stage.ts";
import { isTestShown, type PieceTest, testOf, testShown } from "../glue/test.ts";
import { factOf, type InEntry, type Later, type SoundFile } from "../typing.ts";
import type { Zone } from "../time/zone.ts";
import type { Audience, Day, FilePath, Passage, Path, Placed } from "../values.ts";
import { type Coat, coatOf, coatShown } from "../work/coat.ts";
import { type Fitting, fittingOf, fittingShown } from "../work/fitting.ts";
import { type Departure, departureOf, departureShown, isDepartureShown } from "../work/departure.ts";
import { type HoursLine, hoursOf, hoursShown } from "../work/hours.ts";
import { type Inspection, inspectionOf, inspectionShown } from "../work/inspection.ts";
import { type Measurement, measurementOf, measurementShown } from "../work/measurement.ts";
import { isOpenItemShown, type OpenItem, openItemOf, openItemShown } from "../work/open-item.ts";
import { type OnScales, scalesOf, scalesShown } from "../work/scales.ts";
import { type PostCure, postCureOf, postCureShown } from "../glue/post-cure.ts";
import { type Thermometer, thermometerOf, thermometerShown } from "../work/thermometer.ts";
import { type Weighing, weighingOf, weighingShown } from "../work/weighing.ts";
import { type Amendment, amendmentShown, isAmendmentShown } from "./amendment.ts";
import { type Attachment, attachmentOf, attachmentShown, isAttachmentShown } from "./attachment.ts";
import { type Clip, clipOf, clipShown } from "./clip.ts";
import { isFileShown, type Photo, photoOf, photoShown } from "./photo.ts";
import type { entrySchema } from "./entry-form.ts";

type EntrySpec = z.output<typeof entrySchema>;

export interface Entry extends Placed {
  readonly file: FilePath;
  readonly day: Day;
  /** First and last second of the day in the aircraft's time zone. */
  readonly dayStart: number;
  readonly dayEnd: number;
  readonly title: string;
  /** What was worked on; a purchase, a recall, a jig or a visit may belong to no part. */
  readonly assembly?: string;
  readonly audience: Audience;
  readonly hours: readonly HoursLine[];
  /** Time of visitors: told, and in no sum of work. */
  readonly visits: readonly HoursLine[];
  readonly cuts: readonly Cut[];
  readonly remains: readonly Remainder[];
  /** What is in use from this entry on. */
  readonly inUse?: InUse;
  readonly batches: readonly Batch[];
  readonly tests: readonly PieceTest[];
  readonly thermometer: readonly Thermometer[];
  readonly postCures: readonly PostCure[];
  readonly measurements: readonly Measurement[];
  readonly weighed: readonly Weighing[];
  readonly scales?: OnScales;
  readonly fitted: readonly Fitting[];
  readonly coats: readonly Coat[];
  readonly departures: readonly Departure[];
  readonly raised: readonly OpenItem[];
  readonly closed: readonly string[];
  readonly photos: readonly Photo[];
  readonly clips: readonly Clip[];
  readonly attachments: readonly Attachment[];
  readonly recalls: readonly Recall[];
  readonly reworks: readonly Rework[];
  readonly stages: readonly Stage[];
  readonly rejections: readonly Rejection[];
  readonly inspections: readonly Inspection[];
  /** What it amends in earlier entries. */
  readonly amendments: readonly Amendment[];
  readonly body: readonly Passage[];
}

export function entryOf(sound: SoundFile<EntrySpec>, zone: Zone, later: Later): Entry {
  const { spec, file, id: own, body } = sound;
  const of = inEntry(sound, zone, later);
  const all = <S, F>(where: Path, list: readonly S[] | undefined, make: (spec: S, path: Path, of: InEntry) => F): F[] =>
    (list ?? []).map((each, index) => make(each, [...where, index], of));
  const lines = all(["hours"], spec.hours, hoursOf).flat();
  const looksOn = ({ who }: HoursLine): boolean => later.visitors.has(who);
  return factOf<Entry>({
    id: own,
    place: { file, line: 1, column: 1 },
    file,
    day: spec.date,
    dayStart: zone.start(spec.date),
    dayEnd: zone.end(spec.date),
    title: spec.title,
    assembly: spec.assembly,
    audience: spec.for ?? "public",
    hours: lines.filter((line) => !looksOn(line)),
    visits: lines.filter(looksOn),
    cuts: all(["cut"], spec.cut, cutOf),
    remains: all(["remains"], spec.remains, remainderOf),
    inUse: spec.in_use && inUseOf(spec.in_use, ["in_use"], of),
    batches: all(["batches"], spec.batches, batchOf),
    tests: all(["tests"], spec.tests, testOf),
    thermometer: all(["thermometer"], spec.thermometer, thermometerOf),
    postCures: all(["post_cures"], spec.post_cures, postCureOf),
    measurements: all(["measurements"], spec.measurements, measurementOf),
    weighed: all(["weighed"], spec.weighed, weighingOf),
    scales: spec.scales && scalesOf(spec.scales, ["scales"], of),
    fitted: all(["fitted"], spec.fitted, fittingOf),
    coats: all(["coats"], spec.coats, coatOf),
    departures: all(["departures"], spec.departures, departureOf),
    raised: all(["open_items", "raise"], spec.open_items?.raise, openItemOf),
    closed: spec.open_items?.close ?? [],
    photos: all(["photos"], spec.photos, photoOf),
    clips: all(["clips"], spec.clips, clipOf),
    attachments: all(["attachments"], spec.attachments, attachmentOf),
    recalls: all(["recalls"], spec.recalls, recallOf),
    reworks: all(["reworks"], spec.reworks, reworkOf),
    stages: all(["stages"], spec.stages, stageOf(spec.batches ?? [])),
    rejections: all(["rejects"], spec.rejects, rejectionOf),
    inspections: all(["inspections"], spec.inspections, inspectionOf),
    amendments: later.amendments.get(own) ?? [],
    body,
  });
}

/** What the facts of an entry need to know of it. */
function inEntry({ spec, id, at, usualFrom, path }: SoundFile<EntrySpec>, zone: Zone, later: Later): InEntry {
  return {
    entry: id,
    day: spec.date,
    assembly: spec.assembly,
    at,
    usualFrom,
    path,
    moment: (time, which, day = spec.date) => zone.moment(day, time, which),
    later,
  };
}

export const entryShown: Decisions<Entry> = {
  id: show,
  place: show,
  file: show,
  day: show,
  dayStart: show,
  dayEnd: show,
  title: show,
  assembly: show,
  audience: show,
  hours: each(hoursShown),
  visits: each(hoursShown),
  cuts: each(cutShown, isCutShown),
  remains: each(remainderShown, isRemainderShown),
  inUse: part(inUseShown),
  batches: each(batchShown),
  tests: each(testShown, isTestShown),
  thermometer: each(thermometerShown),
  postCures: each(postCureShown),
  measurements: each(measurementShown),
  weighed: each(weighingShown),
  scales: part(scalesShown),
  fitted: each(fittingShown),
  coats: each(coatShown),
  departures: each(departureShown, isDepartureShown),
  raised: each(openItemShown, isOpenItemShown),
  closed: onlyShown("openItems"),
  photos: each(photoShown, isFileShown),
  clips: each(clipShown, isFileShown),
  attachments: each(attachmentShown, isAttachmentShown),
  recalls: each(recallShown, isRecallShown),
  reworks: each(reworkShown),
  stages: each(stageShown),
  rejections: each(rejectionShown, isRejectionShown),
  inspections: each(inspectionShown),
  amendments: each(amendmentShown, isAmendmentShown),
  body: (body, seer, { file }) => seer.prose(body, file.slice(0, Math.max(0, file.lastIndexOf("/")))),
};

export const isEntryShown = ({ id }: Entry, by: { readonly entries: ReadonlySet<string> }): boolean =>
  by.entries.has(id);
