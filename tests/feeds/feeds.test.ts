/** What the public edition gives to those who follow the build or share a page of it. */
import { Ajv } from "ajv";
import { parseAtomFeed } from "feedsmith";
import schema from "jsonfeed-schema/v1.1.js";
import { parse } from "node-html-parser";
import { SaxesParser } from "saxes";
import { describe, expect, it } from "vitest";
import { feedsOf } from "../../layouts/feeds/feeds.ts";
import { sitemaps } from "../../layouts/feeds/sitemap.ts";
import { pagesOf } from "../../layouts/shell/site.tsx";
import type { Edition, Site } from "../../src/editions/shown.ts";
import type { Aircraft, Entry } from "../../src/facts/types.ts";
import { made, storySite } from "../pages/story-site.ts";

const ADDRESS = "https://example.org/sand%20martin/";

function site(aircraft: Partial<Aircraft> = { address: ADDRESS }, edition: Edition = "public"): Site {
  const plain = storySite();
  const { record } = plain.shown;
  return {
    ...plain,
    shown: { ...plain.shown, edition, record: { ...record, aircraft: { ...record.aircraft, ...aircraft } } },
  };
}

const withEntries = (change: (entry: Entry) => Entry): Site => {
  const plain = site();
  const { record } = plain.shown;
  return { ...plain, shown: { ...plain.shown, record: { ...record, entries: record.entries.map(change) } } };
};

const file = (from: Site, path: string): string => made(pagesOf(from), path);
const ajv = new Ajv({ strict: false, validateFormats: false });

describe("The feeds", () => {
  it("are there in the public edition alone, and only where its address is known", () => {
    const paths = (one: Site): string[] => feedsOf(one, pagesOf(one)).map(({ path }) => path);
    expect(paths(site())).toEqual(["feed.xml", "feed.json", "sitemap.xml"]);
    expect(paths(site({}))).toEqual([]);
    for (const edition of ["inspector", "archive"] as const) {
      const narrower = site({ address: ADDRESS }, edition);
      expect(paths(narrower)).toEqual([]);
      for (const { make } of pagesOf(narrower).filter(({ path }) => path.startsWith("entry/")))
        expect(make()).not.toContain("example.org");
    }
  });

  it("in Atom hold what RFC 4287 asks of a feed and of an entry (4.1.1, 4.1.2), the newest first", () => {
    const feed = parseAtomFeed(file(site(), "feed.xml"));
    expect(feed).toMatchObject({ id: ADDRESS, title: { value: "Sandmartin <&>" } });
    expect(feed.authors?.length).toBeGreaterThan(0);
    expect(feed.updated).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$/);
    const entries = feed.entries ?? [];
    expect(entries.map(({ id }) => id)).toEqual([
      `${ADDRESS}entry/2025-04-02-looked.html`,
      `${ADDRESS}entry/2025-03-20-tests.html`,
      `${ADDRESS}entry/2025-03-10-glue.html`,
    ]);
    for (const one of entries)
      expect(one).toMatchObject({ updated: expect.any(String), summary: { value: expect.any(String) } });
    expect(entries[2]).toMatchObject({ title: { value: "Glue & clamps" } });
  });

  it("as JSON are valid by a schema of version 1.1 that others wrote", () => {
    const feed = JSON.parse(file(site(), "feed.json")) as { items: { id: string; content_text: string }[] };
    const isValid = ajv.compile(schema);
    expect([isValid(feed), isValid.errors]).toEqual([true, null]);
    expect(isValid({ ...feed, items: [{ title: "without an id" }] })).toBe(false);
    expect(feed.items.map(({ id }) => id)).toEqual(
      (parseAtomFeed(file(site(), "feed.xml")).entries ?? []).map(({ id }) => id),
    );
    expect(feed.items[2]?.content_text).toContain("We clamped it. See the bench:");
  });

  it("are well formed whatever stands in a title", () => {
    const title = "a & b ]]> <c> \u0008\u001b\ufffe \u{1f6e9}";
    const wicked = withEntries((entry) => ({ ...entry, title }));
    for (const path of ["feed.xml", "sitemap.xml"]) {
      const faults: string[] = [];
      const parser = new SaxesParser();
      parser.on("error", ({ message }) => faults.push(message));
      parser.write(file(wicked, path)).close();
      expect(faults).toEqual([]);
    }
    const [first] = parseAtomFeed(file(wicked, "feed.xml")).entries ?? [];
    expect(first?.title?.value).toBe("a & b ]]> <c> \ufffd\ufffd\ufffd \u{1f6e9}");
    expect(() => JSON.parse(file(wicked, "feed.json")) as unknown).not.toThrow();
  });

  it("keep the id of an entry when its title changes", () => {
    const ids = (from: Site) => (parseAtomFeed(file(from, "feed.xml")).entries ?? []).map(({ id }) => id);
    expect(ids(withEntries((entry) => ({ ...entry, title: `${entry.title}, again` })))).toEqual(ids(site()));
  });

  it("say the day of the last amendment, and nothing of prose that was struck", () => {
    const [first] = site().shown.record.entries;
    const amendment = {
      place: { file: "made.md", line: 1, column: 1 },
      entry: first?.id ?? "",
      by: "2025-04-02-looked",
      day: "2025-04-02",
      why: "wrong",
      prose: true,
      changes: [],
      seenBy: [],
    };
    const struck = withEntries((entry) =>
      entry.id === "2025-04-02-looked" ? { ...entry, amendments: [amendment as never] } : entry,
    );
    const told = parseAtomFeed(file(struck, "feed.xml")).entries?.find(({ id }) => id?.includes(first?.id ?? "-"));
    expect(told).toMatchObject({ updated: expect.stringMatching(/^2025-04-0[12]/), summary: { value: first?.title } });
  });
});

describe("The map of the site", () => {
  it("lists every page but the one for what is not found, by its whole address", () => {
    const map = parse(file(site(), "sitemap.xml"));
    const listed = map.querySelectorAll("loc").map(({ text }) => text);
    const pages = pagesOf(site()).flatMap(({ path }) => (path.endsWith(".html") && path !== "404.html" ? [path] : []));
    expect(listed).toEqual(pages.map((path) => ADDRESS + (path === "index.html" ? "" : path)));
    expect(map.querySelectorAll("lastmod")).toHaveLength(3);
  });

  it("comes in parts that an index names where there are more addresses than a file may hold", () => {
    const { shown } = site();
    const pages = ["a", "b", "c", "d", "e"].map((name) => ({ path: `${name}.html`, make: () => "" }));
    const files = sitemaps(shown, ADDRESS, pages, 2);
    expect(files.map(({ path }) => path)).toEqual(["sitemap.xml", "sitemap-1.xml", "sitemap-2.xml", "sitemap-3.xml"]);
    expect(
      parse(files[0]?.make() ?? "")
        .querySelectorAll("loc")
        .map(({ text }) => text),
    ).toEqual([1, 2, 3].map((n) => `${ADDRESS}sitemap-${n}.xml`));
    expect(files.slice(1).flatMap(({ make }) => parse(make()).querySelectorAll("loc"))).toHaveLength(5);
  });
});

describe("A page that is shared", () => {
  it("says its address, title and picture, and of an entry when it was written", () => {
    const page = parse(file(site(), "entry/2025-03-10-glue.html"));
    const meta = (property: string) => page.querySelector(`meta[property="${property}"]`)?.getAttribute("content");
    expect(page.querySelector('link[rel="canonical"]')?.getAttribute("href")).toBe(
      `${ADDRESS}entry/2025-03-10-glue.html`,
    );
    expect(meta("og:title")).toBe("Glue & clamps");
    expect(meta("og:image")).toBe(`${ADDRESS}photos/clamps-800.jpg`);
    expect([meta("og:image:width"), meta("og:image:height")]).toEqual(["800", "500"]);
    const data = JSON.parse(page.querySelector('script[type="application/ld+json"]')?.text ?? "{}") as object;
    expect(data).toMatchObject({ "@type": "BlogPosting", headline: "Glue & clamps", datePublished: "2025-03-10" });
  });

  it("ends no script by a title, whatever stands in it", () => {
    const wicked = withEntries((entry) => ({ ...entry, title: "</script><script>alert(1)</script>" }));
    const page = file(wicked, "entry/2025-03-10-glue.html");
    expect(page.match(/<script/g)?.length).toBe(
      (file(site(), "entry/2025-03-10-glue.html").match(/<script/g) ?? []).length,
    );
    const data = /<script type="application\/ld\+json">(.*?)<\/script>/.exec(page)?.[1] ?? "";
    expect(JSON.parse(data)).toMatchObject({ headline: "</script><script>alert(1)</script>" });
  });

  it("says none of it where no address is known", () => {
    for (const path of ["index.html", "entry/2025-03-10-glue.html"]) {
      const page = file(site({}), path);
      for (const word of ["og:", "canonical", "ld+json", "feed.xml"]) expect(page).not.toContain(word);
    }
  });
});
