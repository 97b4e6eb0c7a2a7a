/** Hours that stand in a table and in an entry too: both count, and the builder is told. */
import { describe, expect, it } from "vitest";
import { saidOf, withSmall } from "../problems/cases.ts";
import { change } from "./change.ts";

const saidWith = (...rows: string[]): Promise<string> =>
  withSmall((folder) => {
    change(folder, [
      "@ new hours/notebook.csv",
      "+ who;span;task;time;assembly;source",
      ...rows.map((row) => (row.startsWith("@") ? row : `+ ${row}`)),
    ]);
    return saidOf(folder);
  });

const CAPS = "entries/2025-03-08-caps.md";

describe("Hours of a person in a table", () => {
  it.each([
    ["of another day", "builder;2025-03-09;gluing;2:45;spar;Notebook"],
    ["of a month without an entry of theirs", "builder;2025-02;gluing;2:45;spar;Notebook"],
    ["of somebody whom no entry of that day has", "helper;2025-03-15;testing;0:45;spar;Notebook"],
  ])("%s are told of no entry", async (_, row) => {
    expect(await saidWith(row)).toBe("");
  });

  it("of a day of which an entry has some are counted, and told at their place, whatever the task", async () => {
    expect(await saidWith("builder;2025-03-08;shaping;1:00;spar;Notebook")).toBe(
      `hours/notebook.csv:2:9  note: builder has hours of 2025-03-08 in this line, and in ${CAPS}: all are counted, so take one away where it is the same work`,
    );
  });

  it("of a month are told with the number of entries, and a table's other lines with theirs", async () => {
    const said = await saidWith(
      "builder;2025-03;gluing;2:45;spar;Notebook",
      "helper;2025-02-01;gluing;1:00;spar;Notebook",
      "helper + builder;2025-03-08;gluing;1:30;wing;Notebook",
      "helper;2025;gluing;3:00;wing;Notebook",
    );
    expect(said).toBe(
      `hours/notebook.csv:2:9  note: builder has hours of 2025-03 in this line, and in ${CAPS} and 1 more: all are counted, so take one away where it is the same work (so it is with 2 more lines of this table)`,
    );
  });

  it("are told of one person, with the entries of that person alone", async () => {
    expect(await saidWith("helper + builder;2025-03;gluing;1:30;wing;Notebook")).toBe(
      `hours/notebook.csv:2:18  note: helper has hours of 2025-03 in this line, and in ${CAPS}: all are counted, so take one away where it is the same work`,
    );
  });

  it("are told by the day that an amendment gives to the work of an entry", async () => {
    const amended = (day: string): Promise<string> =>
      saidWith(
        `builder;${day};testing;0:45;spar;Notebook`,
        "@ new entries/2025-03-23-day.md",
        "---",
        "date: 2025-03-23",
        "title: Another day",
        "assembly: spar",
        "amends:",
        "  - { entry: 2025-03-15-pieces, why: read in the diary, date: 2025-03-16 }",
        "---",
      );
    expect(await amended("2025-03-15")).toBe("");
    expect(await amended("2025-03-16")).toContain("and in entries/2025-03-15-pieces.md: all are counted");
  });
});
