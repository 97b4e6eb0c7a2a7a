import { mkdir, readFile, writeFile } from "node:fs/promises";
import { type HTMLElement, parse } from "node-html-parser";
import { describe, expect, test } from "vitest";
import { evidencePages } from "../../layouts/shell/evidence-pages.tsx";
import type { Site } from "../../src/editions/shown.ts";
import { exampleSite } from "./example.ts";

const inspector = exampleSite("inspector");
const open = exampleSite("public");

function pageOf(site: Site, path: string): string {
  const page = evidencePages(site).find((one) => one.path === path);
  if (page === undefined) throw new Error(`no page at ${path}`);
  return page.make();
}

const main = (site: Site, path: string): HTMLElement => {
  const found = parse(pageOf(site, path)).querySelector("main");
  if (found === null) throw new Error(`${path} has no main`);
  return found;
};
const words = (site: Site, path: string): string => main(site, path).structuredText.replace(/\s+/g, " ");
const links = (site: Site, path: string): string[] =>
  main(site, path)
    .querySelectorAll("a")
    .map((a) => a.getAttribute("href") ?? "");

/** Text of a page, a line a block, held against the file of the same name. `GOLDENS=renew` writes it anew. */
async function expectGolden(site: Site, path: string): Promise<void> {
  const file = new URL(
    `goldens/${site.shown.edition}-${path.replaceAll("/", "-").replace(".html", ".txt")}`,
    import.meta.url,
  );
  const text = `${main(site, path).structuredText}\n`;
  if (process.env["GOLDENS"] === "renew") {
    await mkdir(new URL(".", file), { recursive: true });
    await writeFile(file, text);
  }
  expect(text).toBe(await readFile(file, "utf8"));
}

describe("pages of evidence", () => {
  test.each([
    "evidence.html",
    "joints.html",
    "batch/B-002.html",
    "joint/F-J2.html",
    "lot/R-2.html",
    "trial/sanding.html",
    "hold-points.html",
    "hold-point/F-H1.html",
    "departures.html",
    "measurements.html",
    "weight.html",
    "credit.html",
  ])("%s says the same as its golden", async (path) => {
    await expectGolden(inspector, path);
    await expectGolden(open, path);
  });

  test("a joint's page shows its verdict and reasons, its pieces with their verdicts, and links to its batches and lots", () => {
    const text = words(inspector, "joint/F-J2.html");
    expect(text).toContain("quarantined");
    expect(text).toContain("It holds lot R-2 by B-003, and that lot was recalled on 2 April 2025");
    expect(text).toContain("B-003/1 not broken");
    expect(links(inspector, "joint/F-J2.html")).toEqual(
      expect.arrayContaining([
        "../batch/B-003.html",
        "../lot/R-2.html",
        "../lot/H-1.html",
        "../batch/B-002.html",
        "../batch/B-003.html#piece-B-003-1",
      ]),
    );
  });

  test("a batch's page draws its ratio against the band, and says it in words", () => {
    const page = main(inspector, "batch/B-002.html");
    expect(page.querySelector(".gauge svg")?.getAttribute("aria-label")).toBe(
      "Ratio as mixed +13.0 % off 100 : 50; band ±5.0 %; the scale leaves ±0.3 % in doubt.",
    );
    expect(page.querySelector(".gauge__band")).not.toBeNull();
  });

  test("a batch without amounts has no gauge and says that its ratio cannot be reckoned", () => {
    const made = exampleSite("inspector");
    const file = [...made.shown.evidence.batches.values()][0];
    if (file === undefined) throw new Error("no batch");
    const { ratio: _, ...without } = file;
    const evidence = { ...made.shown.evidence, batches: new Map([[file.batch.id, without]]) };
    const site = { ...made, shown: { ...made.shown, evidence } };
    expect(main(site, `batch/${file.batch.id}.html`).querySelector(".gauge")).toBeNull();
    expect(words(site, `batch/${file.batch.id}.html`)).toContain("cannot be reckoned from what was noted");
  });

  test("the public page of a joint glued in a hidden entry keeps its state and says that its batch is not shown", () => {
    const text = words(open, "joint/F-J3.html");
    expect(text).toContain("not shown");
    expect(text).toContain("The batch it was glued with is not shown in this edition.");
    expect(text).toContain("Rests on something this edition does not show.");
    expect(pageOf(open, "joint/F-J3.html")).not.toContain("B-004");
  });

  test("the appendix holds every batch, joint, lot and rule, and names record, edition and date on each printed page", () => {
    const page = pageOf(inspector, "appendix.html");
    const text = words(inspector, "appendix.html");
    for (const id of [
      "B-001",
      "B-002",
      "B-003",
      "B-004",
      "F-J1",
      "F-J2",
      "F-J3",
      "R-1",
      "R-2",
      "H-1",
      "S-1",
      "D-1",
      "O-1",
    ])
      expect(text).toContain(id);
    expect(page).toContain('@top-left { content: "Bulrush"');
    expect(page).toContain('@top-center { content: "Inspector\\2019 s edition"');
    expect(page).toContain('@top-right { content: "Record of 2 April 2025"');
    expect(text).toContain("18 Rules and their sources");
    expect(text).toContain("read in the document");
    expect(text).toContain("from memory, not read again");
  });

  test.each(["climate.html", "stock.html", "charts.html"])(
    "the appendix says all that %s says, under headings of its own rank",
    (path) => {
      const lines = (from: string): string[] =>
        main(inspector, from)
          .structuredText.split("\n")
          .map((line) => line.trim())
          .filter((line) => line !== "");
      const appendix = new Set(lines("appendix.html"));
      const own = lines(path).slice(3);
      expect(own.length).toBeGreaterThan(0);
      expect(own.filter((line) => !appendix.has(line))).toEqual([]);
      const ranks = main(inspector, "appendix.html")
        .querySelectorAll("h2")
        .map((heading) => heading.text);
      expect(
        main(inspector, path)
          .querySelectorAll("h2")
          .map((heading) => heading.text)
          .filter((title) => ranks.includes(title)),
      ).toEqual([]);
    },
  );

  test("no id stands twice on a page, and every link within a page leads somewhere on it", () => {
    for (const site of [inspector, open]) {
      for (const { path, make } of evidencePages(site)) {
        const page = parse(make());
        const ids = page.querySelectorAll("[id]").map((one) => one.id);
        expect(ids.length, path).toBe(new Set(ids).size);
        for (const a of page.querySelectorAll('a[href^="#"]'))
          expect(ids, path).toContain(a.getAttribute("href")?.slice(1));
      }
    }
  });

  test("every link from page to page leads to a page of the edition", () => {
    const others = ["index.html", "entries.html", "assemblies.html", "hours.html", "about.html", "charts.html"];
    for (const site of [inspector, open]) {
      const known = new Set([...others, ...evidencePages(site).map(({ path }) => path)]);
      for (const { path } of evidencePages(site)) {
        for (const href of links(site, path)) {
          const to = new URL(href.split("#")[0] ?? "", `file:///${path}`).pathname.slice(1);
          expect(known.has(to) || /^(entry|assembly)\//.test(to) || to === path, `${path} → ${href}`).toBe(true);
        }
      }
    }
  });
});
