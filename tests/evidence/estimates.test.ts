/** What is only estimated, taken from elsewhere, or late shows nothing: each rule of a batch and of a piece that says so. */
import { describe, expect, it } from "vitest";
import { byDefaultRule } from "../../src/evidence/batch/by-default.ts";
import { shopHumidity, shopTemperature } from "../../src/evidence/batch/climate.ts";
import { mixRatioRule, mixStanding } from "../../src/evidence/batch/mix-ratio.ts";
import { testPieces } from "../../src/evidence/batch/pieces.ts";
import { workingLifeRule } from "../../src/evidence/batch/working-life.ts";
import type { Finding } from "../../src/evidence/types.ts";
import type { Noted } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, batch, entry, glued, piece, procedure } from "./make.ts";
import { fileOf } from "./one-piece.ts";
import { asked, caseOf } from "./one-rule.ts";
import { celsius, g, min, mm, moment, pc, range } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

const about = (typed: string, least: number, most: number, unit: string): Noted => ({
  typed,
  about: { least, most },
  unit,
  step: 0.0001,
});
const limitOf = ({ limit }: Finding) => limit && [limit.code, limit.values, limit.from.code];

describe("What a batch has by default", () => {
  it("is told once for each entry that says what was in use, with what and whose", () => {
    const from = (day: string, what: string, more: object = {}) => ({ entry: `${day}-use`, what, ...more });
    const byDefault = [
      from("2025-03-01", "the adhesive"),
      from("2025-03-01", "the lot of resin", { lot: "R-1" }),
      from("2025-03-02", "the procedure", { piece: "B-1/1" }),
      from("2025-03-02", "the procedure", { piece: "B-1/2" }),
    ];
    const entries = ["2025-03-01", "2025-03-02"].map((day) => entry(`${day}-use`));
    expect(asked(byDefaultRule, { batch: { byDefault } as never, entries })).toEqual([
      [
        "caution by-default/in-use",
        { day: "2025-03-01", what: ["the adhesive", "the lot of resin"], pieces: [] },
        ["entry 2025-03-01-use", "lot R-1"],
      ],
      [
        "caution by-default/in-use",
        { day: "2025-03-02", what: ["the procedure"], pieces: ["B-1/1", "B-1/2"] },
        ["entry 2025-03-02-use", "piece B-1/1", "piece B-1/2"],
      ],
    ]);
    expect(asked(byDefaultRule, {})).toEqual([]);
  });
});

describe("What is only estimated of a batch", () => {
  it("of its air shows nothing, and says so with the limit", () => {
    const warmth = shopTemperature(
      caseOf({ batch: { temperature: about("about 20 °C", 19, 21, "°C"), surface: undefined } as never }),
    );
    expect(warmth.map((one) => [one.code, one.severity, one.values, limitOf(one)])).toEqual([
      [
        "shop-temperature/estimate",
        "unproven",
        { found: "about 20 °C" },
        ["limit/shop", { asked: "15 °C to 30 °C" }, "source/sheet"],
      ],
    ]);
    const damp = shopHumidity(caseOf({ batch: { humidity: about("about 50 %", 0.45, 0.55, "1") } as never }));
    expect(damp.map((one) => [one.code, one.severity, one.values, limitOf(one)])).toEqual([
      [
        "shop-humidity/estimate",
        "unproven",
        { found: "about 50 %" },
        ["limit/humidity", { asked: "at most 70 %" }, "source/sheet"],
      ],
    ]);
  });

  it("of its mix shows no ratio", () => {
    const found = mixRatioRule(
      caseOf({ batch: { resin: { lot: "R-1", mass: about("about 40 g", 0.0399, 0.0401, "kg") } } as never }),
    );
    expect(found.map((one) => [one.code, one.severity, limitOf(one)])).toEqual([
      [
        "mix-ratio/estimate",
        "unproven",
        ["limit/mix-ratio", { parts: ["resin", "hardener"], ratio: "100 : 50", tolerance: "5 %" }, "source/sheet"],
      ],
    ]);
    expect(found[0]?.values).toMatchObject({ estimates: ["about 40 g"] });
  });

  it("of the doubt of its scale has a limit of its own", () => {
    const doubt = (scale: Noted | undefined) => mixRatioRule(caseOf({ batch: { scale } as never }))[1];
    const limit = ["limit/mix-doubt", { tolerance: 0.05 }, "source/guarded-acceptance"];
    for (const [scale, code] of [
      [g("0.1"), "mix-doubt/within"],
      [g("5"), "mix-doubt/too-coarse"],
      [undefined, "mix-doubt/no-step"],
    ] as const) {
      const one = doubt(scale);
      expect([one?.code, one && limitOf(one)]).toEqual([code, limit]);
    }
    const off = mixRatioRule(caseOf({ batch: { hardener: { lot: "H-1", mass: g("20.99") } } as never }))[1];
    expect([off?.code, off && limitOf(off)]).toEqual(["mix-doubt/too-close", limit]);
  });

  it("stands to its sheet in one of seven ways", () => {
    const ratio = { tolerance: pc("5"), error: 0, doubt: 0.01, step: { value: 0.0001 }, estimates: [] };
    const stands = (change: object) => mixStanding({ ...ratio, ...change } as never);
    expect(stands({})).toBe("within");
    expect(stands({ tolerance: undefined })).toBe("no tolerance");
    expect(stands({ error: -0.051 })).toBe("outside");
    expect(stands({ estimates: ["about 40 g"] })).toBe("estimate");
    expect(stands({ doubt: undefined })).toBe("no step");
    expect(stands({ step: undefined })).toBe("no step");
    expect(stands({ error: 0.045 })).toBe("too close");
    expect(stands({ error: 0.045, doubt: 0.051 })).toBe("too coarse");
  });
});

describe("The working life of a batch", () => {
  const sheet = (change: object) => ({ adhesives: [adhesive(change as never)] });
  const row = (temperature: string, life: string, mass?: string) => ({
    temperature: celsius(temperature),
    time: min(life),
    ...(mass && { mass: g(mass) }),
  });
  const codes = (batch: object, change: object = {}) =>
    asked(workingLifeRule, { batch: batch as never, ...sheet(change) }).map(([code]) => code);
  const UNWEIGHED = { resin: { lot: "R-1" } };

  it("asks for a mass where the sheet's depends on it, and always of two parts", () => {
    const one = { kind: "one-part" };
    expect(codes(UNWEIGHED, { workingLife: [row("25", "30", "100")] })).toEqual(["unproven working-life/no-mass"]);
    expect(codes(UNWEIGHED, { workingLife: [row("15", "30")] })).toEqual(["unproven working-life/no-mass"]);
    expect(codes(UNWEIGHED, { ...one, workingLife: [row("15", "30", "100"), row("15", "20")] })).toEqual([
      "unproven working-life/no-mass",
    ]);
    expect(codes(UNWEIGHED, { ...one, workingLife: [row("15", "30")] })).toEqual(["unproven working-life/no-row"]);
    expect(codes(UNWEIGHED, { ...one, workingLife: [row("25", "30")] })).toEqual(["meets working-life/within"]);
  });

  it("says by what it was looked for where the sheet has none for so warm, and has its limit in every other case", () => {
    expect(asked(workingLifeRule, { batch: { temperature: celsius("31") } })[0]?.[1]).toMatchObject({
      temperature: "31 °C",
      mass: expect.closeTo(0.06, 9) as number,
    });
    const shop = {
      batch: { temperature: undefined } as never,
      climate: [log("shop", "2025-03-01", 24 * 30, () => ({ temperature: 31 }))],
    };
    expect(asked(workingLifeRule, shop)[0]?.[1]).toMatchObject({ temperature: "what the logger read" });
    const by = (change: object) => asked(workingLifeRule, { batch: change as never })[0]?.[1];
    const warm = {
      surface: celsius("31"),
      wood: celsius("30"),
      glueUp: { drop: [], beaded: [], resin: celsius("30.5") },
    };
    expect(by(warm)).toMatchObject({ temperature: "31 °C, as warm as the surfaces were" });
    expect(by({ ...warm, wood: celsius("32") })).toMatchObject({ temperature: "32 °C, as warm as the wood was" });
    expect(by({ ...warm, surface: undefined })).toMatchObject({ temperature: "30.5 °C, as warm as the resin was" });
    expect(by({ ...warm, temperature: celsius("31") })).toMatchObject({ temperature: "31 °C" });
    const limit = ["limit/working-life", { life: "30 min", mass: "100 g", temperature: "25 °C" }, "source/sheet"];
    const found = (change: object) =>
      workingLifeRule(caseOf({ batch: change as never })).map((one) => [one.code, limitOf(one)]);
    expect(found({})).toEqual([["working-life/within", limit]]);
    expect(found({ closed: moment("2025-03-10", "14:31") })).toEqual([["working-life/exceeded", limit]]);
    expect(found({ temperature: about("about 20 °C", 19, 21, "°C") })).toEqual([["working-life/estimate", limit]]);
  });
});

it("A working life is also told to be over where the clamps were tight after it, and decides nothing then", () => {
  const clamped = (on: string, change: object = {}) =>
    asked(workingLifeRule, {
      batch: { glueUp: { drop: [], beaded: [], on: moment("2025-03-10", on) }, ...change } as never,
    });
  expect(clamped("14:30").map(([code]) => code)).toEqual(["meets working-life/within"]);
  expect(clamped("14:31").slice(1)).toEqual([
    ["caution working-life/clamped-later", { began: "mixed", on: "14:31", waited: 31 * 60, life: "30 min" }, []],
  ]);
  expect(clamped("14:40", { closed: moment("2025-03-10", "14:31") }).map(([code]) => code)).toEqual([
    "rejects working-life/exceeded",
  ]);
});

describe("A test piece that was glued at a time of its own", () => {
  const rule = (one: object, more: object = {}) =>
    fileOf({ piece: one as never, ...more }).findings.find(({ rule: of }) => of === "piece-glued");
  const told = (one: ReturnType<typeof rule>) =>
    one && [one.code, one.severity, one.values, one.limit && [one.limit.code, one.limit.values]];
  const at = (time: string, day = "2025-03-10") => ({ glued: moment(day, time) });
  const limit = ["limit/working-life", { life: "30 min", mass: "100 g", temperature: "25 °C" }];
  const values = (glued: string, stood: number) => ({ began: "mixed", mixed: "14:00", glued, stood, life: "30 min" });

  it("was glued in the life of the cup, from its mixing on", () => {
    expect(told(rule(at("14:30")))).toEqual(["piece-glued/within", "meets", values("14:30", 1800), limit]);
    expect(told(rule(at("14:00")))).toEqual(["piece-glued/within", "meets", values("14:00", 0), limit]);
    expect(told(rule(at("14:31")))).toEqual(["piece-glued/too-late", "unproven", values("14:31", 1860), limit]);
    expect(told(rule(at("13:59")))).toEqual(["piece-glued/too-late", "unproven", values("13:59", -60), limit]);
    expect(fileOf({ piece: at("14:31") }).verdict).toBe("inconclusive");
    expect(rule({})).toBeUndefined();
  });

  it("is not known to have been where the cup's time or life is not, or is only estimated", () => {
    const unknown = ["piece-glued/not-known", "unproven", { glued: "14:20" }, undefined];
    expect(told(rule(at("14:20"), { batch: { mixed: undefined } }))).toEqual(unknown);
    expect(told(rule(at("14:20"), { batch: { temperature: undefined } }))).toEqual(unknown);
    expect(told(rule(at("14:20"), { batch: { temperature: about("about 20 °C", 19, 21, "°C") } }))).toEqual([
      ...unknown.slice(0, 3),
      limit,
    ]);
    expect(fileOf({ piece: at("14:20"), batch: { temperature: about("about 20 °C", 19, 21, "°C") } }).verdict).toBe(
      "inconclusive",
    );
  });

  it("too late makes a caution of its batch, which names it and rests on it", () => {
    const late = [{ code: "piece-glued/too-late", severity: "unproven", restsOn: [] }] as unknown as readonly Finding[];
    const unknown = [
      { code: "piece-glued/not-known", severity: "unproven", restsOn: [] },
    ] as unknown as readonly Finding[];
    const found = asked(testPieces, { pieces: [{ findings: late }, {}, { findings: unknown }] }).filter(([code]) =>
      code.endsWith("glued-late"),
    );
    expect(found).toEqual([
      [
        "caution test-pieces/glued-late",
        { pieces: ["B-1/1", "B-1/3"] },
        ["piece B-1/1", "entry 2025-03-20-tests", "piece B-1/3"],
      ],
    ]);
    expect(asked(testPieces, { pieces: [{}] }).filter(([code]) => code.endsWith("glued-late"))).toEqual([]);
  });
});

describe("What is only estimated of a broken piece", () => {
  const found = (of: string, change: object) => {
    const file = fileOf(change);
    return file.findings
      .filter(({ rule }) => rule === of)
      .map((one) => [one.code, one.severity, one.values, one.limit && [one.limit.code, one.limit.values]]);
  };
  const share = about("about 90 %", 0.85, 0.95, "1");

  it("of the wood shows no pass, with a limit and without", () => {
    expect(found("failure-mode", { test: { woodFailure: share } })).toEqual([
      [
        "failure-mode/estimate",
        "unproven",
        { failure: "wood", share: "about 90 %", asked: "75 %" },
        ["limit/wood-failure", { asked: "75 %" }],
      ],
    ]);
    const none = { procedure: { woodFailure: undefined } };
    expect(found("failure-mode", { test: { woodFailure: share, failure: "mixed" }, ...none })).toEqual([
      ["failure-mode/estimate", "unproven", { failure: "mixed", share: "about 90 %", asked: undefined }, undefined],
    ]);
    expect(found("failure-mode", { test: { woodFailure: share }, ...none })[0]?.[0]).toBe("failure-mode/no-limit");
    expect(found("failure-mode", { test: { woodFailure: about("about 100 %", 1, 1, "1") }, ...none })[0]?.[0]).toBe(
      "failure-mode/held",
    );
  });

  it("of the load shows no stress, and a stress that nobody can reckon shows none either", () => {
    const limit = ["limit/stress", { asked: "6 MPa" }];
    expect(found("piece-load", { test: { load: about("about 1260 N", 1250, 1270, "N") } })).toEqual([
      ["piece-load/estimate", "unproven", { load: "about 1260 N", asked: "6 MPa" }, limit],
    ]);
    expect(found("piece-load", { test: { load: undefined } })).toEqual([
      ["piece-load/not-read", "unproven", { asked: "6 MPa" }, limit],
    ]);
    expect(found("piece-load", { piece: { width: undefined } })).toEqual([
      ["piece-load/no-stress", "unproven", { load: "1260 N", missing: ["width"] }, limit],
    ]);
  });

  it("an overlap that asks for less than would show a weak glue line shows nothing, broken or not", () => {
    const short = { piece: { overlap: mm("40.0") }, procedure: { overlap: range("6 to 8 thicknesses", 6, 8) } };
    const [broken] = found("overlap", short);
    expect(broken?.slice(0, 2)).toEqual(["overlap/below-floor", "unproven"]);
    expect(broken?.[3]).toEqual(["limit/overlap", { asked: "6 to 8 thicknesses" }]);
    expect(broken?.[2]).toMatchObject({
      overlap: "40.0 mm",
      thickness: "6.0 mm",
      revealing: expect.any(Number) as number,
      floor: expect.any(Number) as number,
      wood: expect.anything() as unknown,
    });
  });
});

describe("A piece that nobody has broken", () => {
  const of = (rule: string, more: object) => {
    const made = glued(
      [
        batch("B-1", {
          pieces: [piece("B-1", 1, (more as { piece?: object }).piece)],
          ...(more as { batch?: object }).batch,
        }),
      ],
      [],
      { procedures: [procedure((more as { procedure?: object }).procedure)] },
    );
    const file = reckon(made).pieces.get("B-1/1");
    return [
      file?.verdict,
      ...(file?.findings ?? [])
        .filter((one) => one.rule === rule)
        .map((one) => [one.code, one.severity, one.limit?.code]),
    ];
  };

  it("has cautions and no verdict for what would show nothing", () => {
    const glued_ = { glued: moment("2025-03-10", "14:31") };
    expect(of("piece-glued", { piece: glued_ })).toEqual([
      "not broken",
      ["piece-glued/too-late", "caution", "limit/working-life"],
    ]);
    expect(
      of("piece-glued", { piece: { glued: moment("2025-03-10", "14:20") }, batch: { temperature: undefined } }),
    ).toEqual(["not broken", ["piece-glued/not-known", "caution", undefined]]);
    const long = { piece: { overlap: mm("40.0") }, procedure: { overlap: range("6 to 8 thicknesses", 6, 8) } };
    expect(of("overlap", long)).toEqual(["not broken", ["overlap/below-floor", "caution", "limit/overlap"]]);
  });

  it("waits too cold for ever in a shop below what its glue cures at, and is not known to where the sheet names none", () => {
    const ready = (temperature: string, sheet: object = {}) => {
      const made = glued([batch("B-1", { temperature: celsius(temperature) })], [], {
        adhesives: [adhesive(sheet as never)],
      });
      return reckon(made).pieces.get("B-1/1")?.cure.readyBy;
    };
    expect(ready("14")).toBe("too cold");
    expect(ready("15")).not.toBe("too cold");
    expect(ready("14", { temperature: undefined })).not.toBe("too cold");
  });
});
