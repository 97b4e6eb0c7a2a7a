/** Entries for those who follow the build, as Atom (RFC 4287). */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Followed, FollowedEntry } from "../../src/pages/story/followed.ts";
import { element } from "./element.ts";

export const ATOM = "feed.xml";

export function atom(followed: Followed): string {
  const { address, title, about, authors, language, updated, entries } = followed;
  const feed = element(
    "feed",
    { xmlns: "http://www.w3.org/2005/Atom", "xml:lang": language },
    element("id", {}, address),
    element("title", {}, title),
    element("subtitle", {}, about),
    element("updated", {}, updated),
    element("link", { rel: "self", type: "application/atom+xml", href: address + ATOM }),
    element("link", { rel: "alternate", type: "text/html", href: address }),
    ...authors.map((name) => element("author", {}, element("name", {}, name))),
    ...(authors.length === 0 ? [element("author", {}, element("name", {}, title))] : []),
    element("generator", {}, "Scarfline"),
    ...entries.map(entryOf),
  );
  return `<?xml version="1.0" encoding="utf-8"?>\n${renderToString(feed)}\n`;
}

function entryOf({ address, title, published, updated, summary, picture }: FollowedEntry): JSX.Element {
  return element(
    "entry",
    {},
    element("id", {}, address),
    element("title", {}, title),
    element("published", {}, published),
    element("updated", {}, updated),
    element("link", { rel: "alternate", type: "text/html", href: address }),
    ...(picture === undefined
      ? []
      : [element("link", { rel: "enclosure", type: picture.type, href: picture.address, title: picture.alt })]),
    // Atom asks for a summary where an entry has no content of its own.
    element("summary", {}, summary === "" ? title : summary),
  );
}
