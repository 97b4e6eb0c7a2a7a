import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { activationEnergy, GAS_CONSTANT } from "../../src/reckoning/cure/activation-energy.ts";
import { cureLaw, cureRate, type CureLaw } from "../../src/reckoning/cure/cure-rate.ts";
import { KELVIN } from "../../src/facts/quantity/conversions.ts";

const DAY = 86_400;
const arrhenius = (energy: number): CureLaw => ({ energy, from: "cure times" });
const doubling: CureLaw = { from: "doubling" };

/** In the unit of the times, summed here by the definition. */
const equivalentAge = (
  stretches: readonly { readonly temperature: number; readonly time: number }[],
  by: CureLaw,
  reference: number,
): number =>
  stretches.reduce((age, one) => age + (cureRate(by, one.temperature, reference) ?? Number.NaN) * one.time, 0);

const temperature = fc.double({ min: -10, max: 60, noNaN: true });
const time = fc.double({ min: 0, max: 30 * DAY, noNaN: true });
const law = fc.oneof(fc.constant(doubling), fc.double({ min: 20_000, max: 120_000, noNaN: true }).map(arrhenius));

describe("Equivalent age", () => {
  it("agrees with EN 1992-1-1 eq. B.10 over a week of changing days", () => {
    // exp(13.65 − 4000/(273 + T)) is the rate for Ea/R = 4000 K about 4000/13.65 K; that standard rounds 0 °C to 273 K.
    const shift = 273 - KELVIN;
    const reference = 4000 / 13.65 - KELVIN;
    const days = [
      [19, 1],
      [20, 2],
      [20, 1],
      [21, 1],
      [22, 1],
      [23, 2],
    ] as const;
    const stretches = days.map(([celsius, time]) => ({ temperature: celsius + shift, time }));
    expect(equivalentAge(stretches, arrhenius(4000 * GAS_CONSTANT), reference)).toBeCloseTo(8.3799, 4);
    expect(
      equivalentAge([{ temperature: 20 + shift, time: 1 }], arrhenius(4000 * GAS_CONSTANT), reference),
    ).toBeCloseTo(0.9981, 4);
  });

  it("is the time itself at the reference temperature", () => {
    fc.assert(
      fc.property(temperature, time, law, (reference, seconds, by) => {
        expect(equivalentAge([{ temperature: reference, time: seconds }], by, reference)).toBeCloseTo(seconds, 5);
      }),
    );
  });

  it("rises with temperature", () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0.01, max: 30, noNaN: true }), law, (celsius, warmer, by) => {
        const cool = equivalentAge([{ temperature: celsius, time: DAY }], by, 20);
        expect(equivalentAge([{ temperature: celsius + warmer, time: DAY }], by, 20)).toBeGreaterThan(cool);
      }),
    );
  });

  it("doubles for every 10 K where the sheet allows no better law", () => {
    expect(
      equivalentAge(
        [
          { temperature: 10, time: 2 * DAY },
          { temperature: 30, time: DAY },
        ],
        doubling,
        20,
      ),
    ).toBeCloseTo(3 * DAY, 6);
  });

  it("has no rate at temperatures that cannot be", () => {
    expect(cureRate(doubling, Number.NaN, 20)).toBeUndefined();
    expect(cureRate(doubling, 20, -300)).toBeUndefined();
    expect(cureRate(doubling, Number.POSITIVE_INFINITY, 20)).toBeUndefined();
  });
});

describe("Activation energy", () => {
  it("is about 49.5 kJ/mol where the time halves between 15 °C and 25 °C, as reckoned by hand", () => {
    const energy = activationEnergy([
      { temperature: 15, time: 2 * DAY },
      { temperature: 25, time: DAY },
    ]);
    expect(energy).toBeCloseTo((GAS_CONSTANT * Math.log(2)) / (1 / 288.15 - 1 / 298.15), 6);
    expect((energy ?? 0) / 1000).toBeCloseTo(49.5, 1);
  });

  it("finds again the energy that times were made from, however many rows there are", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20_000, max: 120_000, noNaN: true }),
        fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 6 }),
        (energy, temperatures) => {
          const rows = temperatures.map((celsius) => ({
            temperature: celsius,
            time: 3600 * Math.exp((energy / GAS_CONSTANT) * (1 / (celsius + KELVIN) - 1 / 293.15)),
          }));
          expect((activationEnergy(rows) ?? 0) / energy).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  it("is the slope of least squares where the rows do not lie on a line", () => {
    // Normal equations solved as a 2 × 2 system, another way than by deviations from the mean.
    const rows = [
      { temperature: 10, time: 20 },
      { temperature: 20, time: 9 },
      { temperature: 30, time: 7 },
    ];
    const x = rows.map((row) => 1000 / (row.temperature + 273.15));
    const y = rows.map((row) => Math.log(row.time));
    const s = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
    const sx = s(x),
      sy = s(y),
      sxx = s(x.map((v) => v * v)),
      sxy = s(x.map((v, i) => v * (y[i] ?? 0)));
    expect(activationEnergy(rows)).toBeCloseTo((1000 * GAS_CONSTANT * (3 * sxy - sx * sy)) / (3 * sxx - sx * sx), 3);
  });

  it("is undefined for one temperature, twice or not, and for times that cannot be", () => {
    expect(activationEnergy([{ temperature: 20, time: 5 }])).toBeUndefined();
    expect(
      activationEnergy([
        { temperature: 20, time: 5 },
        { temperature: 20, time: 6 },
      ]),
    ).toBeUndefined();
    expect(
      activationEnergy([
        { temperature: 20, time: 5 },
        { temperature: 30, time: 0 },
      ]),
    ).toBeUndefined();
    expect(
      activationEnergy([
        { temperature: 20, time: 5 },
        { temperature: -280, time: 5 },
      ]),
    ).toBeUndefined();
  });
});

describe("The law of cure that a data sheet allows", () => {
  const cure = [
    { temperature: 15, time: 2 * DAY },
    { temperature: 25, time: DAY },
  ];
  const life = [
    { temperature: 20, mass: 0.1, time: 2400 },
    { temperature: 30, mass: 0.1, time: 1200 },
    { temperature: 20, mass: 0.5, time: 1200 },
    { temperature: 20, mass: 1, time: 900 },
    { temperature: 25, mass: 1, time: 300 },
  ];

  it("rests on cure times first, then on working life at one mass, then on the doubling", () => {
    expect(cureLaw(cure, life)).toEqual({
      energy: activationEnergy(cure),
      from: "cure times",
      rows: { least: 15, most: 25 },
    });
    expect(cureLaw(cure.slice(1), life)).toEqual({
      energy: activationEnergy(life.slice(0, 2)),
      from: "working life",
      rows: { least: 20, most: 30 },
    });
    expect(cureLaw([], [], 16)).toEqual({ from: "doubling", least: 16 });
    expect(cureLaw(cure.slice(1), life.slice(1, 4))).toEqual({ from: "doubling" });
    expect(cureLaw([], [])).toEqual({ from: "doubling" });
  });

  it("goes by the mass with most temperatures, and of such by the least", () => {
    const rows = (mass: number, ...times: number[]) =>
      times.map((time, i) => ({ temperature: 20 + 10 * i, mass, time }));
    expect(cureLaw([], [...rows(1, 900, 300), ...rows(0.1, 2400, 1200), ...rows(0.5, 1200, 500)])).toEqual({
      energy: activationEnergy(rows(0.1, 2400, 1200)),
      from: "working life",
      rows: { least: 20, most: 30 },
    });
    expect(cureLaw([], [...rows(0.1, 2400), ...rows(1, 900, 300)])).toEqual({
      energy: activationEnergy(rows(1, 900, 300)),
      from: "working life",
      rows: { least: 20, most: 30 },
    });
  });

  it("does not believe a sheet by which warmth does nothing", () => {
    const same = [15, 25].map((temperature) => ({ temperature, mass: 1, time: DAY }));
    expect(activationEnergy(same)).toBe(0);
    expect([cureLaw(same, []), cureLaw([], same)]).toEqual([{ from: "doubling" }, { from: "doubling" }]);
  });

  it("knows no rate at or below absolute zero, nor against it", () => {
    expect([
      cureRate({ from: "doubling" }, -KELVIN, 20),
      cureRate({ from: "doubling" }, 20, -KELVIN),
      cureRate({ from: "doubling" }, 20, -KELVIN - 1),
    ]).toEqual([undefined, undefined, undefined]);
  });

  it("does not believe a sheet by which warmth slows the cure", () => {
    const odd = [
      { temperature: 15, time: DAY },
      { temperature: 25, time: 2 * DAY },
    ];
    expect(cureLaw(odd, [])).toEqual({ from: "doubling" });
    expect(
      cureLaw(
        [],
        odd.map((row) => ({ ...row, mass: 1 })),
      ),
    ).toEqual({ from: "doubling" });
  });
});

describe("The rate of cure beyond the rows of a data sheet", () => {
  const energy = fc.double({ min: 20_000, max: 120_000, noNaN: true });
  const of = (joules: number, rows?: CureLaw["rows"]): CureLaw => ({ energy: joules, from: "cure times", rows });
  const ROWS = { least: 15, most: 25 };
  const doubled = (from: number, to: number): number => 2 ** ((to - from) / 10);

  it("is that of Arrhenius between them", () => {
    const inside = fc.double({ min: 15, max: 25, noNaN: true });
    fc.assert(
      fc.property(energy, inside, inside, (joules, celsius, reference) => {
        const free = cureRate(of(joules), celsius, reference) ?? Number.NaN;
        expect((cureRate(of(joules, ROWS), celsius, reference) ?? Number.NaN) / free).toBeCloseTo(1, 9);
      }),
    );
  });

  it("gains nothing by warmth, and loses by cold what the slower of both laws loses", () => {
    expect(cureRate(of(80_000, ROWS), 40, 25)).toBe(1);
    expect(cureRate(of(80_000, ROWS), 15, 10)).toBe(1);
    const cold = cureRate(of(80_000), 5, 15) ?? Number.NaN;
    expect(cold).toBeLessThan(doubled(15, 5));
    expect(cureRate(of(80_000, ROWS), 5, 15)).toBeCloseTo(cold, 12);
    expect(cureRate(of(20_000, ROWS), 5, 15)).toBeCloseTo(doubled(15, 5), 12);
    expect(cureRate(of(20_000, ROWS), 25, 35)).toBeCloseTo(doubled(35, 25), 12);
    expect(cureRate(of(20_000, ROWS), 30, 35)).toBeCloseTo(doubled(35, 30), 12);
    expect(cureRate(of(20_000, ROWS), 2, 7)).toBeCloseTo(doubled(7, 2), 12);
  });

  it("is never more than it would be without rows, nor falls with warmth", () => {
    fc.assert(
      fc.property(energy, temperature, temperature, temperature, (joules, a, b, reference) => {
        const rate = (celsius: number): number => cureRate(of(joules, ROWS), celsius, reference) ?? Number.NaN;
        expect(rate(a)).toBeLessThanOrEqual((cureRate(of(joules), a, reference) ?? Number.NaN) * (1 + 1e-9) + 1e-12);
        if (a <= b) expect(rate(a)).toBeLessThanOrEqual(rate(b) * (1 + 1e-9));
      }),
    );
  });

  it("is nothing below the sheet's least temperature", () => {
    expect([14.99, 15].map((celsius) => cureRate({ from: "doubling", least: 15 }, celsius, 15))).toEqual([0, 1]);
  });
});
