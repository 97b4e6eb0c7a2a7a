/** What a hold point needs: each need with what it is about, what it takes and what it rests on. */
import { describe, expect, it } from "vitest";
import { dateWords } from "../../src/words/dates.ts";
import { reckon } from "./reckoned.ts";
import type { SaidNeed } from "./reckoned.ts";
import type { Entry, Measurement, Ref } from "../../src/facts/types.ts";
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
import { g, mm } from "./quantities.ts";

const ref = (kind: Ref["kind"], id: string): Ref => ({ kind, id });
const ID = "2025-04-01-m";
const of = { entry: ID, day: "2025-04-01" };

function needs(change: Partial<Entry>, ...others: Entry[]): readonly SaidNeed[] {
  const wing = assembly("wing", { holdPoints: [holdPoint("CLOSE")] });
  return (
    reckon(record({ assemblies: [wing], entries: [entry(ID, change), ...others] })).holdPoints.get("CLOSE")?.needs ?? []
  );
}

const side = (which: "left" | "right", found: string, change: Partial<Measurement> = {}) =>
  measurement({ ...of, what: which, pair: "P", side: which, found: mm(found), ...change });

describe("A need", () => {
  it("for an open item is to do it and close it", () => {
    expect(needs({ raised: [openItem("O-1", { ...of, before: "CLOSE" })] })).toEqual([
      {
        about: ref("open item", "O-1"),
        sentence: "O-1 is open since 1 April 2025: corner block.",
        needs: "do it and close it in an entry",
        blocks: true,
        restsOn: [ref("open item", "O-1"), ref("entry", ID)],
      },
    ]);
  });

  it("for a departure is to have it accepted", () => {
    expect(needs({ departures: [departure("D-1", of)] })).toEqual([
      {
        about: ref("departure", "D-1"),
        sentence: "Departure D-1 of 1 April 2025 is not accepted: another packer.",
        needs: "have an inspector accept it, and note by whom and on what paper",
        blocks: true,
        restsOn: [ref("departure", "D-1"), ref("entry", ID)],
      },
    ]);
  });

  it("for a measurement that is out is to mend it, or a departure", () => {
    expect(needs({ measurements: [measurement({ ...of, limits: { typed: "at most 61 mm", most: 0.061 } })] })).toEqual([
      {
        about: ref("entry", ID),
        sentence: "rib height measures 62.0 mm, outside at most 61 mm.",
        needs: "mend it and measure again, or note it as a departure",
        blocks: true,
        restsOn: [ref("entry", ID)],
      },
    ]);
  });

  it("for a pair is to mend it where it is out, to measure the other side where there is one, and nothing where it is within or has no tolerance", () => {
    const later = "2025-04-02-m";
    const right = (found: string): Entry => entry(later, { measurements: [side("right", found, { entry: later })] });
    const left = (found: string, change: Partial<Measurement> = { pairTolerance: mm("0.5") }): Partial<Entry> => ({
      measurements: [side("left", found, change)],
    });
    expect(needs(left("62.0"), right("63.0"))).toEqual([
      {
        about: ref("entry", later),
        sentence: "The sides of P differ by more than they may: left 62.0 mm, right 63.0 mm, where 0.5 mm is allowed.",
        needs: "mend it and measure again, or note it as a departure",
        blocks: true,
        restsOn: [ref("entry", ID), ref("entry", later)],
      },
    ]);
    expect(
      needs(
        { measurements: [side("right", "62.0", { pairTolerance: mm("0.5") })] },
        entry(later, { measurements: [side("left", "63.0", { entry: later })] }),
      )[0]?.about,
    ).toEqual(ref("entry", later));
    expect(needs(left("62.0"))).toEqual([
      {
        about: ref("entry", ID),
        sentence: "Of P only the left side is measured.",
        needs: "measure the other side",
        blocks: false,
        restsOn: [ref("entry", ID)],
      },
    ]);
    expect(needs(left("62.0"), right("62.3"))).toEqual([]);
    expect(needs(left("62.0", {}), right("63.0"))).toEqual([]);
  });

  it("for a look that was not signed is to answer it, with or without remarks", () => {
    const looked = (change: object): readonly SaidNeed[] =>
      needs({ inspections: [inspection("CLOSE", { ...of, result: "not signed", ...change })] });
    expect(looked({})).toEqual([
      {
        about: ref("hold point", "CLOSE"),
        sentence: "It was looked at on 1 April 2025 and not signed.",
        needs: "answer what was found and have it looked at again, on a later day",
        blocks: true,
        restsOn: [ref("hold point", "CLOSE"), ref("entry", ID)],
      },
    ]);
    expect(looked({ remarks: "Gap at rib 4." })[0]?.sentence).toBe(
      "It was looked at on 1 April 2025 and not signed: Gap at rib 4.",
    );
  });

  it("for a joint tells only of the batches that stand in the way", () => {
    const day = "2025-03-10";
    const glued = entry(`${day}-glue`, {
      batches: [
        batch("B-1", { entry: `${day}-glue` }, day),
        batch("B-2", { entry: `${day}-glue`, resin: { lot: "R-2", mass: g("40.0") } }, day),
      ],
    });
    const wing = assembly("wing", { joints: [joint("W-1")], holdPoints: [holdPoint("CLOSE")] });
    const file = reckon(
      record({ assemblies: [wing], entries: [glued, entry("2025-03-20-tests", { tests: [test("B-1/1")] })] }),
    ).holdPoints.get("CLOSE");
    expect(file?.needs).toEqual([
      {
        about: ref("joint", "W-1"),
        sentence: `Joint W-1 is pending. Batch B-2, glued on ${dateWords(day)}, is pending.`,
        needs: "break the test pieces of its batches",
        blocks: false,
        restsOn: [ref("joint", "W-1"), ref("batch", "B-2"), ref("entry", `${day}-glue`)],
      },
    ]);
  });
});
