/** Whether a joint has cured by the day of the record, and what was done to it before: each at its own edge. */
import { describe, expect, it } from "vitest";
import { finder } from "../../src/evidence/finding.ts";
import { cureFindings, lastCure } from "../../src/evidence/readiness/joint-cure.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Batch, ClimateLog, Entry, JointSpec } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, assembly, batch, DAY, entry, holdPoint, inspection, joint, record } from "./make.ts";
import { celsius, d, g, mm, moment } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const SHEET = adhesive({ cure: [{ temperature: celsius("20"), time: d("3") }] });
const ASSEMBLIES = [
  assembly("aircraft", { joints: [joint("A-1", "aircraft")] }),
  assembly("wing", {
    parent: "aircraft",
    joints: [joint("W-1"), joint("W-2")],
    holdPoints: [holdPoint("CLOSE", { joints: ["W-1"] }), holdPoint("COVER", { kind: "covering" })],
  }),
  assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")] }),
  assembly("fin", { parent: "aircraft", joints: [joint("F-1", "fin")] }),
];
const GLUED = `${DAY}-glue`;
/** Closed at midnight, so that three days are over when a day begins. */
const one = (change: Partial<Batch> = {}, id = "B-1") =>
  batch(id, { entry: GLUED, mixed: moment("2025-03-09", "23:50"), closed: moment(DAY, "00:00"), ...change });

interface About {
  readonly batches?: readonly Batch[];
  readonly entries?: readonly Entry[];
  readonly structure?: JointSpec["structure"];
  readonly climate?: readonly ClimateLog[];
  readonly glued?: Partial<Entry>;
}
const indexOf = ({ batches = [one()], entries = [], climate = [], glued = {} }: About) =>
  recordIndexOf({
    ...record({
      assemblies: ASSEMBLIES,
      adhesives: [SHEET],
      entries: [entry(GLUED, { batches, ...glued }), ...entries],
    }),
    climate,
  });
function told(about: About) {
  const { batches = [one()], structure = "secondary" } = about;
  const index = indexOf(about);
  const find = finder({ kind: "joint", id: "W-1" }, []);
  return cureFindings(index, { ...joint("W-1"), structure }, [batches], find).map(
    ({ severity, code, values, restsOn }) => [
      `${severity} ${code}`,
      values,
      restsOn.slice(1).map(({ kind, id }) => `${kind} ${id}`),
    ],
  );
}
const until = (day: string) => entry(`${day}-until`);
const RESTS = ["batch B-1", `entry ${GLUED}`];
const BY = "2025-03-13 00:00";

describe("The cure of a joint", () => {
  it("is reached where the day of the record begins as it ends, and waited for before", () => {
    const assumed = { code: "warmth/noted", values: { temperature: "20 °C" }, temperature: 20 };
    expect(told({ entries: [until("2025-03-13")] })).toEqual([
      ["meets joint-cure/reached", { batch: "B-1", until: BY, assumed }, RESTS],
    ]);
    expect(told({ entries: [until("2025-03-12")] })).toEqual([
      ["waits joint-cure/waits", { batch: "B-1", until: BY }, RESTS],
    ]);
    expect(told({ batches: [] })).toEqual([]);
  });

  it("is not shown once its days are over and nothing shows how warm they were, nor will", () => {
    const shown = (day: string, change: Partial<Batch> = {}) =>
      told({ structure: "primary", batches: [one(change)], entries: [until(day)] });
    const unproven = ["unproven joint-cure/not-shown", { batch: "B-1", shown: 0, asked: 3 * 86_400 }, RESTS];
    expect(shown("2025-03-12")).toEqual([["waits joint-cure/waits", { batch: "B-1", until: BY }, RESTS]]);
    expect(shown("2025-03-13")).toEqual([unproven]);
    expect(shown("2025-03-20")).toEqual([unproven]);
    expect(shown("2025-03-13", { temperature: undefined })).toEqual([unproven]);
    expect(shown("2025-03-12", { temperature: undefined })).toEqual([
      ["waits joint-cure/waits", { batch: "B-1", until: undefined }, RESTS],
    ]);
  });

  it("is waited for where its days are over and the cold makes it longer", () => {
    const [waits] = told({ batches: [one({ temperature: celsius("16") })], entries: [until("2025-03-13")] });
    expect(waits?.[0]).toBe("waits joint-cure/waits");
    const [primary] = told({
      structure: "primary",
      batches: [one({ temperature: celsius("16") })],
      entries: [until("2025-03-13")],
    });
    expect(primary?.[0]).toBe("waits joint-cure/waits");
  });

  it("rests on the log that shows it", () => {
    const climate = [log("shop", "2025-03-01", 24 * 60, () => ({ temperature: 20 }))];
    const [reached] = told({ structure: "primary", climate, entries: [until("2025-03-14")] });
    expect(reached).toEqual([
      "meets joint-cure/reached",
      { batch: "B-1", until: expect.stringMatching(/^2025-03-13 0[01]:00$/u) },
      [...RESTS, "climate log shop"],
    ]);
  });

  it("is that of the batch that cures last; one of which nothing shows when is later than all", () => {
    const last = (structure: "primary" | "secondary", ...batches: Batch[]) =>
      lastCure(indexOf({ batches }), { ...joint("W-1"), structure }, batches)?.batch.id;
    const later = one({ closed: moment(DAY, "00:10") }, "B-2");
    const unknown = one({ temperature: undefined }, "B-3");
    expect(last("secondary", one(), later)).toBe("B-2");
    expect(last("secondary", later, one())).toBe("B-2");
    expect(last("secondary", one(), one({}, "B-4"))).toBe("B-1");
    expect(last("secondary", unknown, later)).toBe("B-3");
    expect(last("secondary", later, unknown)).toBe("B-3");
    expect(last("primary", one(), later)).toBe("B-1");
    expect(last("primary")).toBeUndefined();
  });
});

describe("What was done to a joint before it had cured", () => {
  const after = (about: About) => told({ ...about, entries: [...(about.entries ?? []), until("2025-03-20")] }).slice(1);
  const looked = (day: string, point = "CLOSE", result: "signed" | "not signed" = "signed") =>
    entry(`${day}-look`, { inspections: [inspection(point, { entry: `${day}-look`, day, result })] });
  const because = (day: string) => ({ batch: "B-1", day, until: BY });

  it("is told of a signature on a day that began before, and not on the day it had cured", () => {
    expect(after({ entries: [looked("2025-03-12")] })).toEqual([
      [
        "caution joint-cure/signed",
        { ...because("2025-03-12"), holdPoint: "CLOSE", kind: "close-up" },
        [...RESTS, "entry 2025-03-12-look", "hold point CLOSE"],
      ],
    ]);
    expect(after({ entries: [looked("2025-03-13")] })).toEqual([]);
    expect(after({ entries: [looked("2025-03-12", "COVER")] }).map(([, values]) => values)).toEqual([
      { ...because("2025-03-12"), holdPoint: "COVER", kind: "covering" },
    ]);
    expect(after({ entries: [looked("2025-03-12", "CLOSE", "not signed")] })).toEqual([]);
    expect(after({ entries: [looked("2025-03-11"), looked("2025-03-12", "COVER")] })).toHaveLength(2);
  });

  it("is not told of what stands in the entry that glued it, or before", () => {
    const inIt = [inspection("CLOSE", { entry: GLUED, day: DAY })];
    expect(after({ glued: { inspections: inIt } })).toEqual([]);
    expect(after({ entries: [looked("2025-03-09")] })).toEqual([]);
    const sameDay = entry(`${DAY}-z`, { inspections: [inspection("CLOSE", { entry: `${DAY}-z`, day: DAY })] });
    expect(after({ entries: [sameDay] })).toHaveLength(1);
  });

  it("is told whenever it was where nothing shows when it had cured, without saying by when", () => {
    const found = after({ structure: "primary", entries: [looked("2025-03-19")] });
    expect(found.map(([code, values]) => [code, values])).toEqual([
      ["caution joint-cure/signed", { batch: "B-1", day: "2025-03-19", holdPoint: "CLOSE", kind: "close-up" }],
    ]);
  });

  it("is told of joints of its assembly and of those above that were opened, once each time, and not of itself or below", () => {
    const opened = (...joints: string[]) => [
      entry("2025-03-12-open", {
        reworks: [{ place, entry: "2025-03-12-open", day: "2025-03-12", joints, why: "a gap" }],
      }),
    ];
    const reworked = (...joints: string[]) => [
      "caution joint-cure/reworked",
      { ...because("2025-03-12"), joints },
      [...RESTS, "entry 2025-03-12-open"],
    ];
    expect(after({ entries: opened("W-2") })).toEqual([reworked("W-2")]);
    expect(after({ entries: opened("A-1", "W-2", "W-1") })).toEqual([reworked("A-1", "W-2")]);
    expect(after({ entries: opened("A-1") })).toEqual([reworked("A-1")]);
    for (const others of [["W-1"], ["R-1"], ["F-1"]]) expect(after({ entries: opened(...others) })).toEqual([]);
    const late = [{ place, entry: "2025-03-13-open", day: "2025-03-13", joints: ["W-2"], why: "a gap" }];
    expect(after({ entries: [entry("2025-03-13-open", { reworks: late })] })).toEqual([]);
  });

  it("is told of its assembly or one above that was weighed, and of the aircraft on its scales", () => {
    const weighed = (assemblyId: string, id = "2025-03-12-weighed") =>
      after({
        entries: [
          entry(id, {
            weighed: [
              {
                place,
                entry: id,
                day: id.slice(0, 10),
                insteadOf: [],
                part: "The part",
                mass: g("100"),
                assembly: assemblyId,
              },
            ],
          }),
        ],
      });
    const told = [
      "caution joint-cure/weighed",
      { ...because("2025-03-12"), part: "The part" },
      [...RESTS, "entry 2025-03-12-weighed"],
    ];
    expect([weighed("wing"), weighed("aircraft")]).toEqual([[told], [told]]);
    expect([weighed("rib"), weighed("fin"), weighed("wing", "2025-03-13-weighed")]).toEqual([[], [], []]);
    const onScales = (id: string) => ({
      place,
      entry: id,
      day: id.slice(0, 10),
      left: g("1"),
      right: g("1"),
      third: g("1"),
      at: "tail" as const,
      mains: mm("1000"),
      wheelbase: mm("4000"),
    });
    const stood = (id: string) => after({ entries: [entry(id, { scales: onScales(id) })] });
    expect(stood("2025-03-12-scales")).toEqual([
      ["caution joint-cure/weighed", because("2025-03-12"), [...RESTS, "entry 2025-03-12-scales"]],
    ]);
    expect(stood("2025-03-13-scales")).toEqual([]);
  });
});
