/** Makes what own pages are given: of what the edition shows, by the templates of its own pages. */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import { defined } from "../../src/defined.ts";
import type { Site } from "../../src/editions/shown.ts";
import type { Finding } from "../../src/evidence/types.ts";
import type { Assembly, Entry, Photo, Ref } from "../../src/facts/types.ts";
import { LIMITS } from "../../src/facts/limits.ts";
import { addressOf } from "../../src/pages/address.ts";
import { batchMark, deciding } from "../../src/pages/evidence/verdict-words.ts";
import type {
  AircraftView,
  AssemblyData,
  EditionView,
  EntryData,
  JudgedView,
  PictureView,
} from "../../src/pages/own/edition-view.ts";
import { searchedOf } from "../../src/pages/search/searched.ts";
import type { SearchedKind } from "../../src/pages/search/thing.ts";
import { minutesOf, storyOf } from "../../src/pages/story/story.ts";
import { total } from "../../src/reckoning/hours/hours.ts";
import { Story } from "../parts/amended.tsx";
import { Prose } from "../shell/page.tsx";

/** Deeper than any page lies: what is written for a page there leads up to the root, and is told by that. */
const DEEPEST = LIMITS.folders;
const UP = "../".repeat(DEEPEST);
const within = (folder: string): string => folder + "/".repeat(DEEPEST);

/** @param root where the chronicle's site begins, such as `/` */
export function editionViewOf(site: Site, root = "/"): EditionView {
  const { record, evidence, edition, say } = site.shown;
  const at = (ref: Ref): string => root + (addressOf(ref) ?? "");
  const judged = (ref: Ref, title: string, verdict: string, reasons: readonly string[]): JudgedView => ({
    id: ref.id,
    url: at(ref),
    title,
    verdict,
    reasons: [...new Set(reasons)],
  });
  const because = (findings: readonly Finding[]): string[] => deciding(findings).map((finding) => say(finding));
  return {
    edition,
    aircraft: aircraftView(site, root),
    day: record.day,
    minutes: total(storyOf(site.shown).work),
    entries: record.entries.map((entry) => entryData(site, entry, root)),
    assemblies: [...record.assemblies.values()].map((assembly) => assemblyData(site, assembly, root)),
    joints: [...evidence.joints.values()].map(({ joint, state, findings }) =>
      judged({ kind: "joint", id: joint.id }, joint.title, state, because(findings)),
    ),
    batches: [...evidence.batches.values()].map((file) =>
      judged(
        { kind: "batch", id: file.batch.id },
        record.adhesives.get(file.batch.adhesive)?.title ?? "",
        batchMark(file).word,
        because(file.findings),
      ),
    ),
    holdPoints: [...evidence.holdPoints.values()].map(({ holdPoint: { id, title }, state, needs }) =>
      judged(
        { kind: "hold point", id },
        title,
        state,
        needs.map((need) => say(need)),
      ),
    ),
    things: searchedOf(site)
      .filter(({ kind }) => OTHERS.includes(kind))
      .map(({ kind, id, path, title, lead }) => defined({ kind, id, url: root + path, title, lead })),
  };
}

const OTHERS: readonly SearchedKind[] = ["Lot", "Trial", "Departure", "Open item"];

function aircraftView(site: Site, root: string): AircraftView {
  const { name, type, start, firstFlight, visit, photo, body } = site.shown.record.aircraft;
  const html = body.map((passage) => htmlOf(site, "", passage, root)).join("");
  return defined({ name, type, start, firstFlight, visit, html, picture: photo && pictureView(site, photo, root) });
}

function entryData(site: Site, entry: Entry, root: string): EntryData {
  const { id, day, title, assembly, photos, batches } = entry;
  return defined({
    id,
    url: root + (addressOf({ kind: "entry", id }) ?? ""),
    day,
    title,
    assembly,
    minutes: minutesOf(entry),
    html: fromRoot(<Story site={site} from={within("entry")} entry={entry} />, root),
    pictures: photos.flatMap((photo) => pictureView(site, photo, root) ?? []),
    batches: batches.map((batch) => batch.id),
  });
}

function assemblyData(site: Site, { id, title, parent, body }: Assembly, root: string): AssemblyData {
  return defined({
    id,
    url: root + (addressOf({ kind: "assembly", id }) ?? ""),
    title,
    parent,
    minutes: total(storyOf(site.shown).workOf.get(id) ?? []),
    html: body.map((passage) => htmlOf(site, "assembly", passage, root)).join(""),
  });
}

const htmlOf = (site: Site, folder: string, passage: Parameters<Site["prose"]>[0], root: string): string =>
  fromRoot(<Prose site={site} html={site.prose(passage, within(folder))} />, root);

const fromRoot = (element: JSX.Element, root: string): string => renderToString(element).replaceAll(UP, root);

function pictureView(site: Site, { file, alt, caption }: Photo, root: string): PictureView | undefined {
  const picture = site.pictures.get(file);
  const path = picture?.sources.at(-1)?.files.at(-1)?.path ?? site.files.get(file);
  if (path === undefined) return undefined;
  return defined({ alt, caption, src: root + path, width: picture?.width ?? 0, height: picture?.height ?? 0 });
}
