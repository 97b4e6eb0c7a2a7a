import { describe, expect, it } from "vitest";
import { coatFiles } from "../../src/evidence/coats/coat.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { CoatFile, Finding } from "../../src/evidence/types.ts";
import type { ClimateLog, Coat, Entry, Finish, Lot, Noted } from "../../src/facts/types.ts";
import { type Hourly, log } from "./logs.ts";
import { entry, lot, record } from "./make.ts";
import { celsius, d, moment, pc, range } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const DAY = "2025-04-01";
const ID = `${DAY}-coat`;
const SHEET: Finish = {
  id: "clear",
  place,
  title: "Clear varnish",
  kind: "varnish",
  sheet: "Sheet C",
  temperature: range("15 to 30 °C", 15, 30),
  humidity: range("at most 70 %", undefined, 0.7),
  body: [],
};
const V1 = lot("V-1", { material: "finish", adhesive: undefined, finish: "clear", expiry: "2025-12-31" });

type Change = { readonly [key in keyof Coat]?: Coat[key] | undefined };
const coat = (change: Change = {}, day = DAY): Coat =>
  ({
    place,
    entry: `${day}-coat`,
    day,
    assembly: "wing",
    where: "Inside",
    finish: "clear",
    lots: ["V-1"],
    coat: 1,
    at: moment(day, "10:00"),
    temperature: celsius("20"),
    humidity: pc("50"),
    ...change,
  }) as Coat;

interface Build {
  readonly sheet?: Partial<Finish>;
  readonly lots?: readonly Lot[];
  readonly climate?: readonly ClimateLog[];
  readonly more?: readonly Entry[];
}

function filesOf(coats: readonly Coat[], { sheet, lots = [V1], climate = [], more = [] }: Build = {}): CoatFile[] {
  const ids = [...new Set(coats.map((one) => one.entry))];
  const entries = ids.map((id) => entry(id, { coats: coats.filter((one) => one.entry === id) }));
  const made = record({ finishes: [{ ...SHEET, ...sheet }], lots, entries: [...entries, ...more] });
  return coatFiles(recordIndexOf({ ...made, climate }));
}

const whole = ({ code, severity, values, limit, restsOn, about }: Finding) => ({
  code,
  severity,
  values,
  limit: limit && [limit.code, limit.values, limit.from.code],
  restsOn: restsOn.map(({ kind, id }) => `${kind} ${id}`),
  about: `${about.kind} ${about.id}`,
});
const of = (rule: string, { findings }: CoatFile) => findings.filter((one) => one.rule === rule).map(whole);
const SELF = `entry ${ID}`;
const said = (code: string, severity: string, values: object, limit?: readonly unknown[], ...alsoOn: string[]) => ({
  code,
  severity,
  values,
  limit,
  restsOn: [SELF, ...alsoOn],
  about: SELF,
});

describe("The air when a coat was put on", () => {
  const WARMTH = ["limit/shop", { asked: "15 to 30 °C" }, "source/sheet"];
  const DAMP = ["limit/humidity", { asked: "at most 70 %" }, "source/sheet"];
  const about = (typed: string, least: number, most: number): Noted =>
    ({ typed, about: { least, most }, unit: "°C", step: 0 }) as Noted;
  const logged = (at: Hourly) => [log("shop", "2025-03-30", 96, at)];
  /** Of its temperature alone; the shop as logged. */
  const air = (change: Change, at?: Hourly, sheet: Partial<Finish> = {}) =>
    filesOf([coat(change)], { sheet: { humidity: undefined, ...sheet }, ...(at && { climate: logged(at) }) })
      .flatMap((file) => of("coat-air", file))
      .filter(({ values }) => (values as { what: string }).what === "temperature");
  const SHOP = "climate log shop";

  it("is as the sheet asks, of both, at the very limits too", () => {
    const [file] = filesOf([coat({ temperature: celsius("15"), humidity: pc("70") })]);
    expect(file && of("coat-air", file)).toEqual([
      said("coat-air/within", "meets", { what: "temperature", found: "15 °C" }, WARMTH),
      said("coat-air/within", "meets", { what: "humidity", found: "70 %" }, DAMP),
    ]);
    expect(file?.verdict).toBe("shown");
  });

  it("is a caution where the sheet limits neither", () => {
    const [file] = filesOf([coat()], { sheet: { temperature: undefined, humidity: undefined } });
    expect(file && of("coat-air", file)).toEqual([
      said("coat-air/no-limits", "caution", { what: "temperature" }),
      said("coat-air/no-limits", "caution", { what: "humidity" }),
    ]);
  });

  it("is outside as noted below and above, by the worse end of a range, and by an estimate too", () => {
    const outside = (found: string) =>
      said("coat-air/outside", "rejects", { what: "temperature", found, asked: "15 to 30 °C" }, WARMTH);
    expect(air({ temperature: celsius("14") })).toEqual([outside("14 °C")]);
    expect(air({ temperature: celsius("31") })).toEqual([outside("31 °C")]);
    expect(air({ temperature: about("about 12 °C", 11, 13) })).toEqual([outside("about 12 °C")]);
    expect(filesOf([coat({ humidity: pc("71") })]).map(({ verdict }) => verdict)).toEqual(["rejected"]);
  });

  it("is shown by no estimate and by nothing that is not noted", () => {
    const values = { what: "temperature", found: "about 20 °C" };
    expect(air({ temperature: about("about 20 °C", 19, 21) })).toEqual([
      said("coat-air/estimate", "unproven", values, WARMTH),
    ]);
    expect(air({ temperature: undefined })).toEqual([
      said("coat-air/not-noted", "unproven", { what: "temperature" }, WARMTH),
    ]);
  });

  it("is as the logger read it where nothing or only an estimate is noted", () => {
    const found = [said("coat-air/logged", "meets", { what: "temperature", least: 20, greatest: 20 }, WARMTH, SHOP)];
    expect(air({ temperature: undefined }, () => ({ temperature: 20 }))).toEqual(found);
    expect(air({ temperature: about("about 20 °C", 19, 21) }, () => ({ temperature: 20 }))).toEqual(found);
  });

  it("is outside as the logger read it, whatever was noted, by the readings on both sides of the minute", () => {
    const at =
      (hour: number, temperature: number): Hourly =>
      (each) => ({ temperature: each === hour ? temperature : 16 });
    const outside = (least: number, greatest: number) =>
      said(
        "coat-air/logged-outside",
        "rejects",
        { what: "temperature", least, greatest, asked: "15 to 30 °C" },
        WARMTH,
        SHOP,
      );
    const near = { temperature: celsius("16") };
    expect(air(near, at(57, 14.5))).toEqual([outside(14.5, 16)]);
    expect(air(near, at(58, 14.5))).toEqual([outside(14.5, 16)]);
    expect(air(near, at(59, 14.5))).toEqual([outside(14.5, 16)]);
    expect(air(near, at(56, 14.5)).map(({ code }) => code)).toEqual(["coat-air/within"]);
    expect(air(near, at(60, 14.5)).map(({ code }) => code)).toEqual(["coat-air/within"]);
  });

  it("has two witnesses that differ by more than both explain", () => {
    const seen = (found: string, least: number) =>
      said("coat-air/witnesses", "caution", { what: "temperature", found, least, greatest: least }, WARMTH, SHOP);
    const codes = (typed: string, temperature: number) =>
      air({ temperature: celsius(typed) }, () => ({ temperature })).map(({ code }) => code);
    expect(air({ temperature: celsius("20") }, () => ({ temperature: 23 }))).toEqual([
      said("coat-air/within", "meets", { what: "temperature", found: "20 °C" }, WARMTH),
      seen("20 °C", 23),
    ]);
    expect(codes("20", 22)).toEqual(["coat-air/within"]);
    expect(codes("14", 20)).toEqual(["coat-air/outside", "coat-air/witnesses"]);
    expect(codes("20", 31)).toEqual(["coat-air/logged-outside", "coat-air/witnesses"]);
  });

  it("without a time of day is not shown where the logger went beyond the limits on that day, and no other", () => {
    const at =
      (hour: number): Hourly =>
      (each) => ({ temperature: each === hour ? 12 : 20 });
    const noTime = { at: undefined };
    expect(air(noTime, at(60))).toEqual([
      said(
        "coat-air/day-outside",
        "unproven",
        { what: "temperature", found: "20 °C", least: 12, greatest: 20, asked: "15 to 30 °C" },
        WARMTH,
        SHOP,
      ),
    ]);
    for (const hour of [40, 80]) expect(air(noTime, at(hour)).map(({ code }) => code)).toEqual(["coat-air/within"]);
    expect(air({ ...noTime, temperature: undefined }, at(60)).map(({ code }) => code)).toEqual(["coat-air/not-noted"]);
    expect(air({}, at(65)).map(({ code }) => code)).toEqual(["coat-air/within"]);
  });

  it("is looked at as damp too, by the logger of its time or its day", () => {
    const damp = (change: Change, at: Hourly) =>
      filesOf([coat(change)], { climate: logged(at) })
        .flatMap((file) => of("coat-air", file))
        .filter(({ values }) => (values as { what: string }).what === "humidity");
    const wet: Hourly = (hour) => ({ temperature: 20, humidity: hour === 58 ? 0.75 : 0.5 });
    expect(damp({}, wet)).toEqual([
      said(
        "coat-air/logged-outside",
        "rejects",
        { what: "humidity", least: 0.5, greatest: 0.75, asked: "at most 70 %" },
        DAMP,
        SHOP,
      ),
    ]);
    expect(damp({ at: undefined }, wet).map(({ code }) => code)).toEqual(["coat-air/day-outside"]);
    expect(damp({ humidity: undefined }, () => ({ temperature: 20, humidity: 0.6 }))).toEqual([
      said("coat-air/logged", "meets", { what: "humidity", least: 0.6, greatest: 0.6 }, DAMP, SHOP),
    ]);
  });

  it("is looked at for a minute about the time noted, and by readings no further away than the next", () => {
    const times = [-2, -1, 0, 1, 2].map((minutes) => moment(DAY, "10:00").epoch + 60 * minutes);
    const minutely = (cold: number): ClimateLog => ({
      ...log("shop", DAY, 0, () => undefined),
      times: Float64Array.from(times),
      temperatures: Float64Array.from(times, (_, at) => (at === cold ? 12 : 20)),
      humidities: Float64Array.from(times, () => 0.5),
    });
    const codes = (cold: number) =>
      filesOf([coat()], { climate: [minutely(cold)], sheet: { humidity: undefined } })
        .flatMap((file) => of("coat-air", file))
        .map(({ code }) => code);
    for (const beyond of [0, 4]) expect(codes(beyond)[0]).toBe("coat-air/within");
    for (const about_ of [1, 2, 3]) expect(codes(about_)[0]).toBe("coat-air/logged-outside");
  });

  it("of its day is the humidity's own and not the warmth's", () => {
    const wet: Hourly = (hour) => ({ temperature: 20, humidity: hour === 58 ? 0.75 : 0.5 });
    const [, damp] = filesOf([coat({ at: undefined })], { climate: logged(wet) }).flatMap((file) =>
      of("coat-air", file),
    );
    expect(damp?.values).toMatchObject({ what: "humidity", least: 0.5, greatest: 0.75 });
  });

  it("is not known by a logger that ends within its minute", () => {
    const ends = filesOf([coat({ temperature: undefined })], {
      climate: [log("shop", "2025-03-30", 58, () => ({ temperature: 20 }))],
    });
    expect(ends.flatMap((file) => of("coat-air", file)).map(({ code }) => code)[0]).toBe("coat-air/not-noted");
  });

  it("is known by no logger that has not all of its minute", () => {
    const gap: Hourly = (hour) => (hour > 55 && hour < 60 ? undefined : { temperature: 20, humidity: 0.5 });
    expect(air({ temperature: undefined }, gap).map(({ code }) => code)).toEqual(["coat-air/not-noted"]);
  });
});

describe("The lots of a coat", () => {
  const lots = (change: Change, build: Build = {}) =>
    filesOf([coat(change)], build).flatMap((file) => of("coat-lots", file));
  const NOTED = said("coat-lots/noted", "meets", { lots: ["V-1"] }, undefined, "lot V-1");

  it("are noted", () => {
    expect(lots({ lots: [] })).toEqual([said("coat-lots/not-noted", "unproven", { finish: "Clear varnish" })]);
  });

  it("are good up to their last day, and past it reject it", () => {
    const until = { lot: "V-1", used: DAY, until: DAY };
    expect(lots({}, { lots: [{ ...V1, expiry: DAY }] })).toEqual([
      NOTED,
      { ...said("coat-lots/good", "meets", until, undefined, "lot V-1"), limit: expect.any(Array) as unknown },
    ]);
    expect(lots({}, { lots: [{ ...V1, expiry: "2025-03-31" }] })).toEqual([
      NOTED,
      {
        ...said("coat-lots/past", "rejects", { ...until, until: "2025-03-31" }, undefined, "lot V-1"),
        limit: expect.any(Array) as unknown,
      },
    ]);
  });

  it("without a last day show nothing", () => {
    expect(
      lots({}, { lots: [lot("V-1", { ...V1, expiry: undefined, received: undefined } as unknown as Lot)] }),
    ).toEqual([NOTED, said("coat-lots/no-date", "unproven", { lot: "V-1" }, undefined, "lot V-1")]);
  });

  it("reject it when they are recalled", () => {
    const recalls = { place, entry: "2025-04-09-recall", day: "2025-04-09", lot: "V-1", why: "soft" };
    const more = [entry("2025-04-09-recall", { recalls: [recalls] })];
    expect(lots({}, { more }).at(-1)).toEqual(
      said(
        "coat-lots/recalled",
        "rejects",
        { lot: "V-1", day: "2025-04-09", why: "soft" },
        undefined,
        "lot V-1",
        "entry 2025-04-09-recall",
      ),
    );
  });
});

describe("The times of a coat", () => {
  const RECOAT = { recoat: { after: d("1"), within: d("3") } };
  const second = (day: string, change: Change = {}, sheet: Partial<Finish> = RECOAT) =>
    filesOf([coat(), coat({ coat: 2, ...change }, day)], { sheet }).flatMap((file) =>
      file.coat.coat === 2 ? of("coat-interval", file) : [],
    );
  const between = (least: number, greatest: number) => ({ coat: 2, least, greatest });
  const AFTER = ["limit/recoat-after", { asked: "1 d" }, "source/sheet"];
  const WITHIN = ["limit/recoat-within", { asked: "3 d" }, "source/sheet"];
  const H = 3600;
  const on = (day: string, one: ReturnType<typeof said>) => ({
    ...one,
    about: `entry ${day}-coat`,
    restsOn: [`entry ${day}-coat`, SELF],
  });

  it("after the one before it are as the sheet asks", () => {
    const day = "2025-04-02";
    expect(second(day)).toEqual([
      on(day, said("coat-interval/within", "meets", between(24 * H, 24 * H), AFTER)),
      on(day, said("coat-interval/within", "meets", between(24 * H, 24 * H), WITHIN)),
    ]);
    expect(second(day, {}, { recoat: { after: d("1") } })).toHaveLength(1);
    expect(second(day, {}, { recoat: { within: d("3") } })).toHaveLength(1);
    expect(second(day, {}, {})).toEqual([]);
  });

  it("are too soon and too late, and open where no time is noted", () => {
    const asked = { asked: "1 d" };
    expect(second("2025-04-02", { at: moment("2025-04-02", "09:00") })[0]).toEqual(
      on("2025-04-02", said("coat-interval/too-soon", "rejects", { ...between(23 * H, 23 * H), ...asked }, AFTER)),
    );
    expect(second("2025-04-04", { at: moment("2025-04-04", "11:00") })[1]).toEqual(
      on("2025-04-04", said("coat-interval/too-late", "rejects", { ...between(73 * H, 73 * H), asked: "3 d" }, WITHIN)),
    );
    expect(second("2025-04-02", { at: undefined })[0]).toEqual(
      on(
        "2025-04-02",
        said("coat-interval/not-known", "unproven", { ...between(14 * H, 38 * H - 1), ...asked }, AFTER),
      ),
    );
    expect(
      second("2025-04-02", { at: moment("2025-04-02", "09:00"), latest: moment("2025-04-02", "10:30").epoch })[0],
    ).toEqual(
      on("2025-04-02", said("coat-interval/not-known", "unproven", { ...between(23 * H, 24.5 * H), ...asked }, AFTER)),
    );
  });

  it("are unknown where the one before it is not in the record", () => {
    const [file] = filesOf([coat({ coat: 2 })], { sheet: RECOAT });
    expect(file && of("coat-interval", file)).toEqual([said("coat-interval/none-before", "unproven", { coat: 2 })]);
    expect(filesOf([coat()], { sheet: RECOAT }).flatMap((one) => of("coat-interval", one))).toEqual([]);
  });

  it("of drying have passed, or have not, or passed slowly", () => {
    const DRY = ["limit/drying", { asked: "2 d" }, "source/sheet"];
    const drying = (change: Change, last: string, sheet: Partial<Finish> = { dry: d("2") }) =>
      filesOf([coat(change)], { sheet, more: [entry(`${last}-last`)] })[0];
    const asked = { asked: "2 d" };
    const dried = drying({ at: moment(DAY, "00:00") }, "2025-04-03");
    expect(dried && of("coat-drying", dried)).toEqual([said("coat-drying/dried", "meets", asked, DRY)]);
    expect(dried?.dryFrom).toBe(moment("2025-04-03", "00:00").epoch);
    const wet = drying({ at: moment(DAY, "00:01") }, "2025-04-03");
    expect(wet && of("coat-drying", wet)).toEqual([said("coat-drying/drying", "waits", asked, DRY)]);
    expect(wet?.verdict).toBe("pending");
    const open = drying({}, "2025-04-03", {});
    expect(open && of("coat-drying", open)).toEqual([]);
    expect(open && "dryFrom" in open).toBe(false);
    const slow = drying({ dry: moment("2025-04-03", "10:01") }, "2025-04-05");
    expect(slow && of("coat-drying", slow)[1]).toEqual(
      said("coat-drying/slow", "caution", { ...asked, found: "10:01" }, DRY),
    );
    const inTime = drying({ dry: moment("2025-04-03", "10:00") }, "2025-04-05");
    expect(inTime && of("coat-drying", inTime)).toHaveLength(1);
  });
});

describe("A coat", () => {
  it("names the line by which it was taken off, and none where none was", () => {
    const [first, later] = filesOf([coat(), coat({ stripped: "sanded" }, "2025-04-05")]);
    expect(first?.off?.entry).toBe("2025-04-05-coat");
    expect(later && "off" in later).toBe(false);
  });

  it("is not shown, and says what of it was amended, and of no other", () => {
    const amendment = (fact: string) => ({
      place,
      entry: ID,
      by: "2025-04-09-amends",
      day: "2025-04-09",
      why: "misread",
      prose: false,
      withheld: false,
      changes: [
        {
          place,
          about: { kind: "entry", id: ID } as const,
          fact,
          value: "temperature",
          was: ["12 °C"],
          is: ["20 °C"],
          needs: [],
          audience: "public" as const,
        },
      ],
    });
    const amended = (fact: string) =>
      filesOf([coat()], { more: [entry("2025-04-09-amends", { amendments: [amendment(fact)] })] })[0]?.findings.filter(
        ({ rule }) => rule === "amended",
      );
    expect(amended("Coat: Inside")).toHaveLength(1);
    expect(amended("Coat: Outside")).toEqual([]);
  });
});
