/** Parts bought in and what was weighed as left, each rule asked by itself. */
import { describe, expect, it } from "vitest";
import { allStood, recalledBy, stoodIn } from "../../src/evidence/lots/fitted.ts";
import { remainsOf } from "../../src/evidence/lots/remains.ts";
import { fittedLater, fittedNeed, fittedThen } from "../../src/evidence/readiness/fitted.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Batch, Component, Entry, Fitting, Lot, Noted, Recall, Record, Remainder } from "../../src/facts/types.ts";
import { adhesive, batch, entry, lot, record } from "./make.ts";
import { g, gcc, ml } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };

describe("A part bought in", () => {
  const fits = (day: string, ...lines: readonly Partial<Fitting>[]): Entry =>
    entry(`${day}-fits`, {
      fitted: lines.map((line) => ({
        place,
        entry: `${day}-fits`,
        day,
        assembly: "wing",
        where: "Bolt",
        lot: "BO-1",
        count: 1,
        ...line,
      })),
    });
  const recalls = (day: string, of = "BO-1"): Entry =>
    entry(`${day}-recalls`, { recalls: [{ place, entry: `${day}-recalls`, day, lot: of, why: "cracks" } as Recall] });
  const indexOf = (...entries: Entry[]) => recordIndexOf(record({ entries }));
  const NEXT = { lot: "BO-2", replaces: "BO-1" };

  it("stands until a later entry names its lot at its place", () => {
    const outs = (...entries: Entry[]) =>
      stoodIn(indexOf(...entries), "wing").map(({ fitting, out }) => [fitting.lot, out?.entry]);
    expect(outs(fits("2025-04-01", {}), fits("2025-04-03", NEXT))).toEqual([
      ["BO-1", "2025-04-03-fits"],
      ["BO-2", undefined],
    ]);
    expect(outs(fits("2025-04-01", {}, NEXT))).toEqual([
      ["BO-1", undefined],
      ["BO-2", undefined],
    ]);
    expect(
      outs(
        fits("2025-04-01", { lot: "BO-2", replaces: "BO-3" }),
        fits("2025-04-03", { lot: "BO-3", replaces: "BO-4" }),
      ),
    ).toEqual([
      ["BO-2", undefined],
      ["BO-3", undefined],
    ]);
    expect(outs(fits("2025-04-01", { lot: "BO-2", replaces: "BO-1" }), fits("2025-04-03", {}))).toEqual([
      ["BO-2", undefined],
      ["BO-1", undefined],
    ]);
    expect(stoodIn(indexOf(), "wing")).toEqual([]);
    expect(stoodIn(indexOf(fits("2025-04-01", {})), "fin")).toEqual([]);
    const [alone] = stoodIn(indexOf(fits("2025-04-01", {})), "wing");
    expect(alone).toEqual({ fitting: alone?.fitting, left: 1, replacedBy: [] });
  });

  it("of which there are several stands until as many took their place, the oldest first", () => {
    const outs = (...entries: Entry[]) =>
      stoodIn(indexOf(...entries), "wing").map(({ fitting, left, replacedBy, out }) => [
        fitting.lot,
        left,
        replacedBy.map(({ entry: id }) => id.slice(8, 10)),
        out?.entry.slice(8, 10),
      ]);
    const four = fits("2025-04-01", { count: 4 });
    const [two, more] = [fits("2025-04-02", { ...NEXT, count: 2 }), fits("2025-04-03", { ...NEXT, count: 3 })];
    expect(outs(four, two)[0]).toEqual(["BO-1", 2, ["02"], undefined]);
    expect(outs(four, two, more)[0]).toEqual(["BO-1", 0, ["02", "03"], "03"]);
    const again = fits("2025-04-01", { count: 2 });
    expect(outs(fits("2025-03-31", {}), again, two, more)).toEqual([
      ["BO-1", 0, ["02"], "02"],
      ["BO-1", 0, ["02", "03"], "03"],
      ["BO-2", 2, [], undefined],
      ["BO-2", 3, [], undefined],
    ]);
  });

  it("is listed assembly by assembly, of several entries", () => {
    const entries = [fits("2025-04-01", {}, { assembly: "fin", lot: "BO-9" }), fits("2025-04-03", NEXT)];
    expect(allStood(entries).map(({ fitting, out }) => [fitting.assembly, fitting.lot, out?.lot])).toEqual([
      ["wing", "BO-1", "BO-2"],
      ["wing", "BO-2", undefined],
      ["fin", "BO-9", undefined],
    ]);
  });

  it("is recalled while it stands there, as far as was said by then", () => {
    const index = indexOf(
      recalls("2025-03-01"),
      fits("2025-04-01", {}),
      recalls("2025-04-02"),
      fits("2025-04-03", NEXT),
    );
    const [first, second] = stoodIn(index, "wing");
    if (first === undefined || second === undefined) throw new Error("none");
    const days = (...of: Parameters<typeof recalledBy>) => recalledBy(...of).map(({ day }) => day);
    expect(days(index, first)).toEqual([]);
    // Places in the order of the record: recall, fitted, recall, replaced.
    expect(days(index, first, 0)).toEqual([]);
    expect(days(index, first, 1)).toEqual(["2025-03-01"]);
    expect(days(index, first, 2)).toEqual(["2025-03-01", "2025-04-02"]);
    expect(days(index, first, 3)).toEqual([]);
    expect(days(index, second)).toEqual([]);
  });

  it("that is recalled is a need, and was one when it was signed", () => {
    const stands = indexOf(fits("2025-04-01", {}), recalls("2025-04-02"));
    const values = { where: "Bolt", lot: "BO-1", day: "2025-04-02", why: "cracks" };
    const about = { kind: "lot", id: "BO-1" };
    const restsOn = [about, { kind: "entry", id: "2025-04-01-fits" }, { kind: "entry", id: "2025-04-02-recalls" }];
    expect(stoodIn(stands, "wing").flatMap((one) => fittedNeed(stands, one))).toEqual([
      {
        about,
        values: { ...values, count: 1, left: 1 },
        restsOn,
        code: "need/fitted-recalled",
        takes: { code: "take/replace-part", values: {} },
        blocks: true,
      },
    ]);
    expect(fittedThen(stands, stoodIn(stands, "wing"), 1)).toEqual([{}]);
    expect(fittedThen(stands, stoodIn(stands, "wing"), 0)).toEqual([]);
    const replaced = indexOf(fits("2025-04-01", {}), recalls("2025-04-02"), fits("2025-04-03", NEXT));
    expect(fittedThen(replaced, stoodIn(replaced, "wing"), 1)).toEqual([
      {
        need: {
          about,
          values,
          restsOn: [...restsOn, { kind: "entry", id: "2025-04-03-fits" }, { kind: "lot", id: "BO-2" }],
          code: "then/fitted-recalled",
          takes: { code: "take/look-again", values: {} },
          blocks: true,
        },
      },
    ]);
  });

  it("is told after a signature where its lot was recalled or another took its place since", () => {
    const index = indexOf(recalls("2025-03-01"), fits("2025-04-01", {}), recalls("2025-05-02"));
    const since =
      (day: string) =>
      ({ entry: id }: { readonly entry: string }) =>
        id > day;
    const told = (of: typeof index, day: string) => fittedLater(of, stoodIn(of, "wing"), since(day));
    const about = { kind: "lot", id: "BO-1" };
    expect(told(index, "2025-05-01")).toMatchObject([
      {
        fact: { entry: "2025-05-02-recalls" },
        change: {
          code: "change/fitted-recalled",
          values: { where: "Bolt", lot: "BO-1", day: "2025-05-02", why: "cracks" },
          about,
          restsOn: [about, { kind: "entry", id: "2025-05-02-recalls" }, { kind: "entry", id: "2025-04-01-fits" }],
        },
      },
    ]);
    const other = indexOf(fits("2025-04-01", {}), fits("2025-05-03", NEXT));
    expect(told(other, "2025-05-01")).toMatchObject([
      {
        fact: { entry: "2025-05-03-fits" },
        change: {
          code: "change/fitted",
          values: { where: "Bolt", lot: "BO-2", replaced: "BO-1", day: "2025-05-03" },
          about: { kind: "entry", id: "2025-05-03-fits" },
          restsOn: [
            { kind: "entry", id: "2025-05-03-fits" },
            { kind: "lot", id: "BO-2" },
            { kind: "lot", id: "BO-1" },
          ],
        },
      },
    ]);
    expect(told(other, "2025-05-04")).toEqual([]);
    expect(told(other, "2025-03-01")).toEqual([]);
  });
});

describe("What was weighed as left", () => {
  const came = (change: Partial<Lot> = {}): Lot => lot("R-1", { amount: g("1000"), ...change });
  const made = (density?: ReturnType<typeof gcc>): Record =>
    record({ adhesives: [adhesive({ density: density === undefined ? undefined : { resin: density } } as never)] });
  const left = (amount: Remainder["amount"], day = "2025-06-01"): Remainder => ({
    place,
    entry: `${day}-weighed`,
    day,
    lot: "R-1",
    amount,
  });
  const took = (id: string, day: string, resin: Component): Batch => batch(id, { resin }, day);
  const of = (mass: Noted): Component => ({ lot: "R-1", mass });
  const between = (least: number, most: number): Noted => ({ typed: "so", least, most, unit: "kg", step: 0.001 });
  const told = (one: Remainder, batches: readonly Batch[], of: Lot = came(), in_: Record = made()) =>
    remainsOf(in_, of, [one], batches).map(({ code, values, restsOn }) => [
      code.replace("stock/left-", ""),
      values,
      restsOn.map(({ id }) => id),
    ]);
  const values = (least: number, most: number, typed = "700 g") => ({
    lot: "R-1",
    day: "2025-06-01",
    left: typed,
    least: expect.closeTo(least, 9),
    most: expect.closeTo(most, 9),
    unit: "kg",
  });

  it("is asked of no lot of wood, and of none of which nothing was weighed", () => {
    expect(remainsOf(made(), came({ material: "timber" }), [left(g("700"))], [])).toEqual([]);
    expect(remainsOf(made(), came(), [], [took("B-1", "2025-05-01", of(g("300")))])).toEqual([]);
  });

  it("is held against what all batches up to that day took, in whatever order they stand", () => {
    const [first, second, third] = [
      took("B-1", "2025-05-01", of(g("100"))),
      took("B-2", "2025-05-20", of(g("200"))),
      took("B-3", "2025-07-01", of(g("400"))),
    ];
    const agrees = [["agrees", values(0.7, 0.7), ["R-1", "2025-06-01-weighed", "B-1", "B-2"]]];
    expect(told(left(g("700")), [first, second, third])).toEqual(agrees);
    expect(told(left(g("700")), [third, second, first])).toEqual(agrees);
    expect(told(left(g("700")), [first, took("B-2", "2025-06-01", of(g("200")))])).toEqual([
      ["agrees", values(0.7, 0.9), ["R-1", "2025-06-01-weighed", "B-1", "B-2"]],
    ]);
    expect(told(left(g("1000")), [])).toEqual([["agrees", values(1, 1, "1000 g"), ["R-1", "2025-06-01-weighed"]]]);
    expect(told(left(g("640")), [first, second])[0]?.[1]).toMatchObject({ where: "less" });
    expect(told(left(g("760")), [first, second])[0]?.[1]).toMatchObject({ where: "more" });
    expect(
      told(left(g("700")), [first, took("B-2", "2025-05-20", { lot: "R-2", mass: g("900") })])[0]?.[1],
    ).toMatchObject({ where: "less" });
  });

  it("is not known where a cup of it, or what came, is no one figure", () => {
    const unknown = (batches: readonly Batch[], lot_ = came(), in_ = made()) =>
      told(left(g("700")), batches, lot_, in_)[0]?.[0];
    expect(unknown([took("B-1", "2025-05-01", of(between(0.2, 0.4)))])).toBe("not-known");
    expect(unknown([took("B-1", "2025-05-01", of(between(0.3, 0.3)))])).toBe("agrees");
    expect(
      unknown([
        took(
          "B-1",
          "2025-05-01",
          of({ typed: "about 300 g", about: { least: 0.3, most: 0.3 }, unit: "kg", step: 0.001 }),
        ),
      ]),
    ).toBe("not-known");
    expect(unknown([took("B-1", "2025-05-01", { lot: "R-1" })])).toBe("not-known");
    expect(unknown([], came({ amount: ml("1000") }))).toBe("not-known");
    expect(unknown([], { ...came(), amount: undefined } as unknown as Lot)).toBe("not-known");
    expect(unknown([took("B-1", "2025-06-01", of(between(0.2, 0.4)))])).toBe("not-known");
    expect(unknown([took("B-1", "2025-06-02", of(between(0.2, 0.4)))])).toBe("differs");
  });

  it("is reckoned by the density of a sheet where cups were measured by volume", () => {
    const cup = [took("B-1", "2025-05-01", { lot: "R-1", volume: ml("250") })];
    expect(told(left(g("700")), cup, came(), made(gcc("1.2")))[0]?.[0]).toBe("agrees");
    expect(told(left(g("700")), cup)[0]?.[0]).toBe("not-known");
    expect(told(left(g("700")), cup, came({ adhesive: undefined } as never), made(gcc("1.2")))[0]?.[0]).toBe(
      "not-known",
    );
  });
});
