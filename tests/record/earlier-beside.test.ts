import { describe, expect, it } from "vitest";
import { readRecord } from "../../src/record/read.ts";
import { TODAY, withSmall } from "../problems/cases.ts";
import { change } from "./change.ts";

/** Day, person, task, minutes and assembly of each line of a table, by what stands beside it. */
async function linesOf(table: readonly string[], beside: readonly string[]): Promise<string[]> {
  return withSmall(async (folder) => {
    const lines = ["@ new hours/sheet.csv", ...table.map((line) => `+ ${line}`)];
    change(folder, [...lines, "@ new hours/sheet.md", "+ ---", ...beside.map((line) => `+ ${line}`), "+ ---"]);
    const read = await readRecord(folder, { today: TODAY });
    if ("problems" in read) return read.problems.map(({ line, message }) => `${line}: ${message}`);
    return (read.record.earlier[0]?.lines ?? []).map(({ span, who, task, minutes, assembly }) =>
      [span.typed, who, task, minutes, assembly].join(" ").trim(),
    );
  });
}

const PLAIN = "span,who,task,time,source";

describe("Beside a table stands", () => {
  it("what each line shares, where it has no column for it", async () => {
    const beside = ["source: Wall", "every_line: { who: [builder, helper], task: gluing, assembly: spar }"];
    expect(await linesOf(["span,time", "2025-02-01,1:30"], beside)).toEqual([
      "2025-02-01 builder gluing 90 spar",
      "2025-02-01 helper gluing 90 spar",
    ]);
  });

  it("that several people worked a time together: the parts add up to it", async () => {
    const line = "2025-02-01,builder & helper,gluing,0:45,Wall";
    expect(await linesOf([PLAIN, line], ["several: divided", "rounding: nearest minute"])).toEqual([
      "2025-02-01 builder gluing 23",
      "2025-02-01 helper gluing 22",
    ]);
    expect(await linesOf([PLAIN, line], ["several: each"])).toEqual([
      "2025-02-01 builder gluing 45",
      "2025-02-01 helper gluing 45",
    ]);
  });

  it("what a number alone is, and that decimals stand for the nearest minute", async () => {
    expect(await linesOf([PLAIN, "2025-02-01,builder,gluing,90,Wall"], ["numbers: minutes"])).toEqual([
      "2025-02-01 builder gluing 90",
    ]);
    const third = [PLAIN, "2025-02-01,builder,gluing,0.33,Wall", "2025-02-02,builder,gluing,1.675,Wall"];
    expect(await linesOf(third, ["rounding: nearest minute"])).toEqual([
      "2025-02-01 builder gluing 20",
      "2025-02-02 builder gluing 101",
    ]);
    expect(await linesOf(third, ["title: Sheet"])).toEqual([
      "2: this is 19.8 minutes, and hours are kept in whole minutes",
      "3: this is 100.5 minutes, and hours are kept in whole minutes",
    ]);
  });

  it("forms of days and months; what two of them say differently is neither", async () => {
    const line = (span: string) => `${span},builder,gluing,1:00,Wall`;
    const days = [PLAIN, line("1.2.2025"), line("02/25"), line("13-02-25")];
    expect(await linesOf(days, ["days: [D.M.YYYY, MM/YY, DD-MM-YY]"])).toEqual([
      "2025-02-01 builder gluing 60",
      "2025-02 builder gluing 60",
      "2025-02-13 builder gluing 60",
    ]);
    expect(await linesOf([PLAIN, line("03-02-25")], ["days: [DD-MM-YY, MM-DD-YY]"])).toEqual([
      "2: this is 2025-02-03 or 2025-03-02, by one form or another",
    ]);
    expect(await linesOf([PLAIN, line("02-02-25")], ["days: [DD-MM-YY, MM-DD-YY]"])).toEqual([
      "2025-02-02 builder gluing 60",
    ]);
  });

  it("that merged cells say what stands above, over lines that are set aside too, but no time ever does", async () => {
    const table = [
      PLAIN,
      "2025-02-01,builder,gluing,1:00,Wall",
      ",helper,,2:00,Wall",
      "Sum,,,3:00,",
      ",builder,,,Wall",
    ];
    const aside = 'set_aside: [{ line: 4, typed: "Sum,,,3", why: A sum }]';
    expect(await linesOf(table, ["below: [span, task]", aside])).toEqual([
      "5: this is not a day, a month or a year",
      "5: this row has nothing under time",
    ]);
    expect(await linesOf(table.slice(0, 3), ["below: [span, task]"])).toEqual([
      "2025-02-01 builder gluing 60",
      "2025-02-01 helper gluing 120",
    ]);
  });
});
