import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { choose } from "../../src/reckoning/statistics/binomial-coefficient.ts";
import { fisherExact, type TwoByTwo } from "../../src/reckoning/statistics/fisher-exact.ts";
import { fisherTable } from "../../src/reckoning/statistics/fisher-table.ts";
import { apart, numbers, referenceRows } from "../reference/rows.ts";

const tables = fc
  .array(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 2, maxLength: 2 }), { minLength: 2, maxLength: 4 })
  .filter((rows) => rows.flat().some((n) => n > 0));
const fourfold = fc
  .tuple(...[0, 1, 2, 3].map(() => fc.integer({ min: 0, max: 12 })))
  .filter((cells) => cells.some((n) => n > 0));

describe("Fisher's exact test of two by two", () => {
  it("gives p 0.2429 one-sided for [[3,1],[1,3]] (R, fisher.test, seen)", () => {
    expect(
      fisherExact([
        [3, 1],
        [1, 3],
      ])?.greater,
    ).toBeCloseTo(0.2429, 4);
  });

  it("gives p 0.0005367 two-sided for [[2,15],[10,3]] (R, fisher.test, seen)", () => {
    expect(
      fisherExact([
        [2, 15],
        [10, 3],
      ])?.twoSided,
    ).toBeCloseTo(0.0005367, 7);
  });

  it("agrees with R's fisher.test on 300 random tables, all three ways", () => {
    const rows = referenceRows("fisher-exact");
    expect(rows).toHaveLength(300);
    for (const row of rows) {
      const [a = 0, b = 0, c = 0, d = 0] = ["a", "b", "c", "d"].map((name) => Number(row(name)));
      const p = fisherExact([
        [a, b],
        [c, d],
      ]);
      const off = [
        apart(p?.greater, Number(row("greater"))),
        apart(p?.less, Number(row("less"))),
        apart(p?.twoSided, Number(row("two_sided"))),
      ];
      expect(Math.max(...off), `${a} ${b} ${c} ${d}`).toBeLessThan(1e-8);
    }
  });

  it("changes its sides when rows or columns change places, and keeps its two-sided p", () => {
    fc.assert(
      fc.property(fourfold, ([a = 0, b = 0, c = 0, d = 0]) => {
        const p = fisherExact([
          [a, b],
          [c, d],
        ]);
        const turned: TwoByTwo[] = [
          [
            [c, d],
            [a, b],
          ],
          [
            [b, a],
            [d, c],
          ],
        ];
        for (const other of turned.map((table) => fisherExact(table))) {
          expect([other?.greater, other?.less, other?.twoSided]).toEqual([p?.less, p?.greater, p?.twoSided]);
        }
      }),
    );
  });

  it("never gives p below the chance of the table itself, nor above 1", () => {
    fc.assert(
      fc.property(fourfold, ([a = 0, b = 0, c = 0, d = 0]) => {
        const {
          greater = NaN,
          less = NaN,
          twoSided = NaN,
        } = fisherExact([
          [a, b],
          [c, d],
        ]) ?? {};
        const itself = greater + less - 1;
        for (const p of [greater, less, twoSided]) expect(p).toBeLessThanOrEqual(1);
        expect(twoSided).toBeGreaterThanOrEqual(itself - 1e-12);
        expect(twoSided).toBeGreaterThanOrEqual(Math.min(greater, less) - 1e-12);
      }),
    );
  });

  it("says at most as often as alpha that like preparations differ, by going through every outcome", () => {
    const chance = (x: number, n: number, p: number): number => Number(choose(n, x)) * p ** x * (1 - p) ** (n - x);
    for (const p of [0.1, 0.3, 0.5, 0.8]) {
      let wrong = 0;
      for (let x = 0; x <= 4; x += 1)
        for (let y = 0; y <= 5; y += 1)
          if (
            (fisherExact([
              [x, 4 - x],
              [y, 5 - y],
            ])?.twoSided ?? 1) <= 0.05
          )
            wrong += chance(x, 4, p) * chance(y, 5, p);
      expect(wrong).toBeLessThanOrEqual(0.05);
    }
  });

  it("gives 1 where a row or a column is empty, and nothing for what is no table of counts", () => {
    expect(
      fisherExact([
        [0, 0],
        [3, 2],
      ])?.twoSided,
    ).toBe(1);
    expect(
      fisherExact([
        [1, 0],
        [0, 0],
      ]),
    ).toEqual({ greater: 1, less: 1, twoSided: 1 });
    expect(
      fisherExact([
        [3, 0],
        [2, 0],
      ]),
    ).toEqual({ greater: 1, less: 1, twoSided: 1 });
    const bad: TwoByTwo[] = [
      [
        [0, 0],
        [0, 0],
      ],
      [
        [-1, 2],
        [3, 4],
      ],
      [
        [1.5, 2],
        [3, 4],
      ],
      [
        [NaN, 2],
        [3, 4],
      ],
      [
        [2001, 0],
        [0, 0],
      ],
    ];
    for (const table of bad) expect(fisherExact(table)).toBeUndefined();
    expect(
      fisherExact([
        [1000, 0],
        [0, 1000],
      ])?.twoSided,
    ).toBeLessThan(1e-250);
  });
});

describe("Fisher's exact test of any table", () => {
  it("agrees with R's fisher.test on 250 random tables of two to five rows and two or three columns", () => {
    const rows = referenceRows("fisher-table");
    expect(rows).toHaveLength(250);
    for (const row of rows) {
      const table = row("table").split(";").map(numbers);
      expect(apart(fisherTable(table), Number(row("p"))), row("table")).toBeLessThan(1e-7);
    }
  });

  it("is the two-sided test where the table is two by two", () => {
    fc.assert(
      fc.property(fourfold, ([a = 0, b = 0, c = 0, d = 0]) => {
        expect(
          fisherTable([
            [a, b],
            [c, d],
          ]),
        ).toBe(
          fisherExact([
            [a, b],
            [c, d],
          ])?.twoSided,
        );
      }),
    );
  });

  it("does not care for the order of rows or of columns, nor which way the table is turned", () => {
    fc.assert(
      fc.property(tables, fc.integer(), (table, turn) => {
        const p = fisherTable(table);
        const at = Math.abs(turn) % table.length;
        expect(fisherTable([...table.slice(at), ...table.slice(0, at)])).toBe(p);
        expect(fisherTable(table.map((row) => row.toReversed()))).toBe(p);
        const across = [0, 1].map((j) => table.map((row) => row[j] ?? 0));
        expect(fisherTable(across)).toBeCloseTo(p ?? NaN, 14);
      }),
      { numRuns: 60 },
    );
  });

  it("goes through 100,000 tables and refuses more", () => {
    // With these margins all rows but the last may be shared out in any way: a table for each choice of 0 to n from every one of them.
    const any = (...rows: number[]): number[][] => [
      ...rows.map((n) => [n, 0]),
      [0, rows.reduce((sum, n) => sum + n, 0)],
    ];
    expect(fisherTable(any(9, 9, 9, 9, 9))).toBeLessThan(1e-20);
    expect(fisherTable(any(9, 9, 9, 9, 10))).toBeUndefined();
  });

  it("takes from one piece to 2,000", () => {
    expect(
      fisherTable([
        [1, 0],
        [0, 0],
      ]),
    ).toBe(1);
    expect(fisherTable([[2000, 0]])).toBe(1);
    expect(fisherTable([[2001, 0]])).toBeUndefined();
  });

  it("gives nothing for what is no table of counts", () => {
    for (const table of [
      [],
      [[]],
      [[0, 0]],
      [[1, 2], [3]],
      [
        [1, -1],
        [2, 2],
      ],
      [
        [1.5, 1],
        [2, 2],
      ],
    ])
      expect(fisherTable(table)).toBeUndefined();
  });
});
