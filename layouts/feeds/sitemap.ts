/** Every page of the public edition, for search engines (sitemaps.org, protocol 0.9). */
import { renderToString } from "preact-render-to-string";
import type { PageFile, Shown } from "../../src/editions/shown.ts";
import { addressOf } from "../../src/pages/address.ts";
import { lastDayOf, wholeAddress } from "../../src/pages/story/followed.ts";
import { element, words } from "./element.ts";

/** More addresses a file may not hold. */
const MOST = 50_000;
const NOT_FOUND = "404.html";

export function sitemaps(shown: Shown, address: string, pages: readonly PageFile[], most = MOST): PageFile[] {
  const paths = pages.map(({ path }) => path).filter((path) => path.endsWith(".html") && path !== NOT_FOUND);
  const parts = Array.from({ length: Math.max(1, Math.ceil(paths.length / most)) }, (_, at) =>
    paths.slice(at * most, (at + 1) * most),
  );
  const map = (part: readonly string[]): string => {
    const days = daysOf(shown);
    return written(
      "urlset",
      "url",
      part.map((path) => [wholeAddress(address, path), days.get(path)]),
    );
  };
  const [only = []] = parts;
  if (parts.length === 1) return [{ path: "sitemap.xml", make: () => map(only) }];
  const named = parts.map((part, at) => ({ path: `sitemap-${at + 1}.xml`, make: () => map(part) }));
  const index = named.map(({ path }) => [wholeAddress(address, path), undefined] as const);
  return [{ path: "sitemap.xml", make: () => written("sitemapindex", "sitemap", index) }, ...named];
}

/** By the page of each entry the day on which it was written, or last amended. */
const daysOf = (shown: Shown): ReadonlyMap<string, string> =>
  new Map(
    shown.record.entries.map((entry) => [addressOf({ kind: "entry", id: entry.id }) ?? "", lastDayOf(shown, entry)]),
  );

function written(
  whole: string,
  one: string,
  all: readonly (readonly [address: string, day: string | undefined])[],
): string {
  const items = all.map(([address, day]) =>
    element(one, {}, words("loc", address), ...(day === undefined ? [] : [words("lastmod", day)])),
  );
  const map = element(whole, { xmlns: "http://www.sitemaps.org/schemas/sitemap/0.9" }, ...items);
  return `<?xml version="1.0" encoding="utf-8"?>\n${renderToString(map)}\n`;
}
