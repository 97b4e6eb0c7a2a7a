import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { trialPage } from "../../src/pages/evidence/trial-page.ts";
import type { Audience, Record, Trial } from "../../src/facts/types.ts";
import { batch, entry, glued, piece, test } from "../evidence/make.ts";

const trial: Trial = {
  id: "papers",
  place: { file: "made.md", line: 1, column: 1 },
  title: "Papers",
  question: "Does it matter?",
  stated: "2025-03-01",
  expectation: "No.",
  audience: "public",
  body: [],
  preparations: [
    { id: "coated", what: "coated paper" },
    { id: "scraped", what: "a scraper" },
  ],
};

/** Four pieces of each preparation; those of `coated` fail, and its last was broken on a day of its own. */
function made(lastIsFor: Audience): Record {
  const pieces = ["coated", "scraped"].flatMap((preparation, at) =>
    [1, 2, 3, 4].map((n) => piece("B-1", 4 * at + n, { trial: "papers", preparation })),
  );
  const tests = pieces
    .filter(({ id }) => id !== "B-1/4")
    .map(({ id, preparation }) =>
      test(id, preparation === "coated" ? { failure: "glue line", woodFailure: undefined } : {}),
    );
  const last = entry("2025-03-21-last", {
    audience: lastIsFor,
    tests: [test("B-1/4", { entry: "2025-03-21-last", failure: "glue line", woodFailure: undefined }, "2025-03-21")],
  });
  return {
    ...glued([batch("B-1", { joints: [], pieces })], tests, { entries: [last] }),
    trials: new Map([["papers", trial]]),
  };
}
const page = (record: Record, edition: Audience) => trialPage(editionOf(record, reckon(record), edition), trial);

describe("The page on a trial", () => {
  it("says what is concluded from all of its pieces, with bounds and the standing rule", () => {
    const { outcomes, conclusion, cautions, standing } = page(made("public"), "public");
    expect(outcomes.map(({ held, failed }) => [held, failed])).toEqual([
      [0, 4],
      [4, 0],
    ]);
    expect(conclusion[1]).toContain("p = 0.029");
    expect(cautions[0]).toContain("That a bond held says no more than");
    expect(standing.source.known).toBe("seen");
  });

  it("concludes nothing where the edition does not show a piece's test, since it would be another trial without it", () => {
    const record = made("inspector");
    const { outcomes, conclusion, cautions } = page(record, "public");
    expect([outcomes, cautions]).toEqual([[], []]);
    expect(conclusion).toEqual(["Rests on something this edition does not show."]);
    expect(page(record, "inspector").conclusion).toEqual(page(made("public"), "public").conclusion);
  });
});
