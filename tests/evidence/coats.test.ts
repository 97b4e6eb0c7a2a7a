import { describe, expect, it } from "vitest";
import type { ClimateLog, Coat, Entry, Finish, HoldKind, PlannedCoat } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { assembly, entry, holdPoint, joint, lot, LOTS, record } from "./make.ts";
import { celsius, d, moment, pc, range } from "./quantities.ts";
import { reckon } from "./reckoned.ts";
import { GLUED, signing, sound, TESTS } from "./signed.ts";

const place = { file: "", line: 1, column: 1 };
const SHEET: Finish = {
  id: "clear",
  place,
  title: "Clear varnish",
  kind: "varnish",
  sheet: "Sheet C",
  temperature: range("15 to 30 °C", 15, 30),
  humidity: range("at most 70 %", undefined, 0.7),
  recoat: { after: d("1"), within: d("3") },
  dry: d("2"),
  body: [],
};
const V1 = lot("V-1", { material: "finish", adhesive: undefined, finish: "clear", expiry: "2025-12-31" });

const coat = (day: string, change: Partial<Coat> = {}): Coat => ({
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
});
const puts = (day: string, ...changes: Partial<Coat>[]): Entry =>
  entry(`${day}-coat`, { coats: (changes.length === 0 ? [{}] : changes).map((change) => coat(day, change)) });
const recalls = (day: string): Entry =>
  entry(`${day}-recalls`, { recalls: [{ place, entry: `${day}-recalls`, day, lot: "V-1", why: "soft" }] });
const LAST = entry("2025-06-30-last");

interface Build {
  readonly sheet?: Partial<Finish>;
  readonly plan?: readonly PlannedCoat[];
  readonly kind?: HoldKind;
  readonly climate?: readonly ClimateLog[];
}

function evidenceOf(entries: readonly Entry[], { sheet, plan = [], kind = "covering", climate = [] }: Build = {}) {
  const wing = assembly("wing", {
    joints: [joint("W-1"), joint("W-2")],
    holdPoints: [holdPoint("CLOSE", { kind })],
    coats: plan,
  });
  const rib = assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")] });
  const fin = assembly("fin", { joints: [joint("F-1", "fin")] });
  const made = record({
    assemblies: [wing, rib, fin],
    finishes: [{ ...SHEET, ...sheet }],
    lots: [...LOTS, V1],
    entries: [GLUED, TESTS, LAST, ...entries],
  });
  return reckon({ ...made, climate });
}
const told = (entries: readonly Entry[], build: Build = {}) =>
  evidenceOf(entries, build).findings.flatMap(({ rule, severity, sentence }) =>
    rule.startsWith("coat") && severity !== "meets" ? [`${severity}: ${sentence}`] : [],
  );
function point(entries: readonly Entry[], build: Build = {}) {
  const file = evidenceOf(entries, build).holdPoints.get("CLOSE");
  return {
    state: file?.state,
    needs: file?.needs.map((need) => need.sentence),
    changes: file?.changes.map((one) => one.sentence),
  };
}

describe("A coat", () => {
  it("is held against its sheet, and tells what it was and what is asked", () => {
    expect(told([puts("2025-04-01")])).toEqual([]);
    expect(told([puts("2025-04-01", { temperature: celsius("14") })])).toEqual([
      "rejects: It was put on at a temperature of 14 °C; the sheet asks 15 to 30 °C.",
    ]);
    expect(told([puts("2025-04-01", { humidity: pc("80") })])).toEqual([
      "rejects: It was put on at a humidity of 80 %; the sheet asks at most 70 %.",
    ]);
    expect(told([puts("2025-04-01", { temperature: undefined } as unknown as Partial<Coat>)])).toEqual([
      "unproven: The temperature when it was put on is not noted, and no logger knows it.",
    ]);
    expect(told([puts("2025-04-01", { lots: [] })])).toEqual([
      "unproven: Of which lot the Clear varnish is, is not noted.",
    ]);
    expect(told([puts("2026-01-01")])).toContain(
      "rejects: Lot V-1 was put on on 1 January 2026 but was good only until 31 December 2025.",
    );
    expect(told([puts("2025-04-01"), recalls("2025-04-02")])).toEqual([
      "rejects: Lot V-1 was recalled on 2 April 2025: soft.",
    ]);
  });

  it("is outside by a logger that read so within its minute, though it has not all of that", () => {
    const until = (hour: number, temperature: number, humidity: number) =>
      told([puts("2025-04-01")], { climate: [log("shop", "2025-03-30", hour, () => ({ temperature, humidity }))] });
    expect(until(58, 12, 0.5)).toEqual([expect.stringMatching(/^rejects: .*12\.0 °C/u)]);
    expect(until(58, 20, 0.75)).toEqual([expect.stringMatching(/^rejects: .*75/u)]);
    expect(until(59, 12, 0.5)[0]).toMatch(/^rejects: .*12\.0 °C/u);
    expect([until(58, 20, 0.5), until(57, 12, 0.75)]).toEqual([[], []]);
  });

  it("is counted from the one before it there, by the worse end of what is noted", () => {
    const second = (day: string, change: Partial<Coat> = {}) =>
      told([puts("2025-04-01"), puts(day, { coat: 2, ...change })]);
    expect(second("2025-04-02")).toEqual([]);
    expect(second("2025-04-04")).toEqual([]);
    expect(second("2025-04-02", { at: moment("2025-04-02", "09:59") })).toEqual([
      "rejects: Coat 2 was put on 23 h 59 min after the one before it; the sheet asks for 1 d at least.",
    ]);
    expect(second("2025-04-04", { at: moment("2025-04-04", "10:01") })).toEqual([
      "rejects: Coat 2 was put on 3 d 1 min after the one before it; the sheet allows 3 d at most.",
    ]);
    expect(second("2025-04-02", { at: undefined } as unknown as Partial<Coat>)).toEqual([
      "unproven: Coat 2 was put on 14 h to 1 d 14 h after the one before it, as far as the times noted tell, which does not show the sheet's 1 d.",
    ]);
    expect(second("2025-04-02", { where: "Outside" })).toEqual([
      "unproven: Coat 1 is not noted, so nothing shows what coat 2 was put on, and how long after.",
    ]);
    expect(second("2025-04-02", { finish: "clear", assembly: "rib" })).toHaveLength(1);
  });

  it("waits while it dries, from the end of its day where no time is noted, and tells of one found dry too late", () => {
    const drying = "waits: The sheet's 2 d of drying have not passed by the day of the record.";
    expect(told([puts("2025-06-28", { at: moment("2025-06-28", "00:00") })])).toEqual([]);
    expect(told([puts("2025-06-28")])).toEqual([drying]);
    expect(told([puts("2025-06-27", { at: undefined } as unknown as Partial<Coat>)])).toEqual([]);
    expect(told([puts("2025-04-01", { dry: moment("2025-04-04", "10:00") })])).toEqual([
      "caution: It was found dry only at 10:00, later than the sheet's 2 d.",
    ]);
  });
});

describe("A hold point", () => {
  const BAD = puts("2025-04-01", { temperature: celsius("14") });
  const SAID =
    "Inside: coat 1 of Clear varnish is rejected. It was put on at a temperature of 14 °C; the sheet asks 15 to 30 °C.";

  it("is blocked by a coat of its assembly or of one within that is not as its sheet asks, whatever its kind", () => {
    expect(point([puts("2025-04-01")])).toMatchObject({ state: "ready", needs: [] });
    for (const kind of ["next skin", "close-up", "covering", "first load", "flight"] as const)
      expect(point([BAD], { kind })).toMatchObject({ state: "blocked", needs: [SAID] });
    expect(point([puts("2025-04-01", { lots: [], assembly: "rib" })]).state).toBe("blocked");
    expect(point([puts("2025-04-01", { lots: [], assembly: "fin" })]).state).toBe("ready");
  });

  it("waits for one that dries and for those that are planned, or that the sheet asks", () => {
    expect(point([puts("2025-06-29")])).toMatchObject({ state: "ahead" });
    expect(point([puts("2025-06-29")], { sheet: { kind: "dope" } }).state).toBe("ready");
    expect(point([puts("2025-04-01")], { sheet: { coats: 2 } })).toMatchObject({
      state: "ahead",
      needs: ["Inside: 1 of 2 coats of Clear varnish is noted."],
    });
    const plan = [{ where: "Inside", finish: "clear", coats: 2, before: "covering" }] as const;
    expect(point([], { plan })).toMatchObject({ needs: ["Inside: 0 of 2 coats of Clear varnish are noted."] });
    expect(point([], { plan, kind: "close-up" }).state).toBe("ready");
    expect(point([], { plan, kind: "flight" }).state).toBe("ahead");
    expect(point([puts("2025-04-01"), puts("2025-04-02", { coat: 2 })], { plan }).state).toBe("ready");
  });

  it("asks no more of a coat that was taken off, and of what is under one that was not", () => {
    const anew = (change: Partial<Coat>) => point([BAD, puts("2025-04-05", change)]).state;
    expect(anew({ stripped: "sanded" })).toBe("ready");
    expect(anew({ stripped: "sanded", where: "Outside" })).toBe("blocked");
    expect(anew({ coat: 2 })).toBe("blocked");
    expect(anew({ stripped: "sanded", lots: [] })).toBe("blocked");
  });

  it("that is signed tells what was open then, and what came later", () => {
    const at = signing();
    expect(point([BAD, puts("2025-05-06", { stripped: "sanded" }), at])).toMatchObject({
      state: "signed with things open",
      needs: ["Inside: coat 1 of Clear varnish was not as its sheet asks when it was signed.", expect.any(String)],
    });
    expect(point([puts("2025-04-30"), at])).toMatchObject({
      state: "signed with things open",
      needs: [
        "Inside: coat 1 of Clear varnish had not dried as its sheet asks yet when it was signed.",
        expect.any(String),
      ],
    });
    const two = { sheet: { coats: 2 } };
    expect(
      point([puts("2025-04-01"), puts("2025-05-02", { coat: 2 }), at], { ...two, sheet: { coats: 2, recoat: {} } }),
    ).toMatchObject({
      state: "signed with things open",
      needs: ["Inside: not all of 2 coats of Clear varnish were there yet when it was signed.", expect.any(String)],
    });
    expect(point([puts("2025-05-06"), at])).toMatchObject({ state: "passed", changes: [] });
    expect(point([puts("2025-05-06", { lots: [] }), at])).toMatchObject({
      state: "reopened",
      changes: [
        "Inside: coat 1 of Clear varnish was put on, and is not shown. Of which lot the Clear varnish is, is not noted.",
      ],
    });
    expect(point([puts("2025-04-01"), recalls("2025-05-06"), at])).toMatchObject({
      state: "reopened",
      changes: ["Inside: coat 1 of Clear varnish is of lot V-1, which was recalled on 6 May 2025: soft."],
    });
    expect(point([puts("2025-04-01"), puts("2025-05-06", { stripped: "sanded" }), at])).toMatchObject({
      state: "reopened",
      changes: ["Inside: coat 1 of Clear varnish was taken off on 6 May 2025: sanded."],
    });
  });
});

describe("A joint glued after something was put on its assembly", () => {
  const said = (change: Partial<Coat>, sheet: Partial<Finish> = {}, day = "2025-04-10") => {
    const glued = entry(`${day}-glue`, { batches: [sound("B-7", ["W-1"], day, { entry: `${day}-glue` })] });
    return evidenceOf([puts("2025-04-01", change), glued], { sheet })
      .joints.get("W-1")
      ?.findings.flatMap(({ rule, sentence }) => (rule === "coated-faces" ? [sentence] : []));
  };

  it("is a caution, unless something was kept bare, or it is cloth, or elsewhere, or later", () => {
    expect(said({})).toEqual([
      "Batch B-7 was glued on an assembly that had Clear varnish on it since 1 April 2025 (Inside), and nothing says that the glue faces were kept bare.",
    ]);
    expect(said({ bare: "margins" })).toEqual([]);
    expect(said({}, { kind: "fabric" })).toEqual([]);
    expect(said({ assembly: "rib" })).toEqual([]);
    expect(said({}, {}, "2025-03-30")).toEqual([]);
  });
});
