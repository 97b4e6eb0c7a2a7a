import { describe, expect, it } from "vitest";
import { batchCase } from "../../src/evidence/batch/case.ts";
import { woodMoisture } from "../../src/evidence/batch/moisture.ts";
import { lotStorage, serviceHeat } from "../../src/evidence/batch/storage.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Finding } from "../../src/evidence/types.ts";
import type { Adhesive, Batch, Noted } from "../../src/facts/types.ts";
import { equilibriumMoisture } from "../../src/reckoning/climate/equilibrium-moisture.ts";
import { type Hourly, log } from "./logs.ts";
import { adhesive, batch, DAY, entry, glued } from "./make.ts";
import { celsius, pc, range } from "./quantities.ts";

type Change = { readonly [key in keyof Batch]?: Batch[key] | undefined };
interface Shop {
  readonly from: string;
  readonly hours: number;
  readonly at: Hourly;
}

function caseOf(change: Change, sheet: Partial<Adhesive>, shop?: Shop, last = DAY) {
  const one = { ...batch("B-1"), ...change } as Batch;
  const made = glued([one], [], { adhesives: [adhesive(sheet)], entries: [entry(`${last}-zlast`)] });
  const climate = shop ? [log("shop", shop.from, shop.hours, shop.at)] : [];
  return batchCase(recordIndexOf({ ...made, climate }), one, []);
}
const told = (findings: readonly Finding[]) =>
  findings.map(({ code, severity, values, limit, restsOn }) => ({
    code,
    severity,
    values,
    limit: limit && [limit.code, limit.values, limit.from.code],
    restsOn: restsOn.map(({ kind, id }) => `${kind} ${id}`),
  }));
const SELF = ["batch B-1", `entry ${DAY}-glue`];
const SHOP = "climate log shop";
const said = (code: string, severity: string, values: object, limit: readonly unknown[], ...alsoOn: string[]) => ({
  code,
  severity,
  values,
  limit,
  restsOn: [...SELF, ...alsoOn],
});
const whole = (temperature: number, humidity = 0.5): Shop => ({
  from: "2025-02-20",
  hours: 24 * 40,
  at: () => ({ temperature, humidity }),
});

describe("The moisture of the wood", () => {
  const moisture = (...of: Parameters<typeof caseOf>) => told(woodMoisture(caseOf(...of)));
  const LIMIT = ["limit/wood-moisture", { asked: "8 % to 12 %" }, "source/sheet"];
  const about = (typed: string, least: number, most: number): Noted => ({
    typed,
    about: { least, most },
    unit: "1",
    step: 0.01,
  });
  const CLIMATE = { temperature: "20 °C", humidity: "50 %" };
  const settled = (temperature: number, humidity: number) => equilibriumMoisture(temperature, humidity) ?? Number.NaN;

  it("is as a meter read it, within and outside", () => {
    expect(moisture({}, {})).toEqual([said("wood-moisture/by-meter", "meets", { found: "10 %" }, LIMIT)]);
    const outside = (found: string, where: string) =>
      said("wood-moisture/by-meter-outside", "rejects", { found, where, asked: "8 % to 12 %" }, LIMIT);
    expect(moisture({ moisture: pc("13") }, {})).toEqual([outside("13 %", "above")]);
    expect(moisture({ moisture: pc("7") }, {})).toEqual([outside("7 %", "below")]);
  });

  it("is that of each part too, of which the one outside counts", () => {
    const parts = (...typed: string[]) => ({
      glueUp: { drop: [], beaded: [], parts: typed.map((one) => ({ lot: "S-1", moisture: pc(one) })) },
    });
    const outside = (found: string, where: string) =>
      said(
        "wood-moisture/part-outside",
        "rejects",
        { lot: "S-1", found, where, asked: "8 % to 12 %" },
        LIMIT,
        "lot S-1",
      );
    expect(moisture(parts("10", "18"), {})).toEqual([outside("18 %", "above")]);
    expect(moisture({ ...parts("7", "13"), moisture: undefined }, {})).toEqual([
      outside("7 %", "below"),
      outside("13 %", "above"),
    ]);
    expect(moisture({ ...parts("18"), moisture: pc("13") }, {}).map(({ code }) => code)).toEqual([
      "wood-moisture/by-meter-outside",
      "wood-moisture/part-outside",
    ]);
    expect(moisture(parts("8", "12"), {})).toEqual([said("wood-moisture/by-meter", "meets", { found: "10 %" }, LIMIT)]);
    const guess = about("about 14 %", 0.13, 0.15);
    expect(moisture({ glueUp: { drop: [], beaded: [], parts: [{ lot: "S-1", moisture: guess }] } }, {})).toEqual([
      outside("about 14 %", "above"),
    ]);
  });

  it("is held against the handbook where the sheet gives no range", () => {
    const limit = ["limit/wood-moisture", { asked: "8 % to 12 %" }, "source/wood-handbook-moisture"];
    const [found] = moisture({ moisture: pc("13") }, { woodMoisture: undefined });
    expect({ ...found, limit: found?.limit?.slice(0, 2) }).toEqual({
      ...said(
        "wood-moisture/by-meter-outside",
        "rejects",
        { found: "13 %", where: "above", asked: "8 % to 12 %" },
        limit.slice(0, 2),
      ),
    });
    expect(found?.limit?.[2]).not.toBe("source/sheet");
    for (const typed of ["8", "12"])
      expect(moisture({ moisture: pc(typed) }, { woodMoisture: undefined })[0]?.code).toBe("wood-moisture/by-meter");
    expect(moisture({ moisture: pc("7") }, { woodMoisture: undefined })[0]?.severity).toBe("rejects");
  });

  it("that is only estimated is told, and the climate is looked at beside it", () => {
    const guess = about("about 10 %", 0.09, 0.11);
    expect(moisture({ moisture: guess }, {})).toEqual([
      said("wood-moisture/estimate", "caution", { found: "about 10 %" }, LIMIT),
      said("wood-moisture/estimated", "unproven", { ...CLIMATE, shortLog: false, estimate: settled(20, 0.5) }, LIMIT),
    ]);
    expect(moisture({ moisture: about("about 14 %", 0.13, 0.15) }, {})[0]?.code).toBe("wood-moisture/by-meter-outside");
  });

  it("is what the climate would make of it, where a logger has the whole two weeks", () => {
    const none = { moisture: undefined };
    expect(moisture(none, {}, whole(20))).toEqual([
      said("wood-moisture/logged", "caution", { estimate: expect.closeTo(settled(20, 0.5), 9) }, LIMIT, SHOP),
    ]);
    expect(moisture(none, {}, whole(20, 0.8))).toEqual([
      said(
        "wood-moisture/logged-outside",
        "unproven",
        { estimate: expect.closeTo(settled(20, 0.8), 9), where: "above", asked: "8 % to 12 %" },
        LIMIT,
        SHOP,
      ),
    ]);
    expect(moisture(none, {}, whole(20, 0.2))[0]?.values).toMatchObject({ where: "below" });
  });

  it("is not known by a logger of less, which can still tell against it", () => {
    const none = { moisture: undefined };
    const short = (humidity: number): Shop => ({ ...whole(20, humidity), from: "2025-03-05" });
    expect(moisture(none, {}, short(0.5))).toEqual([
      said("wood-moisture/estimated", "unproven", { ...CLIMATE, shortLog: true, estimate: settled(20, 0.5) }, LIMIT),
    ]);
    expect(moisture(none, {}, short(0.8))).toEqual([
      said(
        "wood-moisture/logged-in-part",
        "unproven",
        { estimate: expect.closeTo(settled(20, 0.8), 9), where: "above", asked: "8 % to 12 %" },
        LIMIT,
      ),
    ]);
  });

  it("is not known without a climate, or by one that gives no moisture, and outside by one that is too damp", () => {
    const none = { moisture: undefined };
    const without = [said("wood-moisture/no-climate", "unproven", {}, LIMIT)];
    expect(moisture({ ...none, temperature: undefined }, {})).toEqual(without);
    expect(moisture({ ...none, humidity: undefined }, {})).toEqual(without);
    expect(moisture({ ...none, humidity: about("about 50 %", 0.5, 0.5) }, {})).toEqual(without);
    const damp = { ...CLIMATE, humidity: "80 %" };
    expect(moisture({ ...none, humidity: pc("80") }, {})).toEqual([
      said(
        "wood-moisture/estimated-outside",
        "unproven",
        { ...damp, shortLog: false, estimate: settled(20, 0.8), where: "above", asked: "8 % to 12 %" },
        LIMIT,
      ),
    ]);
  });
});

describe("How warm lots and joints were kept", () => {
  const STORAGE = range("10 °C to 25 °C", 10, 25);
  const storage = (change: Change, shop?: Shop, asked = STORAGE) =>
    told(lotStorage(caseOf(change, { storage: asked }, shop)));
  const LIMIT = (typed = STORAGE.typed) => ["limit/storage", { asked: typed }, "source/sheet"];
  const year = (at: Hourly, from = "2025-01-09", hours = 24 * 120): Shop => ({ from, hours, at });
  const colder = (hour: number, warmth: number): Shop => year((each) => ({ temperature: each === hour ? warmth : 20 }));
  const first = (...of: Parameters<typeof storage>) => storage(...of)[0];

  it("is as the sheet asks, at its limits too, of each lot", () => {
    const kept = (lot: string, least: number, greatest: number) =>
      said("lot-storage/kept", "meets", { lot, least, greatest }, LIMIT(), `lot ${lot}`, SHOP);
    expect(
      storage(
        {},
        year(() => ({ temperature: 20 })),
      ),
    ).toEqual([kept("R-1", 20, 20), kept("H-1", 20, 20)]);
    expect(first({}, colder(500, 10))).toEqual(kept("R-1", 10, 20));
    expect(first({}, colder(500, 25))).toEqual(kept("R-1", 20, 25));
    expect(first({ hardener: { mass: undefined } } as Change, colder(500, 25))).toEqual(kept("R-1", 20, 25));
  });

  it("is a caution where the shop went beyond either limit before it was mixed, or before the end of that day", () => {
    const outside = (where: string, found: number, limit: number) =>
      said("lot-storage/outside", "caution", { lot: "R-1", where, found, limit }, LIMIT(), "lot R-1", SHOP);
    expect(first({}, colder(500, 9))).toEqual(outside("below", 9, 10));
    expect(first({}, colder(500, 26))).toEqual(outside("above", 26, 25));
    // Hours from 9 January: the lots came 24 h later, and it was mixed on 10 March at 14:00.
    const mixed = 60 * 24 + 14;
    expect(first({}, colder(23, 9))?.code).toBe("lot-storage/kept");
    expect(first({}, colder(24, 9))?.code).toBe("lot-storage/outside");
    expect(first({}, colder(mixed, 9))?.code).toBe("lot-storage/outside");
    expect(first({}, colder(mixed + 1, 9))?.code).toBe("lot-storage/kept");
    expect(first({ mixed: undefined, closed: undefined }, colder(mixed + 9, 9))?.code).toBe("lot-storage/outside");
    expect(first({ mixed: undefined }, colder(mixed + 9, 9))?.code).toBe("lot-storage/kept");
  });

  it("has one limit where the sheet gives one", () => {
    const only = (least?: number, most?: number) => ({ typed: "so", least, most });
    const codes = (warmth: number, least?: number, most?: number) =>
      first({}, colder(500, warmth), only(least, most))?.code;
    expect(codes(9, undefined, 25)).toBe("lot-storage/kept");
    expect(codes(26, undefined, 25)).toBe("lot-storage/outside");
    expect(codes(26, 10)).toBe("lot-storage/kept");
    expect(codes(9, 10)).toBe("lot-storage/outside");
  });

  it("is not known where nothing or not all was logged, and not asked of a batch in no joint or by a silent sheet", () => {
    expect(first({})).toEqual(said("lot-storage/not-known", "caution", { lot: "R-1" }, LIMIT(), "lot R-1"));
    expect(
      first(
        {},
        year(() => ({ temperature: 20 }), "2025-02-01"),
      ),
    ).toEqual(
      said("lot-storage/kept-in-part", "caution", { lot: "R-1", least: 20, greatest: 20 }, LIMIT(), "lot R-1", SHOP),
    );
    expect(storage({ joints: [] }, whole(20))).toEqual([]);
    expect(told(lotStorage(caseOf({}, {}, whole(20))))).toEqual([]);
  });

  it("is looked at after the cure too, up to the day before the last, against what the sheet bears", () => {
    const LAST = "2025-03-20";
    const heat = (shop?: Shop, change: Change = {}, sheet: Partial<Adhesive> = { service: celsius("40") }) =>
      told(serviceHeat(caseOf(change, sheet, shop, LAST)));
    const limit = ["limit/service", { asked: "40 °C" }, "source/sheet"];
    const values = { greatest: 40, asked: "40 °C" };
    const warmer = (hour: number, warmth: number): Shop => ({
      from: DAY,
      hours: 24 * 20,
      at: (each) => ({ temperature: each === hour ? warmth : 20 }),
    });
    expect(heat(warmer(48, 40))).toEqual([said("service-heat/below", "meets", values, limit, SHOP)]);
    expect(heat(warmer(48, 41))).toEqual([
      said("service-heat/above", "caution", { greatest: 41, asked: "40 °C", limit: 40 }, limit, SHOP),
    ]);
    expect(heat(warmer(13, 50))[0]?.code).toBe("service-heat/below");
    expect(heat(warmer(242, 50))[0]?.code).toBe("service-heat/below");
    expect(heat({ ...warmer(48, 40), hours: 100 })).toEqual([
      said("service-heat/below-in-part", "caution", values, limit, SHOP),
    ]);
    expect(heat()).toEqual([]);
    expect(heat(warmer(48, 50), { joints: [] })).toEqual([]);
    expect(heat(warmer(48, 50), {}, {})).toEqual([]);
  });
});
