/** Times of a session as they stand in its file, in nights on which clocks change, past midnight, and after a clock was put back. */
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { benchFiles } from "../../src/bench/bench-file.ts";
import { clockOf, dayOf } from "../../src/bench/clock-text.ts";
import type { BenchEvent, Said } from "../../src/bench/event.ts";
import { ladder, padded } from "../../src/bench/scale.ts";
import { sessionOf } from "../../src/bench/session.ts";
import type { Snapshot } from "../../src/bench/snapshot.ts";
import { snapshotOf } from "../../src/bench/snapshot-of.ts";
import { without } from "../../src/bench/taken.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { readClock } from "../../src/facts/time/clock.ts";
import { Zone } from "../../src/facts/time/zone.ts";
import { readRecord } from "../../src/record/read.ts";
import { command } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();
const LONG_AFTER = { now: () => new Date("2031-01-01T12:00:00Z"), timeZone: "Europe/Lisbon" };
let given: Snapshot;
beforeAll(async () => {
  const folder = scratch();
  writeAll(folder, BENCH_RECORD);
  const read = await readRecord(folder, { today: "2031-01-01" });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  given = snapshotOf(editionOf(read.record, reckon(read.record), "archive"), 0, read.record.before);
});

const TINS = { adhesive: "two-part", lots: { resin: "R-1", hardener: "H-1" }, scale: "0.1 g" };
const CUP = (cup: number): readonly (readonly [string | undefined, Said])[] => [
  [undefined, { kind: "amount", cup, part: "resin", typed: "40.0 g" }],
  ["mixed", { kind: "mixed", cup }],
  ["poured", { kind: "poured", cup }],
  [undefined, { kind: "amount", cup, part: "hardener", typed: "17.6 g" }],
  ["closed", { kind: "closed", cup, joint: cup === 0 ? "RD-J02" : "RD-J03" }],
];

const PIECES: Said = {
  kind: "pieces",
  cup: 0,
  count: 2,
  procedure: "three-leg",
  lot: "S-1",
  sizes: { thickness: "1/4 in", width: "1/4 in", overlap: "5/8 in" },
  now: true,
};

/** Taps at given instants; those without one come a second after the one before. */
function sessionAt(at: {
  readonly began: string;
  readonly cups: readonly { readonly mixed: string; readonly poured?: string; readonly closed: string }[];
  readonly pieces?: string;
  readonly done: string;
}) {
  const head: readonly (readonly [string | undefined, Said])[] = [
    [at.began, { kind: "began", of: "gluing", tins: TINS, firstBatch: "B-002" }],
    [undefined, { kind: "joint", joint: "RD-J02", on: true }],
    [undefined, { kind: "joint", joint: "RD-J03", on: true }],
    [undefined, { kind: "joints chosen" }],
    [undefined, { kind: "reading", of: "temperature", typed: "20.0 °C" }],
    [undefined, { kind: "reading", of: "humidity", typed: "50 %" }],
    [undefined, { kind: "reading", of: "moisture", typed: "10.0 %" }],
    [undefined, { kind: "timber", lots: ["S-1"] }],
  ];
  const cups = at.cups.flatMap((cup, n) => [
    ...(n === 0 ? [] : [[undefined, { kind: "another cup" }] as const]),
    ...CUP(n).map(([when, said]) => [when === undefined ? undefined : cup[when as keyof typeof cup], said] as const),
  ]);
  const tail: readonly (readonly [string | undefined, Said])[] = [
    [undefined, { kind: "nothing more" }],
    ...(at.pieces === undefined ? [] : [[at.pieces, PIECES] as const]),
    [at.done, { kind: "worked", who: ["me"], task: "gluing" }],
  ];
  let last = 0;
  const events = [...head, ...cups, ...tail].map(([when, said], seq): BenchEvent => {
    last = when === undefined ? last + 1000 : Date.parse(when);
    return { session: "s", id: `e${seq}`, seq, instant: last, offset: 0, said, record: "r" };
  });
  const session = sessionOf(events);
  if (session === undefined) throw new Error("nothing began");
  return benchFiles(session, given, "r");
}

/** `check` takes the files as they are; the batches as the record then has them. */
async function inRecord(files: readonly { readonly path: string; readonly text: string }[]) {
  const folder = scratch();
  writeAll(folder, { ...BENCH_RECORD, ...Object.fromEntries(files.map(({ path, text }) => [path, text])) });
  expect(await command(["check", folder], LONG_AFTER)).toMatchObject({ code: 0, err: "" });
  const read = await readRecord(folder, { today: "2031-01-01" });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return new Map(read.record.entries.flatMap(({ batches }) => batches).map((batch) => [batch.id, batch]));
}

const epoch = (when: string): number => Date.parse(when) / 1000;

describe("A clock's time in a file", () => {
  it("means the instant that it was tapped at, in each zone and on each day: 10,000 instants", () => {
    const zones = fc.constantFrom(
      "Europe/Lisbon",
      "America/New_York",
      "Australia/Lord_Howe",
      "Asia/Kathmandu",
      "Africa/Casablanca",
    );
    const from = epoch("2024-01-01T00:00:00Z");
    fc.assert(
      fc.property(
        zones,
        fc.integer({ min: from, max: from + 4 * 31_557_600 }),
        fc.integer({ min: 0, max: 11 * 3600 }),
        (zone, began, later) => {
          const day = dayOf(began, zone);
          const typed = clockOf(began + later, day, zone);
          if (typed === undefined) return dayOf(began + later, zone) > day;
          const clock = readClock(typed, 36);
          return "value" in clock && Zone.of(zone).moment(day, clock.value, "earlier")?.epoch === began + later;
        },
      ),
      { numRuns: 10_000 },
    );
  });

  it("past midnight counts on, and a cup mixed after it is of an entry of the next day", async () => {
    const files = sessionAt({
      began: "2026-02-10T23:40:10Z",
      cups: [
        { mixed: "2026-02-10T23:50:07Z", closed: "2026-02-11T00:10:20Z" },
        { mixed: "2026-02-11T00:15:00Z", closed: "2026-02-11T00:30:00Z" },
      ],
      done: "2026-02-11T00:40:00Z",
    });
    expect(files.map(({ day }) => day)).toEqual(["2026-02-10", "2026-02-11"]);
    expect(files[0]?.text).toContain('closed: "24:10:20"');
    const batches = await inRecord(files);
    expect(batches.get("B-002")?.closed?.epoch).toBe(epoch("2026-02-11T00:10:20Z"));
    expect(batches.get("B-003")?.mixed?.epoch).toBe(epoch("2026-02-11T00:15:00Z"));
  });

  it("in the night on which summer time ends has its offset, so that closed at 01:05 comes after mixed at 01:30", async () => {
    const files = sessionAt({
      began: "2026-10-24T23:50:00Z",
      cups: [{ mixed: "2026-10-25T00:30:00Z", closed: "2026-10-25T01:05:00Z" }],
      done: "2026-10-25T01:20:00Z",
    });
    expect(files[0]?.text).toContain("mixed: 01:30+01:00");
    expect(files[0]?.text).toContain("closed: 01:05+00:00");
    const batch = (await inRecord(files)).get("B-002");
    expect((batch?.closed?.epoch ?? 0) - (batch?.mixed?.epoch ?? 0)).toBe(35 * 60);
  });

  it("of a clock that was put back is told, and no joint is written as closed before its cup was mixed", async () => {
    const files = sessionAt({
      began: "2026-02-10T10:00:00Z",
      cups: [{ mixed: "2026-02-10T10:10:00Z", closed: "2026-02-10T09:25:00Z" }],
      done: "2026-02-10T09:40:00Z",
    });
    const batch = (await inRecord(files)).get("B-002");
    expect(batch?.closed).toBeUndefined();
    expect(batch?.joints).toEqual(["RD-J02"]);
    expect(batch?.note).toMatch(/the clock of the phone went back by 2\d\d\d s during this session/);
  });
});

describe("What a clock cannot tell after it went back", () => {
  it("is how long a cup stood open: no time of closing, though the clock shows one that is late enough", async () => {
    const files = sessionAt({
      began: "2026-02-10T10:00:00Z",
      cups: [{ mixed: "2026-02-10T10:10:00Z", poured: "2026-02-10T10:50:00Z", closed: "2026-02-10T10:30:00Z" }],
      done: "2026-02-10T10:40:00Z",
    });
    const batch = (await inRecord(files)).get("B-002");
    expect(batch?.closed).toBeUndefined();
    expect(batch?.joints).toEqual(["RD-J02"]);
    expect(batch?.note).toMatch(/went back by 1\d\d\d s.*no time of closing is given/);
  });

  it("is whether a piece was glued in the cup's life: it is told in words and is no piece of the joint", async () => {
    const files = sessionAt({
      began: "2026-02-10T10:00:00Z",
      cups: [{ mixed: "2026-02-10T10:10:00Z", closed: "2026-02-10T10:30:00Z" }],
      pieces: "2026-02-10T10:05:00Z",
      done: "2026-02-10T10:40:00Z",
    });
    const batch = (await inRecord(files)).get("B-002");
    expect(batch?.pieces).toEqual([]);
    expect(batch?.closed?.epoch).toBe(epoch("2026-02-10T10:30:00Z"));
    expect(batch?.note).toMatch(/2 pieces, S-1, three-leg, 1\/4 in, 1\/4 in, 5\/8 in: glued later/);
  });

  it("nor is it by a clock that went on past the next noon, which no entry of the day before can write", async () => {
    const files = sessionAt({
      began: "2026-02-10T10:00:00Z",
      cups: [{ mixed: "2026-02-10T10:10:00Z", closed: "2026-02-10T10:30:00Z" }],
      pieces: "2026-02-11T13:00:00Z",
      done: "2026-02-11T13:10:00Z",
    });
    const batch = (await inRecord(files)).get("B-002");
    expect(batch?.pieces).toEqual([]);
    expect(batch?.note).toMatch(/2 pieces.*declare them at the desk/);
  });

  it("and of the cups of a session only of those that stood then", async () => {
    const files = sessionAt({
      began: "2026-02-10T10:00:00Z",
      cups: [
        { mixed: "2026-02-10T10:10:00Z", closed: "2026-02-10T10:30:00Z" },
        { mixed: "2026-02-10T09:40:00Z", closed: "2026-02-10T09:55:00Z" },
      ],
      done: "2026-02-10T10:40:00Z",
    });
    const batches = await inRecord(files);
    expect(batches.get("B-002")?.closed?.epoch).toBe(epoch("2026-02-10T10:30:00Z"));
    expect(batches.get("B-003")?.closed?.epoch).toBe(epoch("2026-02-10T09:55:00Z"));
  });
});

it("A start of mixing that was taken back stands in the file with the time at which it was first tapped", () => {
  const at = (minutes: number): number => Date.parse("2026-02-10T10:00:00Z") + minutes * 60_000;
  const said: readonly (readonly [number, Said])[] = [
    [0, { kind: "began", of: "gluing", tins: TINS, firstBatch: "B-002" }],
    [1, { kind: "amount", cup: 0, part: "resin", typed: "40.0 g" }],
    [2, { kind: "mixed", cup: 0 }],
    [40, { kind: "undone", event: "e2", why: "tapped by mistake" }],
    [41, { kind: "mixed", cup: 0 }],
  ];
  const session = sessionOf(
    said.map(([minutes, one], seq): BenchEvent => {
      return { session: "s", id: `e${seq}`, seq, instant: at(minutes), offset: 0, said: one, record: "r" };
    }),
  );
  const [file] = session === undefined ? [] : benchFiles(session, given, "r");
  expect(file?.text).toContain("first noted at 10:02: mixed; taken back: tapped by mistake");
});

describe("What is read and typed", () => {
  it("a pad takes a comma and a point, and nothing that is no number", () => {
    expect(["42,5", "42.5", "0.5", "007", "1,2,3", ".", "", "5."].map((typed) => padded(typed, "g"))).toEqual([
      "42.5 g",
      "42.5 g",
      "0.5 g",
      "7 g",
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("a pad takes no share beyond the whole, and nothing but warmth below nought", () => {
    expect(padded("101", "%")).toBeUndefined();
    expect(padded("0", "g")).toBeUndefined();
    expect(padded("-3", "g")).toBeUndefined();
    expect(padded("-3", "°C")).toBe("-3 °C");
    expect(padded("30", "kgf")).toBe("30 kgf");
  });

  it("a ladder has the instrument's own steps around the last reading, and none below nought", () => {
    expect(ladder({ value: 20.3, decimals: 1, unit: "°C" }, 0.5, 2)).toEqual([
      "19.5 °C",
      "20.0 °C",
      "20.5 °C",
      "21.0 °C",
      "21.5 °C",
    ]);
    expect(ladder({ value: 0.1, decimals: 1, unit: "g" }, 0.1, 2)).toEqual(["0.1 g", "0.2 g", "0.3 g"]);
    expect(ladder({ value: 99, decimals: 0, unit: "%" }, 1, 2)).toEqual(["97 %", "98 %", "99 %", "100 %"]);
    expect(ladder({ value: 0, decimals: 1, unit: "°C" }, 0.5, 1)).toEqual(["-0.5 °C", "0.0 °C", "0.5 °C"]);
  });

  it("no number of a batch is given twice, whatever page gave it", () => {
    const gone = { session: "s", record: "r", batches: ["B-002", "B-003"], joints: ["RD-J02"], pieces: ["B-001/1"] };
    const next = without(given, [gone], "r");
    expect(next.nextBatch).toBe("B-004");
    expect(next.assemblies.flatMap(({ joints }) => joints.map(({ id }) => id))).toEqual(["RD-J03"]);
    expect(next.due.map(({ piece }) => piece)).toEqual(["B-001/2", "B-001/3"]);
    const newer = without({ ...given, nextBatch: "B-009" }, [gone], "another");
    expect(newer.nextBatch).toBe("B-009");
    expect(newer.assemblies.flatMap(({ joints }) => joints)).toHaveLength(2);
  });
});
