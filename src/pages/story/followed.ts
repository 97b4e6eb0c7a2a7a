/**
 * What those who follow the build or share a page of it are told: of the public edition alone, and only where its
 * address is known.
 */
import { defined } from "../../defined.ts";
import type { Picture, Shown, Site } from "../../editions/shown.ts";
import type { Entry, FilePath } from "../../facts/types.ts";
import { Zone } from "../../facts/time/zone.ts";
import { amendmentsTo } from "./amended.ts";
import { pictureOf } from "./pictured.ts";
import { plain } from "../../words/plain.ts";

/** So many of the newest entries. */
const MOST_IN_A_FEED = 50;

/** A picture by its whole address, in a form that every reader shows. */
export interface SharedPicture {
  readonly address: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly type: string;
}

export interface FollowedEntry {
  readonly address: string;
  readonly title: string;
  /** ISO 8601: the beginning of its day; of its last amendment's, where it has one. */
  readonly published: string;
  readonly updated: string;
  readonly summary: string;
  readonly picture?: SharedPicture;
}

export interface Followed {
  readonly address: string;
  readonly title: string;
  readonly about: string;
  readonly authors: readonly string[];
  readonly language: string;
  readonly updated: string;
  /** The newest first. */
  readonly entries: readonly FollowedEntry[];
}

export const addressOfSite = ({ edition, record: { aircraft } }: Shown): string | undefined =>
  edition === "public" ? aircraft.address : undefined;

/** The whole address of a page or a file of the site. */
export const wholeAddress = (address: string, path: string): string =>
  address + (path === "index.html" ? "" : path.split("/").map(encodeURIComponent).join("/"));

export function followed(site: Site, address: string): Followed {
  const { shown } = site;
  const { aircraft, entries } = shown.record;
  const newest = entries.slice(-MOST_IN_A_FEED).reverse();
  const told = newest.map((entry) => followedEntry(site, address, entry));
  return {
    address,
    title: aircraft.name,
    about: `${aircraft.name}, ${aircraft.type}: the record of its building.`,
    authors: [...aircraft.people.values()].flatMap(({ id, role }) =>
      role.endsWith("builder") ? [shown.nameOf(id)] : [],
    ),
    language: aircraft.language ?? "en",
    updated: told.reduce((last, { updated }) => (updated > last ? updated : last), momentOf(shown, shown.record.day)),
    entries: told,
  };
}

function followedEntry(site: Site, address: string, entry: Entry): FollowedEntry {
  const { shown } = site;
  return defined({
    address: wholeAddress(address, `entry/${entry.id}.html`),
    title: entry.title,
    published: momentOf(shown, entry.day),
    updated: momentOf(shown, lastDayOf(shown, entry)),
    summary: summaryOf(site, entry),
    picture: sharedPicture(site, address, pictureOf(entry)),
  });
}

/** The day on which it was written, or last amended. */
export const lastDayOf = (shown: Shown, entry: Entry): string =>
  amendmentsTo(shown, entry.id).reduce((last, { day }) => (day > last ? day : last), entry.day);

const momentOf = ({ record }: Shown, day: string): string =>
  new Date(Zone.of(record.aircraft.timeZone).start(day) * 1000).toISOString().replace(".000", "");

/** The first paragraph in plain words; nothing of prose that was struck. */
function summaryOf({ shown, prose }: Site, entry: Entry): string {
  const isStruck = amendmentsTo(shown, entry.id).some(({ prose: struck }) => struck);
  const [passage] = isStruck ? [] : entry.body;
  return passage === undefined ? "" : plain(prose(passage, "index.html", "first paragraph"));
}

const COMMON = ["image/jpeg", "image/png"];
/** Wide enough for any place in which shared pages are shown, px. */
const WIDE = 1200;

export function sharedPicture(
  { pictures }: Site,
  address: string,
  photo: { readonly file: FilePath; readonly alt: string } | undefined,
): SharedPicture | undefined {
  const picture = photo && pictures.get(photo.file);
  const found = picture && widest(picture);
  if (!photo || !picture || !found) return undefined;
  const { path, width, type } = found;
  const height = Math.round((width * picture.height) / picture.width);
  return { address: wholeAddress(address, path), alt: photo.alt, width, height, type };
}

function widest({ sources }: Picture) {
  const source = sources.find(({ type }) => COMMON.includes(type));
  const file = source?.files.filter(({ width }) => width <= WIDE).at(-1) ?? source?.files[0];
  return source && file && { ...file, type: source.type };
}
