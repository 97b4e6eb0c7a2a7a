/** By what a cure is counted: the rows of a sheet, the least cure of pieces, and what logger and thermometer show of the shop. */
import { describe, expect, it } from "vitest";
import { cureOf, lastLogged, statedWarmth } from "../../src/evidence/cure/cure.ts";
import { jointCure, sheetCure } from "../../src/evidence/cure/joint-cure.ts";
import { lawOf, lawSource, referenceOf } from "../../src/evidence/cure/reference.ts";
import { Shop } from "../../src/evidence/cure/shop.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Adhesive, Batch, ClimateLog, JointSpec, Noted, Procedure, Thermometer } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, batch, DAY, entry, glued, joint, piece, procedure } from "./make.ts";
import { celsius, d, epochOf, g, moment } from "./quantities.ts";
import { ref } from "./signed.ts";

const cures = (...degrees: number[]) =>
  adhesive({ cure: degrees.map((at, i) => ({ temperature: celsius(`${at}`), time: d(`${i + 1}`) })) });
const SHEET = { code: "source/sheet", values: { sheet: "Resorcin data sheet, revision 4" }, known: "record" };

describe("The temperature at which a least cure is counted", () => {
  const of = (...degrees: number[]) => referenceOf(procedure(), cures(...degrees));

  it("is the procedure's where it names one", () => {
    const stated = procedure({ leastCure: { time: d("3"), temperature: celsius("25") } });
    expect(referenceOf(stated, cures(18))).toEqual({
      temperature: 25,
      from: { code: "source/procedure", values: { title: "Three legs" }, known: "record" },
    });
  });

  it("is else that of the sheet's cure nearest to 20 °C from 15 to 30 °C, of two as near the warmer", () => {
    expect(of(18)).toEqual({ temperature: 18, from: SHEET });
    expect(of(24, 17, 29).temperature).toBe(17);
    expect(of(15).temperature).toBe(15);
    expect(of(30).temperature).toBe(30);
    expect(of(17, 23).temperature).toBe(23);
    expect(of(23, 17).temperature).toBe(23);
    expect(of(40, 14, 28).temperature).toBe(28);
  });

  it("is else 20 °C: a cure by heating or in the cold says nothing of days in a shop", () => {
    const room = { temperature: 20, from: { code: "source/usual-room", values: {}, known: "common practice" } };
    for (const degrees of [[], [14.9], [30.1], [60, 10]]) expect(of(...degrees)).toEqual(room);
    expect(referenceOf(undefined, adhesive())).toEqual(room);
    expect(referenceOf(procedure({ leastCure: undefined }), adhesive())).toEqual(room);
  });
});

it("A law names what it was fitted to", () => {
  const law = { energy: 1, least: undefined } as unknown as Parameters<typeof lawSource>[0];
  expect(lawSource({ ...law, from: "doubling" }, adhesive())).toEqual({
    code: "limit/doubling",
    values: {},
    from: { code: "source/doubling", values: {}, known: "common practice" },
  });
  for (const from of ["cure times", "working life"] as const)
    expect(lawSource({ ...law, from }, adhesive())).toEqual({
      code: "limit/sheet-times",
      values: { times: from },
      from: SHEET,
    });
});

describe("A sheet's own cure", () => {
  const of = (...degrees: number[]) => {
    const cure = sheetCure(cures(...degrees));
    return cure && [cure.row.temperature, cure.row.time, cure.reference, cure.time, cure.law.least];
  };
  const day = 86_400;

  it("is the row nearest to 20 °C, of two as near the warmer", () => {
    expect(of()).toBeUndefined();
    expect(of(25)).toEqual(["25 °C", "1 d", 25, day, 15]);
    expect(of(25, 22, 10)).toEqual(["22 °C", "2 d", 22, 2 * day, 15]);
    expect(of(15, 25)).toEqual(["25 °C", "2 d", 25, 2 * day, 15]);
    expect(of(25, 15)).toEqual(["25 °C", "1 d", 25, day, 15]);
    expect(of(21, 19, 20)).toEqual(["20 °C", "3 d", 20, 3 * day, 15]);
  });

  it("is no row by heating beside one that needs none, and of heating alone only heat counts", () => {
    expect(of(31, 2)).toEqual(["2 °C", "2 d", 2, 2 * day, 15]);
    expect(of(30)).toEqual(["30 °C", "1 d", 30, day, 15]);
    expect(of(30, 5)).toEqual(["30 °C", "1 d", 30, day, 15]);
    expect(of(31)).toEqual(["31 °C", "1 d", 31, day, 31]);
    expect(of(60, 40)).toEqual(["40 °C", "2 d", 40, 2 * day, 40]);
  });
});

it("The law of a cure is fitted to working lives of two parts alone: how long another glue stays open says nothing of it", () => {
  const workingLife = ["20", "30"].map((at, i) => ({ temperature: celsius(at), mass: g("100"), time: d(`${2 - i}`) }));
  const from = (kind: Adhesive["kind"]) => lawOf(adhesive({ kind, cure: [], workingLife })).from;
  expect(from("two-part")).toBe("working life");
  for (const kind of ["one-part", "powder-and-water", "applied-apart"] as const) expect(from(kind)).toBe("doubling");
});

it("The cure of each piece of a batch is reckoned from its own gluing to its own least and its own breaking, whatever was reckoned before", () => {
  const cool = batch("B-1", { temperature: celsius("17") });
  const made = () => recordIndexOf(glued([cool], []));
  const byDays = new Map(
    ["3", "5"].map((days) => [days, procedure({ leastCure: { time: d(days), temperature: celsius("20") } })]),
  );
  type Asked = readonly [days: string, glued?: number, brokenAt?: number];
  const ask = (index: ReturnType<typeof made>, [days, own, brokenAt]: Asked) => {
    const { readyAt, age } = cureOf(index, cool, byDays.get(days) ?? procedure({}), { glued: own, brokenAt });
    return [readyAt, age];
  };
  const [later, first, second] = [epochOf("2025-03-12"), epochOf("2025-03-20"), epochOf("2025-03-21")];
  const all: readonly Asked[] = [
    ["3"],
    ["5"],
    ["3", later],
    ["3"],
    ["3", undefined, first],
    ["3", undefined, second],
    ["3", later, first],
    ["5", later, first],
  ];
  const one = made();
  const together = all.map((asked) => ask(one, asked));
  expect(together).toEqual(all.map((asked) => ask(made(), asked)));
  expect(new Set(together.map(String)).size).toBe(all.length - 1);
});

it("What was reckoned of a piece is not reckoned again for another that was glued and broken with it", () => {
  const cool = batch("B-1", { temperature: celsius("17") });
  const index = recordIndexOf(glued([cool], []));
  const asked = procedure({ leastCure: { time: d("3"), temperature: celsius("20") } });
  const times = { glued: undefined, brokenAt: epochOf("2025-03-20") };
  expect(cureOf(index, cool, asked, times)).toBe(cureOf(index, cool, asked, { ...times }));
});

describe("The temperature that a record states", () => {
  it("is the one noted at gluing, else the least that the procedure asks", () => {
    const asks = procedure({ leastTemperature: celsius("16") });
    expect(statedWarmth(batch("B-1"), asks)).toEqual({
      code: "warmth/noted",
      values: { temperature: "20 °C" },
      temperature: 20,
    });
    const unnoted = batch("B-1", { temperature: undefined });
    expect(statedWarmth(unnoted, asks)).toEqual({
      code: "warmth/asked",
      values: { temperature: "16 °C" },
      temperature: 16,
    });
    expect([statedWarmth(unnoted, procedure()), statedWarmth(unnoted, undefined)]).toEqual([undefined, undefined]);
  });

  it("is an estimate only where that is less than what the procedure asks", () => {
    const about = (typed: string, least: number) =>
      batch("B-1", { temperature: { typed, about: { least, most: least + 2 }, unit: "°C", step: 0 } as Noted });
    const asks = procedure({ leastTemperature: celsius("16") });
    const asked = { code: "warmth/asked", values: { temperature: "16 °C" }, temperature: 16 };
    expect(statedWarmth(about("about 24 °C", 23), asks)).toEqual(asked);
    expect(statedWarmth(about("about 17 °C", 16), asks)).toEqual(asked);
    expect(statedWarmth(about("about 16 °C", 15), asks)).toEqual({
      code: "warmth/noted",
      values: { temperature: "about 16 °C" },
      temperature: 15,
    });
    expect(statedWarmth(about("about 24 °C", 23), procedure())).toBeUndefined();
  });

  it("is too cold to say when a piece will be ready only below what the sheet lets it cure at", () => {
    const readyBy = (degrees: string, sheet: Partial<Adhesive>) => {
      const cold = batch("B-1", { temperature: celsius(degrees) });
      const index = recordIndexOf(glued([cold], [], { adhesives: [adhesive(sheet)] }));
      return cureOf(index, cold, procedure(), { glued: undefined, brokenAt: undefined }).readyBy;
    };
    expect(readyBy("14", {})).toBe("too cold");
    expect(readyBy("15", {})).toBe("assumed");
    expect(readyBy("14", { temperature: undefined })).toBe("assumed");
    // Colder than anything can be: a slip, of which nothing is known.
    expect(readyBy("-300", { temperature: undefined })).toBe("unknown");
  });

  it("is for what is ahead the coolest of the last day that was logged since it was closed", () => {
    const index = (at: Parameters<typeof log>[3], hours: number) =>
      recordIndexOf({ ...glued([batch("B-1")], []), climate: [log("shop", DAY, hours, at)] });
    const cool = index((hour) => ({ temperature: hour === 30 ? 10 : hour === 70 ? 15 : 20 }), 80);
    const from = (hour: number) => epochOf(DAY) + hour * 3600;
    expect(lastLogged(cool, from(0))).toEqual({ code: "warmth/last-logged", values: { celsius: 15 }, temperature: 15 });
    expect(lastLogged(cool, from(75))?.temperature).toBe(20);
    expect(lastLogged(cool, from(80))?.temperature).toBe(20);
    expect(lastLogged(cool, from(80) + 1)).toBeUndefined();
    expect(lastLogged(recordIndexOf(glued([batch("B-1")], [])), from(0))).toBeUndefined();
  });
});

describe("The shop", () => {
  const at = (hour: number) => epochOf(DAY) + hour * 3600;
  const read = (entryId: string, from: string, to: string, least: string, greatest: string): Thermometer => ({
    place: { file: "made.md", line: 1, column: 1 },
    entry: entryId,
    from: moment(DAY, from),
    to: moment(DAY, to),
    least: celsius(least),
    greatest: celsius(greatest),
  });
  const LOG = log("shop", DAY, 24, () => ({ temperature: 20 }));
  const shop = new Shop([LOG], [read("noon", "10:00", "12:00", "5", "30"), read("noon", "10:00", "11:00", "6", "33")]);
  const warmth = (from: number, to: number) => {
    const found = shop.warmth(at(from), at(to));
    return found && [found.whole, found.known, found.least, found.greatest];
  };

  it("was as cold and as warm as the worse of logger and thermometer says", () => {
    expect(warmth(8, 9)).toEqual([true, 3600, 20, 20]);
    expect(warmth(11.5, 14)).toEqual([true, 2.5 * 3600, 5, 30]);
    expect(warmth(10.5, 10.6)?.slice(2)).toEqual([5, 33]);
    expect(warmth(14, 16)).toEqual([true, 7200, 20, 20]);
    expect([warmth(8, 10), warmth(12, 14)]).toEqual([
      [true, 7200, 20, 20],
      [true, 7200, 20, 20],
    ]);
    expect(warmth(-5, -4)).toBeUndefined();
    expect(warmth(20, 30)?.slice(0, 2)).toEqual([false, 4 * 3600]);
  });

  it("was between a logger that ended and a thermometer that began as the worse end of that says", () => {
    const ended = { ...log("shop", DAY, 3, () => ({ temperature: 20 })), gap: 20_000 };
    const two = new Shop([ended], [read("noon", "06:00", "07:00", "5", "33")]);
    expect(two.warmth(at(4), at(6))).toMatchObject({ whole: true, least: 5, greatest: 33 });
  });

  it("rests on logs and thermometers of then, both ends included, each entry once", () => {
    const rests = (from: number, to: number) => shop.restsOn(at(from), at(to));
    const [logged, noon] = [ref("climate log", "shop"), ref("entry", "noon")];
    expect(rests(8, 9)).toEqual([logged]);
    expect(rests(8, 10)).toEqual([logged, noon]);
    expect(rests(12, 13)).toEqual([logged, noon]);
    expect(rests(12.1, 13)).toEqual([logged]);
    expect(rests(-2, -1)).toEqual([]);
    expect(rests(-2, 0)).toEqual([logged]);
    expect(rests(24, 30)).toEqual([logged]);
    expect(rests(24.1, 30)).toEqual([]);
  });

  it("has a clock for each law and each temperature that it is counted at", () => {
    const [slow, fast] = [{ from: "doubling" } as const, { from: "doubling", least: 21 } as const];
    expect(shop.clock(slow, 20)).toBe(shop.clock(slow, 20));
    expect(shop.clock(slow, 20)).not.toBe(shop.clock(slow, 25));
    expect(shop.clock(slow, 20)).not.toBe(shop.clock(fast, 20));
  });

  it("is logged by either, and was last read when the last of them was", () => {
    expect(new Shop([], []).isLogged).toBe(false);
    expect(new Shop([LOG], []).isLogged).toBe(true);
    expect(new Shop([], [read("noon", "10:00", "12:00", "5", "30")]).isLogged).toBe(true);
    expect(new Shop([LOG], [read("noon", "10:00", "12:00", "5", "30")]).isLogged).toBe(true);
    expect([new Shop([LOG], []).lastRead, new Shop([], []).lastRead]).toEqual([at(24), undefined]);
  });
});

describe("When a joint has cured", () => {
  interface About {
    readonly structure?: JointSpec["structure"];
    readonly sheet?: Partial<Adhesive>;
    readonly batch?: Partial<Batch>;
    readonly procedures?: readonly Procedure[];
    readonly climate?: readonly ClimateLog[];
    readonly day?: string;
  }
  const CLOSED = epochOf(DAY, "14:20");
  /** Ages are found to the second. */
  const inMinutes = (seconds: number) => Math.floor(seconds / 60) * 60;
  const DAYS = 86_400;
  /** Seconds from closing on. */
  function of({
    structure = "primary",
    sheet = {},
    batch: change = {},
    procedures,
    climate = [],
    day = "2025-12-01",
  }: About) {
    const made = glued([batch("B-1", change)], [], {
      adhesives: [adhesive(sheet)],
      entries: [entry(`${day}-end`)],
      ...(procedures && { procedures }),
    });
    const index = recordIndexOf({ ...made, climate });
    const [one] = index.batches.values();
    if (!one) throw new Error("no batch");
    const { at, expected, assumed, shown, from, time, restsOn, limit } = jointCure(
      index,
      { ...joint("W-1"), structure },
      one,
    );
    expect(from).toBe(CLOSED);
    const since = (instant: number | undefined) => instant && inMinutes(instant - CLOSED);
    return {
      at: since(at),
      expected: since(expected),
      assumed: typeof assumed === "object" ? assumed.code : assumed,
      shown,
      time,
      restsOn,
      limit,
    };
  }
  const three = { time: 3 * DAYS, at: 3 * DAYS, expected: 3 * DAYS, shown: epochOf("2025-12-01") - CLOSED };
  const steady = [log("shop", DAY, 24 * 300, () => ({ temperature: 20 }))];
  const none = { temperature: undefined, cure: [] };
  const unnoted = { temperature: undefined };

  it("is not shown by what was noted where the sheet limits the cure, unless the joint is secondary", () => {
    const unshown = { at: undefined, expected: 3 * DAYS, assumed: undefined, shown: 0 };
    expect(of({})).toMatchObject(unshown);
    expect(of({ sheet: { ...none, cure: [{ temperature: celsius("20"), time: d("3") }] } })).toMatchObject(unshown);
    expect(of({ structure: undefined })).toMatchObject(unshown);
    expect(of({ structure: "secondary" })).toMatchObject({ ...three, assumed: "warmth/noted" });
    expect(of({ sheet: none })).toMatchObject({ ...three, assumed: "warmth/noted" });
  });

  it("is shown by the logger, on which it rests then", () => {
    expect(of({ climate: steady })).toMatchObject({
      ...three,
      assumed: undefined,
      restsOn: [ref("climate log", "shop")],
    });
    expect(of({ climate: steady, structure: "secondary" })).toMatchObject({ ...three, assumed: undefined });
    const gone = [log("shop", "2025-03-14", 240, () => ({ temperature: 20 }))];
    expect(of({ climate: gone, structure: "secondary" })).toMatchObject({
      ...three,
      assumed: "warmth/noted",
      restsOn: [],
    });
  });

  it("is a matter of days alone where the sheet limits nothing and nothing is known of the warmth", () => {
    expect(of({ sheet: none, batch: unnoted })).toMatchObject({ ...three, assumed: "days" });
    expect(of({ sheet: none, batch: unnoted, day: DAY }).shown).toBe(0);
    expect(of({ sheet: none, batch: unnoted, climate: steady })).toMatchObject({ ...three, assumed: undefined });
    const short = [log("shop", DAY, 38, () => ({ temperature: 20 }))];
    expect(of({ sheet: none, batch: unnoted, climate: short })).toMatchObject({ at: undefined, expected: 3 * DAYS });
    expect(of({ batch: unnoted })).toMatchObject({ at: undefined, expected: undefined });
  });

  it("asks for both the days and their worth, and tells no more than the days that have passed", () => {
    const warm = [log("shop", DAY, 24 * 300, () => ({ temperature: 28 }))];
    expect(of({ climate: warm }).at).toBe(3 * DAYS);
    expect(of({ climate: warm, day: "2025-03-12" }).shown).toBe(epochOf("2025-03-12") - CLOSED);
    const cold = [log("shop", DAY, 24 * 300, () => ({ temperature: 16 }))];
    expect(of({ climate: cold }).at).toBeGreaterThan(3 * DAYS);
    expect(of({ climate: cold, day: "2025-03-12" }).shown).toBeLessThan(epochOf("2025-03-12") - CLOSED);
  });

  it("is for the longest least cure of its pieces where the sheet says nothing, else for three days", () => {
    const procedures = [
      procedure({ id: "short", title: "Short", leastCure: { time: d("1") } }),
      procedure({ id: "long", title: "Long", leastCure: { time: d("5"), temperature: celsius("20") } }),
      procedure({ id: "silent", title: "Silent", leastCure: undefined }),
    ];
    const asked = (...names: string[]) => {
      const pieces = names.map((name, i) => piece("B-1", i + 1, { procedure: name }));
      const { time, limit } = of({ sheet: none, procedures, batch: { pieces } });
      expect(limit.code).toBe("limit/joint-cure");
      return [time / DAYS, limit.values, limit.from.code];
    };
    const long = [5, { time: "5 d", temperature: "20 °C" }, "source/procedure"];
    const usual = [3, { time: undefined, temperature: undefined }, "source/usual-cure"];
    expect(asked("short", "long", "silent")).toEqual(long);
    expect(asked("long", "silent", "short")).toEqual(long);
    expect(asked("short")).toEqual([1, { time: "1 d", temperature: undefined }, "source/procedure"]);
    expect(asked("short", "silent")).toEqual(usual);
    expect(asked("silent")).toEqual(usual);
    expect(asked()).toEqual(usual);
    const { limit } = of({ sheet: { cure: [{ temperature: celsius("20"), time: d("7") }] } });
    expect(limit).toEqual({ code: "limit/joint-cure", values: { time: "7 d", temperature: "20 °C" }, from: SHEET });
  });

  it("is told apart for a primary and a secondary joint of one batch", () => {
    const index = recordIndexOf(glued([batch("B-1"), batch("B-2")], [], { entries: [entry("2025-12-01-end")] }));
    const [one, two] = index.batches.values();
    if (!one || !two) throw new Error("no batch");
    const spec = joint("W-1");
    const [secondary, primary] = [
      jointCure(index, spec, one),
      jointCure(index, { ...spec, structure: "primary" }, one),
    ];
    expect([secondary.at, primary.at]).toEqual([CLOSED + 3 * DAYS, undefined]);
    expect(jointCure(index, spec, one)).toBe(secondary);
    expect(jointCure(index, spec, two).batch).toBe(two);
  });
});
