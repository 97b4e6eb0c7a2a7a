import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { forecastView, forecastWords } from "../../src/pages/forecast/forecast.ts";
import type { Edition } from "../../src/editions/shown.ts";
import { dayNumber, dayText } from "../../src/reckoning/time/calendar.ts";
import type { Assembly, Audience, Entry, Record } from "../../src/facts/types.ts";
import { assembly, entry, record } from "../evidence/make.ts";

const place = { file: "made.md", line: 1, column: 1 };
const START = dayNumber("2025-01-01") ?? 0;
const WING = assembly("wing", { planned: 6000 });

const worked = (day: string, minutes: number, on = "wing", audience: Audience = "public"): Entry =>
  entry(`${day}-work-${audience}-${on}`, {
    audience,
    assembly: on,
    hours: [{ place, who: "builder", task: "gluing", minutes, typed: "", assembly: on }],
  });

/** Work every Saturday; 2025-01-01 was a Wednesday, so that the first is the fourth of January. */
const saturdays = (count: number, minutes: (at: number) => number = () => 120): Entry[] =>
  Array.from({ length: count }, (_, at) => worked(dayText(START + 3 + 7 * at), minutes(at)));

function view(entries: readonly Entry[], assemblies: readonly Assembly[] = [WING], edition: Edition = "archive") {
  const made: Record = { ...record({ assemblies, entries }), day: entries.at(-1)?.day ?? "2025-01-01" };
  const day = dayText((dayNumber(made.day) ?? 0) + 1);
  return forecastView(editionOf({ ...made, day }, reckon({ ...made, day }), edition));
}

describe("The forecast", () => {
  it("is silent below eight whole weeks, and says why", () => {
    const { silent, forecast } = view(saturdays(8));
    expect(forecast).toBeUndefined();
    expect(silent).toBe(
      "The record spans 7 whole weeks. Below 8 there is no forecast: so few say too little of how weeks differ.",
    );
    expect(view(saturdays(9)).forecast).toBeDefined();
  });

  it("is silent without a plan, with nothing left of it, and with no work on it", () => {
    expect(view(saturdays(20), [assembly("wing")]).silent).toContain("No assembly has planned hours");
    expect(view(saturdays(20), [assembly("wing", { planned: 60, finished: "2025-02-01" })]).silent).toBe(
      "By the plan no work is left.",
    );
    expect(view(saturdays(20), [assembly("wing"), assembly("fin", { planned: 600 })]).silent).toBe(
      "In no whole week has work been noted on a part that has planned hours.",
    );
  });

  it("goes by the mean pace, and says months beyond a quarter: 6,000 minutes planned, 20 of 120 done, 30 weeks of 120 to go", () => {
    const { forecast } = view(saturdays(20));
    expect(forecast?.plan.left).toBe(3600);
    const last = dayNumber(dayText(START + 3 + 7 * 19 + 1)) ?? 0;
    expect(forecast?.finish[0]).toEqual({ share: 0.5, day: dayText(last + 7 * 30), words: "December 2025" });
    expect(forecast?.ahead[0]?.day).toBe(dayText(last + 7));
    expect(forecast?.ahead[29]?.middle).toBe(6000);
  });

  it("names a day within a quarter", () => {
    const { forecast } = view(saturdays(46));
    expect(forecast?.finish[0]?.words).toBe("14 December 2025");
  });

  it("says first what is not in it", () => {
    const parts = [WING, assembly("cowl", { title: "Cowling" }), assembly("tank", { title: "Tank bay" })];
    expect(view(saturdays(20), parts).forecast?.leftOut).toBe(
      "Not in it: Cowling and Tank bay, without planned hours; and what is no part of this record yet, as covering, fitting out and the engine may be.",
    );
    const many = Array.from({ length: 7 }, (_, at) => assembly(`part-${at}`));
    expect(view(saturdays(20), [WING, ...many]).forecast?.leftOut).toContain(
      "Not in it: 7 parts, without planned hours;",
    );
  });

  it("never lets a band rise above all that is planned, nor a later date come before a surer one", () => {
    const { forecast } = view(saturdays(30, (at) => (at % 3) * 100));
    expect(
      forecast?.ahead.every(
        ({ wide, narrow, middle }) =>
          wide[0] <= narrow[0] && narrow[0] <= middle && middle <= narrow[1] && narrow[1] <= wide[1] && wide[1] <= 6000,
      ),
    ).toBe(true);
    const days = forecast?.finish.map(({ day }) => day ?? "");
    expect(days).toEqual([...(days ?? [])].sort());
    expect(new Set(days).size).toBeGreaterThan(1);
  });

  it("is put into a sentence, or the reason is why there is none", () => {
    expect(forecastWords(view(saturdays(20)))).toBe(
      "Not in it: what is no part of this record yet, as covering, fitting out and the engine may be. At the pace so far, and as earlier forecasts did, the work that is planned is done by December 2025 as likely as not, and by May 2026 with a chance of four in five.",
    );
    expect(forecastWords(view(saturdays(3)))).toContain("There is no forecast. The record spans 2 whole weeks.");
    const far = [assembly("wing", { planned: 6_000_000 })];
    expect(forecastWords(view(saturdays(20), far))).toContain(
      "is done only more than twenty years ahead as likely as not",
    );
  });

  it("takes a part as finished only from its day on", () => {
    const parts = [WING, assembly("fin", { planned: 600, finished: "2099-01-01" })];
    expect(view(saturdays(20), parts).forecast?.plan.parts.map(({ finished }) => finished)).toEqual([false, false]);
  });

  it("counts neither as progress nor as pace what was worked on parts without a plan, and says so", () => {
    const seen = view([...saturdays(20), worked("2025-05-18", 300, "jig")], [WING, assembly("jig")]);
    expect(seen.forecast?.assumptions.join(" ")).toContain("5 h were worked on parts without planned hours.");
    expect(seen.forecast?.plan.left).toBe(3600);
  });

  it("says what finished parts took, what has outrun its plan, how many weeks were idle, and where the spread comes from", () => {
    const parts = [
      WING,
      assembly("fin", { planned: 600, finished: "2025-02-01" }),
      assembly("rudder", { planned: 60, title: "Rudder" }),
    ];
    const entries = [
      ...saturdays(20, (at) => (at % 2) * 240),
      worked("2025-02-02", 900, "fin"),
      worked("2025-02-03", 120, "rudder"),
    ].sort((a, b) => (a.day < b.day ? -1 : 1));
    const words = view(entries, parts).forecast?.assumptions ?? [];
    expect(words).toEqual([
      "The work is what is planned for 3 parts, of which 2 are not finished, and nothing else.",
      "Finished parts took 15 h where 10 h were planned, 150 % of it; the other parts are taken to go the same way.",
      "Rudder has taken all that the corrected plan gives and is not finished: nothing more is foreseen there, which is likely too little.",
      "The pace is the mean of the 19 whole weeks from the start to the date of the record, 8 of them without work.",
      expect.stringContaining("is taken from how forecasts made in the same way at earlier dates of this record did"),
    ]);
  });

  it("says that a plan with nothing finished is taken as it stands", () => {
    expect(view(saturdays(20)).forecast?.assumptions).toContain(
      "No part with planned hours is finished, so that the plan is taken as it stands. Plans are seldom too long.",
    );
  });

  it("is the same whenever it is made", () => {
    const entries = saturdays(40, (at) => (at * 37) % 300);
    expect(view(entries)).toEqual(view(entries));
  });

  it("in an edition is that of a record which never held what the edition does not show", () => {
    const open = saturdays(40, (at) => (at * 37) % 300);
    const hidden = [3, 9, 15, 22].map((at) => worked(dayText(START + 4 + 7 * at), 777, "wing", "inspector"));
    const all = [...open, ...hidden].sort((a, b) => (a.day < b.day ? -1 : 1));
    const great = [assembly("wing", { planned: 60_000 })];
    const without = view(open, great, "public");
    expect(view(all, great, "public")).toEqual(without);
    expect(view(all, great, "archive").forecast?.plan.left).toBe((without.forecast?.plan.left ?? 0) - 4 * 777);
    expect(without.forecast?.assumptions.at(-1)).toBe("Hours are those that this edition shows.");
  });
});

describe("The look back", () => {
  it("tries the last Sunday of each month that has eight weeks before it and the weeks foretold after it", () => {
    const { lookBacks } = view(saturdays(26));
    expect(lookBacks.map(({ ahead, tried }) => [ahead, tried.map(({ day }) => day)])).toEqual([
      [4, ["2025-03-30", "2025-04-27", "2025-05-25"]],
      [13, ["2025-03-30"]],
      [26, []],
    ]);
    expect(lookBacks.every(({ held, tried }) => held === tried.length)).toBe(true);
    const [first] = lookBacks[0]?.tried ?? [];
    expect(first).toMatchObject({ day: "2025-03-30", worked: 480, held: true });
    expect(first?.low).toBeLessThan(480);
    expect(first?.high).toBeGreaterThan(480);
  });

  it("counts the bands that did not hold", () => {
    const { lookBacks } = view(saturdays(26, (at) => (at < 15 ? 120 : 1200)));
    const [four] = lookBacks;
    expect(four?.held).toBe(1);
    expect(four?.tried.map(({ held }) => held)).toEqual([false, false, true]);
    expect(four?.tried[0]).toMatchObject({ worked: 120 * 2 + 1200 * 2, held: false });
  });
});
