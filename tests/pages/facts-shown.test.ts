/** Facts that verdicts rest on, where their reader looks for them. */
import { describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Lot, Piece } from "../../src/facts/types.ts";
import { lotPage } from "../../src/pages/evidence/lot-page.ts";
import { pieceFacts } from "../../src/pages/evidence/piece-facts.ts";
import { PIECES } from "../../src/pages/ledgers/ledger-pieces.ts";
import { limitsOfProcedure } from "../../src/pages/story/about.ts";
import { batch, glued, LOTS, lot, piece, procedure, test } from "../evidence/make.ts";
import { mm } from "../evidence/quantities.ts";

const shownOf = (change: Partial<Piece>, edition: Edition = "archive", own: Partial<Lot> = {}) => {
  const lots = [
    ...LOTS,
    lot("S-9", { material: "timber", thickness: mm("25"), ...own }),
    lot("P-9", { material: "plywood" }),
  ];
  const of = glued(
    [batch("B-1", { pieces: [piece("B-1", 1, change)] })],
    [test("B-1/1", { judgedBy: "ins", woodFailure: undefined })],
    { lots },
  );
  return editionOf(of, reckon(of), edition);
};
const LEGS = { legs: [{ lot: "S-9", thickness: mm("6") }, { lot: "P-9" }] };
const told = (shown: ReturnType<typeof shownOf>, word: string) => {
  const file = shown.evidence.pieces.get("B-1/1");
  return file && pieceFacts(shown, file).find((row) => row.word === word)?.noted;
};

describe("What a piece is made of", () => {
  it("is told leg by leg, with its lot and its own thickness", () => {
    expect(told(shownOf(LEGS), "Legs")).toBe("lot S-9, 6 mm thick; lot P-9");
    expect(told(shownOf({}), "Legs")).toBeUndefined();
    expect(PIECES.rows(shownOf(LEGS))[0]).toMatchObject({ legs: ["S-9", "P-9"], leg_thickness_typed: "6 mm; " });
    expect(PIECES.rows(shownOf({}))[0]).toMatchObject({ legs: [], leg_thickness_typed: null });
  });

  it("names no lot that the edition does not show", () => {
    const hidden = shownOf(LEGS, "public", { audience: "inspector" });
    expect(told(hidden, "Legs")).toBe("a lot that this edition does not show, 6 mm thick; lot P-9");
    expect(PIECES.rows(hidden)[0]).toMatchObject({ legs: ["withheld", "P-9"] });
  });

  it("is told to be scraps of the joint's own parts where it is", () => {
    expect(told(shownOf({ scraps: true }), "Made from")).toBe("scraps of the joint’s own parts");
    expect(told(shownOf({}), "Made from")).toBeUndefined();
    expect([shownOf({ scraps: true }), shownOf({})].map((shown) => PIECES.rows(shown)[0]?.["scraps"])).toEqual([
      "yes",
      "no",
    ]);
  });
});

it("Whose estimate a percentage is, is told by the name that the edition has", () => {
  const shown = shownOf({});
  expect(told(shown, "Estimated by")).toBe("Ada Invented");
  expect(PIECES.rows(shown)[0]?.["judged_by"]).toBe("Ada Invented");
});

it("A lot's thickness is told on its page", () => {
  const shown = shownOf({});
  const thickness = (id: string) => {
    const file = shown.evidence.lots.get(id);
    return file && lotPage(shown, file).particulars.find(({ word }) => word === "Thickness")?.noted;
  };
  expect([thickness("S-9"), thickness("P-9")]).toEqual(["25 mm", undefined]);
});

it("What the drawings ask of a lot stands beside what it is, also where that is not noted", () => {
  const asked = { grainSlope: "1 : 16", rings: { typed: "at least 240 /m", least: 240 } };
  const shown = shownOf({}, "archive", { thickness: undefined, grainSlope: "1 : 18", asked });
  const file = shown.evidence.lots.get("S-9");
  expect(file && lotPage(shown, file).particulars.slice(3)).toEqual([
    { word: "Slope of grain", noted: "1 : 18", limit: "no more than 1 : 16" },
    { word: "Rings", noted: "not noted", limit: "at least 240 /m" },
  ]);
});

it("A procedure that counts face plies says so", () => {
  const word = "Break in a face veneer of plywood";
  const said = (change: object) =>
    limitsOfProcedure(procedure(change), "metric").find((one) => one.word === word)?.value;
  expect([said({ facePlyCounts: true }), said({})]).toEqual(["counts as one in the wood", undefined]);
});
