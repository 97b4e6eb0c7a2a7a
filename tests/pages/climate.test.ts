import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { climatePage } from "../../src/pages/evidence/climate.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition, Shown } from "../../src/editions/shown.ts";
import { waiting } from "../../src/pages/evidence/waiting.ts";
import type { ClimateLog, Record } from "../../src/facts/types.ts";
import { log } from "../evidence/logs.ts";
import { batch, glued, piece, procedure, test } from "../evidence/make.ts";
import { celsius, d } from "../evidence/quantities.ts";

/** B-1 with a piece broken and one that waits, its moisture not read; a logger from two weeks before on. */
const recordOf = (climate: readonly ClimateLog[]): Record => ({
  ...glued([batch("B-1", { moisture: undefined, pieces: [piece("B-1", 1), piece("B-1", 2)] })], [test("B-1/1")], {
    procedures: [procedure({ leastCure: { time: d("3"), temperature: celsius("20") } })],
  }),
  climate,
});

const shown = (record: Record, edition: Edition): Shown => editionOf(record, reckon(record), edition);
const shop = (change: Partial<ClimateLog> = {}) =>
  log(
    "shop",
    "2025-02-20",
    24 * 30,
    (hour) => ({ temperature: hour % 24 === 0 ? 17.3 : 18.6, humidity: 0.57 }),
    change,
  );

describe("A log that is marked for the inspector", () => {
  const record = recordOf([shop({ audience: "inspector" })]);
  const [narrow, wide] = [shown(record, "public"), shown(record, "inspector")];

  it("is not in the public edition, nor what it tells of cure and moisture", () => {
    expect(narrow.record.climate).toEqual([]);
    expect(narrow.shows({ kind: "climate log", id: "shop" })).toBe(false);
    const [broken, waits] = ["B-1/1", "B-1/2"].map((id) => narrow.evidence.pieces.get(id)?.cure);
    for (const cure of [broken, waits])
      expect(Object.keys(cure ?? {}).sort()).toEqual([
        "from",
        "law",
        "least",
        "readyBy",
        "reference",
        "referenceFrom",
        "restsOn",
      ]);
    expect([broken, waits].map((cure) => cure?.restsOn)).toEqual([[], []]);
    expect(narrow.evidence.batches.get("B-1")?.moistureEstimate).toBeUndefined();
    const said = narrow.evidence.findings
      .filter(({ rule }) =>
        ["full-cure", "piece-broken", "cure-temperature", "wood-moisture", "cure-warmth"].includes(rule),
      )
      .map((finding) => narrow.say(finding));
    expect(new Set(said)).toEqual(new Set(["Rests on something this edition does not show."]));
    expect(JSON.stringify([...narrow.evidence.pieces, ...narrow.evidence.batches])).not.toMatch(/17\.3|18\.6|logger/);
  });

  it("is in the inspector's, with all that it tells", () => {
    expect(wide.record.climate).toHaveLength(1);
    expect(wide.shows({ kind: "climate log", id: "shop" })).toBe(true);
    expect(wide.evidence.pieces.get("B-1/1")?.cure).toMatchObject({ warmth: "logged" });
    expect(wide.evidence.batches.get("B-1")?.moistureEstimate).toBeCloseTo(0.105, 2);
  });

  it("changes no verdict by being withheld", () => {
    for (const id of ["B-1/1", "B-1/2"])
      expect(narrow.evidence.pieces.get(id)?.verdict).toBe(wide.evidence.pieces.get(id)?.verdict);
  });
});

describe("The page on the climate", () => {
  it("tells each month's least, mean and greatest, what is missing and how many batches", () => {
    const gap = log("shop", "2025-02-20", 24 * 30, (hour) =>
      hour > 100 && hour < 124 ? undefined : { temperature: hour === 0 ? 10 : 20, humidity: 0.5 },
    );
    const page = climatePage(shown(recordOf([gap]), "public"));
    expect(page.months).toEqual([
      {
        month: "2025-02",
        temperature: ["10.0 °C", "20.0 °C", "20.0 °C"],
        humidity: ["50 %", "50 %", "50 %"],
        without: "24 h",
        batches: 0,
      },
      {
        month: "2025-03",
        temperature: ["20.0 °C", "20.0 °C", "20.0 °C"],
        humidity: ["50 %", "50 %", "50 %"],
        without: "",
        batches: 1,
      },
    ]);
    expect(page.gaps).toEqual([{ from: "24 February 2025, 04:00", to: "25 February 2025, 04:00", lasted: "24 h" }]);
    expect(page.logs).toMatchObject([
      { from: "20 Feb 2025", to: "22 Mar 2025", readings: "698", gap: "2 h, this program’s default" },
    ]);
  });

  it("marks glue-ups at what was noted, within the days that were logged", () => {
    const { temperature, humidity } = climatePage(shown(recordOf([shop()]), "public"));
    const day = Date.UTC(2025, 2, 10) / 86_400_000 + 0.5;
    expect(temperature?.marks).toEqual([{ day, value: 20, words: "B-1, 10 Mar 2025" }]);
    expect(humidity?.marks).toEqual([{ day, value: 50, words: "B-1, 10 Mar 2025" }]);
    expect(temperature?.days[1]).toMatchObject({ least: 17.3, greatest: 18.6 });
    expect(
      climatePage(shown(recordOf([log("shop", "2025-02-20", 48, () => ({ temperature: 20 }))]), "public")).temperature
        ?.marks,
    ).toEqual([]);
  });

  it("says nothing where nothing was logged", () => {
    expect(climatePage(shown(recordOf([]), "public"))).toEqual({ logs: [], months: [], gaps: [] });
  });
});

describe("Pieces that wait", () => {
  it("are listed with the hour from which they may be broken, and by what", () => {
    expect(waiting(shown(recordOf([]), "public"))).toEqual([
      {
        batch: "B-1",
        pieces: ["B-1/2"],
        sortBy: "2025-03-13 15:00",
        from: "13 Mar 2025, 15:00",
        now: true,
        readyBy: "assumed",
        by: "at the 20 °C noted when it was glued",
      },
    ]);
    const early = { ...recordOf([]), day: "2025-03-12" };
    expect(waiting(shown(early, "public"))[0]?.now).toBe(false);
    expect(waiting(shown({ ...early, day: "2025-03-13" }, "public"))[0]?.now).toBe(true);
    expect(waiting(shown(recordOf([shop()]), "public"))[0]?.by).toBe("by the shop’s logger");
  });

  it("do not tell by their hour what a withheld log says", () => {
    expect(waiting(shown(recordOf([shop({ audience: "archive" })]), "public"))[0]).toMatchObject({
      sortBy: "2025-03-13 15:00",
      now: false,
      by: "at the earliest, by days alone; how warm it was rests on something this edition does not show",
    });
  });
});
