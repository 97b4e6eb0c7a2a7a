/** A recall, and rework that answers it: where it leads, and that nothing is left of it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { Entry, Record } from "../../src/facts/types.ts";
import { dayText } from "../../src/reckoning/time/calendar.ts";
import { assembly, batch, entry, joint, lot, piece, procedure, record, test } from "./make.ts";
import { g, mpa } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const JOINTS = ["J-0", "J-1", "J-2", "J-3"];
const WING = assembly("wing", { joints: JOINTS.map((id) => joint(id)) });
const LOTS = [
  ...["R-1", "R-2", "R-9"].map((id) => lot(id, { expiry: "2030-01-01" })),
  ...["H-1", "H-2", "H-9"].map((id) => lot(id, { material: "hardener", expiry: "2030-01-01" })),
  lot("S-1", { material: "timber" }),
  lot("S-9", { material: "timber" }),
];

interface Glue {
  readonly joints: readonly string[];
  readonly resin: string;
  readonly hardener: string;
  readonly timber: readonly string[];
  readonly tested: boolean;
}

const anyGlue: fc.Arbitrary<Glue> = fc.record({
  joints: fc.subarray(JOINTS, { minLength: 1 }),
  resin: fc.constantFrom("R-1", "R-2"),
  hardener: fc.constantFrom("H-1", "H-2"),
  timber: fc.constantFrom([], ["S-1"]),
  tested: fc.boolean(),
});

function glue(
  id: string,
  day: string,
  { joints, resin, hardener, timber, tested }: Glue,
  reworks: Entry["reworks"] = [],
): Entry[] {
  const made = batch(
    id,
    {
      entry: `${day}-glue`,
      joints,
      resin: { lot: resin, mass: g("40.0") },
      hardener: { lot: hardener, mass: g("20.0") },
      timber,
      pieces: [piece(id, 1, { lot: undefined, scraps: true })],
    },
    day,
  );
  const later = dayText(Date.parse(day) / 86_400_000 + 9);
  return [
    entry(`${day}-glue`, { batches: [made], reworks }),
    ...(tested ? [entry(`${later}-tests`, { tests: [test(`${id}/1`, {}, later)] })] : []),
  ];
}

/** Each joint is glued at most once, some by two batches on a day. */
const story = (glues: readonly Glue[]): Entry[] => {
  const taken = new Set<string>();
  return glues.flatMap((one, at) => {
    const joints = one.joints.filter((id) => !taken.has(id));
    joints.forEach((id) => taken.add(id));
    return joints.length === 0 ? [] : glue(`B-${at}`, dayText(20_160 + at * 12), { ...one, joints });
  });
};

const recall = (day: string, of: string): Entry =>
  entry(`${day}-recall`, { recalls: [{ place, entry: `${day}-recall`, day, lot: of, why: "notice" }] });
/** Pieces are said to be of scraps, of wood whose strengths the procedure gives, so that glue alone decides. */
const PROCEDURES = [procedure({ wood: { crushing: mpa("40"), shear: mpa("8") } })];
const recordOf = (entries: readonly Entry[]): Record =>
  record({ assemblies: [WING], lots: LOTS, entries, procedures: PROCEDURES });
const states = (entries: readonly Entry[]): unknown[] =>
  [...reckon(recordOf(entries)).joints].map(([id, { state }]) => [id, state]);

/** Glue taken out of joints and made again with lots that nothing else holds; with its pieces broken and passed. */
const reworked = (day: string, joints: readonly string[]): Entry[] =>
  glue(`B-${day}`, day, { joints, resin: "R-9", hardener: "H-9", timber: ["S-9"], tested: true }, [
    { place, entry: `${day}-glue`, day, joints: [...joints], why: "recalled", replaced: [{ lot: "S-1", with: "S-9" }] },
  ]);

describe("A recall and the rework that answers it", () => {
  it("leave every joint as it was, or better, whichever of the two comes first and in whatever order the files are read", () => {
    let quarantined = 0;
    fc.assert(
      fc.property(
        fc.array(anyGlue, { minLength: 1, maxLength: 5 }),
        fc.constantFrom("R-1", "R-2", "H-1", "H-2", "S-1"),
        fc.boolean(),
        fc.infiniteStream(fc.nat()),
        (glues, of, recallFirst, order) => {
          const before = story(glues);
          const evidence = reckon(recordOf(before));
          const holding = evidence.lots.get(of)?.joints ?? [];
          const [notice, again] = recallFirst ? ["2026-01-10", "2026-02-10"] : ["2026-03-10", "2026-02-10"];
          const told = recall(notice, of);
          for (const [id, state] of states([...before, told]) as [string, string][]) {
            quarantined += state === "quarantined" ? 1 : 0;
            expect(state === "quarantined").toBe(holding.includes(id));
          }
          const whole = [...before, told, ...(holding.length === 0 ? [] : reworked(again, holding))];
          const shuffled = whole
            .map((one) => ({ one, by: order.next().value ?? 0 }))
            .sort((a, b) => a.by - b.by)
            .map(({ one }) => one);
          const expected = [...evidence.joints].map(([id, { state }]) => [id, holding.includes(id) ? "shown" : state]);
          expect(states(shuffled)).toEqual(expected);
        },
      ),
      { numRuns: 250 },
    );
    expect(quarantined).toBeGreaterThan(100);
  });

  it("return a joint that was accepted to accepted, with only its new glue and lots in it", () => {
    const before = glue("B-1", "2025-03-10", {
      joints: ["J-0"],
      resin: "R-1",
      hardener: "H-1",
      timber: ["S-1"],
      tested: true,
    });
    const file = reckon(
      recordOf([...before, recall("2026-01-10", "H-1"), ...reworked("2026-02-10", ["J-0"])]),
    ).joints.get("J-0");
    expect(file).toMatchObject({
      state: "shown",
      batches: ["B-2026-02-10"],
      superseded: ["B-1"],
      lots: ["R-9", "H-9", "S-9"],
    });
  });

  it("do not free a joint whose rework used the recalled lot again, or was not proven", () => {
    const before = glue("B-1", "2025-03-10", {
      joints: ["J-0"],
      resin: "R-1",
      hardener: "H-1",
      timber: [],
      tested: true,
    });
    const day = "2026-02-10";
    const reworks = [{ place, entry: `${day}-glue`, day, joints: ["J-0"], why: "recalled" }];
    const after = (of: Partial<Glue>): unknown[] =>
      states([
        ...before,
        recall("2026-01-10", "H-1"),
        ...glue(
          "B-2",
          day,
          { joints: ["J-0"], resin: "R-9", hardener: "H-9", timber: [], tested: true, ...of },
          reworks,
        ),
      ]);
    expect(after({ hardener: "H-1" })[0]).toEqual(["J-0", "quarantined"]);
    expect(after({ tested: false })[0]).toEqual(["J-0", "pending"]);
    expect(after({})[0]).toEqual(["J-0", "shown"]);
  });
});

describe("A joint of two batches", () => {
  const two = (second: Partial<Glue>): Entry[] => {
    const day = "2025-03-10";
    const first = batch("B-1", { entry: `${day}-glue`, joints: ["J-0"] }, day);
    const other = batch(
      "B-2",
      { entry: `${day}-glue`, joints: ["J-0", "J-1"], resin: { lot: "R-2", mass: g("40.0") } },
      day,
    );
    return [
      entry(`${day}-glue`, { batches: [first, other] }),
      entry("2025-03-20-tests", { tests: [test("B-1/1"), ...(second.tested === false ? [] : [test("B-2/1")])] }),
    ];
  };

  it("is as good as the worse of the two, and is quarantined by a lot of either", () => {
    expect(states(two({})).slice(0, 2)).toEqual([
      ["J-0", "shown"],
      ["J-1", "shown"],
    ]);
    expect(states(two({ tested: false })).slice(0, 2)).toEqual([
      ["J-0", "pending"],
      ["J-1", "pending"],
    ]);
    expect(states([...two({}), recall("2026-01-10", "R-1")]).slice(0, 2)).toEqual([
      ["J-0", "quarantined"],
      ["J-1", "shown"],
    ]);
    expect(states([...two({}), recall("2026-01-10", "R-2")]).slice(0, 2)).toEqual([
      ["J-0", "quarantined"],
      ["J-1", "quarantined"],
    ]);
  });
});

describe("Lots across a refill", () => {
  it("are told apart by what each batch names: joints glued before and after it hold one each", () => {
    const before = glue("B-1", "2025-03-10", {
      joints: ["J-0"],
      resin: "R-1",
      hardener: "H-1",
      timber: [],
      tested: true,
    });
    const after = glue("B-2", "2025-04-10", {
      joints: ["J-1"],
      resin: "R-2",
      hardener: "H-1",
      timber: [],
      tested: true,
    });
    const all = [...before, ...after];
    expect(states([...all, recall("2026-01-10", "R-1")]).slice(0, 2)).toEqual([
      ["J-0", "quarantined"],
      ["J-1", "shown"],
    ]);
    expect(states([...all, recall("2026-01-10", "R-2")]).slice(0, 2)).toEqual([
      ["J-0", "shown"],
      ["J-1", "quarantined"],
    ]);
    expect(states([...all, recall("2026-01-10", "H-1")]).slice(0, 2)).toEqual([
      ["J-0", "quarantined"],
      ["J-1", "quarantined"],
    ]);
  });
});
