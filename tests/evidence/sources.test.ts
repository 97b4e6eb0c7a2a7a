/** What is published beside a limit: where it comes from, and whether that was seen, remembered, or is nobody's. */
import { describe, expect, it } from "vitest";
import { toldRules, toldSource } from "../../src/words/findings/told.ts";
import * as sources from "../../src/evidence/sources.ts";
import { LOSS_SOURCE } from "../../src/evidence/lots/stock.ts";
import type { Source } from "../../src/evidence/types/source.ts";
import { english } from "./reckoned.ts";

const all = Object.entries(sources).flatMap(([name, one]) => (typeof one === "function" ? [] : [[name, one] as const]));
const names = (known: Source["known"]): string[] =>
  all
    .filter(([, one]) => one.known === known)
    .map(([name]) => name)
    .sort();

describe("A source", () => {
  it("is marked as seen only where its text was read in a copy of the document", () => {
    expect(names("seen")).toEqual([
      "AC_43_13_GLUING",
      "AC_43_13_SAMPLE",
      "AC_43_13_TIMBER",
      "BY_COUNTRY",
      "HANDBOOK_MOISTURE",
    ]);
  });

  it("is marked as second-hand where others quote it, and its words say who", () => {
    expect(names("second-hand")).toEqual(["AC_20_27_TASKS", "EQUIVALENT_AGE", "FAA_SCALES"]);
    for (const [, one] of all.filter(([, { known }]) => known === "second-hand"))
      expect(english()(one)).toMatch(/as [\w ]+ have it/u);
  });

  it("is marked as from memory, as common practice or as the record's own otherwise", () => {
    expect(names("memory")).toEqual(["AC_20_27_TOTAL", "BARE_FACES", "GUARDED_ACCEPTANCE"]);
    expect(names("common practice")).toEqual([
      "DOUBLING",
      "MOMENTS",
      "PAINT_RULE",
      "STATICS",
      "TRACE",
      "USUAL_CURE_SOURCE",
      "USUAL_OVERLAP_SOURCE",
      "USUAL_ROOM",
      "USUAL_SCARF_SOURCE",
    ]);
    expect(names("record")).toEqual(["FROM_FINISH_SHEET", "FROM_PROCEDURE", "FROM_RECORD", "FROM_SHEET"]);
    expect(toldSource(english(), LOSS_SOURCE)).toEqual({
      text: "this program's default: a quarter more than is spread stays in the cup and is squeezed out",
      known: "common practice",
    });
  });

  it("is named as the golden has it", async () => {
    await expect(all.map(([name, source]) => `${name}: ${english()(source)}\n`).join("")).toMatchFileSnapshot(
      "goldens/sources.txt",
    );
  });
});

describe("The rules of the about page", () => {
  it("are told as the golden has them, each with what is asked, what follows and its source", async () => {
    const told = toldRules(english()).map(
      ({ id, title, says, source }) => `${id}: ${title}\n    ${says}\n    from: ${source.text} (${source.known})\n`,
    );
    await expect(told.join("")).toMatchFileSnapshot("goldens/rules.txt");
  });
});
