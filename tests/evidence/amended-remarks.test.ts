/** What was amended of what a hold point asks for: a remark where it was known at the signature, a change after it. */
import { describe, expect, it } from "vitest";
import type { Change, Coat, Departure, Entry, Fitting, OpenItem, Ref } from "../../src/facts/types.ts";
import { assembly, departure, entry, holdPoint, joint, lot, LOTS, openItem, record } from "./make.ts";
import { celsius, moment, pc, range } from "./quantities.ts";
import { reckon } from "./reckoned.ts";
import { GLUED, LATER, SIGNED, signing, TESTS } from "./signed.ts";

const place = { file: "", line: 1, column: 1 };
const NOTED = "2025-04-01-noted";
const COAT: Coat = {
  place,
  entry: NOTED,
  day: "2025-04-01",
  assembly: "wing",
  where: "Inside",
  finish: "clear",
  lots: ["V-1"],
  coat: 1,
  at: moment("2025-04-01", "10:00"),
  temperature: celsius("20"),
  humidity: pc("50"),
};
const FITTED: Fitting = {
  place,
  entry: NOTED,
  day: "2025-04-01",
  assembly: "wing",
  where: "Bolt",
  lot: "BO-1",
  count: 1,
};
const ACCEPTED: Departure = departure("D-1", {
  entry: NOTED,
  day: "2025-04-01",
  acceptedBy: "ins",
  acceptedIn: "2025-04-02-accepts",
  reference: "letter 4",
});

function pointOf(more: readonly Entry[], noted: Partial<Entry> = {}) {
  const wing = assembly("wing", { joints: [joint("W-1"), joint("W-2")], holdPoints: [holdPoint("CLOSE")] });
  const finishes = [
    {
      id: "clear",
      place,
      title: "Clear",
      kind: "varnish" as const,
      sheet: "C",
      temperature: range("15 to 30 °C", 15, 30),
      humidity: range("at most 70 %", undefined, 0.7),
      body: [],
    },
  ];
  const entries = [GLUED, TESTS, entry(NOTED, noted), entry("2025-04-02-accepts"), entry("2025-04-03-closes"), ...more];
  const rib = assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")] });
  const fin = assembly("fin", { joints: [joint("F-1", "fin")] });
  const varnish = lot("V-1", { material: "finish", adhesive: undefined, finish: "clear", expiry: "2026-12-31" });
  const bolts = ["BO-1", "BO-2"].map((id) => lot(id, { material: "hardware", adhesive: undefined } as never));
  const file = reckon(
    record({
      assemblies: [wing, rib, fin],
      finishes,
      lots: [...LOTS, varnish, ...bolts],
      entries: [...entries].sort((a, b) => (a.id < b.id ? -1 : 1)),
    }),
  ).holdPoints.get("CLOSE");
  if (file === undefined) throw new Error("no hold point");
  return file;
}

const amends = (day: string, of: string, fact: string, about: Ref = { kind: "entry", id: of }): Entry => {
  const change: Change = { place, about, fact, value: "where", was: ["a"], is: ["b"], needs: [], audience: "public" };
  return entry(`${day}-amends`, {
    amendments: [
      {
        place,
        entry: of,
        by: `${day}-amends`,
        day,
        why: "misread",
        seenBy: "ins",
        prose: false,
        withheld: false,
        changes: [change],
      },
    ],
  });
};
const remarked = (...of: Parameters<typeof pointOf>) =>
  pointOf(...of).remarks.map(({ code, about, restsOn }) => [
    code,
    about.id,
    restsOn.map(({ kind, id }) => `${kind} ${id}`),
  ]);
const remark = (of: string, day: string, about = `entry ${of}`) => [
  "remark/amended",
  "CLOSE",
  [...new Set([about, `entry ${of}`, `entry ${day}-amends`])],
];

describe("What was amended of what a hold point asks for", () => {
  const BEFORE = "2025-04-20";

  it("is a remark of a coat and of a fitted part of its own, and of no other fact of their entry", () => {
    const coated = { coats: [COAT] };
    expect(remarked([amends(BEFORE, NOTED, "Coat: Inside")], coated)).toEqual([remark(NOTED, BEFORE)]);
    expect(remarked([amends(BEFORE, NOTED, "Coat: Outside")], coated)).toEqual([]);
    expect(remarked([amends(BEFORE, NOTED, "Coat: Inside")], { coats: [{ ...COAT, assembly: "fin" }] })).toEqual([]);
    const fitted = { fitted: [FITTED] };
    expect(remarked([amends(BEFORE, NOTED, "Fitted: Bolt")], fitted)).toEqual([remark(NOTED, BEFORE)]);
    expect(remarked([amends(BEFORE, NOTED, "Fitted: Nut")], fitted)).toEqual([]);
    expect(remarked([amends(BEFORE, NOTED, "Fitted: Bolt")], coated)).toEqual([]);
  });

  it("is a remark of how a departure was accepted, and of no other fact of the entry that accepted it", () => {
    const noted = { departures: [ACCEPTED] };
    const of = "2025-04-02-accepts";
    expect(remarked([amends(BEFORE, of, "Acceptance of D-1")], noted)).toEqual([remark(of, BEFORE)]);
    expect(remarked([amends(BEFORE, of, "Acceptance of D-2")], noted)).toEqual([]);
    expect(remarked([amends(BEFORE, NOTED, "Acceptance of D-1")], noted)).toEqual([]);
    const { acceptedIn: _, acceptedBy: __, ...open } = ACCEPTED;
    expect(remarked([amends(BEFORE, of, "Acceptance of D-1")], { departures: [open] })).toEqual([]);
  });

  it("is a remark of a batch that is in it, resting on the batch", () => {
    expect(remarked([amends(BEFORE, "2025-03-10-glue", "Batch B-1", { kind: "batch", id: "B-1" })])).toEqual([
      remark("2025-03-10-glue", BEFORE, "batch B-1"),
    ]);
    expect(remarked([amends(BEFORE, "2025-03-10-glue", "Batch B-2", { kind: "batch", id: "B-2" })])).toEqual([]);
  });

  it("is a remark where it was known when it was signed, and opens it again where it came later", () => {
    const noted = { coats: [COAT] };
    const known = pointOf([amends(BEFORE, NOTED, "Coat: Inside"), signing()], noted);
    expect([known.state, known.remarks.length, known.changes.length]).toEqual(["passed", 1, 0]);
    const sameDay = pointOf([amends(SIGNED, NOTED, "Coat: Inside"), signing()], noted);
    expect([sameDay.remarks.length, sameDay.changes.length]).toEqual([1, 0]);
    const later = pointOf([signing(), amends(LATER, NOTED, "Coat: Inside")], noted);
    expect([later.state, later.remarks.length, later.changes.map(({ code }) => code)]).toEqual([
      "reopened",
      0,
      ["change/amended"],
    ]);
    const open = pointOf([amends(LATER, NOTED, "Coat: Inside")], noted);
    expect([open.state, open.remarks.length]).toEqual(["ready", 1]);
  });
});

describe("An open item noted after a signature", () => {
  const since = (change: Partial<OpenItem>) => {
    const id = `${LATER}-notes`;
    const item = { ...openItem("O-9", { entry: id, day: LATER }), ...change };
    return pointOf([signing(), entry(id, { raised: [item] }), entry("2025-05-09-closes")]).changes.map(
      ({ code }) => code,
    );
  };

  it("opens it again while it is open, and closed too where it was to be done before that", () => {
    const closed = { closedIn: "2025-05-09-closes" };
    expect(since({})).toEqual(["change/open-item"]);
    expect(since(closed)).toEqual([]);
    expect(since({ ...closed, before: "CLOSE" })).toEqual(["change/open-item"]);
    expect(since({ ...closed, before: "close-up" })).toEqual(["change/open-item"]);
    expect(since({ ...closed, before: "next skin" })).toEqual([]);
    expect(since({ before: "flight" })).toEqual([]);
  });
});

describe("A joint whose batch is rejected after a signature", () => {
  it("is told, resting on itself", () => {
    const other = pointOf([
      signing(),
      entry(`${LATER}-rejects`, {
        rejections: [{ place, entry: `${LATER}-rejects`, day: LATER, batch: "B-1", why: "doubt" } as never],
      }),
    ]);
    const joints = other.changes
      .filter(({ code }) => code === "change/joint")
      .map(({ about, restsOn, values }) => [about, restsOn, values]);
    const said = (id: string) => [{ kind: "joint", id }, [{ kind: "joint", id }], { joint: id, state: "quarantined" }];
    expect(joints).toEqual(["W-1", "W-2", "R-1"].map(said));
    expect(other.state).toBe("reopened");
  });
});
