import { parse } from "node-html-parser";
import { expect, it } from "vitest";
import { evidencePages } from "../../layouts/shell/evidence-pages.tsx";
import { assembly, entry, measurement, record } from "../evidence/make.ts";
import { mm } from "../evidence/quantities.ts";
import { exampleSite } from "./example.ts";

it("Whatever counts of a side of a pair stands with that side, be it one measure or more", () => {
  const side = (day: string, of: "left" | "right", what: string, found: string) => {
    const id = `${day}-measured`;
    const change = { entry: id, what, pair: "root", side: of, found: mm(found), pairTolerance: mm("0.5") };
    return entry(id, { measurements: [measurement(change)] });
  };
  const entries = [
    side("2025-04-01", "left", "Left root", "162.0"),
    side("2025-04-02", "right", "Right root", "162.1"),
    side("2025-04-03", "left", "Left root, shimmed", "163.0"),
  ];
  const site = exampleSite("inspector", record({ assemblies: [assembly("wing")], entries }));
  const page = evidencePages(site).find(({ path }) => path === "measurements.html");
  const row = parse(page?.make() ?? "")
    .querySelectorAll("tr")
    .find((one) => one.querySelector("th[scope=row]")?.text === "root");
  const cells = row?.querySelectorAll("td").map((one) => one.structuredText.replace(/\s+/g, " ")) ?? [];
  expect(cells.slice(1, 5)).toEqual([
    expect.stringMatching(/^left 162\.0 mm, .*; left 163\.0 mm, /),
    expect.stringMatching(/^right 162\.1 mm, [^;]*$/),
    "+0.90 mm",
    "0.5 mm",
  ]);
});
