import { expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { plannedWithin } from "../../src/pages/story/planned.ts";
import { assembly, entry, record } from "../evidence/make.ts";

it("Hours with everything within are held against the plans of everything within", () => {
  const made = record({
    assemblies: [
      assembly("wing", { planned: 100 }),
      assembly("rib", { parent: "wing", planned: 20 }),
      assembly("nose", { parent: "rib" }),
      assembly("fin"),
    ],
    entries: [entry("2025-01-01-start", { assembly: "wing" })],
  });
  const shown = editionOf(made, reckon(made), "archive");
  expect(["wing", "rib", "nose", "fin"].map((id) => plannedWithin(shown, id))).toEqual([120, 20, undefined, undefined]);
});
