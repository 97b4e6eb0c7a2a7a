import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import { batch, DAY, entry, glued, piece, test } from "./make.ts";
import { type Case, fileOf, verdict, finding } from "./one-piece.ts";
import { celsius, d, mm, moment, newton, pc } from "./quantities.ts";

describe("The cure of a piece", () => {
  const broken = (day: string, time?: string) => ({ day, at: time === undefined ? undefined : moment(day, time) });

  it("counts from closing to breaking, and exactly the least cure is enough", () => {
    expect(verdict({ test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(verdict({ test: broken("2025-03-13", "14:19") })).toBe("too early");
    expect(fileOf({ test: broken("2025-03-13", "14:20") }).curedFor).toBe(3 * 86_400);
  });

  it("counts from the start of its day where a test has no time, from the end of its day where a batch has none", () => {
    expect(fileOf({ test: broken("2025-03-14") }).curedFor).toBe(3 * 86_400 + (9 * 60 + 40) * 60);
    expect(fileOf({ batch: { closed: undefined }, test: broken("2025-03-14", "12:00") }).curedFor).toBe(
      3 * 86_400 + 12 * 3600 + 1,
    );
    expect(verdict({ batch: { closed: undefined }, test: broken("2025-03-13", "23:00") })).toBe("too early");
    expect(verdict({ batch: { closed: undefined }, test: broken("2025-03-14") })).toBe("pass");
    expect(fileOf({ test: broken(DAY, "14:00") }).curedFor).toBe(0);
  });

  it("says which times it assumed", () => {
    const said = (c: Case) => finding(c, "full-cure")?.sentence;
    expect(said({ test: broken("2025-03-12", "14:20") })).toBe(
      "2 d passed between closing and breaking, and 3 d are asked: broken too early, it proves nothing.",
    );
    expect(said({ test: broken("2025-03-14") })).toBe(
      "3 d 9 h passed between closing and breaking, counted to the start of the day on which it was broken since no time is noted.",
    );
    expect(said({ batch: { closed: undefined }, test: broken("2025-03-15", "12:00") })).toBe(
      "4 d 12 h passed between closing and breaking, counted from the end of the day on which it was glued since no time is noted.",
    );
    expect(said({ batch: { closed: undefined }, test: broken("2025-03-15") })).toContain("since no times are noted.");
  });

  it("counts from its own gluing where that is noted, whether or not the cup's closing is", () => {
    const glued_ = { piece: { glued: moment(DAY, "14:10") }, test: broken("2025-03-15", "14:10") };
    for (const batch_ of [{}, { closed: undefined }])
      expect(finding({ ...glued_, batch: batch_ }, "full-cure")?.sentence).toBe(
        "5 d passed between gluing and breaking.",
      );
  });

  it("is held to three days, named as the program's default, where the procedure is silent", () => {
    expect(verdict({ procedure: { leastCure: undefined }, test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(verdict({ procedure: { leastCure: undefined }, test: broken("2025-03-13", "14:19") })).toBe("too early");
    expect(finding({ procedure: { leastCure: undefined } }, "full-cure")?.limit?.from.known).toBe("common practice");
    expect(
      finding({ procedure: { leastCure: { time: d("7"), temperature: celsius("20") } } }, "full-cure")?.limit,
    ).toEqual({ text: "at least 7 d of cure at 20 °C", from: { text: "procedure: Three legs", known: "record" } });
  });

  it("in a shop cooler than the least cure is for takes longer", () => {
    const leastCure = { time: d("3"), temperature: celsius("30") };
    const cool = (time: string) => ({ procedure: { leastCure }, test: broken("2025-03-16", time) });
    expect(verdict(cool("14:20"))).toBe("pass");
    expect(verdict(cool("14:19"))).toBe("too early");
    expect(finding(cool("14:19"), "full-cure")?.sentence).toBe(
      "5 d 23 h passed between closing and breaking, worth 2 d 23 h at 30.0 °C by the 20 °C noted when it was glued, assumed to have lasted, and 3 d are asked: broken too early, it proves nothing.",
    );
    expect(finding(cool("14:20"), "cure-warmth")).toMatchObject({
      severity: "meets",
      sentence:
        "What its days of cure are worth at 30.0 °C is reckoned with the rate doubling for every 10 K, from the 20 °C noted when it was glued.",
      limit: { from: { known: "common practice" } },
    });
  });

  it("in a shop so little cooler that nobody would tell the times apart is told without their worth", () => {
    const leastCure = { time: d("0.5"), temperature: celsius("20.02") };
    const told = (day: string, time: string) =>
      finding({ procedure: { leastCure }, test: broken(day, time) }, "full-cure")?.sentence;
    expect(told("2025-03-16", "14:50")).toBe("6 d passed between closing and breaking.");
    expect(told("2025-03-16", "14:20")).toContain("6 d passed between closing and breaking, worth 5 d 23 h at 20.0 °C");
    expect(told("2025-03-11", "10:50")).toContain("20 h 30 min passed between closing and breaking, worth 20 h 28 min");
  });

  it("in a shop warmer than the least cure is for takes no less", () => {
    const leastCure = { time: d("3"), temperature: celsius("10") };
    expect(verdict({ procedure: { leastCure }, test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(verdict({ procedure: { leastCure }, test: broken("2025-03-13", "14:19") })).toBe("too early");
    expect(finding({ procedure: { leastCure }, test: broken("2025-03-13", "14:19") }, "full-cure")?.sentence).toContain(
      "worth 5 d 23 h at 10.0 °C",
    );
  });

  it("of no known temperature counts by days, with a caution", () => {
    const unknown = {
      procedure: { leastCure: { time: d("3"), temperature: celsius("30") } },
      batch: { temperature: undefined },
    };
    expect(verdict({ ...unknown, test: broken("2025-03-13", "14:20") })).toBe("pass");
    expect(finding({ ...unknown, test: broken("2025-03-13", "14:20") }, "cure-warmth")).toMatchObject({
      severity: "caution",
      sentence: "No temperature of the cure is known, so only the days count; the least cure is for 30.0 °C.",
    });
    expect(
      verdict({
        ...unknown,
        procedure: { ...unknown.procedure, leastTemperature: celsius("20") },
        test: broken("2025-03-13", "14:20"),
      }),
    ).toBe("too early");
    expect(finding({ ...unknown, test: broken("2025-03-13", "14:20") }, "full-cure")?.sentence).toBe(
      "3 d passed between closing and breaking.",
    );
    expect(finding({ test: broken("2025-03-13", "14:20") }, "cure-warmth")).toBeUndefined();
  });
});

describe("Where a piece broke", () => {
  it("passes at exactly the procedure's share of wood failure and fails below it", () => {
    expect(verdict({ test: { woodFailure: pc("75") } })).toBe("pass");
    expect(verdict({ test: { woodFailure: pc("74") } })).toBe("fail");
    expect(verdict({ test: { failure: "mixed", woodFailure: pc("75") } })).toBe("pass");
    expect(verdict({ test: { failure: "mixed", woodFailure: pc("74") } })).toBe("fail");
  });

  it("is inconclusive for any share that no limit of the procedure says is enough", () => {
    const silent = { procedure: { woodFailure: undefined } };
    expect(verdict({ ...silent, test: { woodFailure: undefined } })).toBe("pass");
    expect(verdict({ ...silent, test: { woodFailure: pc("100") } })).toBe("pass");
    expect(verdict({ ...silent, test: { woodFailure: pc("99") } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { failure: "mixed", woodFailure: pc("90") } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { failure: "mixed", woodFailure: pc("100") } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { failure: "mixed", woodFailure: undefined } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { failure: "glue line" } })).toBe("fail");
    expect(finding({ ...silent }, "failure-mode")?.limit).toBeUndefined();
  });

  it("is told with what was noted and what is asked", () => {
    const said = (c: Case) => finding(c, "failure-mode")?.sentence;
    expect(said({})).toBe("It broke in the wood, 100 % wood failure.");
    expect(said({ test: { failure: "mixed", woodFailure: pc("60") } })).toBe(
      "It broke partly in the wood and partly in the glue line, 60 % wood failure, and the procedure asks at least 75 %.",
    );
    expect(said({ test: { failure: "glue line", woodFailure: undefined } })).toBe(
      "It broke in the glue line, which fails in any shape and after any cure.",
    );
    expect(said({ test: { woodFailure: undefined } })).toBe(
      "It broke in the wood, with no percentage noted, and the procedure asks at least 75 %.",
    );
    expect(said({ procedure: { woodFailure: undefined }, test: { failure: "mixed", woodFailure: undefined } })).toBe(
      "It broke partly in the wood and partly in the glue line, with no percentage noted.",
    );
    const silent = ", and the procedure does not say how much wood failure is enough.";
    expect(said({ procedure: { woodFailure: undefined }, test: { failure: "mixed", woodFailure: pc("90") } })).toBe(
      `It broke partly in the wood and partly in the glue line, 90 % wood failure${silent}`,
    );
    expect(said({ procedure: { woodFailure: undefined }, test: { woodFailure: pc("99") } })).toBe(
      `It broke in the wood, 99 % wood failure${silent}`,
    );
    expect(finding({}, "failure-mode")?.limit?.text).toBe("at least 75 % wood failure");
  });
});

describe("The load of a piece", () => {
  it("at exactly the stress asked is enough: 1,080 N over two faces of 6 × 15 mm is 6 MPa", () => {
    expect(verdict({ test: { load: newton("1080") } })).toBe("pass");
    expect(verdict({ test: { load: newton("1079") } })).toBe("inconclusive");
    expect(fileOf({ test: { load: newton("1080") } }).stress).toBeCloseTo(6e6, 3);
    expect(finding({ test: { load: newton("1079") } }, "piece-load")?.sentence).toBe(
      "1079 N put 5.99 MPa on the glue faces, less than 6 MPa: the wood gave way early and the glue line was not tried.",
    );
  });

  it("of a lap or block is carried by one face", () => {
    for (const form of ["single-lap", "block-shear"] as const) {
      expect(verdict({ procedure: { form }, test: { load: newton("540") } })).toBe("pass");
      expect(verdict({ procedure: { form }, test: { load: newton("539") } })).toBe("inconclusive");
      expect(fileOf({ procedure: { form } }).revealing).toBe(1);
      expect(fileOf({ procedure: { form }, test: { load: newton("540") } }).atMost).toBeCloseTo(6e6 / 7.92897e6, 5);
    }
  });

  it("without the sizes it takes is inconclusive where the procedure asks a stress", () => {
    expect(verdict({ piece: { width: undefined }, test: { load: newton("2000") } })).toBe("inconclusive");
    expect(finding({ piece: { width: undefined }, test: { load: newton("2000") } }, "piece-load")?.sentence).toBe(
      "2000 N was read, but without width it gives no stress.",
    );
    expect(finding({ piece: { width: mm("0.0") }, test: { load: newton("2000") } }, "piece-load")?.sentence).toBe(
      "2000 N was read, but without usable sizes it gives no stress.",
    );
    expect(
      finding({ piece: { width: undefined, overlap: undefined }, test: { load: newton("2000") } }, "piece-load")
        ?.sentence,
    ).toBe("2000 N was read, but without width and overlap it gives no stress.");
    const block = { form: "block-shear", overlap: undefined } as const;
    expect(verdict({ procedure: block, piece: { overlap: undefined }, test: { load: newton("2000") } })).toBe(
      "inconclusive",
    );
    expect(verdict({ procedure: block, piece: { overlap: undefined } })).toBe("inconclusive");
  });

  it("is asked for by nobody where the procedure gives no stress", () => {
    const silent = { procedure: { stress: undefined } };
    expect(verdict({ ...silent, test: { load: undefined } })).toBe("pass");
    expect(finding({ ...silent, test: { load: undefined } }, "piece-load")).toBeUndefined();
    expect(finding({ test: { load: undefined } }, "piece-load")).toMatchObject({
      severity: "unproven",
      sentence: "No load is noted, so the 6 MPa of the procedure could not be checked.",
    });
    expect(verdict({ test: { load: undefined } })).toBe("inconclusive");
  });

  it("at which no sound wood gives way, or which no leg could carry, proves nothing until it is explained", () => {
    const silent = { procedure: { stress: undefined } };
    expect(verdict({ ...silent, test: { load: newton("1") } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { load: newton("714") } })).toBe("pass");
    expect(verdict({ ...silent, test: { load: newton("713") } })).toBe("inconclusive");
    expect(verdict({ ...silent, test: { load: newton("1949") } })).toBe("pass");
    expect(verdict({ ...silent, test: { load: newton("1950") } })).toBe("inconclusive");
    expect(finding({ ...silent, test: { load: newton("1"), failure: "glue line" } }, "piece-load")).toBeUndefined();
    const block = { procedure: { stress: undefined, form: "block-shear" } } as const;
    expect(finding({ ...block, test: { load: newton("3000") } }, "piece-load")).toBeUndefined();
    expect(finding({ ...silent, test: { load: newton("3000") } }, "piece-load")?.severity).toBe("unproven");
    expect(finding({ ...silent, test: { load: newton("3000") } }, "piece-load")?.sentence).toBe(
      "3000 N would press the leg with 83.33 MPa, far above the 38.68 MPa at which its wood is crushed (this program's default: clear Sitka spruce at 12 %, Wood Handbook FPL-GTR-190): the load or its unit is noted wrong.",
    );
  });
});

describe("A piece", () => {
  it("that is said to have been broken twice keeps its graver verdict", () => {
    for (const order of [
      ["wood", "glue line"],
      ["glue line", "wood"],
    ] as const) {
      const tests = order.map((failure, i) => test("B-1/1", { failure }, `2025-03-2${i}`));
      expect(reckon(glued([batch("B-1")], tests)).pieces.get("B-1/1")?.verdict).toBe("fail");
    }
  });

  it("broken twice to the same end is told by its first test", () => {
    const tests = ["2025-03-20", "2025-03-21"].map((day) => test("B-1/1", { failure: "glue line" }, day));
    expect(reckon(glued([batch("B-1")], tests)).pieces.get("B-1/1")?.test?.day).toBe("2025-03-20");
  });

  it("from timber that nobody recalled carries none", () => {
    expect(fileOf({ piece: { lot: "S-1" } }).findings.map(({ rule }) => rule)).toEqual([
      "failure-mode",
      "full-cure",
      "overlap",
      "piece-load",
    ]);
  });

  it("from recalled timber carries a caution", () => {
    const recalls = [
      {
        place: { file: "", line: 1, column: 1 },
        entry: "2025-04-01-recall",
        day: "2025-04-01",
        lot: "S-1",
        why: "brash",
      },
    ];
    const made = glued([batch("B-1", { pieces: [piece("B-1", 1, { lot: "S-1" })] })], [test("B-1/1")], {
      entries: [entry("2025-04-01-recall", { recalls })],
    });
    const file = reckon(made).pieces.get("B-1/1");
    expect(file?.verdict).toBe("pass");
    expect(file?.findings.at(-1)).toMatchObject({
      rule: "piece-timber",
      severity: "caution",
      sentence: "It was made from lot S-1, recalled on 1 April 2025: brash.",
    });
  });

  it("rests on its batch and the entry it was glued in alone while it is not broken", () => {
    const { findings = [], ...file } = reckon(glued([batch("B-1")], [])).pieces.get("B-1/1") ?? {};
    expect(file).toMatchObject({ verdict: "not broken", curedFor: undefined, stress: undefined });
    expect(findings.map(({ rule }) => rule)).toEqual(["piece-broken", "overlap"]);
    for (const { restsOn } of findings)
      expect(restsOn).toEqual([
        { kind: "piece", id: "B-1/1" },
        { kind: "batch", id: "B-1" },
        { kind: "entry", id: "2025-03-10-glue" },
      ]);
  });

  it("rests on its batch, the entry it was glued in and the entry it was broken in", () => {
    for (const one of fileOf({}).findings) {
      expect(one.about).toEqual({ kind: "piece", id: "B-1/1" });
      expect(one.restsOn).toEqual([
        { kind: "piece", id: "B-1/1" },
        { kind: "batch", id: "B-1" },
        { kind: "entry", id: "2025-03-10-glue" },
        { kind: "entry", id: "2025-03-20-tests" },
      ]);
    }
  });
});
