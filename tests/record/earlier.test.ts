import { describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import { minutesByAssembly } from "../../src/evidence/hours.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Record } from "../../src/facts/types.ts";
import { byMonth } from "../../src/reckoning/hours/hours.ts";
import { forecastView } from "../../src/pages/forecast/forecast.ts";
import { hoursView } from "../../src/pages/forecast/hours.ts";
import { storyOf } from "../../src/pages/story/story.ts";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { readRecord } from "../../src/record/read.ts";
import { TODAY, withSmall } from "../problems/cases.ts";
import { change } from "./change.ts";

const TABLE = [
  "@ new hours/notebook.csv",
  "+ who;span;task;time;assembly;source",
  "+ builder + helper;2025-02;gluing;10:30;spar;Notebook, p. 3",
  "+ builder;2025;shaping;4 h;;Notebook, p. 9",
  "+ builder;2025-02-03;gluing;1:15;spar;",
  "+ ;;;;;",
  "@ new hours/notebook.md",
  "+ ---",
  "+ title: Old notebook",
  "+ source: Notebook",
  "+ ---",
  "+ Kept in pencil.",
];

async function recordWith(...changes: string[]): Promise<Record> {
  return withSmall(async (folder) => {
    change(folder, changes);
    const read = await readRecord(folder, { today: TODAY });
    if ("problems" in read) throw new Error(read.problems.map(({ message }) => message).join("\n"));
    return read.record;
  });
}

const shownTo = (record: Record, edition: "public" | "inspector" | "archive" = "archive") =>
  editionOf(record, reckon(record), edition);

describe("A table of earlier hours", () => {
  it("is a line for each person, with its span as typed and where it comes from", async () => {
    const { earlier } = await recordWith(...TABLE);
    const [table] = earlier;
    expect(table).toMatchObject({ id: "notebook", title: "Old notebook", audience: "public" });
    expect(
      table?.lines.map(({ who, span, minutes, assembly, source }) => [who, span.typed, minutes, assembly, source]),
    ).toEqual([
      ["builder", "2025-02", 630, "spar", "Notebook, p. 3"],
      ["helper", "2025-02", 630, "spar", "Notebook, p. 3"],
      ["builder", "2025", 240, undefined, "Notebook, p. 9"],
      ["builder", "2025-02-03", 75, "spar", "Notebook"],
    ]);
    expect(table?.lines[0]?.span).toEqual({ typed: "2025-02", from: "2025-02-01", to: "2025-02-28" });
    expect(table?.lines[2]?.place).toEqual({ file: "hours/notebook.csv", line: 3, column: 9 });
  });

  it("is counted in every sum, and each sum says how much of it has no day", async () => {
    const before = await recordWith();
    const record = await recordWith(...TABLE);
    const [without, view] = [before, record].map((one) => hoursView(shownTo(one)));
    const added = 2 * 630 + 240 + 75;
    expect(view?.total).toBe((without?.total ?? 0) + added);
    expect(view?.spanned).toBe(added - 75);
    expect(view?.people.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(view?.total);
    expect(view?.tasks.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(view?.total);
    expect(view?.months.at(-1)?.sum).toBe(view?.total);
    expect(minutesByAssembly(record).get("spar")).toBe((minutesByAssembly(before).get("spar") ?? 0) + 2 * 630 + 75);
    expect(view?.months.slice(0, 2).map(({ month, minutes }) => [month, minutes])).toEqual([
      ["2025", 240],
      ["2025-02", 2 * 630 + 75],
    ]);
  });

  it("is drawn as a span: the line rises evenly within it, it is shaded, and it stands in no week", async () => {
    const view = hoursView(shownTo(await recordWith(...TABLE.filter((line) => !line.includes("2025;")))));
    expect(view.cumulative.spans).toEqual([[20120, 20147]]);
    const at = (day: number): number =>
      view.cumulative.series[0]?.values[view.cumulative.days.indexOf(day)] ?? Number.NaN;
    expect(at(20128)).toBeCloseTo((1260 * (9 / 28) + 75) / 60, 2);
    const weeks = view.weekly.series.flatMap(({ values }) => values).reduce((sum, value) => sum + value, 0);
    expect(weeks * 60).toBeCloseTo(view.total - view.spanned, 0);
    expect(view.weekly.says).toContain("known by month or year alone are in no week");
    expect(view.cumulative.says).toContain("Of 21 h only the month or the year is known");
  });

  it("leaves the weeks up to its end out of the forecast", async () => {
    const shown = shownTo(await recordWith(...TABLE));
    expect(forecastView(shown).silent).toMatch(/The record spans 0 whole weeks|no assembly has planned/iu);
  });

  it("that is for the archive shows in no sum, page or ledger of another edition", async () => {
    const record = await recordWith(...TABLE.map((line) => line.replace("title: Old notebook", "for: archive")));
    const [wide, narrow] = [shownTo(record), shownTo(record, "inspector")];
    expect(hoursView(wide).total - hoursView(narrow).total).toBe(2 * 630 + 240 + 75);
    expect(storyOf(narrow).work.some(({ through }) => through !== undefined)).toBe(false);
    expect(narrow.shows({ kind: "earlier hours", id: "notebook" })).toBe(false);
    expect(ledgersOf(narrow).map(({ path }) => path)).not.toContain("data/earlier-hours.csv");
    expect(ledgersOf(wide).find(({ path }) => path === "data/earlier-hours.csv")?.text).toContain("2025-02-01");
  });

  it("bars an inspector who worked there from signing, wherever it was where no assembly is named", async () => {
    const standing = async (assembly: string): Promise<string | undefined> => {
      const record = await recordWith(
        "@ new hours/notebook.csv",
        "+ span,who,task,time,assembly,source",
        `+ 2025-02,looker,gluing,1:00,${assembly},Notebook`,
        "@ new entries/2025-04-05-signed.md",
        "+ ---",
        "+ date: 2025-04-05",
        "+ title: Signed",
        "+ assembly: spar",
        "+ departures:",
        "+   - { id: D-9, what: a packer, why: wider, accepted_by: looker, reference: letter 1 }",
        "+ ---",
      );
      return reckon(record).standings.get("D-9");
    };
    expect(await standing("wing")).toBe("accepted");
    expect(await standing("spar")).toBe("accepted by one who worked on it");
    expect(await standing("")).toBe("accepted by one who worked on it");
  });
});

describe("Minutes of a span", () => {
  it("stand under the month where that is known, else under the year", () => {
    const lines = [
      { day: "2024-02-01", through: "2024-02-29", minutes: 1 },
      { day: "2024-01-01", through: "2024-12-31", minutes: 2 },
      { day: "2024-02-05", minutes: 4 },
    ];
    expect([...byMonth(lines)]).toEqual([
      ["2024", 2],
      ["2024-02", 5],
    ]);
  });
});
