/** Before what each kind of finish is asked where nothing is planned, and coats that were mended on paper after a signature. */
import { describe, expect, it } from "vitest";
import { coatFiles } from "../../src/evidence/coats/coat.ts";
import { coatNeeds, coatsThen } from "../../src/evidence/readiness/coats.ts";
import { orderOf, recordIndexOf } from "../../src/evidence/record-index.ts";
import type { CoatFile } from "../../src/evidence/types.ts";
import type { Coat, FinishKind, HoldKind } from "../../src/facts/types.ts";
import { assembly, entry, lot, record } from "./make.ts";
import { celsius, epochOf, moment, pc, range } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const DAY = "2025-04-01";
const KINDS: readonly FinishKind[] = ["primer", "varnish", "fabric", "tape", "dope", "paint"];
const FINISHES = KINDS.map((kind) => ({
  id: kind,
  place,
  title: `Some ${kind}`,
  kind,
  sheet: "Sheet",
  temperature: range("15 to 30 °C", 15, 30),
  humidity: range("at most 70 %", undefined, 0.7),
  coats: 2,
  body: [],
}));

function looked(change: Partial<Coat>, ...later: readonly string[]) {
  const coat: Coat = {
    place,
    entry: `${DAY}-coat`,
    day: DAY,
    assembly: "wing",
    where: "Inside",
    finish: "varnish",
    lots: ["V-1"],
    coat: 1,
    at: moment(DAY, "10:00"),
    temperature: celsius("20"),
    humidity: pc("50"),
    ...change,
  };
  const index = recordIndexOf(
    record({
      assemblies: [assembly("wing")],
      finishes: FINISHES,
      lots: [lot("V-1", { material: "finish", adhesive: undefined, finish: coat.finish, expiry: "2026-12-31" })],
      entries: [entry(`${DAY}-coat`, { coats: [coat] }), ...later.map((id) => entry(id))],
    }),
  );
  return { index, files: coatFiles(index) };
}

describe("A finish of which nothing is planned", () => {
  it("is asked before the next skin where it protects what that closes in, and else before the first load", () => {
    const asked = (finish: FinishKind, kind: HoldKind) => {
      const { index, files } = looked({ finish });
      return coatNeeds(index, { kind, assemblies: ["wing"], files }, undefined).map(({ code }) => code);
    };
    const kinds: readonly HoldKind[] = ["next skin", "close-up", "covering", "first load", "flight"];
    for (const finish of KINDS) {
      const first = finish === "primer" || finish === "varnish" ? 0 : 3;
      expect(kinds.map((kind) => asked(finish, kind).length)).toEqual(kinds.map((_, at) => (at < first ? 0 : 1)));
    }
    expect(asked("tape", "first load")).toEqual(["need/coats-missing"]);
  });
});

describe("A coat that is bad by a finding that rests on a later entry", () => {
  const LOOK = `${DAY}-look`;
  const LATER = "2025-04-09-mends";
  const then = (code: string) => {
    const { index, files } = looked({}, LOOK, LATER);
    const bad = { code, severity: "rejects", restsOn: [{ kind: "entry", id: LATER }] };
    const spoilt = files.map((file) => ({ ...file, findings: [bad] }) as unknown as CoatFile);
    const coated = { kind: "covering", assemblies: [], files: spoilt } as const;
    return coatsThen(index, coated, { at: orderOf(index, LOOK), day: epochOf(DAY) }).length;
  };

  it("was bad when it was signed, unless it was recalled only later", () => {
    // The coat itself, and the second one that is not there; a recall that came later leaves the second alone.
    expect(then("seconded/stands")).toBe(2);
    expect(then("coat-lots/recalled")).toBe(1);
  });
});
