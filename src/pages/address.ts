import type { Audience, Kind, Ref } from "../facts/types.ts";

const FOLDERS: Partial<{ readonly [kind in Kind]: string }> = {
  entry: "entry",
  assembly: "assembly",
  joint: "joint",
  batch: "batch",
  lot: "lot",
  trial: "trial",
  "hold point": "hold-point",
};

const LISTS: Partial<{ readonly [kind in Kind]: string }> = {
  departure: "departures.html",
  "open item": "open-items.html",
  adhesive: "about.html",
  finish: "about.html",
  procedure: "about.html",
  "climate log": "climate.html",
  "earlier hours": "hours.html",
};

/** A name for an anchor: ids hold letters, digits, `-`, `.` and `/`, and the last is no good in a fragment. */
export function anchor(kind: Kind, id: string): string {
  return `${kind.replace(" ", "-")}-${id.replaceAll("/", "-")}`;
}

/** A name for the first of those rows of a list that are of one kind: `joints`, `not shown` → `joints-not-shown`. */
export function groupAnchor(list: string, group: string): string {
  return `${list}-${group.replaceAll(" ", "-")}`;
}

/**
 * Path from the site's root of the page on a thing, with a fragment where it is a part of a page; undefined for
 * people.
 */
export function addressOf(ref: Ref): string | undefined {
  const folder = FOLDERS[ref.kind];
  if (folder !== undefined) return `${folder}/${ref.id}.html`;
  if (ref.kind === "piece") return `batch/${ref.id.slice(0, ref.id.lastIndexOf("/"))}.html#${anchor("piece", ref.id)}`;
  const list = LISTS[ref.kind];
  return list === undefined ? undefined : `${list}#${anchor(ref.kind, ref.id)}`;
}

/** Where the chronicle begins: an archive begins with what it is and how to check it. */
export const homeOf = (edition: Audience): string => (edition === "archive" ? "home.html" : "index.html");

/** A link from one page to another, relative, so that the site works from a disk and from any folder of a server. */
export function relative(from: string, to: string): string {
  const depth = from.split("/").length - 1;
  return "../".repeat(depth) + to;
}
