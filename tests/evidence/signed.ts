import { reckon } from "./reckoned.ts";
import type { SaidHoldPoint } from "./reckoned.ts";
import type { Entry, HoldPoint, Measurement, Ref } from "../../src/facts/types.ts";
import {
  assembly,
  batch,
  departure,
  entry,
  holdPoint,
  inspection,
  joint,
  measurement,
  openItem,
  record,
  test,
} from "./make.ts";
import { mm } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
export const SIGNED = "2025-05-01";
export const LATER = "2025-05-02";

/** Two joints of the wing and one of its rib, glued and accepted; the fin's joint is no part of it. */
const TREE = (change: Partial<HoldPoint> = {}) => [
  assembly("wing", { joints: [joint("W-1"), joint("W-2")], holdPoints: [holdPoint("CLOSE", change)] }),
  assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")] }),
  assembly("fin", { joints: [joint("F-1", "fin")] }),
];

export const sound = (id: string, joints: string[], day: string, change: object = {}) =>
  batch(id, { entry: `${day}-glue`, joints, ...change }, day);
export const GLUED = entry("2025-03-10-glue", {
  batches: [
    sound("B-1", ["W-1", "W-2", "R-1"], "2025-03-10"),
    sound("B-2", ["F-1"], "2025-03-10", {
      resin: { lot: "R-2", mass: { typed: "40.0 g", value: 0.04, unit: "kg", step: 0.0001 } },
    }),
  ],
});
export const TESTS = entry("2025-03-20-tests", { tests: [test("B-1/1"), test("B-2/1")] });

export const signing = (change: Partial<Entry> = {}, day = SIGNED): Entry =>
  entry(`${day}-look`, { inspections: [inspection("CLOSE", { entry: `${day}-look`, day })], ...change });
export const pointOf = (entries: readonly Entry[], change: Partial<HoldPoint> = {}): SaidHoldPoint => {
  const file = reckon(record({ assemblies: TREE(change), entries })).holdPoints.get("CLOSE");
  if (!file) throw new Error("no hold point");
  return file;
};

/** What an entry of a day holds, made for that day. */
export type Happens = (id: string, day: string) => Partial<Entry>;

export const amends =
  (about: Ref, entry_: string, change: object = {}): Happens =>
  (id, day) => ({
    amendments: [
      {
        place,
        entry: entry_,
        by: id,
        day,
        why: "misread",
        prose: false,
        withheld: false,
        changes: [
          {
            place,
            about,
            fact: "Batch B-1",
            value: "hardener mass",
            was: ["20.1 g"],
            is: ["20.0 g"],
            needs: [],
            audience: "public" as const,
            ...change,
          },
        ],
      },
    ],
  });
export const ref = (kind: Ref["kind"], id: string): Ref => ({ kind, id });
export const recall =
  (lot: string): Happens =>
  (id, day) => ({ recalls: [{ place, entry: id, day, lot, why: "mislabelled" }] });
export const reject =
  (of: string): Happens =>
  (id, day) => ({ rejections: [{ place, entry: id, day, batch: of, why: "doubt" }] });
export const rework =
  (...joints: string[]): Happens =>
  (id, day) => ({ reworks: [{ place, entry: id, day, joints, why: "gap" }] });
export const departs =
  (change: object = {}): Happens =>
  (id, day) => ({ departures: [departure("D-1", { entry: id, day, ...change })] });
export const raises =
  (change: object = {}): Happens =>
  (id, day) => ({ raised: [openItem("O-1", { entry: id, day, ...change })] });
export const OUT = { drawing: mm("61.0"), tolerance: { typed: "±0.5 mm", minus: -0.0005, plus: 0.0005 } };
export const measures =
  (...all: Partial<Measurement>[]): Happens =>
  (id) => ({ measurements: all.map((change) => measurement({ entry: id, ...change })) });
export const glues =
  (...joints: string[]): Happens =>
  (id, day) => ({ batches: [batch("B-9", { entry: id, joints }, day)] });
export const SIDES = [
  { what: "left", pair: "P", side: "left" as const, found: mm("62.0"), pairTolerance: mm("0.5") },
  { what: "right", pair: "P", side: "right" as const, found: mm("63.0") },
];

export const inEntry = (happens: Happens, day: string): Entry => entry(`${day}-it`, happens(`${day}-it`, day));
export const after = (happens: Happens, change: Partial<HoldPoint> = {}): SaidHoldPoint =>
  pointOf([GLUED, TESTS, signing(), inEntry(happens, LATER)], change);
export const told = (file: SaidHoldPoint): string[] => file.changes.map(({ sentence }) => sentence);
