/** An aircraft that has flown: who may return it to service, and what was done to it since. */
import { describe, expect, it } from "vitest";
import type { Entry, Person } from "../../src/facts/types.ts";
import { assembly, batch, departure, entry, holdPoint, inspection, joint, record, test } from "./make.ts";
import { reckon } from "./reckoned.ts";

const place = { file: "", line: 1, column: 1 };
const BUILDER: Person = {
  id: "me",
  place,
  name: "Vera Invented",
  publicName: "Vera",
  role: "builder",
  audience: "public",
};
const GLUED = entry("2025-03-10-glue", { batches: [batch("B-1", { joints: ["W-1"] })] });
const BROKEN = entry("2025-03-20-tests", { tests: [test("B-1/1", {}, "2025-03-20")] });

interface About {
  readonly firstFlight?: string;
  readonly mayReturn?: string;
  readonly kind?: "flight" | "return to service" | "close-up";
  readonly entries?: readonly Entry[];
}

function evidenceOf({ firstFlight, mayReturn, kind = "return to service", entries = [] }: About) {
  const made = record({
    entries: [GLUED, BROKEN, ...entries],
    assemblies: [
      assembly("wing", {
        joints: [joint("W-1")],
        holdPoints: [holdPoint("BOX"), ...(kind === "close-up" ? [] : [holdPoint("LAST", { kind })])],
      }),
    ],
  });
  const people = new Map([...made.aircraft.people, ["me", { ...BUILDER, ...(mayReturn && { mayReturn }) }] as const]);
  return reckon({ ...made, aircraft: { ...made.aircraft, people, ...(firstFlight && { firstFlight }) } });
}

const signed = (id: string, day: string, change = {}): Entry =>
  entry(`${day}-look-${id}`, { inspections: [inspection(id, { entry: `${day}-look-${id}`, day, ...change })] });
const needs = (about: About, id = "LAST") =>
  evidenceOf(about)
    .holdPoints.get(id)
    ?.needs.map(({ sentence }) => sentence);

describe("A joint of an aircraft that has flown", () => {
  const told = (about: About) =>
    evidenceOf(about)
      .joints.get("W-1")
      ?.findings.filter(({ rule }) => rule === "in-service")
      .map(({ severity, sentence }) => `${severity}: ${sentence}`);

  it("that was glued after the first flight says which return to service asks for it, or that none does", () => {
    expect(told({ firstFlight: "2025-03-09" })).toEqual([
      "meets: It was glued or opened on 10 March 2025, after the first flight; LAST, before return to service, asks for it.",
    ]);
    expect(told({ firstFlight: "2025-03-09", kind: "flight" })).toEqual([
      "caution: It was glued or opened on 10 March 2025, after the first flight, and no hold point before return to service asks for it.",
    ]);
  });

  it("that was glued by then says nothing", () => {
    expect(told({ firstFlight: "2025-03-10" })).toEqual([]);
    expect(told({})).toEqual([]);
  });
});

describe("A hold point before flight", () => {
  const SIGNED = [signed("BOX", "2025-04-01"), signed("LAST", "2025-04-02")];

  it("stays open where nobody had signed it when it first flew", () => {
    const stateOf = (firstFlight: string) =>
      evidenceOf({ firstFlight, kind: "flight", entries: SIGNED }).holdPoints.get("LAST")?.state;
    expect(stateOf("2025-04-02")).toBe("passed");
    expect(stateOf("2025-04-01")).toBe("signed with things open");
    expect(needs({ firstFlight: "2025-04-01", kind: "flight", entries: SIGNED })).toContain(
      "It first flew on 1 April 2025, and no signature that counts was there by then.",
    );
  });
});

describe("A return to service", () => {
  const BOX = signed("BOX", "2025-04-01");
  const stateOf = (about: About) => evidenceOf(about).holdPoints.get("LAST")?.state;

  it("is passed by an inspector, or by whoever is said to be allowed to, on a paper", () => {
    const by = (who: string, change = {}) => [BOX, signed("LAST", "2025-05-02", { by: who, ...change })];
    expect(stateOf({ entries: by("ins") })).toBe("passed");
    expect(stateOf({ entries: by("me") })).toBe("ready");
    expect(stateOf({ entries: by("me"), mayReturn: "certificate 12" })).toBe("passed");
    expect(stateOf({ entries: by("me", { reference: undefined }), mayReturn: "certificate 12" })).toBe("ready");
  });

  it("is passed after own work only by whoever is said to be allowed to", () => {
    const hours = [{ place, who: "ins", task: "gluing", minutes: 60, typed: "1:00", assembly: "wing" }];
    const worked = entry("2025-03-11-worked", { hours });
    expect(stateOf({ entries: [worked, signed("LAST", "2025-05-02")] })).toBe("ahead");
    expect(
      evidenceOf({ entries: [signed("BOX", "2025-04-01", { by: "me" })], mayReturn: "certificate 12" }).holdPoints.get(
        "BOX",
      )?.state,
    ).toBe("ready");
  });

  it("asks itself for what has been open again only since the first flight", () => {
    const drained = entry("2025-04-20-drain", {
      departures: [
        departure("D-1", {
          entry: "2025-04-20-drain",
          day: "2025-04-20",
          acceptedBy: "ins",
          acceptedIn: "2025-04-20-drain",
          reference: "letter 4",
        }),
      ],
    });
    const entries = [BOX, drained, signed("LAST", "2025-05-02")];
    expect(evidenceOf({ entries }).holdPoints.get("BOX")?.state).toBe("reopened");
    expect(stateOf({ entries })).toBe("signed with things open");
    expect(stateOf({ entries, firstFlight: "2025-04-20" })).toBe("signed with things open");
    expect(stateOf({ entries, firstFlight: "2025-04-19" })).toBe("passed");
  });
});
