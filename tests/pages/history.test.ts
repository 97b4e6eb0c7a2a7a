import { describe, expect, it } from "vitest";
import { assemblyHistory, jointHistory } from "../../src/pages/archive/history.ts";
import { assembly, batch, entry, joint, lot, LOTS, record } from "../evidence/make.ts";
import { exampleSite } from "./example.ts";

const place = { file: "made.md", line: 1, column: 1 };

describe("The history of an assembly", () => {
  const received = (id: string, day: string) => lot(id, { received: day, material: "part", adhesive: undefined });
  const fitted = (where: string, of: string, on: string) => ({
    place,
    entry: "2025-03-12-fit",
    day: "2025-03-12",
    assembly: on,
    where,
    lot: of,
    count: 1,
  });
  const recalled = "2025-04-01-letter";
  const made = record({
    lots: [...LOTS, received("BO-1", "2025-02-01"), received("BO-2", "2025-02-02")],
    assemblies: [
      assembly("wing"),
      assembly("spar", { parent: "wing" }),
      assembly("end", { parent: "spar", joints: [joint("E-1", "end")] }),
      assembly("tail"),
    ],
    entries: [
      entry("2025-03-10-glue", { assembly: "end", batches: [batch("B-1", { joints: ["E-1"] })] }),
      entry("2025-03-12-fit", {
        assembly: "end",
        fitted: [fitted("Root", "BO-1", "spar"), fitted("Tail", "BO-2", "tail")],
      }),
      entry(recalled, {
        assembly: undefined,
        recalls: [{ place, entry: recalled, day: "2025-04-01", lot: "BO-1", why: "Soft" }],
      }),
    ],
  });
  const { shown } = exampleSite("inspector", made);
  const came = (id: string) => assemblyHistory(shown, id).flatMap(({ lots }) => lots.map((one) => one.id));

  it("has the lots of all that stands in it, however deep, and of nothing beside it", () => {
    expect(came("end")).toEqual(["R-1", "H-1", "S-1"]);
    expect(came("spar")).toEqual(["R-1", "H-1", "S-1", "BO-1"]);
    expect(came("wing")).toEqual(came("spar"));
    expect(came("tail")).toEqual(["BO-2"]);
  });

  it("has a recall of a lot in what stands in it, though the entry names no assembly", () => {
    const entries = (id: string) => assemblyHistory(shown, id).flatMap(({ entry: of }) => of?.id ?? []);
    expect(entries("wing")).toContain(recalled);
    expect(entries("tail")).not.toContain(recalled);
  });
});

it("A joint that was opened and glued again in one entry was opened first", () => {
  const again = "2025-03-15-glue";
  const on = { place, entry: again, day: "2025-03-15" };
  const made = record({
    entries: [
      entry("2025-03-10-glue", { batches: [batch("B-1")] }),
      entry(again, {
        batches: [batch("B-2", { entry: again }, "2025-03-15")],
        reworks: [{ ...on, joints: ["W-1"], why: "Dry" }],
      }),
    ],
  });
  const { shown } = exampleSite("inspector", made);
  const lines = jointHistory(shown, "W-1").flatMap((day) => day.lines.map(({ what }) => what));
  expect(lines).toEqual(["Batch B-1", "Joint W-1", "Batch B-2"]);
});
