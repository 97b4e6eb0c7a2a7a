import { describe, expect, test } from "vitest";
import { evidencePages } from "../../layouts/shell/evidence-pages.tsx";
import { storyPages } from "../../layouts/shell/story-pages.tsx";
import type { Site } from "../../src/editions/shown.ts";
import type { Departure, Moment, Record, Rework } from "../../src/facts/types.ts";
import { celsius, moment } from "../evidence/quantities.ts";
import { exampleRecord, exampleSite } from "./example.ts";

const TESTED = "2025-03-20-tests";
const REGLUED = "2025-03-25-glue";
const JOINT = "joint/F-J2.html";

function recordWith(accepted: Partial<Departure>, replaced?: Rework["replaced"]): Record {
  const made = exampleRecord();
  return {
    ...made,
    entries: made.entries.map((one) => ({
      ...one,
      departures: one.departures.map((departure) => ({ ...departure, ...accepted })),
      reworks: one.reworks.map((rework) => (replaced === undefined ? rework : { ...rework, replaced })),
    })),
  };
}

function words(site: Site, path: string): string {
  const html = [...storyPages(site), ...evidencePages(site)].find((one) => one.path === path)?.make() ?? "";
  return html
    .replace(/<(?:style|svg)[\s\S]*?<\/(?:style|svg)>/g, "")
    .replace(/<[^>]+>/g, "")
    .replace(/\s+/g, " ");
}

describe("A departure", () => {
  const by = { acceptedBy: "ins", acceptedIn: TESTED, reference: "letter 4", condition: "Two more screws" };
  const site = exampleSite("inspector", recordWith(by));

  test.each(["departures.html", `entry/${TESTED}.html`, "assembly/fin.html", "appendix.html"])(
    "says on %s on what paper and on what condition it was accepted",
    (path) => expect(words(site, path)).toContain(", paper: letter 4, the condition: Two more screws"),
  );

  test("says of neither where none is noted", () => {
    const said = words(exampleSite("inspector", recordWith({})), "departures.html");
    expect(said).not.toMatch(/paper:|condition:/);
  });
});

describe("A rework", () => {
  const replaced = [{ lot: "S-1", with: "P-1" }];

  test.each([JOINT, `entry/${REGLUED}.html`])("says on %s which lot was replaced by which", (path) => {
    const site = exampleSite("archive", recordWith({}, replaced));
    expect(words(site, path)).toContain("B-002 failed in the glue line. Timber of lot S-1 replaced by lot P-1.");
  });

  test("says of a lot that its edition does not show only that there is one", () => {
    const said = words(exampleSite("public", recordWith({}, replaced)), JOINT);
    expect(said).toContain("Timber of a lot that this edition does not show replaced by lot P-1.");
  });
});

test("A day's page says what the thermometer showed, and how warm the wood was beside its moisture", () => {
  const made = exampleRecord();
  const stamp = (time: string): Moment => ({ ...moment("2025-03-25", time), typed: `2025-03-25 ${time}` });
  const read = { from: stamp("08:00"), to: stamp("20:00") };
  const entries = made.entries.map((one) => ({
    ...one,
    thermometer: [{ ...read, place: one.place, entry: one.id, least: celsius("16.5"), greatest: celsius("22.0") }],
    batches: one.batches.map((batch) => ({ ...batch, wood: celsius("17.5") })),
  }));
  const said = words(exampleSite("inspector", { ...made, entries }), `entry/${REGLUED}.html`);
  expect(said).toMatch(
    /Thermometer of least and greatest16\.5 °C to 22\.0 °C from 25 March 2025, 08:00 to 25 March 2025, 20:00/,
  );
  expect(said).toMatch(/Wood17\.5 °C, [\d.]+ % moisture/);
});
