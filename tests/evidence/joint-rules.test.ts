/** Rules of one joint, each asked by itself: what was measured at it, the stages it was glued in, and what was done since the first flight. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distinct, finder } from "../../src/evidence/finding.ts";
import { heldBy } from "../../src/evidence/held.ts";
import { amendedStages, isWhole, sessionsOf, stageFindings } from "../../src/evidence/joint-stages.ts";
import { measuredAt } from "../../src/evidence/measures/at-joint.ts";
import { flownNeed, inService, isAskedByReturn } from "../../src/evidence/readiness/in-service.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import { STAGES } from "../../src/facts/glue/stage.ts";
import type { Finding, HoldPointFile } from "../../src/evidence/types.ts";
import type {
  Batch,
  Change,
  Departure,
  Entry,
  HoldPoint,
  Inspection,
  Measurement,
  Ref,
  Stage,
} from "../../src/facts/types.ts";
import { assembly, batch, departure, entry, holdPoint, inspection, joint, measurement, record } from "./make.ts";
import { mm } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const whole = ({ code, severity, values, limit, restsOn }: Finding) => ({
  code,
  severity,
  values,
  limit: limit && [limit.code, limit.values, limit.from.code],
  restsOn: restsOn.map(({ kind, id }) => `${kind} ${id}`),
});
const find = finder({ kind: "joint", id: "W-1" }, []);
const codes = (findings: readonly Finding[]) => findings.map(({ code }) => code);

describe("What is measured at a joint", () => {
  const LIMITS = { typed: "at most 1 mm", most: 0.001 };
  const at = (change: Partial<Measurement>, departures: readonly Departure[] = []) => {
    const id = "2025-03-11-measured";
    const one = measurement({ what: "gap", limits: LIMITS, joint: "W-1", entry: id, ...change });
    const entries = [entry(id, { measurements: [one] }), entry("2025-03-12-departs", { departures })];
    entries.push(entry("2025-03-13-accepts"));
    return measuredAt(recordIndexOf(record({ entries })), joint("W-1"), find).map(whole);
  };
  const limit = ["limit/measured", { asked: "at most 1 mm", isSlope: false }, "source/record"];
  const restsOn = ["joint W-1", "entry 2025-03-11-measured"];
  const about = (least: number, most: number) => ({
    typed: "about 1 mm",
    about: { least, most },
    unit: "m",
    step: 0.0001,
  });

  it("is within, out, or estimated, and tells nothing without a limit", () => {
    const values = (found: string) => ({ what: "gap", found });
    expect(at({ found: mm("1.0") })).toEqual([
      { code: "joint-measured/within", severity: "meets", values: values("1.0 mm"), limit, restsOn },
    ]);
    expect(at({ found: mm("1.1") })).toEqual([
      { code: "joint-measured/out", severity: "unproven", values: values("1.1 mm"), limit, restsOn },
    ]);
    expect(at({ found: about(0.0008, 0.001) })).toEqual([
      { code: "joint-measured/estimate", severity: "caution", values: values("about 1 mm"), limit, restsOn },
    ]);
    expect(at({ found: mm("1.1"), limits: undefined } as unknown as Partial<Measurement>)).toEqual([]);
    expect(at({ found: mm("1.1"), joint: "W-2" })).toEqual([]);
  });

  it("and is out is settled by a departure that is accepted, and by no other", () => {
    const named = (change: Partial<Departure> = {}) =>
      departure("D-1", { entry: "2025-03-12-departs", day: "2025-03-12", ...change });
    const values = { what: "gap", found: "1.1 mm", departure: "D-1" };
    const out = { found: mm("1.1"), departure: "D-1" };
    const open = { code: "joint-measured/not-accepted", severity: "unproven", values, limit };
    expect(at(out, [named()])).toEqual([
      { ...open, restsOn: [...restsOn, "departure D-1", "entry 2025-03-12-departs"] },
    ]);
    const accepted = { acceptedBy: "ins", acceptedIn: "2025-03-13-accepts", reference: "letter 4" };
    const more = [...restsOn, "departure D-1", "entry 2025-03-12-departs", "entry 2025-03-13-accepts"];
    expect(at(out, [named(accepted)])).toEqual([
      { code: "joint-measured/accepted", severity: "caution", values, limit, restsOn: more },
    ]);
    expect(at({ ...out, departure: "D-2" }, [named(accepted)]).map(({ code }) => code)).toEqual(["joint-measured/out"]);
  });
});

const [FIRST, SECOND, THIRD] = ["2025-03-10-glue", "2025-04-10-glue", "2025-05-10-glue"];
const IDS: { readonly [entry: string]: string } = { [FIRST]: "B-1", [SECOND]: "B-2", [THIRD]: "B-3" };
const stage = (id: string, number: number, change: Partial<Stage> = {}): Stage => ({
  place,
  entry: id,
  day: id.slice(0, 10),
  joint: "W-1",
  stage: number,
  batches: [IDS[id] ?? ""],
  ...change,
});
const session = (id: string, stages: readonly Stage[], change: Partial<Batch> = {}, more: Partial<Entry> = {}): Entry =>
  entry(id, { stages, batches: [batch(IDS[id] ?? "", { ...change, entry: id }, id.slice(0, 10))], ...more });

describe("The stages of a joint", () => {
  const of = (entries: readonly Entry[]) => {
    const index = recordIndexOf(record({ entries }));
    return { index, held: heldBy(index, joint("W-1")) };
  };
  const told = (...entries: Entry[]) => {
    const { index, held } = of(entries);
    return stageFindings(index, joint("W-1"), held, find).map(whole);
  };
  const DONE = { complete: true } as const;
  const BOTH = ["joint W-1", `entry ${FIRST}`, `entry ${SECOND}`, "batch B-1", "batch B-2"];

  it("are told with every session and every batch that they rest on", () => {
    expect(told(session(FIRST, [stage(FIRST, 1, { of: 2 })]), session(SECOND, [stage(SECOND, 2, DONE)]))).toEqual([
      {
        code: "joint-stages/complete",
        severity: "meets",
        values: { of: 2, day: "2025-04-10" },
        limit: undefined,
        restsOn: BOTH,
      },
    ]);
    expect(told(session(FIRST, [stage(FIRST, 1, { of: 3 })]), session(SECOND, [stage(SECOND, 2)]))).toEqual([
      {
        code: "joint-stages/to-come",
        severity: "waits",
        values: { stages: [3], of: 3 },
        limit: undefined,
        restsOn: BOTH,
      },
    ]);
    expect(told(session(FIRST, [stage(FIRST, 1)]), session(SECOND, [stage(SECOND, 2)]))).toEqual([
      { code: "joint-stages/not-said-complete", severity: "waits", values: { of: 2 }, limit: undefined, restsOn: BOTH },
    ]);
    expect(told(session(FIRST, [stage(FIRST, 1, { of: 3 })]), session(SECOND, [stage(SECOND, 2, DONE)]))).toEqual([
      {
        code: "joint-stages/left-out",
        severity: "unproven",
        values: { stages: [3], of: 3, day: "2025-04-10" },
        limit: undefined,
        restsOn: BOTH,
      },
    ]);
    expect(
      told(session(FIRST, [stage(FIRST, 1)]), session(SECOND, [stage(SECOND, 1, { ...DONE, batches: ["B-1"] })])),
    ).toEqual([
      {
        code: "joint-stages/unsaid",
        severity: "unproven",
        values: { batches: ["B-2"] },
        limit: undefined,
        restsOn: BOTH,
      },
    ]);
    expect(told(session(FIRST, []))).toEqual([]);
    expect(told(entry(FIRST, { stages: [stage(FIRST, 1)] }))).toEqual([]);
  });

  it("make a joint whole once none is missing, no batch is of none, and it is said to be complete", () => {
    const isDone = (...entries: Entry[]) => {
      const { index } = of(entries);
      return isWhole(index, joint("W-1"), Number.POSITIVE_INFINITY);
    };
    expect(isDone(session(FIRST, [stage(FIRST, 1, { of: 2 })]), session(SECOND, [stage(SECOND, 2, DONE)]))).toBe(true);
    expect(isDone(session(FIRST, [stage(FIRST, 1, { of: 3 })]), session(SECOND, [stage(SECOND, 2, DONE)]))).toBe(false);
    expect(
      isDone(session(FIRST, [stage(FIRST, 1)]), session(SECOND, [stage(SECOND, 1, { ...DONE, batches: ["B-1"] })])),
    ).toBe(false);
    expect(isDone(session(FIRST, [stage(FIRST, 1)]), session(SECOND, [stage(SECOND, 2)]))).toBe(false);
    expect(isDone(session(FIRST, []))).toBe(true);
  });

  it("are the sessions that cure together, in the order of their numbers, and then what is of none", () => {
    const sessions = (...entries: Entry[]) => sessionsOf(of(entries).held).map((some) => some.map(({ id }) => id));
    expect(sessions(session(FIRST, [stage(FIRST, 2)]), session(SECOND, []), session(THIRD, [stage(THIRD, 1)]))).toEqual(
      [["B-3"], ["B-1"], ["B-2"]],
    );
    expect(sessions(session(FIRST, [stage(FIRST, 1)]), session(SECOND, [stage(SECOND, 1)]))).toEqual([["B-1", "B-2"]]);
    expect(sessions(session(FIRST, []), session(SECOND, []))).toEqual([["B-1", "B-2"]]);
    expect(
      sessions(
        session(FIRST, [stage(FIRST, 10)]),
        session(SECOND, [stage(SECOND, 9)]),
        session(THIRD, [stage(THIRD, 2)]),
      ),
    ).toEqual([["B-3"], ["B-2"], ["B-1"]]);
  });

  it("were amended where a change of them names the joint, and not where it names another or is of something else", () => {
    const changed = (change: Partial<Change>) => {
      const amendment = {
        place,
        entry: FIRST,
        by: "2025-06-01-amends",
        day: "2025-06-01",
        why: "miscounted",
        prose: false,
        withheld: false,
        changes: [
          {
            place,
            about: { kind: "entry", id: FIRST } as const,
            fact: STAGES,
            value: "stage",
            needs: [],
            audience: "public" as const,
            ...change,
          },
        ],
      };
      const { index } = of([
        session(FIRST, [stage(FIRST, 1)]),
        entry("2025-06-01-amends", { amendments: [amendment] }),
      ]);
      return amendedStages(index, joint("W-1")).length;
    };
    const ref = (kind: Ref["kind"], id: string): Ref => ({ kind, id });
    expect(changed({ was: [ref("joint", "W-1"), ", 1"] })).toBe(1);
    expect(changed({ is: ["stage ", ref("joint", "W-1")] })).toBe(1);
    expect(changed({ was: ["W-1"], is: ["joint W-1"] })).toBe(0);
    expect(changed({ was: [ref("joint", "W-2")] })).toBe(0);
    expect(changed({ was: [ref("batch", "W-1")] })).toBe(0);
    expect(changed({})).toBe(0);
    expect(changed({ is: [ref("joint", "W-1")], fact: "Batch B-1" })).toBe(0);
  });
});

describe("An aircraft that has flown", () => {
  const FLOWN = "2025-04-01";
  const RETURN = holdPoint("RETURN", { kind: "return to service" });
  const index = (
    entries: readonly Entry[],
    points: readonly HoldPoint[] = [RETURN],
    firstFlight: string | undefined = FLOWN,
  ) => {
    const made = record({
      entries,
      assemblies: [
        assembly("wing", { joints: [joint("W-1")], holdPoints: points }),
        assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")] }),
        assembly("fin", { joints: [joint("F-1", "fin")] }),
      ],
    });
    const { firstFlight: _, ...aircraft } = made.aircraft;
    return recordIndexOf({ ...made, aircraft: { ...aircraft, ...(firstFlight && { firstFlight }) } });
  };

  it("was to fly only where a signature that counts was there by then", () => {
    const FLIGHT = holdPoint("FLY", { kind: "flight" });
    const need = (looks: readonly Partial<Inspection>[], point = FLIGHT, firstFlight: string | undefined = FLOWN) =>
      flownNeed(index([], [point], firstFlight), point, {
        counted: looks.map((one) => inspection("FLY", one)),
        needs: [],
      });
    const flown = {
      about: { kind: "hold point", id: "FLY" },
      code: "need/flown",
      values: { day: FLOWN },
      takes: { code: "take/look-again", values: {} },
      blocks: true,
      restsOn: [{ kind: "hold point", id: "FLY" }],
    };
    expect(need([])).toEqual([flown]);
    expect(need([{ day: "2025-04-02" }])).toEqual([flown]);
    expect(need([{ day: FLOWN, result: "not signed" }])).toEqual([flown]);
    expect(need([{ day: FLOWN }])).toEqual([]);
    expect(need([], holdPoint("FLY"))).toEqual([]);
    expect(flownNeed(index([], [FLIGHT], ""), FLIGHT, { counted: [], needs: [] })).toEqual([]);
  });

  it("asks by the return to service for what is open again only since then, where that looks at all of it", () => {
    const days = ["2025-03-01", FLOWN, "2025-04-02", "2025-05-01"];
    const entries = days.map((day) => entry(`${day}-day`));
    const earlier = (
      changed: readonly (readonly string[])[],
      change: Partial<HoldPointFile> = {},
      point = holdPoint("BOX", { assembly: "rib" }),
    ) =>
      ({
        holdPoint: point,
        state: "reopened",
        changes: changed.map((ids) => ({
          restsOn: [{ kind: "joint", id: "R-1" }, ...ids.map((day) => ({ kind: "entry", id: `${day}-day` }))],
        })),
        ...change,
      }) as unknown as HoldPointFile;
    const asked = (file: HoldPointFile, point = RETURN, firstFlight: string | undefined = FLOWN) =>
      isAskedByReturn(index(entries, [RETURN], firstFlight), point, file);
    expect(asked(earlier([["2025-04-02"]]))).toBe(true);
    expect(asked(earlier([["2025-03-01", "2025-04-02"], ["2025-05-01"]]))).toBe(true);
    expect(asked(earlier([[]]))).toBe(true);
    expect(asked(earlier([[FLOWN]]))).toBe(false);
    expect(asked(earlier([["2025-04-02"], ["2025-03-01"]]))).toBe(false);
    expect(asked(earlier([["2025-04-02"]], { state: "blocked" }))).toBe(false);
    expect(asked(earlier([["2025-04-02"]]), holdPoint("CLOSE"))).toBe(false);
    expect(asked(earlier([["2025-04-02"]]), RETURN, "")).toBe(false);
    expect(asked(earlier([["2025-04-02"]], {}, holdPoint("BOX", { assembly: "wing" })))).toBe(true);
    expect(asked(earlier([["2025-04-02"]], {}, holdPoint("BOX", { assembly: "fin" })))).toBe(false);
    expect(
      asked(earlier([["2025-04-02"]], {}, holdPoint("BOX", { assembly: "wing" })), { ...RETURN, assembly: "rib" }),
    ).toBe(false);
  });

  it("has joints of which a return to service is told that asks for them, the first of several", () => {
    const glued = (day: string) => batch("B-1", { entry: `${day}-glue` }, day);
    const told = (day: string, points: readonly HoldPoint[] = [RETURN], firstFlight: string | undefined = FLOWN) =>
      inService(
        index([entry(`${day}-glue`)], points, firstFlight),
        joint("W-1"),
        { batches: [glued(day)], reworks: [] },
        find,
      ).map(whole);
    expect(told("2025-04-02")).toEqual([
      {
        code: "in-service/hold-point",
        severity: "meets",
        values: { day: "2025-04-02", holdPoint: "RETURN" },
        limit: undefined,
        restsOn: ["joint W-1", "entry 2025-04-02-glue", "hold point RETURN"],
      },
    ]);
    expect(told("2025-04-02", [holdPoint("BOX")])).toEqual([
      {
        code: "in-service/no-hold-point",
        severity: "caution",
        values: { day: "2025-04-02" },
        limit: undefined,
        restsOn: ["joint W-1", "entry 2025-04-02-glue"],
      },
    ]);
    expect(told("2025-04-02", [RETURN, { ...RETURN, id: "AGAIN" }])[0]?.values).toMatchObject({ holdPoint: "RETURN" });
    expect(told(FLOWN)).toEqual([]);
    expect(told("2025-04-02", [RETURN], "")).toEqual([]);
    const opened = {
      place,
      entry: "2025-04-03-opens",
      day: "2025-04-03",
      joint: "W-1",
      joints: ["W-1"],
      why: "cracked",
      replaced: [],
    };
    const reworked = inService(
      index([entry("2025-04-03-opens")]),
      joint("W-1"),
      { batches: [glued(FLOWN)], reworks: [opened] },
      find,
    );
    expect(codes(reworked)).toEqual(["in-service/hold-point"]);
    expect(reworked[0]?.restsOn.map(({ id }) => id)).toEqual(["W-1", "2025-04-03-opens", "RETURN"]);
  });
});

describe("What a finding rests on", () => {
  const ref = (kind: Ref["kind"], id: string): Ref => ({ kind, id });
  const key = ({ kind, id }: Ref): string => `${kind} ${id}`;
  const once = (refs: readonly Ref[]): Ref[] => [...new Map(refs.map((one) => [key(one), one])).values()];

  it("stands once each, by kind and id, in the order it came, of few and of many", () => {
    for (const many of [0, 6, 7, 8, 40, 120]) {
      const some = Array.from({ length: many }, (_, n) => ref("piece", `P-${n}`));
      const all = [...some, ref("batch", "P-0"), ref("lot", "P-0"), ...some, ref("batch", "P-0")];
      expect(distinct(all)).toEqual([...some, ref("batch", "P-0"), ref("lot", "P-0")]);
    }
  });

  it("stands after what is there already, be there any of it or not", () => {
    const kinds = ["piece", "batch", "lot"] as const;
    const refs = (most: number) =>
      fc.array(
        fc.tuple(fc.constantFrom(...kinds), fc.nat(most)).map(([kind, n]) => ref(kind, `X-${n}`)),
        { maxLength: 3 * most, size: "max" },
      );
    const both = fc.constantFrom(3, 8, 60).chain((most) => fc.tuple(refs(most), refs(most).map(once)));
    fc.assert(
      fc.property(both, ([some, there]) => {
        const before = [...there];
        expect(distinct(some, there)).toEqual(once([...there, ...some]));
        expect(distinct(there, there)).toBe(there);
        expect(there).toEqual(before);
      }),
    );
  });

  it("is of each finding its own, however another before it rests on more", () => {
    const finding = finder(ref("joint", "W-1"), [ref("entry", "E")]);
    const say = (alsoOn?: readonly Ref[]) =>
      finding("joint-glued/never", "waits", {}, alsoOn === undefined ? {} : { alsoOn }).restsOn.map(({ id }) => id);
    const more = [ref("lot", "L"), ref("entry", "E")];
    expect(say(more)).toEqual(["W-1", "E", "L"]);
    expect(say()).toEqual(["W-1", "E"]);
    expect(say(more)).toEqual(["W-1", "E", "L"]);
    expect(say([ref("lot", "M")])).toEqual(["W-1", "E", "M"]);
    expect(say([])).toEqual(["W-1", "E"]);
  });
});
