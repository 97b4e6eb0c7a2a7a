/** What was noted of the shop at gluing and what its logger read then, each at its limit: of two witnesses the worse counts. */
import { describe, expect, it } from "vitest";
import { dewPointRule, shopHumidity, shopTemperature } from "../../src/evidence/batch/climate.ts";
import { workingLifeRule } from "../../src/evidence/batch/working-life.ts";
import { gluedAt, readAt, wholly } from "../../src/evidence/batch/witnesses.ts";
import { Shop } from "../../src/evidence/cure/shop.ts";
import type { Adhesive, Batch } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, batch, DAY } from "./make.ts";
import { asked, caseOf } from "./one-rule.ts";
import { celsius, epochOf, moment, pc } from "./quantities.ts";

/** Read at noon, at 15:00 and at 18:00 of the day; the batch was mixed at 14:00 and closed at 14:20. */
const logs = (noon: number, three: number, humidity: readonly [number, number] = [0.5, 0.5]) => [
  log(
    "shop",
    DAY,
    18,
    (hour) =>
      hour === 12
        ? { temperature: noon, humidity: humidity[0] }
        : hour === 15
          ? { temperature: three, humidity: humidity[1] }
          : hour === 18
            ? { temperature: -40, humidity: 0.01 }
            : undefined,
    { gap: 4 * 3600 },
  ),
];
const NOTHING: Partial<Batch> = { temperature: undefined, surface: undefined, wood: undefined, humidity: undefined };
const BESIDE = ["climate log shop"];

describe("A logger that has only a part of the time of gluing", () => {
  /** Read every five minutes from 13:00 on, with gaps of more than ten: until when, and what it was like. */
  const ends = (until: string, temperature: number, humidity: number) => {
    const times = Array.from({ length: 49 }, (_, n) => epochOf(DAY, "13:00") + n * 300).filter(
      (time) => time <= epochOf(DAY, until),
    );
    const all = (value: number) => Float64Array.from(times, () => value);
    const change = { gap: 600, temperatures: all(temperature), humidities: all(humidity) };
    return [log("shop", DAY, 0, () => undefined, { ...change, times: Float64Array.from(times) })];
  };
  const noted = { ...NOTHING, temperature: celsius("20"), humidity: pc("50") };
  const of = (climate: ReturnType<typeof ends>, change: Partial<Batch> = {}) => [
    ...asked(shopTemperature, { batch: { ...noted, ...change }, climate }).map(([code]) => code),
    ...asked(shopHumidity, { batch: { ...noted, ...change }, climate }).map(([code]) => code),
  ];
  const REJECTED = ["rejects shop-temperature/logged-outside", "rejects shop-humidity/logged-outside"];

  it("tells against it by what it read, as with all of it: rows taken away do not better it", () => {
    for (const until of ["17:00", "14:25", "14:15", "14:05", "14:00"]) {
      expect(of(ends(until, 14, 0.8))).toEqual(REJECTED);
      expect(of(ends(until, 31, 0.8))).toEqual(REJECTED);
    }
    expect(of(ends("13:55", 14, 0.8))).toEqual(["meets shop-temperature/within", "meets shop-humidity/within"]);
  });

  it("rests on that logger then", () => {
    const [found] = asked(shopHumidity, { batch: noted, climate: ends("14:10", 20, 0.8) });
    expect(found?.slice(1)).toEqual([{ least: 0.8, greatest: 0.8, asked: "at most 70 %" }, BESIDE]);
  });

  it("shortens the working life by what it read, and shows none where the warmth is only estimated or not noted", () => {
    const life = (temperature: Batch["temperature"], climate: ReturnType<typeof ends> = []) =>
      asked(workingLifeRule, { batch: { ...noted, temperature }, climate }).map(([code]) => code);
    expect(life(celsius("20"))).toEqual(["meets working-life/within"]);
    for (const until of ["17:00", "14:15", "14:00"])
      expect(life(celsius("20"), ends(until, 28, 0.5))).toEqual(["unproven working-life/no-row"]);
    const about = { typed: "about 20 °C", about: { least: 19, most: 21 }, unit: "°C", step: 0 } as Batch["temperature"];
    expect(life(about, ends("14:15", 20, 0.5))).toEqual(["unproven working-life/estimate"]);
    expect(life(undefined, ends("14:15", 20, 0.5))).toEqual(life(undefined));
    const row = (until: string) =>
      caseOf({ batch: { ...noted, temperature: undefined }, climate: ends(until, 20, 0.5) }).facts.life?.time;
    expect([row("14:15"), row("17:00")]).toEqual([undefined, 1800]);
  });

  it("is named where no row of the sheet is for what it read, and the note where none is for that", () => {
    const by = (temperature: Batch["temperature"], climate: ReturnType<typeof ends> = []) =>
      asked(workingLifeRule, { batch: { ...noted, temperature }, climate }).map(([code, values]) => [
        code,
        (values as { readonly temperature?: string }).temperature,
      ]);
    const NO_ROW = "unproven working-life/no-row";
    expect(by(celsius("20"), ends("17:00", 28, 0.5))).toEqual([[NO_ROW, "what the logger read"]]);
    expect(by(undefined, ends("17:00", 28, 0.5))).toEqual([[NO_ROW, "what the logger read"]]);
    expect(by(celsius("28"), ends("17:00", 20, 0.5))).toEqual([[NO_ROW, "28 °C"]]);
    expect(by(celsius("28"), ends("17:00", 28, 0.5))).toEqual([[NO_ROW, "28 °C"]]);
    expect(by(celsius("28"))).toEqual([[NO_ROW, "28 °C"]]);
  });

  it("shows nothing where it is within the limits", () => {
    const silent = { temperature: undefined, humidity: undefined };
    expect(of(ends("14:15", 20, 0.5), silent)).toEqual([
      "unproven shop-temperature/not-noted",
      "unproven shop-humidity/not-noted",
    ]);
    expect(of(ends("14:15", 20, 0.5))).toEqual(["meets shop-temperature/within", "meets shop-humidity/within"]);
  });
});

describe("The temperature at gluing", () => {
  const of = (noted: Partial<Batch>, climate = [] as ReturnType<typeof logs>, sheet: Partial<Adhesive> = {}) =>
    asked(shopTemperature, { batch: { ...NOTHING, ...noted }, climate, adhesives: [adhesive(sheet)] });
  const RANGE = "15 °C to 30 °C";
  const within = (found: string) => ["meets shop-temperature/within", { found }, []];

  it("is not shown where neither a thermometer nor a logger tells it", () => {
    expect(of({})).toEqual([["unproven shop-temperature/not-noted", {}, []]]);
    expect(of({ surface: celsius("20"), wood: celsius("20") })).toEqual([
      ["unproven shop-temperature/not-noted", {}, []],
    ]);
    expect(of({}, [], { temperature: undefined })[0]?.[0]).toBe("unproven shop-temperature/not-noted");
  });

  it("is within the sheet's limits at the limits themselves, of air, surfaces and wood", () => {
    expect(of({ temperature: celsius("15") })).toEqual([within("15 °C")]);
    expect(of({ temperature: celsius("30"), surface: celsius("15"), wood: celsius("30") })).toEqual([within("30 °C")]);
  });

  it("rejects for whichever lies outside, each named", () => {
    const found = (typed: string) => ({ found: typed, asked: RANGE });
    expect(of({ temperature: celsius("14.9") })).toEqual([["rejects shop-temperature/outside", found("14.9 °C"), []]]);
    expect(of({ temperature: celsius("20"), surface: celsius("12.5"), wood: celsius("30.1") })).toEqual([
      ["rejects shop-temperature/part-outside", { ...found("12.5 °C"), of: "surfaces" }, []],
      ["rejects shop-temperature/part-outside", { ...found("30.1 °C"), of: "wood" }, []],
    ]);
    expect(of({ temperature: celsius("31"), surface: celsius("14") })).toEqual([
      ["rejects shop-temperature/outside", found("31 °C"), []],
      ["rejects shop-temperature/part-outside", { ...found("14 °C"), of: "surfaces" }, []],
    ]);
  });

  it("rejects for cold surfaces though nobody noted the air", () => {
    expect(of({ surface: celsius("12.5") })).toEqual([
      ["rejects shop-temperature/part-outside", { found: "12.5 °C", asked: RANGE, of: "surfaces" }, []],
    ]);
  });

  it("is the logger's where nobody noted it, by the readings on both sides of the time", () => {
    expect(of({}, logs(15, 30))).toEqual([["meets shop-temperature/logged", { least: 15, greatest: 30 }, BESIDE]]);
    for (const [noon, three] of [
      [14.9, 20],
      [20, 30.1],
      [10, 35],
    ] as const)
      expect(of({}, logs(noon, three))).toEqual([
        ["rejects shop-temperature/logged-outside", { least: noon, greatest: three, asked: RANGE }, BESIDE],
      ]);
    expect(of({ surface: celsius("20") }, logs(14, 20))[0]?.[0]).toBe("rejects shop-temperature/logged-outside");
  });

  it("is rejected by the logger whatever was noted", () => {
    expect(of({ temperature: celsius("20") }, logs(14.9, 20))).toEqual([
      ["rejects shop-temperature/logged-outside", { least: 14.9, greatest: 20, asked: RANGE }, BESIDE],
    ]);
  });

  it("is told to be doubtful where note and logger lie more than 2 K apart, beside what counts", () => {
    const apart = (typed: string, least: number, greatest: number) => [
      "caution shop-temperature/witnesses",
      { found: typed, least, greatest },
      BESIDE,
    ];
    const told = (typed: string, noon: number, three: number) => of({ temperature: celsius(typed) }, logs(noon, three));
    expect(told("18", 20, 22)).toEqual([within("18 °C")]);
    expect(told("17.9", 20, 22)).toEqual([within("17.9 °C"), apart("17.9 °C", 20, 22)]);
    expect(told("24", 22, 20)).toEqual([within("24 °C")]);
    expect(told("24.1", 22, 20)).toEqual([within("24.1 °C"), apart("24.1 °C", 20, 22)]);
    expect(told("14", 20, 22)).toEqual([
      ["rejects shop-temperature/outside", { found: "14 °C", asked: RANGE }, []],
      apart("14 °C", 20, 22),
    ]);
  });

  it("is a caution where the sheet gives no limits, and is not asked of the logger then", () => {
    const silent = { temperature: undefined };
    const noted = ["caution shop-temperature/no-limits", { found: "5 °C" }, []];
    expect(of({ temperature: celsius("5") }, [], silent)).toEqual([noted]);
    expect(of({ temperature: celsius("5") }, logs(20, 20), silent)).toEqual([
      noted,
      ["caution shop-temperature/witnesses", { found: "5 °C", least: 20, greatest: 20 }, BESIDE],
    ]);
    expect(of({}, logs(20, 20), silent)).toEqual([]);
  });

  it("is held against the sheet, which is named with it", () => {
    const limits = (noted: Partial<Batch>, climate: ReturnType<typeof logs>) =>
      shopTemperature(caseOf({ batch: { ...NOTHING, ...noted }, climate })).map(({ limit }) => limit);
    const limit = {
      code: "limit/shop",
      values: { asked: RANGE },
      from: { code: "source/sheet", values: { sheet: "Resorcin data sheet, revision 4" }, known: "record" },
    };
    expect(limits({}, [])).toEqual([limit]);
    expect(limits({ temperature: celsius("18"), surface: celsius("9") }, logs(21, 21))).toEqual([limit, limit]);
    expect(limits({ temperature: celsius("9") }, [])).toEqual([limit]);
    expect(limits({ temperature: celsius("18") }, logs(21, 21))).toEqual([limit, limit]);
    expect(limits({}, logs(20, 20))).toEqual([limit]);
    expect(limits({}, logs(10, 20))).toEqual([limit]);
  });
});

describe("The humidity at gluing", () => {
  const of = (noted: Partial<Batch>, humidity?: readonly [number, number], sheet: Partial<Adhesive> = {}) =>
    asked(shopHumidity, {
      batch: { ...NOTHING, ...noted },
      climate: humidity ? logs(20, 20, humidity) : [],
      adhesives: [adhesive(sheet)],
    });
  const within = (found: string) => ["meets shop-humidity/within", { found }, []];
  const MOST = "at most 70 %";
  const SILENT = { humidity: undefined };

  it("is not shown where nothing tells it and the sheet asks, and else a caution", () => {
    expect(of({})).toEqual([["unproven shop-humidity/not-noted", {}, []]]);
    expect(of({}, undefined, SILENT)).toEqual([["caution shop-humidity/not-noted", {}, []]]);
  });

  it("is at most what the sheet asks, by note and by logger", () => {
    expect(of({ humidity: pc("70") })).toEqual([within("70 %")]);
    expect(of({ humidity: pc("71") })).toEqual([["rejects shop-humidity/outside", { found: "71 %", asked: MOST }, []]]);
    expect(of({}, [0.4, 0.7])).toEqual([["meets shop-humidity/logged", { least: 0.4, greatest: 0.7 }, BESIDE]]);
    for (const read of [
      [0.4, 0.71],
      [0.71, 0.4],
    ] as const)
      expect(of({}, read)).toEqual([
        ["rejects shop-humidity/logged-outside", { least: 0.4, greatest: 0.71, asked: MOST }, BESIDE],
      ]);
    expect(of({ humidity: pc("60") }, [0.65, 0.71])).toEqual([
      ["rejects shop-humidity/logged-outside", { least: 0.65, greatest: 0.71, asked: MOST }, BESIDE],
    ]);
    const dry = { humidity: { typed: "at least 45 %", least: 0.45 } };
    expect(of({}, [0.4, 0.5], dry)[0]?.[0]).toBe("rejects shop-humidity/logged-outside");
    expect(of({}, [0.45, 0.5], dry)[0]?.[0]).toBe("meets shop-humidity/logged");
  });

  it("is told to be doubtful where note and logger lie more than a tenth apart, beside what counts", () => {
    const apart = (found: string, least: number, greatest: number) => [
      "caution shop-humidity/witnesses",
      { found, least, greatest },
      BESIDE,
    ];
    expect(of({ humidity: pc("50") }, [0.6, 0.65])).toEqual([within("50 %")]);
    expect(of({ humidity: pc("49") }, [0.6, 0.65])).toEqual([within("49 %"), apart("49 %", 0.6, 0.65)]);
    expect(of({ humidity: pc("60") }, [0.5, 0.45])).toEqual([within("60 %")]);
    expect(of({ humidity: pc("61") }, [0.5, 0.45])).toEqual([within("61 %"), apart("61 %", 0.45, 0.5)]);
  });

  it("is a caution where the sheet gives no limits, and is not asked of the logger then", () => {
    const noted = ["caution shop-humidity/no-limits", { found: "90 %" }, []];
    expect(of({ humidity: pc("90") }, undefined, SILENT)).toEqual([noted]);
    expect(of({ humidity: pc("90") }, [0.5, 0.5], SILENT)).toEqual([
      noted,
      ["caution shop-humidity/witnesses", { found: "90 %", least: 0.5, greatest: 0.5 }, BESIDE],
    ]);
    expect(of({}, [0.9, 0.9], SILENT)).toEqual([]);
  });

  it("is held against the sheet, which is named with it", () => {
    const limits = (noted: Partial<Batch>, humidity?: readonly [number, number]) =>
      shopHumidity(caseOf({ batch: { ...NOTHING, ...noted }, climate: humidity ? logs(20, 20, humidity) : [] })).map(
        ({ limit }) => limit,
      );
    const limit = {
      code: "limit/humidity",
      values: { asked: MOST },
      from: { code: "source/sheet", values: { sheet: "Resorcin data sheet, revision 4" }, known: "record" },
    };
    expect(limits({})).toEqual([limit]);
    expect(limits({ humidity: pc("80") })).toEqual([limit]);
    expect(limits({ humidity: pc("40") }, [0.6, 0.6])).toEqual([limit, limit]);
    expect(limits({}, [0.6, 0.6])).toEqual([limit]);
    expect(limits({}, [0.8, 0.8])).toEqual([limit]);
  });
});

describe("The dew point", () => {
  /** At 20 °C and 50 % it is 9.27 °C by the Magnus formula, of any source. */
  const of = (noted: Partial<Batch>) =>
    asked(dewPointRule, { batch: { ...NOTHING, ...noted } }).map((one) => one.slice(0, 2));
  const air = { temperature: celsius("20"), humidity: pc("50") };

  it("lies 3 K and more below the surfaces, or is a caution", () => {
    const [clear] = of({ ...air, surface: celsius("13") });
    expect(clear).toEqual([
      "meets dew-point/clear",
      { dewPoint: expect.closeTo(9.27, 1), warmth: "13 °C", of: "surfaces", apart: expect.closeTo(3.73, 1) },
    ]);
    expect(of({ ...air, surface: celsius("12") })[0]).toEqual([
      "caution dew-point/near",
      { dewPoint: expect.closeTo(9.27, 1), warmth: "12 °C", of: "surfaces", apart: expect.closeTo(2.73, 1) },
    ]);
    expect(of(air)[0]?.[1]).toMatchObject({ warmth: "20 °C", of: "shop" });
    expect(of({ ...air, humidity: pc("95") })[0]?.[0]).toBe("caution dew-point/near");
  });

  it("is asked where both were noted, and names its rule", () => {
    expect(of({ temperature: celsius("20"), surface: celsius("13") })).toEqual([]);
    expect(of({ humidity: pc("50"), surface: celsius("13") })).toEqual([]);
    for (const surface of ["12", "13"])
      expect(dewPointRule(caseOf({ batch: { ...NOTHING, ...air, surface: celsius(surface) } }))[0]?.limit).toEqual({
        code: "limit/dew-point",
        values: { least: 3 },
        from: { code: "source/paint-rule", values: {}, known: "common practice" },
      });
  });
});

describe("The time at which a batch was glued", () => {
  const at = (time: string) => epochOf(DAY, time);
  const of = (mixed?: string, closed?: string) =>
    gluedAt(
      batch("B-1", {
        mixed: mixed === undefined ? undefined : moment(DAY, mixed),
        closed: closed === undefined ? undefined : moment(DAY, closed),
      }),
    );

  it("is from mixing to closing, or the minute about the one that was noted", () => {
    expect(of("14:00", "14:20")).toEqual({ from: at("14:00") - 30, to: at("14:20") + 30 });
    expect(of("14:00", "14:00")).toEqual({ from: at("14:00") - 30, to: at("14:00") + 30 });
    expect(of("14:00")).toEqual({ from: at("14:00") - 30, to: at("14:00") + 30 });
    expect(of(undefined, "14:20")).toEqual({ from: at("14:20") - 30, to: at("14:20") + 30 });
    expect(of()).toBeUndefined();
    expect(of("14:20", "14:00")).toBeUndefined();
  });

  it("is as cold as the colder of two loggers reads, and as warm as the warmer", () => {
    const two = [20, 29].map((temperature) => log(`at-${temperature}`, DAY, 24, () => ({ temperature })));
    two[1] = { ...two[1], times: two[1]?.times.map((time) => time + 600) } as (typeof two)[number];
    expect(new Shop(two, []).warmth(at("14:00"), at("15:00"))).toMatchObject({ whole: true, least: 20, greatest: 29 });
  });

  it("is logged where readings stand on both sides of it", () => {
    const shop = new Shop(logs(18, 22, [0.4, 0.6]), []);
    const of = (mixed: string, closed: string) => {
      const glue = batch("B-1", { mixed: moment(DAY, mixed), closed: moment(DAY, closed) });
      const { warmth, humidity } = readAt(shop, glue);
      return [wholly(warmth)?.greatest, wholly(humidity)?.greatest];
    };
    expect(of("14:00", "14:20")).toEqual([22, 0.6]);
    expect(of("11:50", "12:10")).toEqual([undefined, undefined]);
    expect(of("17:50", "18:10")).toEqual([undefined, undefined]);
    expect(of("14:20", "14:00")).toEqual([undefined, undefined]);
    const unknown = batch("B-1", { mixed: undefined, closed: undefined });
    expect(readAt(shop, unknown)).toEqual({});
  });
});
