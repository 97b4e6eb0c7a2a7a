import { expect, it } from "vitest";
import { archivePages } from "../../layouts/archive/archive-pages.tsx";
import type { Site } from "../../src/editions/shown.ts";
import type { Coat, Fitting } from "../../src/facts/types.ts";
import { assembly, entry, lot, LOTS, record } from "../evidence/make.ts";
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

const place = { file: "made.md", line: 1, column: 1 };
const bolt = (day: string, of: string, change: Partial<Fitting> = {}): Fitting => ({
  ...{ place, entry: `${day}-fit`, day, assembly: "wing", where: "Hinge bolt", lot: of, count: 1 },
  ...change,
});
const coat: Coat = {
  ...{ place, entry: "2025-03-10-fit", day: "2025-03-10", assembly: "wing", where: "Inside of the box" },
  ...{ finish: "clear", lots: ["V-1"], coat: 1 },
};

it("A recalled part and a recalled finish are told with where they went, and a lot that went nowhere as that", () => {
  const letter = (of: string) => ({
    ...{ place, entry: "2025-04-01-letter", day: "2025-04-01", lot: of, why: "Soft", reference: `Letter on ${of}` },
  });
  const other = { adhesive: undefined } as const;
  const made = record({
    finishes: [{ id: "clear", place, title: "Clear", kind: "varnish", sheet: "Sheet C", body: [] }],
    lots: [
      ...LOTS,
      ...["BO-1", "BO-2"].map((id) => lot(id, { ...other, material: "part" })),
      lot("V-1", { ...other, material: "finish", finish: "clear" }),
    ],
    assemblies: [assembly("wing")],
    entries: [
      entry("2025-03-10-fit", { fitted: [bolt("2025-03-10", "BO-1")], coats: [coat] }),
      entry("2025-04-01-letter", { recalls: ["BO-1", "V-1", "R-2"].map(letter) }),
      entry("2025-04-02-fit", {
        fitted: [bolt("2025-04-02", "BO-2", { replaces: "BO-1", why: "Its lot was recalled" })],
      }),
    ],
  });
  const site = exampleSite("archive", made);
  const [, bolted = "", varnish = "", resin = ""] = pageOf(site, "events.html")
    .replace(/[\s\S]*id="recalls"/, "")
    .replace(/<section[^>]*id="all"[\s\S]*/, "")
    .split("<h3")
    .map((html) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " "));
  expect(bolted).toContain("Soft (Letter on BO-1)");
  expect(bolted).toContain("Hinge bolt");
  expect(bolted).toContain("2 April 2025; now BO-2");
  expect(varnish).toContain("Inside of the box");
  expect(resin).toContain("It went into no joint, was fitted nowhere and put on nowhere.");
  expect(bolted + varnish).not.toContain("It went into no joint");
  expect(pageOf(site, "history/assembly/wing.html")).toContain(
    "1 part of lot BO-2, in place of lot BO-1, Its lot was recalled",
  );
});
