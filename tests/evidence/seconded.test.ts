/** What stays as it was where someone amended the record alone: of what stands now and what stood before, the worse. */
import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { Seconded } from "../../src/evidence/seconded.ts";
import type { CoatFile, Evidence, HoldState, JointState, MeasurementFile, PairFile } from "../../src/evidence/types.ts";
import type { Amendment, Change, Measurement, Person, Record, Ref } from "../../src/facts/types.ts";
import { assembly, batch, entry, glued, holdPoint, joint, measurement, test } from "./make.ts";
import { OUT } from "./signed.ts";

const place = { file: "made.md", line: 1, column: 1 };
const change = (kind: Ref["kind"], id: string, more: Partial<Change> = {}): Change => ({
  place,
  about: { kind, id },
  fact: "Hardener",
  value: "mass",
  is: ["20.0 g"],
  needs: [],
  audience: "public",
  ...more,
});
const amendment = (by: string, changes: readonly Change[], more: Partial<Amendment> = {}): Amendment => ({
  place,
  entry: "2025-03-10-glue",
  by,
  day: "2025-04-01",
  why: "misread",
  prose: false,
  withheld: false,
  changes,
  ...more,
});
const ALONE = [amendment("mended", [change("batch", "B-1")])];

const person = (id: string, role: Person["role"]): [string, Person] => [
  id,
  { id, place, name: id, publicName: id, role, audience: "public" },
];
const MEASURED = [
  measurement({ ...OUT, place: { ...place, line: 5 }, entry: "measured", side: "left", pair: "P" }),
  measurement({ ...OUT, place: { ...place, line: 6 }, entry: "measured", side: "right", pair: "P" }),
  measurement({ ...OUT, place: { ...place, line: 7 }, entry: "measured", what: "rib width" }),
];

/** One batch in one joint of a wing, a hold point on it, three measurements, and these amendments. */
function made(amendments: readonly Amendment[]): Record {
  const record = glued([batch("B-1")], [test("B-1/1")], {
    assemblies: [
      assembly("wing", { joints: [joint("W-1")], holdPoints: [holdPoint("CLOSE")] }),
      assembly("fin", { joints: [joint("F-1", "fin")] }),
    ],
    entries: [entry("measured", { measurements: MEASURED }), entry("mended", { amendments })],
  });
  const people = new Map([
    person("bob", "builder"),
    person("cid", "builder"),
    person("eve", "visitor"),
    ...record.aircraft.people,
  ]);
  return { ...record, aircraft: { ...record.aircraft, people } };
}

const NOW = reckon(made([]));
const get = <T>(map: ReadonlyMap<string, T>, id: string): T => {
  const file = map.get(id);
  if (file === undefined) throw new Error(id);
  return file;
};
const standing = (amendments: readonly Amendment[], ...before: Partial<Evidence>[]) =>
  new Seconded(
    made(amendments),
    before.map((one) => ({ ...NOW, ...one })),
  );
const ref = (kind: Ref["kind"], id: string): Ref => ({ kind, id });
const BOTH = [ref("entry", "2025-03-10-glue"), ref("entry", "mended")];

describe("A batch that was amended by someone alone", () => {
  const file = get(NOW.batches, "B-1");
  const after = (now: typeof file.verdict, ...before: (typeof file.verdict)[]) =>
    standing(ALONE, ...before.map((verdict) => ({ batches: new Map([["B-1", { ...file, verdict }]]) }))).batch({
      ...file,
      verdict: now,
    });

  it("keeps the worse of what it was and is, with what that does to a verdict", () => {
    const order = [
      ["rejected", "rejects"],
      ["not shown", "unproven"],
      ["pending", "waits"],
      ["thrown away", "caution"],
      ["in no joint", "caution"],
      ["shown", "none"],
    ] as const;
    order.forEach(([worse, severity], at) => {
      for (const [better] of order.slice(at + 1)) {
        const found = after(better, worse);
        expect([better, found.verdict, found.findings.at(-1)?.severity]).toEqual([better, worse, severity]);
        expect(after(worse, better)).toEqual({ ...file, verdict: worse });
      }
      expect(after(worse, worse)).toEqual({ ...file, verdict: worse });
    });
    expect(after("shown", "pending", "rejected", "not shown").verdict).toBe("rejected");
    expect(after("pending", "shown", "not shown", "shown").verdict).toBe("not shown");
  });

  it("says so beside all that was found of it, by which entries, and rests on them", () => {
    const { findings } = after("shown", "not shown");
    expect(findings.slice(0, -1)).toEqual(file.findings);
    expect(findings.at(-1)).toEqual({
      rule: "seconded",
      code: "seconded/stands",
      severity: "unproven",
      about: ref("batch", "B-1"),
      values: { as: "shown", stands: "not shown", entries: ["mended"], broken: false },
      restsOn: [ref("batch", "B-1"), ...BOTH],
    });
  });

  it("is what it is where the record before had no such batch, and where nothing stood before", () => {
    expect(standing(ALONE, { batches: new Map() }).batch(file)).toBe(file);
    expect(standing(ALONE).batch(file)).toBe(file);
  });

  it("names the amendments of the batch and its pieces, and all where none is of them", () => {
    const named = (...amendments: Amendment[]): unknown => {
      const before = { batches: new Map([["B-1", { ...file, verdict: "rejected" as const }]]) };
      return standing(amendments, before).batch(file).findings.at(-1)?.values;
    };
    const of = (...entries: string[]) => ({ as: "shown", stands: "rejected", entries, broken: false });
    const other = amendment("other", [change("lot", "R-1")]);
    expect(named(...ALONE, other)).toEqual(of("mended"));
    expect(named(other, amendment("piece", [change("lot", "H-1"), change("piece", "B-1/1")]))).toEqual(of("piece"));
    expect(named(other, amendment("stranger", [change("piece", "B-2/1")]), other)).toEqual(of("other", "stranger"));
  });
});

describe("An amendment that betters nothing", () => {
  const file = get(NOW.batches, "B-1");
  const values = (...amendments: Amendment[]): unknown => {
    const before = { batches: new Map([["B-1", { ...file, verdict: "rejected" as const }]]) };
    return standing(amendments, before).batch(file).findings.at(-1)?.values;
  };
  const of = (broken: boolean, ...entries: string[]) => ({ as: "shown", stands: "rejected", entries, broken });
  const B = [change("batch", "B-1")];

  it("is one that nobody saw, or only a builder, or nobody of the record; not one that changes no fact", () => {
    const seen = (by: string, seenBy?: string) => amendment(by, B, seenBy === undefined ? {} : { seenBy });
    expect(values(seen("a"), seen("b", "bob"), seen("c", "nobody"), seen("d", "eve"), seen("e", "cid"))).toEqual(
      of(false, "a", "b", "c", "e"),
    );
    expect(values(amendment("prose", [], { prose: true }), seen("a"))).toEqual(of(false, "a"));
    expect(values(amendment("prose", [change("lot", "R-1")]), amendment("words", []))).toEqual(of(false, "prose"));
  });

  it("is one of the wood of a piece that had been broken, whoever saw it, and is told so where no other is", () => {
    const wood = amendment("wood", [change("batch", "B-1"), change("piece", "B-1/1", { worsens: true })], {
      seenBy: "eve",
    });
    expect(values(wood)).toEqual(of(true, "wood"));
    expect(values(wood, amendment("a", B))).toEqual(of(false, "wood", "a"));
  });

  it("rests on what its changes need, too", () => {
    const before = { batches: new Map([["B-1", { ...file, verdict: "rejected" as const }]]) };
    const needs = [change("batch", "B-1", { needs: [ref("joint", "W-1")] })];
    expect(
      standing([amendment("mended", needs)], before)
        .batch(file)
        .findings.at(-1)?.restsOn,
    ).toEqual([ref("batch", "B-1"), ...BOTH, ref("joint", "W-1")]);
  });
});

describe("A piece", () => {
  const file = get(NOW.pieces, "B-1/1");
  const after = (now: typeof file.verdict, was: typeof file.verdict, amendments = ALONE) =>
    standing(amendments, { pieces: new Map([["B-1/1", { ...file, verdict: was }]]) }).piece({ ...file, verdict: now });

  it("keeps the graver verdict: one that failed rejects, whatever else shows nothing", () => {
    const order = ["fail", "not broken", "too early", "inconclusive", "pass"] as const;
    order.forEach((worse, at) => {
      for (const better of order.slice(at + 1)) {
        const found = after(better, worse);
        expect([found.verdict, found.findings.at(-1)?.severity]).toEqual([
          worse,
          worse === "fail" ? "rejects" : "unproven",
        ]);
        expect(after(worse, better)).toEqual({ ...file, verdict: worse });
      }
    });
    expect(standing(ALONE, { pieces: new Map() }).piece(file)).toBe(file);
  });

  it("names the amendments of itself and of its batch", () => {
    const said = (...amendments: Amendment[]) => after("pass", "fail", amendments).findings.at(-1);
    const other = amendment("other", [change("piece", "B-1/2")]);
    expect(said(other, ...ALONE)).toMatchObject({
      about: ref("piece", "B-1/1"),
      values: { as: "pass", stands: "fail", entries: ["mended"] },
    });
    expect(said(other, amendment("own", [change("piece", "B-1/1")]))?.values).toMatchObject({ entries: ["own"] });
    expect(after("pass", "fail").findings.slice(0, -1)).toEqual(file.findings);
  });
});

describe("A joint", () => {
  const file = get(NOW.joints, "W-1");
  const after = (now: JointState, was: Partial<typeof file>, amendments = ALONE, is: Partial<typeof file> = {}) =>
    standing(amendments, { joints: new Map([["W-1", { ...file, ...was }]]) }).joint({ ...file, ...is, state: now });

  it("keeps the worse state, with what that does to it", () => {
    const order = [
      ["quarantined", "rejects"],
      ["not shown", "unproven"],
      ["opened", "waits"],
      ["not glued", "waits"],
      ["pending", "waits"],
      ["shown", "none"],
    ] as const;
    order.forEach(([worse, severity], at) => {
      for (const [better] of order.slice(at + 1)) {
        const found = after(better, { state: worse });
        expect([found.state, found.findings.at(-1)?.severity]).toEqual([worse, severity]);
        expect(after(worse, { state: better })).toEqual({ ...file, state: worse });
      }
    });
    expect(standing(ALONE, { joints: new Map() }).joint(file)).toBe(file);
    const twice = [{ joints: new Map() }, { joints: new Map([["W-1", { ...file, state: "pending" as const }]]) }];
    expect(standing(ALONE, ...twice).joint(file).state).toBe("pending");
  });

  it("names the amendments of the batches that are or were in it, before and now", () => {
    const all = ["B-1", "B-2", "B-3", "B-4"].map((id) => amendment(`of ${id}`, [change("batch", id)]));
    const other = amendment("other", [change("batch", "B-9")]);
    const found = after("shown", { state: "pending", batches: ["B-1"], superseded: ["B-2"] }, [other, ...all], {
      batches: ["B-3"],
      superseded: ["B-4"],
    }).findings;
    expect(found.slice(0, -1)).toEqual(file.findings);
    expect(found.at(-1)).toMatchObject({
      about: ref("joint", "W-1"),
      values: { as: "shown", stands: "pending", entries: ["of B-1", "of B-2", "of B-3", "of B-4"] },
    });
  });
});

it("A coat that was amended by someone alone keeps the worse verdict, and names the amendments of its own entry", () => {
  const coat = { place, entry: "coated", day: "2025-03-12", assembly: "wing", where: "Inside", finish: "clear" };
  const file: CoatFile = { coat: { ...coat, lots: [], coat: 1 }, verdict: "shown", findings: [] };
  const own = amendment("own", [change("entry", "coated")], { entry: "coated" });
  const order = ["rejected", "not shown", "pending", "shown"] as const;
  order.forEach((worse, at) => {
    for (const better of order.slice(at + 1)) {
      const kept = standing(ALONE, { coats: [{ ...file, verdict: worse }] }).coat({ ...file, verdict: better });
      expect(kept.verdict).toBe(worse);
    }
  });
  const coats = [{ ...file, verdict: "rejected" as const }];
  const said = (...amendments: Amendment[]) => standing(amendments, { coats }).coat(file);
  expect(said(...ALONE, own)).toMatchObject({
    verdict: "rejected",
    findings: [{ severity: "rejects", values: { as: "shown", stands: "rejected", entries: ["own"] } }],
  });
  expect(said(...ALONE).findings[0]?.values).toMatchObject({ entries: ["mended"] });
});

describe("A hold point", () => {
  const file = get(NOW.holdPoints, "CLOSE");
  const after = (now: HoldState, was: HoldState) =>
    standing([...ALONE, amendment("mended", [change("lot", "R-1")])], {
      holdPoints: new Map([["CLOSE", { ...file, state: was }]]),
    }).holdPoint({ ...file, state: now });

  it("keeps the worse state, and blocks where it was blocked or reopened", () => {
    const order = ["blocked", "signed with things open", "reopened", "ahead", "ready", "passed"] as const;
    order.forEach((worse, at) => {
      for (const better of order.slice(at + 1)) {
        const found = after(better, worse);
        expect([found.state, found.needs.at(-1)?.blocks]).toEqual([worse, ["blocked", "reopened"].includes(worse)]);
        expect(after(worse, better)).toEqual({ ...file, state: worse });
      }
    });
    expect(standing(ALONE, { holdPoints: new Map() }).holdPoint(file)).toBe(file);
  });

  it("asks for a second person who saw the source, beside all that it needs", () => {
    const { needs } = after("passed", "blocked");
    expect(needs.slice(0, -1)).toEqual(file.needs);
    expect(needs.at(-1)).toEqual({
      about: ref("hold point", "CLOSE"),
      code: "need/seconded",
      values: { as: "passed", stands: "blocked", entries: ["mended"], broken: false },
      takes: { code: "take/second", values: {} },
      blocks: true,
      restsOn: [ref("hold point", "CLOSE"), ...BOTH],
    });
  });
});

describe("A measurement", () => {
  const wing = get(NOW.assemblies, "wing");
  type Verdict = MeasurementFile["verdict"];
  const files = (...verdicts: Verdict[]): MeasurementFile[] =>
    MEASURED.map((one, i) => ({ measurement: one, verdict: verdicts[i] ?? "within" }));
  const evidence = (measurements: readonly MeasurementFile[]): Partial<Evidence> => ({
    assemblies: new Map([["wing", { ...wing, measurements }]]),
  });
  const after = (now: readonly MeasurementFile[], ...before: (readonly MeasurementFile[])[]) =>
    standing(ALONE, ...before.map(evidence)).assembly({ ...wing, measurements: now });
  const stands = { stands: ["mended"] };

  it("keeps the worse verdict that it had, and names the entries", () => {
    const order = ["out", "no tolerance", "estimated", "within"] as const;
    order.forEach((worse, at) => {
      for (const better of order.slice(at + 1)) {
        expect(after(files(better), files(worse)).measurements[0]).toEqual({
          measurement: MEASURED[0],
          verdict: worse,
          ...stands,
        });
        expect(after(files(worse), files(better)).measurements).toEqual(files(worse));
      }
    });
    expect(after(files(), files())).toEqual({ ...wing, measurements: files() });
    expect(standing(ALONE).assembly(wing)).toEqual(wing);
    expect(standing(ALONE, { assemblies: new Map() }).assembly(wing)).toEqual(wing);
  });

  it("is held against the one at the same place, whatever else of it was amended", () => {
    expect(after(files(), files("within", "out")).measurements.map((one) => one.stands)).toEqual([
      undefined,
      ["mended"],
      undefined,
    ]);
    const [left] = MEASURED;
    const out = (more: Partial<Measurement>): MeasurementFile[] => [
      { measurement: measurement({ ...left, ...more }), verdict: "out" },
    ];
    const now: MeasurementFile[] = [{ measurement: measurement({ ...left }), verdict: "within" }];
    for (const more of [{}, { what: "rib depth" }, { side: "upper" as const }, { assembly: "fin" }, { pair: "Q" }])
      expect(after(now, out(more)).measurements[0]?.verdict).toBe("out");
    for (const more of [{ file: "entries/other.md" }, { line: 50 }, { column: 50 }])
      expect(after(now, out({ place: { ...place, line: 5, ...more } })).measurements).toEqual(now);
  });

  it("does not count as measured again by what someone alone made of it", () => {
    const again = measurement({ ...OUT, entry: "later" });
    const out = (more: Partial<MeasurementFile> = {}): MeasurementFile[] => [
      { measurement: measurement({ ...MEASURED[0] }), verdict: "out", ...more },
    ];
    const stays = [{ ...out()[0], ...stands }];
    expect(after(out({ again }), out()).measurements).toEqual(stays);
    expect(after(out({ again }), out({ again }), out()).measurements).toEqual(stays);
    expect(after(out({ again }), out({ again })).measurements).toEqual(out({ again }));
    expect(after(out({ again }), out({ verdict: "within" })).measurements).toEqual(out({ again }));
    expect(after(out({ again }), []).measurements).toEqual(out({ again }));
    expect(after(out(), out()).measurements).toEqual(out());
  });
});

describe("A pair of sides", () => {
  const file = get(NOW.pairs, "P");
  const after = (now: PairFile["verdict"], was: PairFile["verdict"]) =>
    standing(ALONE, { pairs: new Map([["P", { ...file, verdict: was }]]) }).pair({ ...file, verdict: now });

  it("keeps the worse verdict, and names the entries", () => {
    const order = ["out", "one side", "estimated", "no tolerance", "within"] as const;
    order.forEach((worse, at) => {
      for (const better of order.slice(at + 1)) {
        expect(after(better, worse)).toEqual({ ...file, verdict: worse, stands: ["mended"] });
        expect(after(worse, better)).toEqual({ ...file, verdict: worse });
      }
      expect(after(worse, worse)).toEqual({ ...file, verdict: worse });
    });
    expect(standing(ALONE, { pairs: new Map() }).pair(file)).toBe(file);
  });
});

describe("A record that was amended by someone alone", () => {
  it("is reckoned with what stood before in every file", () => {
    const now = made([amendment("mended", [change("batch", "B-1")])]);
    const light = { typed: "26.0 g", value: 0.026, unit: "kg", step: 0.0001 };
    const entries = now.entries.map((one) =>
      one.batches.length === 0 ? one : { ...one, batches: [batch("B-1", { hardener: { lot: "H-1", mass: light } })] },
    );
    const before: Record = { ...now, entries: entries.map((one) => ({ ...one, amendments: [] })) };
    const evidence = reckon({ ...now, before: [before] });
    expect([evidence.batches.get("B-1")?.verdict, evidence.joints.get("W-1")?.state]).toEqual([
      "rejected",
      "quarantined",
    ]);
    expect(evidence.findings.filter(({ rule }) => rule === "seconded").map(({ about }) => about.id)).toEqual(["B-1"]);
    const seen = { ...now, entries: now.entries.map((one) => ({ ...one, amendments: [] })) };
    expect(reckon(seen).batches.get("B-1")?.verdict).toBe("shown");
  });
});
