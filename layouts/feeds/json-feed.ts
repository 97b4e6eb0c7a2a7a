/** Entries for those who follow the build, as JSON Feed 1.1 (jsonfeed.org/version/1.1). */
import type { Followed, FollowedEntry } from "../../src/pages/story/followed.ts";

export const JSON_FEED = "feed.json";

export function jsonFeed({ address, title, about, authors, language, entries }: Followed): string {
  const feed = {
    version: "https://jsonfeed.org/version/1.1",
    title,
    home_page_url: address,
    feed_url: address + JSON_FEED,
    description: about,
    language,
    ...(authors.length === 0 ? {} : { authors: authors.map((name) => ({ name })) }),
    items: entries.map(itemOf),
  };
  return `${JSON.stringify(feed, undefined, 1)}\n`;
}

function itemOf({ address, title, published, updated, summary, picture }: FollowedEntry) {
  return {
    id: address,
    url: address,
    title,
    content_text: summary === "" ? title : summary,
    date_published: published,
    date_modified: updated,
    ...(picture === undefined ? {} : { image: picture.address }),
  };
}
