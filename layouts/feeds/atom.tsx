/** Entries for those who follow the build, as Atom (RFC 4287). */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Followed, FollowedEntry } from "../../src/pages/story/followed.ts";
import { element, words } from "./element.ts";

export const ATOM = "feed.xml";

export function atom(followed: Followed): string {
  const { address, title, about, authors, language, updated, entries } = followed;
  const feed = element(
    "feed",
    { xmlns: "http://www.w3.org/2005/Atom", "xml:lang": language },
    words("id", address),
    words("title", title),
    words("subtitle", about),
    words("updated", updated),
    element("link", { rel: "self", type: "application/atom+xml", href: address + ATOM }),
    element("link", { rel: "alternate", type: "text/html", href: address }),
    ...authors.map((name) => element("author", {}, words("name", name))),
    ...(authors.length === 0 ? [element("author", {}, words("name", title))] : []),
    words("generator", "Scarfline"),
    ...entries.map(entryOf),
  );
  return `<?xml version="1.0" encoding="utf-8"?>\n${renderToString(feed)}\n`;
}

function entryOf({ address, title, published, updated, summary, picture }: FollowedEntry): JSX.Element {
  return element(
    "entry",
    {},
    words("id", address),
    words("title", title),
    words("published", published),
    words("updated", updated),
    element("link", { rel: "alternate", type: "text/html", href: address }),
    ...(picture === undefined
      ? []
      : [element("link", { rel: "enclosure", type: picture.type, href: picture.address, title: picture.alt })]),
    // Atom asks for a summary where an entry has no content of its own.
    words("summary", summary === "" ? title : summary),
  );
}
