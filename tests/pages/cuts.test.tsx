import { parse } from "node-html-parser";
import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { evidencePages } from "../../layouts/shell/evidence-pages.tsx";
import { DaySheet } from "../../layouts/day/day-sheet.tsx";
import type { Edition, Site } from "../../src/editions/shown.ts";
import { WOOD_WORDS } from "../../src/pages/ledgers/stock.ts";
import type { Record } from "../../src/facts/types.ts";
import { exampleRecord, exampleSite } from "./example.ts";

const rowsOf = (site: Site, path: string, section: string): string[][] => {
  const page =
    evidencePages(site)
      .find((one) => one.path === path)
      ?.make() ?? "";
  return parse(page)
    .querySelectorAll(`section[aria-labelledby="${section}"] tbody tr`)
    .map((row) => row.querySelectorAll("th, td").map((cell) => cell.text));
};
const stock = (edition: Edition, made?: Record) =>
  rowsOf(exampleSite(edition, made), "stock.html", "timber").map(([id, , ...rest]) => [id, ...rest]);

/** The example with its lots or entries changed. */
const changed = (change: Partial<Record>): Record => ({ ...exampleRecord(), ...change });
const imperial = (): Record => {
  const record = exampleRecord();
  return { ...record, aircraft: { ...record.aircraft, units: "imperial" } };
};
const uncut = (): Record => changed({ entries: exampleRecord().entries.map((entry) => ({ ...entry, cuts: [] })) });

describe("Timber on hand", () => {
  test("is what came less what was cut, by the metre and the square metre", () => {
    expect(stock("inspector")).toEqual([
      ["S-1", "24 m", "1.20 m", "22.80 m", "until 10 January 2026"],
      ["P-1", "2 m²", "0.82 m²", "1.18 m²", "until 10 January 2026"],
    ]);
  });

  test("is reckoned over what an edition shows: neither hidden lots nor the cuts of hidden days", () => {
    expect(stock("public")).toEqual([["P-1", "2 m²", "0.45 m²", "1.55 m²", "until 10 January 2026"]]);
  });

  test("stands in feet where the aircraft is built in imperial units", () => {
    expect(stock("inspector", imperial()).map((row) => row.slice(1, 4))).toEqual([
      ["24 m (78.74 ft)", "3.94 ft", "74.80 ft"],
      ["2 m² (21.53 ft²)", "8.83 ft²", "12.70 ft²"],
    ]);
  });

  test("is not known where no cut was noted of what batches used, and is all of it where nothing was", () => {
    expect(stock("inspector", uncut()).map((row) => row.slice(1, 4))).toEqual([
      ["24 m", "in 4 batches; how much is not noted", "not known"],
      ["2 m²", "nothing noted", "2.00 m²"],
    ]);
  });

  test("is not known where batches used it before the first cut noted, and the page says which and why", () => {
    const late = changed({
      entries: exampleRecord().entries.map((entry) => ({
        ...entry,
        cuts:
          entry.id === "2025-03-28-glue"
            ? entry.cuts.concat(
                exampleRecord().entries[0]?.cuts.map((cut) => ({ ...cut, entry: entry.id, day: entry.day })) ?? [],
              )
            : [],
      })),
    });
    expect(stock("inspector", late)[0]?.slice(1, 4)).toEqual([
      "24 m",
      "1.20 m and, before a cut was noted, what went into B-001, B-002 and B-003",
      "not known",
    ]);
    expect(
      evidencePages(exampleSite("inspector", late))
        .find(({ path }) => path === "stock.html")
        ?.make(),
    ).toContain(WOOD_WORDS);
  });

  test("has a caution where more was cut than came", () => {
    const record = exampleRecord();
    const lots = new Map(
      [...record.lots].map(([id, lot]) => [
        id,
        id === "S-1" && lot.amount ? { ...lot, amount: { ...lot.amount, typed: "1 m", value: 1 } } : lot,
      ]),
    );
    const site = exampleSite("inspector", changed({ lots }));
    expect(stock("inspector", changed({ lots }))[0]?.slice(1, 4)).toEqual([
      "1 m",
      "1.20 m",
      "nothing, and more was used than came",
    ]);
    const page = (path: string) =>
      parse(
        evidencePages(site)
          .find((one) => one.path === path)
          ?.make() ?? "",
      );
    const found = "By the cuts noted 1.20 m of lot S-1 were used, and 1 m came: an amount or a lot is noted wrong.";
    expect(page("stock.html").querySelector('section[aria-labelledby="more-than-came"]')?.text).toContain(found);
    expect(page("lot/S-1.html").querySelector("main")?.text).toContain(found);
    expect(page("lot/P-1.html").querySelector("main")?.text).not.toContain("is noted wrong");
  });
});

test("The page on a lot says what was cut from it by day, and how much together", () => {
  expect(rowsOf(exampleSite("inspector"), "lot/P-1.html", "cuts")).toEqual([
    ["10 Mar 2025", "Lower rib", "4500 cm²", "0.45 m²"],
    ["28 Mar 2025", "Left skin", "3700 cm²", "0.82 m²"],
  ]);
  const page = (edition: Edition): string =>
    parse(
      evidencePages(exampleSite(edition))
        .find(({ path }) => path === "lot/P-1.html")
        ?.make() ?? "",
    ).querySelector('section[aria-labelledby="cuts"]')?.text ?? "";
  expect(page("archive")).toContain("0.82 m² in 2 cuts. 2 m² came.");
  expect(page("public")).toContain("0.45 m² in 1 cut that this edition shows. 2 m² came.");
  expect(page("public")).not.toContain("Left skin");
  expect(rowsOf(exampleSite("inspector"), "lot/R-1.html", "cuts")).toEqual([]);
});

test("The day’s sheet says what was cut from which lot, and nothing of a hidden one", () => {
  const sheet = (edition: Edition, of = 0): string[] => {
    const site = exampleSite(edition);
    const entry = site.shown.record.entries[of];
    if (entry === undefined) throw new Error("no entry");
    const parts = parse(renderToString(<DaySheet site={site} from="entries/x.html" entry={entry} />)).querySelectorAll(
      "section",
    );
    return (
      parts
        .find((part) => part.querySelector("h3")?.text === "Cut from stock")
        ?.querySelectorAll("li")
        .map(({ text }) => text) ?? []
    );
  };
  expect(sheet("inspector")).toEqual(["1.2 m of S-1 Spruce plank", "4500 cm² of P-1 Birch ply, 1.5 mm"]);
  expect(sheet("public")).toEqual(["4500 cm² of P-1 Birch ply, 1.5 mm"]);
  expect(sheet("inspector", 1)).toEqual([]);
});
