/** What the page says while a cup is mixed, against what the build says of the file afterwards. */
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { dayFacts } from "../../src/bench/entry-facts.ts";
import { benchFiles } from "../../src/bench/bench-file.ts";
import type { BenchEvent, Said } from "../../src/bench/event.ts";
import { foretell } from "../../src/bench/judged.ts";
import { restored } from "../../src/bench/restored.ts";
import { shownBy, typedBy } from "../../src/bench/scale.ts";
import { sessionOf } from "../../src/bench/session.ts";
import type { Snapshot } from "../../src/bench/snapshot.ts";
import { bandFor, cupFacts, leastCup, mixPasses, targetOf } from "../../src/bench/sums.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Adhesive, Record } from "../../src/facts/types.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { givenOf, MADE, recordOf } from "./given.ts";
import { BENCH_RECORD } from "./record.ts";

const RUNS = 10_000;
/** Whole files, each reckoned twice. */
const FILES = 500;
const scratch = scratchFolders();

let record: Record;
let given: Snapshot;
let adhesive: Adhesive;
beforeAll(async () => {
  record = await recordOf(scratch(), BENCH_RECORD);
  given = givenOf(record);
  adhesive = restored(given).adhesives.get("two-part") as Adhesive;
});

/** A session as taps would have made it, one a minute from ten in the morning. */
function tapped(all: readonly Said[], at = MADE): readonly BenchEvent[] {
  return all.map((said, seq) => ({
    session: "s",
    id: `e${seq}`,
    seq,
    instant: (at + seq * 60) * 1000,
    offset: 60,
    said,
    record: "r",
  }));
}

interface Mixed {
  readonly resin: string;
  readonly hardener: string;
  readonly scale: string;
  readonly temperature: string;
  readonly humidity: string;
  readonly moisture: string;
}

const taps = ({ resin, hardener, scale, temperature, humidity, moisture }: Mixed): readonly Said[] => [
  {
    kind: "began",
    of: "gluing",
    tins: { adhesive: "two-part", lots: { resin: "R-1", hardener: "H-1" }, scale },
    firstBatch: "B-002",
  },
  { kind: "joint", joint: "RD-J02", on: true },
  { kind: "joints chosen" },
  { kind: "reading", of: "temperature", typed: temperature },
  { kind: "reading", of: "humidity", typed: humidity },
  { kind: "reading", of: "moisture", typed: moisture },
  { kind: "timber", lots: ["S-1"] },
  { kind: "amount", cup: 0, part: "resin", typed: resin },
  { kind: "mixed", cup: 0 },
  { kind: "poured", cup: 0 },
  { kind: "amount", cup: 0, part: "hardener", typed: hardener },
  { kind: "closed", cup: 0, joint: "RD-J02" },
  { kind: "nothing more" },
  {
    kind: "pieces",
    cup: 0,
    count: 3,
    procedure: "three-leg",
    lot: "S-1",
    sizes: { thickness: "1/4 in", width: "1/4 in", overlap: "5/8 in" },
    now: false,
  },
  { kind: "worked", who: ["me"], task: "gluing" },
];

const tenths = (least: number, most: number, unit: string) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((n) => `${(n / 10).toFixed(1)} ${unit}`);
const mixes: fc.Arbitrary<Mixed> = fc.record({
  resin: tenths(1, 200, "g"),
  hardener: tenths(0.5, 100, "g"),
  scale: fc.constantFrom("0.1 g", "0.01 g", "1 g"),
  temperature: tenths(10, 32, "°C"),
  humidity: fc.integer({ min: 5, max: 95 }).map((n) => `${n} %`),
  moisture: tenths(5, 16, "%"),
});

const readFront = (text: string) => parse(text.split("---\n")[1] ?? "", { schema: "failsafe" });

/** What the record says once the file lies in it, by its own reader. */
async function builtOf(text: string, path: string) {
  return reckon(await recordOf(scratch(), { ...BENCH_RECORD, [path]: text }));
}

describe("While a cup is mixed", () => {
  it("every reading of the band passes by the rule of the build, and none beside it: 10,000 cups", () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 3000 }), fc.constantFrom("0.1 g", "0.01 g", "1 g"), (n, scale) => {
        const step = shownBy(scale);
        if (step === undefined) throw new Error("no scale");
        const resin = typedBy(step, (n / 10) * (step.value === 1 ? 10 : 1));
        const band = bandFor(adhesive, resin, scale);
        const passes = (steps: number): boolean =>
          mixPasses(adhesive, { amounts: { resin, hardener: typedBy(step, steps * step.value) }, scale });
        const nominal = Math.round(((shownBy(resin)?.value ?? 0) * 0.44) / step.value);
        if (band === undefined)
          return [nominal - 1, nominal, nominal + 1].every((steps) => steps <= 0 || !passes(steps));
        const [least, most] = [band.least, band.most].map((typed) =>
          Math.round((shownBy(typed)?.value ?? 0) / step.value),
        ) as [number, number];
        return (
          passes(least) &&
          passes(most) &&
          passes(Math.round((least + most) / 2)) &&
          !passes(least - 1) &&
          !passes(most + 1)
        );
      }),
      { numRuns: RUNS },
    );
  });

  it("a band agrees with the sheet's ratio reckoned by hand: 40.0 g at 100 : 44 ±5 % by a scale of 0.1 g", () => {
    // U/r = 2·√((0.1/√12/40)² + (0.1/√12/h)²); |h/40/0.44 − 1| + U·h/40/0.44 ≤ 0.05 holds from 16.8 g to 18.4 g.
    const doubt = (h: number): number => 2 * Math.hypot(0.1 / Math.sqrt(12) / 40, 0.1 / Math.sqrt(12) / h);
    const sum = (h: number): number => Math.abs(h / 40 / 0.44 - 1) + (doubt(h) * h) / 40 / 0.44;
    const passing = Array.from({ length: 60 }, (_, n) => 15 + n / 10).filter((h) => sum(h) <= 0.05);
    expect(bandFor(adhesive, "40.0 g", "0.1 g")).toEqual({
      least: `${passing[0]?.toFixed(1)} g`,
      most: `${passing.at(-1)?.toFixed(1)} g`,
    });
  });

  it("refuses what the scale cannot show, and takes what it says is enough", () => {
    for (const scale of ["0.01 g", "0.1 g", "0.5 g", "1 g"]) {
      const least = leastCup(adhesive, scale) ?? "";
      expect(bandFor(adhesive, least, scale), scale).toBeDefined();
      const amount = shownBy(least);
      const third = amount && typedBy(amount, amount.value / 3);
      expect(bandFor(adhesive, third ?? "", scale), scale).toBeUndefined();
    }
  });

  it("aims at area × spread with what stays in the cup, parted by the ratio", () => {
    const spread = { ...adhesive, spread: { typed: "300 g/m²", value: 0.3, unit: "kg/m²", step: 0.001 } };
    // 50 cm² at 300 g/m² are 1.5 g, with a quarter more 1.875 g, of which 100 in 144 is resin.
    expect((targetOf(spread, 0.005) ?? 0) * 1000).toBeCloseTo((1.875 * 100) / 144, 9);
    expect(targetOf(adhesive, 0.005)).toBeUndefined();
  });
});

describe("Page and build", () => {
  it("give one verdict by one set of reasons of 500 random cups: the facts typed as they are, and read from the file", () => {
    const page = restored(given);
    fc.assert(
      fc.property(mixes, (mix) => {
        const session = sessionOf(tapped(taps(mix)));
        if (session === undefined) throw new Error("nothing began");
        const [file] = benchFiles(session, given, "r");
        if (file === undefined) throw new Error("no file");
        const there = foretell(page, [file]);
        const read = foretell(record, [{ ...file, facts: readFront(file.text) }]);
        const [one, other] = [there.batches[0], read.batches[0]];
        expect(one?.verdict).toBe(other?.verdict);
        expect(there.told(one as never).map(({ sentence }) => sentence)).toEqual(
          read.told(other as never).map(({ sentence }) => sentence),
        );
        expect(mixPasses(adhesive, { amounts: { resin: mix.resin, hardener: mix.hardener }, scale: mix.scale })).toBe(
          one?.findings.some(({ code }) => code === "mix-doubt/within"),
        );
        const life = cupFacts(adhesive, {
          amounts: { resin: mix.resin, hardener: mix.hardener },
          temperature: mix.temperature,
        }).life?.time;
        expect(life).toBe(one?.workingLife);
      }),
      { numRuns: FILES },
    );
  });

  it("give one verdict of a file that lies in the record's folder", async () => {
    for (const mix of fc.sample(mixes, { numRuns: 12, seed: 7 })) {
      const session = sessionOf(tapped(taps(mix)));
      if (session === undefined) throw new Error("nothing began");
      const [file] = benchFiles(session, given, "r");
      const built = await builtOf(file?.text ?? "", file?.path ?? "");
      expect(foretell(restored(given), dayFacts(session, given)).batches[0]?.verdict).toBe(
        built.batches.get("B-002")?.verdict,
      );
    }
  });
});
