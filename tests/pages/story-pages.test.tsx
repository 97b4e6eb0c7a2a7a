import { describe, expect, it } from "vitest";
import type { Edition } from "../../src/editions/shown.ts";
import { storyPages } from "../../layouts/shell/story-pages.tsx";
import { made, storySite } from "./story-site.ts";

const pages = storyPages(storySite());
const page = (path: string): string => made(pages, path);
const framed = pages.filter(({ path }) => path !== "404.html");
const main = (html: string): string => html.slice(html.indexOf("<main"), html.indexOf("</main>"));

describe("Every story page", () => {
  it("is a whole document with one heading of the first rank, a skip link and a footer that says what a record is not", () => {
    for (const { path, make } of framed) {
      const html = make();
      expect(html.startsWith('<!doctype html>\n<html lang="en">'), path).toBe(true);
      expect(html.match(/<h1[ >]/g), path).toHaveLength(1);
      expect(html, path).toContain('href="#main"');
      expect(html, path).toContain("does not certify airworthiness");
    }
  });

  it("links and loads relative to where it stands", () => {
    for (const { path, make } of framed) {
      const html = make();
      const up = path.includes("/") ? "../" : "";
      expect(html, path).toContain(`href="${up}assets/style.css"`);
      expect(html.match(/(?:href|src)="\/[^"]*"/g), path).toBeNull();
    }
  });

  it("escapes what the builder typed", () => {
    for (const { path, make } of pages) expect(make(), path).not.toMatch(/Sandmartin <&>|Rib to <spar>|Glue & clamps/);
    expect(page("entry/2025-03-10-glue.html")).toContain("<h1>Glue &amp; clamps</h1>");
  });

  it("names each id only once", () => {
    for (const { path, make } of pages) {
      const ids = [...make().matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(
        ids.filter((id, at) => ids.indexOf(id) !== at),
        path,
      ).toEqual([]);
    }
  });

  it("is not to be found by search engines unless it is public", () => {
    const site = storySite();
    const inspector = storyPages({ ...site, shown: { ...site.shown, edition: "inspector" } });
    expect(page("index.html")).not.toContain('name="robots"');
    expect(made(inspector, "index.html")).toContain('name="robots" content="noindex, nofollow"');
  });
});

describe("The page for an address that leads nowhere", () => {
  it("needs nothing beside itself, since a host shows it at any address", () => {
    const html = page("404.html");
    expect(html.match(/(?:href|src|srcset)="(?!data:)|url\(|@import/g)).toBeNull();
    expect(html).toContain("There is no such page");
    expect(html).toContain('name="robots" content="noindex, nofollow"');
  });

  it("has the menu of every page by whole addresses where the address of the site is known, and there alone", () => {
    const site = storySite();
    const { record } = site.shown;
    const known = { ...record, aircraft: { ...record.aircraft, address: "https://heron.example/club/" } };
    const of = (edition: Edition): string =>
      made(storyPages({ ...site, shown: { ...site.shown, edition, record: known } }), "404.html");
    const menu = [...(/<nav.*?<\/nav>/s.exec(page("index.html"))?.[0] ?? "").matchAll(/href="([^"]*)"/g)].map(
      ([, href]) => href ?? "",
    );
    const ways = [...of("public").matchAll(/<a href="([^"]*)"/g)].map(([, href]) => href ?? "");
    expect(ways).toEqual(menu.map((href) => `https://heron.example/club/${href === "index.html" ? "" : href}`));
    expect(of("inspector")).not.toContain("<a ");
  });
});

describe("The home page", () => {
  it("says how much was worked, what is newest and what the next hold point needs", () => {
    const html = main(page("index.html"));
    expect(html).toContain("<b>4 h</b>");
    expect(html.indexOf("The inspector looked")).toBeLessThan(html.indexOf("At the press"));
    expect(html).toContain('href="hold-point/W-H1.html"');
    expect(html).toContain("blocked");
  });
});

describe("An assembly's page", () => {
  const html = main(page("assembly/wing.html"));

  it("marks every joint on the drawing with its short id and its state in words, and leads to it", () => {
    expect(html).toMatch(
      /<a class="mark" href="\.\.\/joint\/W-1\.html"[^>]*>.*?<span>1<\/span><span class="unseen">: Rib to &lt;spar>, shown/s,
    );
    expect(html).toContain('href="../joint/W-2.html"');
  });

  it("reaches batch, lots and test pieces of a joint from the list of joints", () => {
    const row = html.slice(html.indexOf('<table class="joints'));
    expect(row).toContain('href="../batch/B-1.html"');
    expect(row).toContain('href="../lot/R-1.html"');
    expect(row).toContain("1 pass");
  });

  it("counts hours of the assemblies within", () => {
    expect(html).toContain("4 h of 100 h");
  });

  it("draws one line of time and lists every entry on it", () => {
    expect(html).toContain("Wing on one line of time");
    for (const title of ["Glue &amp; clamps", "At the press", "The inspector looked"]) expect(html).toContain(title);
  });
});

describe("An entry's page", () => {
  it("opens with the photograph that the prose does not place, and leaves the other to the prose", () => {
    const html = main(page("entry/2025-03-10-glue.html"));
    expect(html).toContain("clamps-400.webp 400w");
    expect(html).not.toContain("bench-400");
    expect(html).toContain('width="1600" height="1000"');
  });

  it("gives the day's facts and the way to the days around it", () => {
    const html = main(page("entry/2025-03-20-tests.html"));
    expect(html).toContain("Ada, testing");
    expect(html).toContain('href="../batch/B-1.html#piece-B-1-1"');
    expect(html).toContain("Broke in the wood, 100 % wood failure, at 1260 N, seen by the inspector.");
    expect(html).toContain('href="../entry/2025-03-10-glue.html"');
    expect(html).toContain('href="../entry/2025-04-02-looked.html"');
  });

  it("has plain words where the edition does not show what a link would lead to", () => {
    const hidden = storyPages(storySite(({ kind }) => kind === "batch" || kind === "lot"));
    const html = main(made(hidden, "entry/2025-03-10-glue.html"));
    expect(html).toContain("<span>Batch B-1</span>");
    expect(html).not.toContain('batch/B-1.html"');
  });
});

describe("The hours page", () => {
  it("sums each cut to the same minutes", () => {
    const html = main(page("hours.html"));
    expect(html.match(/<tfoot><tr><th scope="row">All<\/th><td class="number">4 h<\/td>/g)).toHaveLength(2);
  });

  it("keeps JSON in scripts from closing them", () => {
    const site = storySite();
    const people = new Map([...site.shown.record.aircraft.people]);
    const html = made(
      storyPages({
        ...site,
        shown: {
          ...site.shown,
          nameOf: () => "</script><b>",
          record: { ...site.shown.record, aircraft: { ...site.shown.record.aircraft, people } },
        },
      }),
      "hours.html",
    );
    expect(html).not.toContain("</script><b>");
    expect(html).toContain("\\u003c/script>\\u003cb>");
  });
});

describe("The about page", () => {
  it("names the source of every rule and how it was known", () => {
    const html = main(page("about.html"));
    expect(html).toContain("FAA AC 43.13-1B, para 1-29h");
    expect(html).toContain("read in a copy of the document");
    expect(html).toContain("common practice, no published source");
    expect(html).toContain("from memory, not checked against the document");
  });

  it("says in kind what the edition leaves out", () => {
    expect(main(page("about.html"))).toContain("<li>full names</li>");
  });
});
