/** Which acceptance answers for what: what came after it, or was changed since, it knew nothing of. */
import { describe, expect, it } from "vitest";
import { acceptedBefore, isAnswered, standingOf } from "../../src/evidence/readiness/answering.ts";
import { orderOf, recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Change, Departure, Entry } from "../../src/facts/types.ts";
import { assembly, departure, entry, measurement, record } from "./make.ts";

const [RAISED, LETTER, LATER, LAST] = ["2025-04-01-raised", "2025-04-03-letter", "2025-04-05-later", "2025-04-07-last"];
const ACCEPTED = { entry: RAISED, acceptedBy: "ins", acceptedIn: LETTER, reference: "letter 4" };

/** An amendment by one entry of what another holds. */
const amends = (by: string, of: string, change: Partial<Change>): Entry =>
  entry(by, {
    amendments: [
      {
        place: { file: "", line: 1, column: 1 },
        by,
        entry: of,
        day: by.slice(0, 10),
        why: "misread",
        changes: [{ about: { kind: "departure", id: "D-1" }, fact: "Departure D-1", needs: [], ...change } as Change],
      } as unknown as Entry["amendments"][number],
    ],
  });
function indexOf(change: Partial<Departure> = {}, ...more: readonly Entry[]) {
  const own = entry(RAISED, { departures: [departure("D-1", { ...ACCEPTED, ...change })] });
  const others = [LETTER, LATER, LAST].filter((id) => more.every((one) => one.id !== id)).map((id) => entry(id));
  return recordIndexOf(record({ entries: [own, ...others, ...more] }));
}
function standing(index: ReturnType<typeof indexOf>, until?: string) {
  const named = index.departures.get("D-1");
  if (named === undefined) throw new Error("no departure");
  return standingOf(index, named, until === undefined ? undefined : orderOf(index, until));
}

describe("How far a departure is accepted", () => {
  it("is by an inspector, on a paper and without a condition, or not at all", () => {
    expect(standing(indexOf())).toBe("accepted");
    expect(standing(indexOf({ acceptedBy: undefined }))).toBe("not accepted");
    expect(standing(indexOf({ acceptedBy: "nobody" }))).toBe("accepted by no inspector");
    expect(standing(indexOf({ reference: undefined }))).toBe("told by the builder");
    expect(standing(indexOf({ reference: "by telephone" }))).toBe("told by the builder");
    expect(standing(indexOf({ condition: "a packer" }))).toBe("accepted on a condition");
  });

  it("ends where what was accepted, why or where is changed after it, and not with what stands beside that", () => {
    const changed = (value: string | undefined, by = LATER) =>
      standing(indexOf({}, amends(by, RAISED, value === undefined ? {} : { value })));
    for (const value of ["what", "why", "assembly", "id", "something new", undefined])
      expect([value, changed(value)]).toEqual([value, "changed since it was accepted"]);
    for (const value of ["accepted by", "reference", "condition", "for", "note"])
      expect([value, changed(value)]).toEqual([value, "accepted"]);
    expect(changed("what", LETTER)).toBe("accepted");
    expect(changed("what", "2025-04-02-before")).toBe("accepted");
  });

  it("is at an earlier place in the record what nothing had changed by then", () => {
    const index = indexOf({}, amends(LATER, RAISED, { value: "what" }));
    expect([standing(index, LETTER), standing(index, LATER), standing(index, LAST)]).toEqual([
      "accepted",
      "changed since it was accepted",
      "changed since it was accepted",
    ]);
  });
});

describe("A departure that something names", () => {
  const thing = (id: string, named: string | undefined = "D-1") => ({
    entry: id,
    fact: "Measurement: rib",
    ...(named !== undefined && { departure: named }),
  });

  it("was accepted before what was noted later, and not before what was noted by then", () => {
    const index = indexOf();
    const before = (id: string) => [acceptedBefore(index, thing(id)), isAnswered(index, thing(id))];
    expect([before(RAISED), before(LETTER), before(LATER)]).toEqual([
      [undefined, true],
      [undefined, true],
      ["D-1", false],
    ]);
    expect(acceptedBefore(index, thing(LATER), orderOf(index, LATER))).toBe("D-1");
    expect(acceptedBefore(index, thing(LATER, "D-9"))).toBeUndefined();
    expect(isAnswered(index, { entry: LATER, fact: "Measurement: rib" })).toBe(false);
  });

  it("was accepted before what was amended later, by the words that tell of it, as far as that is seen", () => {
    const of = (change: Partial<Change>) => {
      const about = { kind: "entry", id: RAISED } as const;
      return indexOf({}, amends(LATER, RAISED, { about, fact: "Measurement: rib", ...change }));
    };
    expect(acceptedBefore(of({}), thing(RAISED))).toBe("D-1");
    expect(acceptedBefore(of({}), thing(RAISED), orderOf(of({}), LETTER))).toBeUndefined();
    expect(acceptedBefore(of({ fact: "Measurement: cap" }), thing(RAISED))).toBeUndefined();
    expect(acceptedBefore(of({ about: { kind: "entry", id: LAST } }), thing(RAISED))).toBeUndefined();
  });

  it("is open itself where it is not accepted, wherever it is named", () => {
    const index = indexOf({ reference: undefined });
    expect([acceptedBefore(index, thing(LATER)), isAnswered(index, thing(LATER))]).toEqual([undefined, true]);
  });

  it("is not accepted by one who worked on what names it", () => {
    const fin = record({
      assemblies: [assembly("wing"), assembly("fin")],
      entries: [
        entry(RAISED, { departures: [departure("D-1", ACCEPTED)] }),
        entry(LETTER, {
          hours: [{ who: "ins", task: "gluing", minutes: 5, assembly: "fin" }] as unknown as Entry["hours"],
          measurements: [measurement({ departure: "D-1", assembly: "fin", entry: LETTER })],
        }),
      ],
    });
    expect(standing(recordIndexOf(fin))).toBe("accepted by one who worked on it");
    expect(standing(recordIndexOf({ ...fin, entries: fin.entries.map((one) => ({ ...one, measurements: [] })) }))).toBe(
      "accepted",
    );
  });
});
