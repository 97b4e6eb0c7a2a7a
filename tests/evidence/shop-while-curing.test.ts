import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { Adhesive, Batch } from "../../src/facts/types.ts";
import { equilibriumMoisture } from "../../src/reckoning/climate/equilibrium-moisture.ts";
import { curedBy, mostOfCure } from "../../src/evidence/batch/cure-temperature.ts";
import { jointCure } from "../../src/evidence/cure/joint-cure.ts";
import { lookUp } from "../../src/evidence/record-index.ts";
import { log } from "./logs.ts";
import { adhesive, assembly, batch, entry, glued, joint } from "./make.ts";
import { reckoned, found, ofBatch, steady } from "./one-cure.ts";
import { caseOf } from "./one-rule.ts";
import { celsius, d, moment, range } from "./quantities.ts";

/** A record that goes on until the cure is over. */
const LATER = { entries: [entry("2025-04-01-later")] };

describe("The temperature of the shop while it cured", () => {
  const cold = (at: number, temperature: number) => [
    log("shop", "2025-03-01", 24 * 30, (hour) => ({ temperature: hour === at ? temperature : 20 })),
  ];
  /** Hours from 1 March: mixed at 230 (10 March, 14:00), closed 20 min after, least cure until 302. */
  it("rejects for any reading below the sheet's range until the least cure has passed, and for none outside of it", () => {
    expect(ofBatch({ climate: cold(260, 15) }, "cure-temperature")).toBe(
      "meets: The shop's logger or thermometer shows 15.0 °C to 20.0 °C over the 3 d of its least cure.",
    );
    expect(ofBatch({ climate: cold(260, 14.96) }, "cure-temperature")).toBe(
      "rejects: The shop's logger or thermometer shows 14.96 °C to 20.0 °C over the 3 d of its least cure, below the sheet's 15 °C to 30 °C.",
    );
    expect(
      [229, 230, 231, 302, 303, 304].map(
        (hour) => ofBatch({ climate: cold(hour, 10) }, "cure-temperature")?.split(":")[0],
      ),
    ).toEqual(["meets", "rejects", "rejects", "rejects", "rejects", "meets"]);
    expect(reckoned({ climate: cold(260, 14.9) }).batches.get("B-1")?.verdict).toBe("rejected");
  });

  it("rejects for what is above the sheet's range later too, until its joints had cured, and not for cold", () => {
    const aDay = { procedure: { leastCure: { time: d("1") } } };
    const row = (temperature: string) => ({ temperature: celsius(temperature), time: d("3") });
    const later = (hour: number, temperature: number, sheet: Partial<Adhesive> = {}) =>
      reckoned({ ...aDay, adhesive: { cure: [row("20")], ...sheet }, climate: cold(hour, temperature) })
        .batches.get("B-1")
        ?.findings.filter(({ code, severity }) => code === "cure-temperature/above-later" && severity === "rejects")
        .map(({ values, limit, restsOn }) => [values, limit?.from.known, restsOn.some(({ id }) => id === "shop")]);
    const found = { over: 87_600, greatest: 30.5, limit: 30, asked: "15 °C to 30 °C" };
    expect(later(270, 30.5)).toEqual([[found, "record", true]]);
    expect([later(270, 30), later(270, 10), later(310, 30.5), later(250, 30.5)]).toEqual([[], [], [], []]);
    expect(later(270, 30.5, { cure: [row("20"), row("31")] })).toEqual([]);
    const postCure = { temperature: range("at least 60 °C", 60), time: d("1") };
    expect(later(270, 30.5, { postCure })).toEqual([]);
    expect(later(270, 30.5, { temperature: range("at least 15 °C", 15) })).toEqual([]);
    const long = { cure: [{ temperature: celsius("20"), time: d("20") }] };
    expect([450, 500].map((hour) => later(hour, 30.5, long)?.length)).toEqual([1, 0]);
    const atOnce = reckoned({ adhesive: { cure: [row("20")] }, climate: cold(303, 30.5) }).batches.get("B-1");
    expect(atOnce?.findings.filter(({ code }) => code === "cure-temperature/above-later")).toEqual([]);
  });

  it("lasts for a joint until that has cured, by what the logger shows or else by the time that it takes", () => {
    const sheet = adhesive({ cure: [{ temperature: celsius("20"), time: d("3") }] });
    const cured = (climate: ReturnType<typeof steady>, temperature?: Batch["temperature"]) => {
      const c = caseOf({ adhesives: [sheet], climate, batch: { temperature } });
      const { at, from, time } = jointCure(c.index, lookUp(c.index.joints, "W-1"), c.batch);
      return { at: at && at - from, time, by: curedBy(c, "W-1") - from };
    };
    const { at = 0, time, by } = cured(steady(16), celsius("16"));
    expect([at > time, by]).toEqual([true, at]);
    expect(cured([])).toEqual({ at: undefined, time, by: time });
  });

  it("has no most where the sheet has none", () => {
    expect(mostOfCure(adhesive({ temperature: range("at least 15 °C", 15) }))).toBeUndefined();
    expect(mostOfCure(adhesive({ temperature: range("15 °C to 30 °C", 15, 30), cure: [] }))).toBe(30);
  });

  it("lasts three days, as is usual, for a batch without pieces", () => {
    const none = (at: number) =>
      found(
        reckon({ ...glued([batch("B-1", { pieces: [] })], [], LATER), climate: cold(at, 10) }).batches.get("B-1")
          ?.findings,
        "cure-temperature",
      )?.split(":")[0];
    expect([303, 304].map(none)).toEqual(["rejects", "meets"]);
  });

  it("is told in the aircraft's units, and in °C never rounded onto the sheet's limit", () => {
    const imperial = reckon({ ...glued([batch("B-1")], [], { ...LATER, units: "imperial" }), climate: cold(260, 15) });
    expect(found(imperial.batches.get("B-1")?.findings, "cure-temperature")).toBe(
      "meets: The shop's logger or thermometer shows 59 °F to 68 °F over the 3 d of its least cure.",
    );
  });

  it("lasts as long as the longest least cure of its pieces", () => {
    expect(
      ofBatch({ climate: cold(320, 10), procedure: { leastCure: { time: d("4") } } }, "cure-temperature"),
    ).toContain("rejects");
    expect(
      ofBatch({ climate: cold(255, 10), procedure: { leastCure: { time: d("1") } } }, "cure-temperature"),
    ).toContain("rejects");
    expect(ofBatch({ climate: cold(256, 10), procedure: { leastCure: { time: d("1") } } }, "cure-temperature")).toBe(
      "meets: The shop's logger or thermometer shows 20.0 °C to 20.0 °C over the 1 d of its least cure.",
    );
  });

  it("begins when it was closed where no time of mixing is noted, and at the end of the day where neither is", () => {
    const at = (hour: number, change: object) =>
      ofBatch({ climate: cold(hour, 10), batch: { mixed: undefined, ...change } }, "cure-temperature")?.split(":")[0];
    const closed = { closed: moment("2025-03-10", "15:30") };
    expect([230, 231].map((hour) => at(hour, closed))).toEqual(["meets", "rejects"]);
    expect([238, 239].map((hour) => at(hour, { closed: undefined }))).toEqual(["meets", "rejects"]);
  });

  it("is held against the sheet's range, which is named with it, and against none where the sheet gives none", () => {
    const limit = (climate: Parameters<typeof reckoned>[0]["climate"], sheet: object = {}) =>
      reckoned({ climate, adhesive: sheet })
        .batches.get("B-1")
        ?.findings.find(({ rule }) => rule === "cure-temperature")?.limit;
    const range = { text: "shop 15 °C to 30 °C", from: { text: "Resorcin data sheet, revision 4", known: "record" } };
    expect([
      limit(cold(260, 14)),
      limit(steady(20)),
      limit(cold(260, 14).map((one) => ({ ...one, times: one.times.map((time) => time - 1e7) }))),
    ]).toEqual([range, range, range]);
    expect(limit(steady(5), { temperature: undefined })).toBeUndefined();
  });

  it("of a secondary joint is a caution where it is not logged, or logged in part, or where the sheet gives no limit, and where there is no logger", () => {
    expect(ofBatch({ climate: [log("shop", "2025-02-01", 24, () => ({ temperature: 20 }))] }, "cure-temperature")).toBe(
      "caution: Neither logger nor thermometer shows the temperature of the 3 d of its least cure: it is assumed.",
    );
    const part = [log("shop", "2025-03-01", 254, () => ({ temperature: 20 }))];
    expect(ofBatch({ climate: part }, "cure-temperature")).toBe(
      "caution: The shop's logger or thermometer shows 20.0 °C to 20.0 °C over 1 d of the 3 d of its least cure, and nothing of the rest.",
    );
    expect(ofBatch({ climate: steady(5), adhesive: { temperature: undefined } }, "cure-temperature")).toContain(
      "caution: The shop's logger or thermometer shows 5.0 °C to 5.0 °C",
    );
    expect(ofBatch({ climate: [] }, "cure-temperature")).toContain("caution: Neither logger nor thermometer");
  });
});

it("A sheet that only gives times of cure limits it: of a primary joint nothing is assumed", () => {
  const of = (cure: Adhesive["cure"], structure: "primary" | "secondary") =>
    reckon(
      glued([batch("B-1")], [], {
        ...LATER,
        adhesives: [adhesive({ temperature: undefined, cure })],
        assemblies: [assembly("wing", { joints: [{ ...joint("W-1"), structure }] })],
      }),
    )
      .batches.get("B-1")
      ?.findings.filter(({ rule }) => rule === "cure-temperature")
      .map(({ code, severity }) => `${severity} ${code}`);
  const row = [{ temperature: celsius("20"), time: d("3") }];
  expect(of(row, "primary")).toEqual(["unproven cure-temperature/assumed"]);
  expect(of(row, "secondary")).toEqual(["caution cure-temperature/assumed"]);
  expect(of([], "primary")).toEqual([]);
});

/** Mixed at 14:00 on 10 March; the least cure ends on 13 March at 14:20. Hours from 1 March: midnight of the 13th is 288. */
describe("A cure that a logger has not been read out for", () => {
  const until = (
    day: string,
    hours: number,
    at: (hour: number) => number | undefined = () => 20,
    change: object = {},
  ) => {
    const climate = [
      log("shop", "2025-03-01", hours, (hour) => {
        const temperature = at(hour);
        return temperature === undefined ? undefined : { temperature };
      }),
    ];
    const sheet = adhesive({ cure: [{ temperature: celsius("20"), time: d("3") }] });
    const entries = [entry(`${day}-later`)];
    const primary = [assembly("wing", { joints: [{ ...joint("W-1"), structure: "primary" }] })];
    const made = { entries, adhesives: [sheet], assemblies: primary };
    const evidence = reckon({ ...glued([batch("B-1", { joints: ["W-1"] })], [], made), climate, ...change });
    const finding = evidence.batches.get("B-1")?.findings.find(({ rule }) => rule === "cure-temperature");
    return { said: `${finding?.severity}: ${finding?.sentence}`, restsOn: finding?.restsOn ?? [] };
  };
  const READ =
    "waits: The shop's logger or thermometer shows 20.0 °C to 20.0 °C over 1 d 10 h of the 3 d of its least cure; the rest is still to come, or not read out yet.";
  const PART =
    "unproven: The shop's logger or thermometer shows 20.0 °C to 20.0 °C over 1 d 10 h of the 3 d of its least cure, and nothing of the rest.";
  const NOTHING = "waits: The 3 d of its least cure are still to come, or not read out yet.";

  it("waits while it runs, and is not shown once it is over", () => {
    expect(until("2025-03-13", 264).said).toBe(READ);
    expect(until("2025-03-14", 264).said).toBe(PART);
  });

  it("waits where the record's last day begins as it was mixed, though nothing was ever read", () => {
    const midnight = { mixed: moment("2025-03-10", "00:00"), closed: moment("2025-03-10", "00:20") };
    const { batches } = reckon(glued([batch("B-1", midnight)], []));
    expect(found(batches.get("B-1")?.findings, "cure-temperature")).toBe(NOTHING);
  });

  it("waits for nothing where a reading lacks before the last", () => {
    expect(until("2025-03-13", 267, (hour) => (hour > 264 && hour < 267 ? undefined : 20)).said).toBe(PART);
    expect(until("2025-03-13", 266, (hour) => (hour === 265 ? undefined : 20)).said).toMatch(/^waits: /u);
  });

  it("waits while it runs though all of it so far was read", () => {
    expect(until("2025-03-12", 264).said).toBe(READ);
    expect(until("2025-03-12", 290).said).toBe(READ);
  });

  it("is not shown where a lone last reading leaves all of it so far unknown", () => {
    expect(until("2025-03-13", 264, (hour) => (hour > 220 && hour < 264 ? undefined : 20)).said).toMatch(
      /^unproven: Neither logger nor thermometer shows /u,
    );
  });

  it("is rejected for what was read already", () => {
    expect(until("2025-03-13", 264, (hour) => (hour === 250 ? 10 : 20)).said).toMatch(/^rejects: .*10\.0 °C/u);
    expect(until("2025-03-13", 264, (hour) => (hour === 250 ? 35 : 20)).said).toMatch(/^rejects: .*35\.0 °C/u);
  });

  it("waits where the log ends before it was mixed, and rests on that log", () => {
    const before = until("2025-03-13", 230);
    expect(before.said).toBe(NOTHING);
    expect(before.restsOn).toContainEqual({ kind: "climate log", id: "shop" });
    expect(until("2025-03-14", 230).said).toBe(
      "unproven: Neither logger nor thermometer shows the temperature of the 3 d of its least cure: it is assumed.",
    );
    expect(until("2025-03-13", 230, undefined, { climate: [] }).said).toBe(
      "unproven: Neither logger nor thermometer shows the temperature of the 3 d of its least cure: it is assumed.",
    );
  });
});

describe("The moisture of the wood, with no meter reading", () => {
  const damp = (humidity: number, from = "2025-02-20") => [
    log("shop", from, 24 * 20, (hour) => ({ temperature: 20, humidity: hour % 2 === 0 ? humidity : humidity + 0.1 })),
  ];
  const noMeter = { moisture: undefined, humidity: { typed: "95 %", value: 0.95, unit: "1", step: 0.01 } };

  it("is the logger's mean over the two weeks before, and not that of the climate noted", () => {
    const mean = ((equilibriumMoisture(20, 0.5) ?? 0) + (equilibriumMoisture(20, 0.6) ?? 0)) / 2;
    const c = { climate: damp(0.5), batch: noMeter };
    expect(reckoned(c).batches.get("B-1")?.moistureEstimate).toBeCloseTo(mean, 4);
    expect(ofBatch(c, "wood-moisture")).toBe(
      "caution: No meter reading of the wood is noted; by the logger's two weeks before, wood in the shop settled at about 10.1 % (an estimate, for wood that has had time).",
    );
  });

  it("out of range leaves the batch unproven", () => {
    expect(ofBatch({ climate: damp(0.8), batch: noMeter }, "wood-moisture")).toContain("unproven: ");
    expect(ofBatch({ climate: damp(0.8), batch: noMeter }, "wood-moisture")).toContain(", above 8 % to 12 %.");
  });

  it("falls back on the climate noted where the two weeks are not whole, and says so", () => {
    const c = { climate: damp(0.5, "2025-02-25"), batch: { moisture: undefined } };
    expect(ofBatch(c, "wood-moisture")).toBe(
      "unproven: No meter reading of the wood is noted; at 20 °C and 50 %, the logger not having the two weeks before whole, wood settles at about 9.3 % (an estimate, for wood that has had time); the air of one moment shows nothing of the wood.",
    );
    expect(ofBatch({ climate: damp(0.5, "2025-02-24"), batch: { moisture: undefined } }, "wood-moisture")).toContain(
      "by the logger's two weeks before",
    );
  });

  it("is the meter's where there is one", () => {
    expect(ofBatch({ climate: damp(0.8) }, "wood-moisture")).toBe("meets: The wood was at 10 % by meter.");
  });
});
