import { describe, expect, it } from "vitest";
import { dateWords } from "../../src/words/dates.ts";
import type { Entry, Fitting } from "../../src/facts/types.ts";
import { entry } from "./make.ts";
import { GLUED, LATER, pointOf, SIGNED, signing, TESTS } from "./signed.ts";

const place = { file: "", line: 1, column: 1 };

const fits = (day: string, line: Partial<Fitting> = {}): Entry =>
  entry(`${day}-fits`, {
    fitted: [
      { place, entry: `${day}-fits`, day, assembly: "wing", where: "Hinge bolt", lot: "BO-1", count: 1, ...line },
    ],
  });
const recalls = (day: string, lot = "BO-1"): Entry =>
  entry(`${day}-recalls`, { recalls: [{ place, entry: `${day}-recalls`, day, lot, why: "cracks" }] });
const pointAfter = (...entries: Entry[]) => pointOf([GLUED, TESTS, ...entries].sort((a, b) => (a.id < b.id ? -1 : 1)));

describe("A part bought in", () => {
  it("blocks the hold point of its assembly, and of one above, while its lot is recalled", () => {
    const { state, needs } = pointAfter(fits("2025-04-01"), recalls("2025-04-02"));
    expect(state).toBe("blocked");
    expect(needs.map(({ sentence }) => sentence)).toContain(
      "Hinge bolt is of lot BO-1, recalled on 2 April 2025, and nothing says what took its place: cracks.",
    );
    expect(pointAfter(fits("2025-04-01", { assembly: "rib" }), recalls("2025-04-02")).state).toBe("blocked");
    expect(pointAfter(fits("2025-04-01", { assembly: "fin" }), recalls("2025-04-02")).state).toBe("ready");
    expect(pointAfter(fits("2025-04-01"), recalls("2025-04-02", "BO-2")).state).toBe("ready");
    expect(pointAfter(recalls("2025-03-31"), fits("2025-04-01")).state).toBe("blocked");
  });

  it("is out once a later line at its place names its lot, and nothing else takes it out", () => {
    const after = (line: Partial<Fitting>) =>
      pointAfter(fits("2025-04-01"), recalls("2025-04-02"), fits("2025-04-03", line)).state;
    expect(after({ lot: "BO-2", replaces: "BO-1" })).toBe("ready");
    expect(after({ lot: "BO-2" })).toBe("blocked");
    expect(after({ lot: "BO-2", replaces: "BO-3" })).toBe("blocked");
    expect(after({ lot: "BO-2", replaces: "BO-1", where: "Another bolt" })).toBe("blocked");
    expect(after({ lot: "BO-2", replaces: "BO-1", assembly: "rib" })).toBe("blocked");
    expect(after({ lot: "BO-1", replaces: "BO-1" })).toBe("blocked");
  });

  it("that stood there recalled when it was signed leaves that signed with things open, though it was replaced since", () => {
    const signed = [fits("2025-04-01"), recalls("2025-04-02"), signing()];
    const open = pointAfter(...signed);
    expect(open.state).toBe("signed with things open");
    const settled = pointAfter(...signed, fits(LATER, { lot: "BO-2", replaces: "BO-1" }));
    expect(settled.state).toBe("signed with things open");
    expect(settled.needs.map(({ sentence }) => sentence)).toContain(
      "Hinge bolt was of lot BO-1, recalled on 2 April 2025, when it was signed: cracks.",
    );
  });

  it("opens a hold point again by a recall after it was signed, or by another in its place", () => {
    const recalled = pointAfter(fits("2025-04-01"), signing(), recalls(LATER));
    expect([recalled.state, recalled.changes.map(({ sentence }) => sentence)]).toEqual([
      "reopened",
      [`Hinge bolt is of lot BO-1, which was recalled on ${dateWords(LATER)}: cracks.`],
    ]);
    const replaced = pointAfter(fits("2025-04-01"), signing(), fits(LATER, { lot: "BO-2", replaces: "BO-1" }));
    expect([replaced.state, replaced.changes.map(({ sentence }) => sentence)]).toEqual([
      "reopened",
      [`On ${dateWords(LATER)} Hinge bolt of lot BO-1 was replaced by one of lot BO-2.`],
    ]);
    expect(pointAfter(signing(), fits(LATER)).state).toBe("passed");
    expect(pointAfter(fits(SIGNED), signing()).state).toBe("passed");
  });
});
