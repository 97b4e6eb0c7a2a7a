/** What is wrong in the demonstration is found by the program, on the page of what it is about; and nothing else is. */
import { expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { reckonStock } from "../../src/evidence/lots/stock.ts";
import type { Finding } from "../../src/evidence/types.ts";
import { demo, prose } from "./told.ts";

const evidence = reckon(demo);
const named = (findings: readonly Finding[]): string[] =>
  [...new Set(findings.map(({ about, code }) => `${about.id} ${code}`))].sort();

it("Only what the story tells is rejected", () => {
  expect(named(evidence.findings.filter(({ severity }) => severity === "rejects"))).toEqual([
    // Varnish out of an old tin, until it was scraped off.
    "2026-10-24-the-tank-bay coat-lots/past",
    // A lean cup, a cold shop and a cold surface.
    "B-008 mix-ratio/outside",
    "B-010 shop-temperature/outside",
    // The first web: by its builder's hand, by faces two nights old, by its pieces.
    "B-017 builders-rejection/rejected",
    "B-017 glue-up/not-as-asked",
    "B-017 test-pieces/failed",
    "B-017/1 failure-mode/glue-line",
    "B-017/2 failure-mode/glue-line",
    "B-017/3 failure-mode/too-little-wood",
    // The trial of papers.
    "B-018/1 failure-mode/glue-line",
    "B-018/2 failure-mode/glue-line",
    "B-018/3 failure-mode/too-little-wood",
    "B-018/4 failure-mode/glue-line",
    // A stick that was filed late, and the recalled hardener where it still is.
    "B-026 test-pieces/failed",
    "B-026/7 failure-mode/too-little-wood",
    "B-030 shop-temperature/part-outside",
    "WR-J02 joint-quarantine/recalled",
    "WR-J04 joint-quarantine/batch",
    "WR-J04 joint-quarantine/recalled",
  ]);
});

it("A starved joint, pieces of another wood and a lot that does not add up are told", () => {
  const codes = ["spread/too-little", "sample-wood/other-wood", "stock/left-differs"];
  expect(named(evidence.findings.filter(({ code }) => codes.includes(code)))).toEqual([
    "B-033 spread/too-little",
    "B-041 sample-wood/other-wood",
    "H-2 stock/left-differs",
  ]);
  expect(named(reckonStock(demo, evidence).findings)).toEqual(["A-1 stock/overdrawn"]);
});

it("Word by telephone and a signature with things open are called so, and somebody reads it in the story", () => {
  const told = [...evidence.standings].filter(([, standing]) => standing === "told by the builder");
  expect(told.map(([id]) => id)).toEqual(["D-01", "D-07", "D-09", "D-12"]);
  expect(prose("2026-10-21-labels")).toContain("which builder. This one, from the telephone.");
  const held = [...evidence.holdPoints].map(([id, { state }]) => `${id} ${state}`);
  expect(held).toContain("WS-H1 signed with things open");
  expect(prose("2026-11-20-where-it-stands")).toContain("was signed with things open");
});

it("Tins that stood too cold are found on every batch that was mixed of them, and the story warmed them first", () => {
  const cold = evidence.findings.filter(
    ({ code, values }) => code === "lot-storage/outside" && JSON.stringify(values).includes("below"),
  );
  expect([...new Set(cold.map(({ about }) => about.id))].sort()).toEqual(["B-033"]);
  expect(prose("2026-01-24-a-former-for-the-hoop")).toContain("looked at for crystals");
});
