/** What the public edition has beside its pages where its address is known; else nothing. */
import type { PageFile, Site } from "../../src/editions/shown.ts";
import { addressOfSite, followed } from "../../src/pages/story/followed.ts";
import { ATOM, atom } from "./atom.tsx";
import { JSON_FEED, jsonFeed } from "./json-feed.ts";
import { sitemaps } from "./sitemap.ts";

export function feedsOf(site: Site, pages: readonly PageFile[]): PageFile[] {
  const address = addressOfSite(site.shown);
  if (address === undefined) return [];
  return [
    { path: ATOM, make: () => atom(followed(site, address)) },
    { path: JSON_FEED, make: () => jsonFeed(followed(site, address)) },
    ...sitemaps(site.shown, address, pages),
  ];
}
