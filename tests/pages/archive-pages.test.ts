import { expect, it } from "vitest";
import { archivePages } from "../../layouts/archive/archive-pages.tsx";
import type { Site } from "../../src/editions/shown.ts";
import { exampleSite } from "./example.ts";

const pageOf = (site: Site, path: string): string =>
  archivePages(site)
    .find((one) => one.path === path)
    ?.make() ?? "";

const SCAN = "Scan for hold point F-H1, not signed, form 1";

it("The scan of a sign-off stands among the papers, and the history of the part leads to it", () => {
  const files = new Map([["scans/visit.pdf", "files/visit.pdf"]]);
  const site: Site = { ...exampleSite("archive"), files };
  expect(pageOf(site, "papers.html")).toContain(`<a href="files/visit.pdf">${SCAN}</a>`);
  expect(pageOf(site, "history/assembly/fin.html")).toContain(
    'form 1, Rear post to be done again, <a href="../../files/visit.pdf">its scan</a>',
  );
});

it("A scan that is not with the pages is named and not led to", () => {
  const site = exampleSite("archive");
  expect(pageOf(site, "papers.html")).toContain(SCAN);
  expect(pageOf(site, "history/assembly/fin.html")).not.toContain("its scan");
});
