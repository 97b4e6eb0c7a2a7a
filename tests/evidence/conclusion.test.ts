/** The words of a trial's conclusion at the very figures where they change. */
import { describe, expect, it } from "vitest";
import { conclusionOf } from "../../src/evidence/trial/conclusion.ts";
import { english } from "./reckoned.ts";
import type { PreparationOutcome } from "../../src/evidence/types/trial.ts";

const outcome = (id: string): PreparationOutcome => ({
  preparation: { id, what: id },
  pieces: ["B-1/1"],
  held: 1,
  failed: 1,
  silent: 0,
  notBroken: 0,
});
const said = (p: number, effect?: number): string[] =>
  conclusionOf(
    [outcome("a"), outcome("b")],
    { preparations: ["a", "b"], p, least: { clearest: p, ...(effect === undefined ? {} : { effect }) } },
    false,
  )
    .slice(1)
    .map(english());

describe("The words of a conclusion", () => {
  it("give p with more decimals the smaller it is, and only below 0.0001 no figure", () => {
    const shown = (p: number) => /p = (.+?)\)/u.exec(said(p)[0] ?? "")?.[1];
    expect([0.00009999, 0.0001, 0.000999, 0.001, 0.00999, 0.01, 0.0499].map(shown)).toEqual([
      "less than 0.0001",
      "0.00010",
      "0.00100",
      "0.0010",
      "0.0100",
      "0.010",
      "0.050",
    ]);
  });

  it("say of how many trials it would be, and say fewer than one in so many only where it is fewer", () => {
    const chance = (p: number) => /come about in (.+?) of such trials/u.exec(said(p)[0] ?? "")?.[1];
    expect([0.00009999, 0.0001, 0.000999, 0.001, 0.00999, 0.01].map(chance)).toEqual([
      "fewer than one in ten thousand",
      "fewer than one in a thousand",
      "fewer than one in a thousand",
      "0.10 %",
      "1.00 %",
      "1.0 %",
    ]);
  });

  it("round the least effect up, and leave a whole percentage as it is", () => {
    const least = (effect: number) => /at least (\d+ %)/u.exec(said(0.5, effect)[1] ?? "")?.[1];
    expect([0.07, 0.0701, 0.29, 0.999, 1].map(least)).toEqual(["7 %", "8 %", "29 %", "100 %", "100 %"]);
  });
});
