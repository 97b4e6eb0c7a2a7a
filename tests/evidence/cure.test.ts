import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { Adhesive, Procedure } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, batch, glued, procedure, test } from "./make.ts";
import { type Case, reckoned, pieceOf, ofPiece, broken, steady } from "./one-cure.ts";
import { celsius, d, min, moment, g, range } from "./quantities.ts";

describe("Cure counted by the shop's logger", () => {
  it("goes by the logger and not by the temperature noted", () => {
    expect(
      pieceOf({ climate: steady(20), batch: { temperature: celsius("25") }, test: broken("2025-03-13", "14:20") })
        ?.verdict,
    ).toBe("pass");
    expect(
      pieceOf({ climate: steady(19.9), batch: { temperature: celsius("25") }, test: broken("2025-03-13", "14:20") })
        ?.verdict,
    ).toBe("too early");
    expect(
      pieceOf({ climate: steady(16), batch: { temperature: undefined }, test: broken("2025-03-13", "14:20") })?.verdict,
    ).toBe("too early");
  });

  it("halves with 10 K where the sheet gives no better law, and never makes up for days", () => {
    expect(pieceOf({ climate: steady(10), test: broken("2025-03-16", "14:20") })?.verdict).toBe("pass");
    expect(pieceOf({ climate: steady(10), test: broken("2025-03-16", "14:19") })?.verdict).toBe("too early");
    expect(pieceOf({ climate: steady(30), test: broken("2025-03-13", "14:19") })?.verdict).toBe("too early");
    expect(pieceOf({ climate: steady(30), test: broken("2025-03-13", "14:19") })?.cure.age).toBeCloseTo(
      2 * (3 * 86_400 - 60),
      3,
    );
  });

  it("goes by the sheet's cure times, else by its working life at one mass", () => {
    const cure = [
      { temperature: celsius("10"), time: d("9") },
      { temperature: celsius("20"), time: d("3") },
    ];
    expect(
      pieceOf({ climate: steady(10), adhesive: { cure }, test: broken("2025-03-19", "14:20") })?.cure.age,
    ).toBeCloseTo(3 * 86_400, 3);
    expect(pieceOf({ climate: steady(10), adhesive: { cure }, test: broken("2025-03-19", "14:19") })?.verdict).toBe(
      "too early",
    );
    expect(
      ofPiece({ climate: steady(10), adhesive: { cure }, test: broken("2025-03-19", "14:20") }, "cure-warmth"),
    ).toContain("with the rate by the sheet's cure times at several temperatures, from the shop's logger.");
    expect(pieceOf({ climate: [], batch: { temperature: undefined } })?.cure).toMatchObject({ warmth: "unknown" });
    const workingLife = [
      { temperature: celsius("10"), mass: g("300"), time: min("90") },
      { temperature: celsius("25"), mass: g("300"), time: min("30") },
    ];
    expect(ofPiece({ climate: steady(18), adhesive: { workingLife } }, "cure-warmth")).toContain(
      "with the rate by the sheet's working life at several temperatures, from the shop's logger.",
    );
  });

  it("takes of two readings the lower", () => {
    const swings = [log("shop", "2025-03-01", 24 * 30, (hour) => ({ temperature: hour % 2 === 0 ? 10 : 30 }))];
    expect(pieceOf({ climate: swings, test: broken("2025-03-16", "14:20") })?.cure.age).toBeCloseTo(3 * 86_400, 3);
  });

  it("names the limit, and where the temperature comes from that it is counted at", () => {
    const limit = (c: Case) => pieceOf(c)?.findings.find(({ rule }) => rule === "full-cure")?.limit;
    expect(limit({ climate: steady(20), procedure: { leastCure: { time: d("3") } } })).toEqual({
      text: "at least 3 d of cure, counted at 20.0 °C (this program's default, for want of a temperature in the procedure and the data sheet: 20 °C)",
      from: { text: "procedure: Three legs", known: "record" },
    });
    expect(limit({ climate: steady(20), procedure: { leastCure: undefined } })?.text).toMatch(
      /^at least 3 d of cure, counted at 20/u,
    );
    expect(limit({ climate: steady(20) })?.text).toBe("at least 3 d of cure at 20 °C");
    expect(
      limit({ climate: [], batch: { temperature: undefined }, procedure: { leastCure: { time: d("3") } } })?.text,
    ).toBe("at least 3 d of cure");
  });

  it("says what the days are worth and by what", () => {
    expect(ofPiece({ climate: steady(17), test: broken("2025-03-13", "14:20") }, "full-cure")).toBe(
      "unproven: 3 d passed between closing and breaking, worth 2 d 10 h at 20.0 °C by the shop's logger, and 3 d are asked: broken too early, it proves nothing.",
    );
    expect(pieceOf({ climate: steady(17) })?.findings.find((one) => one.rule === "full-cure")?.restsOn).toContainEqual({
      kind: "climate log",
      id: "shop",
    });
  });
});

describe("Cure below the sheet's least temperature", () => {
  it("counts for nothing, and from the least temperature on for what it is worth", () => {
    const age = (celsius: number) =>
      pieceOf({
        climate: steady(celsius),
        adhesive: { temperature: range("15 °C to 30 °C", 15, 30) },
        test: broken("2025-03-16", "14:20"),
      })?.cure.age;
    expect(age(14.9)).toBe(0);
    expect(age(15)).toBeCloseTo(6 * 86_400 * 2 ** -0.5, 3);
  });
});

describe("The logs that a cure rests on", () => {
  const warm = (id: string, from: number, to: number) =>
    log(id, "2025-03-01", 24 * 30, (hour) => (hour >= from && hour <= to ? { temperature: 20 } : undefined));
  const ids = (c: Case) =>
    pieceOf({ ...c, batch: { closed: moment("2025-03-10", "15:00"), ...c.batch } })?.cure.restsOn;
  const log1 = (id: string) => [{ kind: "climate log", id }];

  it("have readings between closing and breaking, both instants included, or on both sides", () => {
    const hours = (from: number, to: number) =>
      ids({ climate: [warm("one", from, to)], test: broken("2025-03-14", "15:00") });
    expect([hours(0, 230), hours(328, 400)]).toEqual([[], []]);
    expect([hours(0, 231), hours(327, 400), hours(280, 290), hours(0, 400)]).toEqual([
      log1("one"),
      log1("one"),
      log1("one"),
      log1("one"),
    ]);
  });

  it("reach until a piece that waits may be broken", () => {
    const cold = log("cold", "2025-03-01", 24 * 30, (hour) => (hour <= 303 ? { temperature: 10 } : undefined));
    const c: Case = { climate: [cold, warm("later", 350, 360)], test: "none" };
    expect(ids(c)).toEqual([...log1("cold"), ...log1("later")]);
    expect(pieceOf({ ...c, climate: [cold] })?.cure.readyBy).toBe("logged in part");
  });

  it("are those of the two weeks before, for the moisture of the wood", () => {
    const c = {
      climate: [warm("before", 0, 260), warm("after", 261, 400)],
      batch: { moisture: undefined, mixed: moment("2025-03-15", "01:00") },
    };
    const finding = reckoned(c)
      .batches.get("B-1")
      ?.findings.find(({ rule }) => rule === "wood-moisture");
    expect(finding?.sentence).toContain("by the logger's two weeks before");
    expect(finding?.restsOn.filter(({ kind }) => kind === "climate log")).toEqual([
      ...log1("before"),
      ...log1("after"),
    ]);
    const late = {
      ...c,
      batch: { moisture: undefined, mixed: moment("2025-03-26", "01:00") },
      climate: [warm("old", 0, 100), warm("before", 200, 700), warm("after", 701, 720)],
    };
    const latest = reckoned(late)
      .batches.get("B-1")
      ?.findings.find(({ rule }) => rule === "wood-moisture");
    expect(latest?.restsOn.filter(({ kind }) => kind === "climate log")).toEqual(log1("before"));
  });

  it("are told for each law apart, at one reference", () => {
    const row = (temperature: string, days: string) => ({ temperature: celsius(temperature), time: d(days) });
    const adhesives = [
      adhesive({ temperature: undefined, cure: [row("10", "9"), row("20", "3")] }),
      adhesive({ id: "slow", temperature: undefined, cure: [row("10", "6"), row("20", "3")] }),
      adhesive({ id: "plain", temperature: undefined }),
    ];
    const batches = ["resorcin", "slow", "plain"].map((id, i) => batch(`B-${i + 1}`, { adhesive: id }));
    const made = glued(
      batches,
      batches.map(({ id }) => test(`${id}/1`)),
      { adhesives, procedures: [procedure({ leastCure: { time: d("3"), temperature: celsius("20") } })] },
    );
    const { pieces } = reckon({ ...made, climate: steady(10) });
    const share = (id: string) => (pieces.get(`${id}/1`)?.cure.age ?? 0) / (pieces.get(`${id}/1`)?.curedFor ?? 1);
    expect(share("B-1")).toBeCloseTo(1 / 3, 9);
    expect(share("B-2")).toBeCloseTo(1 / 2, 9);
    expect(share("B-3")).toBeCloseTo(1 / 2, 9);
  });
});

describe("Gaps of the logger within a cure", () => {
  /** Two days without readings from the start of 12 March on; 10 °C at its first end. */
  const gap = (edge: number) => [
    log("shop", "2025-03-01", 24 * 30, (hour) =>
      hour > 264 && hour < 312 ? undefined : { temperature: hour === 264 ? edge : 20 },
    ),
  ];

  it("are filled by the temperature noted, and it is said", () => {
    const c = { climate: gap(20), test: broken("2025-03-13", "14:20") };
    expect(pieceOf(c)?.cure.warmth).toBe("logged in part");
    expect(pieceOf(c)?.verdict).toBe("pass");
    expect(ofPiece(c, "full-cure")).toContain(
      "by the shop's logger and, where it has a gap, at most the 20 °C noted when it was glued.",
    );
  });

  it("are worth no more than the readings at their ends", () => {
    expect(pieceOf({ climate: gap(10), test: broken("2025-03-14", "14:20") })?.verdict).toBe("too early");
    expect(
      pieceOf({ climate: gap(20), batch: { temperature: celsius("15") }, test: broken("2025-03-13", "14:20") })
        ?.verdict,
    ).toBe("too early");
  });

  it("are filled by the procedure's least temperature where none is noted, and count for nothing where there is none either", () => {
    const none = { climate: gap(20), batch: { temperature: undefined } };
    expect(
      pieceOf({ ...none, procedure: { leastTemperature: celsius("20") }, test: broken("2025-03-13", "14:20") })
        ?.verdict,
    ).toBe("pass");
    expect(pieceOf({ ...none, test: broken("2025-03-14", "14:20") })?.verdict).toBe("too early");
    expect(ofPiece({ ...none, test: broken("2025-03-14", "14:20") }, "full-cure")).toContain(
      "where it has a gap, nothing",
    );
    expect(pieceOf({ ...none, test: broken("2025-03-15", "14:20") })?.verdict).toBe("pass");
  });

  it("before and after all readings are the noted temperature's", () => {
    const early = [log("shop", "2025-03-01", 24 * 5, () => ({ temperature: 20 }))];
    expect(pieceOf({ climate: early, test: broken("2025-03-13", "14:20") })?.cure.warmth).toBe("assumed");
    expect(pieceOf({ climate: early, test: broken("2025-03-13", "14:20") })?.verdict).toBe("pass");
  });
});

describe("When a piece may be broken", () => {
  const wait = (c: Omit<Case, "test">) => ofPiece({ ...c, test: "none" }, "piece-broken");

  it("is when days and warmth have both got there, by the next full hour", () => {
    expect(wait({ climate: steady(20) })).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 13 March 2025, 15:00, by the shop's logger.",
    );
    expect(wait({ climate: steady(30) })).toContain("reached by 13 March 2025, 15:00");
    expect(wait({ climate: steady(10) })).toContain("reached by 16 March 2025, 15:00");
  });

  it("is ahead at the temperature noted, or the procedure's least, or that of the last day logged", () => {
    expect(wait({ climate: [] })).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 13 March 2025, 15:00, if the shop is at the 20 °C noted when it was glued.",
    );
    expect(
      wait({ climate: [], batch: { temperature: undefined }, procedure: { leastTemperature: celsius("10") } }),
    ).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 16 March 2025, 15:00, if the shop is at the 10 °C that the procedure asks at least.",
    );
    const twoDays = [log("shop", "2025-03-09", 24 * 2, (hour) => ({ temperature: hour === 30 ? 10 : 20 }))];
    expect(wait({ climate: twoDays, batch: { temperature: undefined } })).toContain(
      "by the shop's logger and, where it has no readings, at the 20.0 °C that the shop fell to when it was last logged.",
    );
    const coldAtLast = [log("shop", "2025-03-09", 24 * 2, (hour) => ({ temperature: hour === 48 ? 5 : 20 }))];
    expect(wait({ climate: coldAtLast, batch: { temperature: undefined } })).toContain(
      "at the 5.0 °C that the shop fell to",
    );
    const coldBefore = [log("shop", "2025-03-08", 24 * 4, (hour) => ({ temperature: hour < 70 ? 5 : 20 }))];
    expect(wait({ climate: coldBefore, batch: { temperature: undefined } })).toContain(
      "at the 20.0 °C that the shop fell to",
    );
    const coldWithin = [log("shop", "2025-03-09", 24 * 2, (hour) => ({ temperature: hour === 42 ? 8 : 20 }))];
    expect(wait({ climate: coldWithin, batch: { temperature: undefined } })).toContain(
      "at the 8.0 °C that the shop fell to",
    );
    expect(wait({ climate: [], batch: { temperature: undefined }, procedure: { leastCure: { time: d("0") } } })).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 10 March 2025, 15:00, by days alone, since no temperature is known.",
    );
    expect(wait({ climate: [], batch: { temperature: undefined } })).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 13 March 2025, 15:00, by days alone, since no temperature is known.",
    );
  });

  it("is ahead at the last reading where that stands alone, and by days where no reading comes after the joint was closed", () => {
    const alone = [
      log("shop", "2025-03-09", 24 * 4, (hour) =>
        hour <= 40 ? { temperature: 20 } : hour === 90 ? { temperature: 10 } : undefined,
      ),
    ];
    // Until 16:00 on the 10th 1 h 40 min at 20 °C, then at 10 °C: 1 h 40 min and twice the other 70 h 20 min.
    expect(wait({ climate: alone, batch: { temperature: undefined } })).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 16 March 2025, 13:00, by the shop's logger and, where it has no readings, at the 10.0 °C that the shop fell to when it was last logged.",
    );
    const until = (hour: number) => [log("shop", "2025-03-09", hour, () => ({ temperature: 10 }))];
    const closed = { temperature: undefined, closed: moment("2025-03-10", "15:00") };
    expect(wait({ climate: until(39), batch: closed })).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 16 March 2025, 15:00, if the shop is at the 10.0 °C that the shop fell to when it was last logged.",
    );
    expect(wait({ climate: until(38), batch: closed })).toBe(
      "waits: It has not been broken yet. Its least cure is reached by 13 March 2025, 15:00, by days alone, since no temperature is known.",
    );
    expect(pieceOf({ climate: until(38), batch: closed, test: "none" })?.cure.restsOn).toEqual([]);
  });

  it("is reckoned for broken pieces too, so that the verdict and the day agree", () => {
    for (const temperature of [12, 17.3, 20, 26]) {
      const { readyAt = 0 } = pieceOf({ climate: steady(temperature), test: "none" })?.cure ?? {};
      const at = (epoch: number) => ({
        day: new Date(epoch * 1000).toISOString().slice(0, 10),
        at: { typed: "", epoch },
      });
      expect(pieceOf({ climate: steady(temperature), test: at(Math.ceil(readyAt)) })?.verdict).toBe("pass");
      expect(pieceOf({ climate: steady(temperature), test: at(Math.floor(readyAt) - 2) })?.verdict).toBe("too early");
    }
  });
});

describe("The temperature that a least cure is counted at", () => {
  const reference = (cure: Adhesive["cure"], leastCure: Procedure["leastCure"]) =>
    pieceOf({ climate: [], adhesive: { cure }, procedure: { leastCure } })?.cure;
  const at = (...temperatures: string[]) =>
    temperatures.map((temperature) => ({ temperature: celsius(temperature), time: d("5") }));

  it("is the procedure's, else the sheet's nearest to 20 °C, else 20 °C", () => {
    expect(reference(at("25"), { time: d("3"), temperature: celsius("18") })).toMatchObject({
      reference: 18,
      referenceFrom: { known: "record" },
    });
    expect(reference(at("15", "23", "30"), { time: d("3") })).toMatchObject({
      reference: 23,
      referenceFrom: { code: "source/sheet", values: { sheet: "Resorcin data sheet, revision 4" } },
    });
    expect(reference(at("18", "22"), { time: d("3") })).toMatchObject({ reference: 22 });
    expect(reference(at("30"), { time: d("3") })).toMatchObject({ reference: 30 });
    expect(reference(at("60", "14.9", "30.1"), { time: d("3") })).toMatchObject({
      reference: 20,
      referenceFrom: { known: "common practice" },
    });
    expect(reference(at("15"), undefined)).toMatchObject({ reference: 15, least: 3 * 86_400 });
  });
});

describe("A piece that was broken before the sheet's own cure", () => {
  const cure = [
    { temperature: celsius("10"), time: d("14") },
    { temperature: celsius("20"), time: d("7") },
  ];
  const SAID =
    "caution: The sheet's own cure, 7 d at 20 °C, had not been reached yet: what it showed stands for its least cure.";
  const said = (c: Omit<Case, "climate">, climate = steady(20)) =>
    pieceOf({ climate, adhesive: { cure }, ...c })
      ?.findings.filter(({ code }) => code === "full-cure/before-sheet")
      .map(({ severity, sentence }) => `${severity}: ${sentence}`);

  it("passes, and says so until days and warmth have reached it", () => {
    const early = { test: broken("2025-03-17", "14:19") };
    expect(said(early)).toEqual([SAID]);
    expect(said({ test: broken("2025-03-17", "14:20") })).toEqual([]);
    expect(pieceOf({ climate: steady(20), adhesive: { cure }, ...early })?.verdict).toBe("pass");
    expect(said({ test: broken("2025-03-17", "14:20") }, steady(19))).toEqual([SAID]);
    expect(said(early, steady(30))).toEqual([SAID]);
  });

  it("says nothing of it where it was too early for its least cure, or where the sheet has no cure", () => {
    expect(said({ test: broken("2025-03-13", "14:19") })).toEqual([]);
    expect(said({ test: broken("2025-03-13", "14:20") })).toEqual([SAID]);
    expect(said({ test: broken("2025-03-13", "14:20"), adhesive: { cure: [] } })).toEqual([]);
  });

  it("is held against days alone where no temperature is known", () => {
    const none = { batch: { temperature: undefined } };
    expect(said({ ...none, test: broken("2025-03-17", "14:19") }, [])).toEqual([SAID]);
    expect(said({ ...none, test: broken("2025-03-17", "14:20") }, [])).toEqual([]);
  });

  it("names the sheet, and rests on the log", () => {
    const file = pieceOf({ climate: steady(20), adhesive: { cure }, test: broken("2025-03-14", "14:20") });
    const finding = file?.findings.find(({ code }) => code === "full-cure/before-sheet");
    expect(finding?.limit).toEqual({
      text: "7 d of cure at 20 °C before it may be loaded",
      from: { text: "Resorcin data sheet, revision 4", known: "record" },
    });
    expect(finding?.restsOn).toContainEqual({ kind: "climate log", id: "shop" });
  });

  it("is told of its batch where it passed and counts", () => {
    const told = (c: Omit<Case, "climate">) => {
      const file = reckoned({ climate: steady(20), adhesive: { cure }, ...c }).batches.get("B-1");
      return file?.findings
        .filter(({ code }) => code === "test-pieces/before-sheet")
        .map(({ severity, sentence, restsOn }) => [
          `${severity}: ${sentence}`,
          restsOn.some(({ id }) => id === "shop"),
        ]);
    };
    const early = broken("2025-03-17", "14:19");
    expect(told({ test: early })).toEqual([
      [
        "caution: B-1/1 passed after the least cure and before the sheet's own: that stands, and the joint waits for the sheet's.",
        true,
      ],
    ]);
    expect(told({ test: broken("2025-03-17", "14:20") })).toEqual([]);
    expect(told({ test: { ...early, failure: "glue line" } })).toEqual([]);
    expect(told({ test: { ...early, failure: "crushed" } })).toEqual([]);
  });
});
