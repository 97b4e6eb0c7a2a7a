import { expect, it } from "vitest";
import { assembly, batch, entry, joint, lot, record } from "./make.ts";
import { reckon } from "./reckoned.ts";

it("A lot that a rework alone put in is where that joint is, and its assembly, though no batch names it", () => {
  const rework = {
    place: { file: "", line: 1, column: 1 },
    entry: "2025-04-01-open",
    day: "2025-04-01",
    joints: ["J-0"],
    why: "a gap",
    replaced: [{ lot: "S-1", with: "S-9" }],
  };
  const { lots } = reckon(
    record({
      assemblies: [assembly("wing", { joints: [joint("J-0")] })],
      lots: [lot("R-1"), lot("H-1"), ...["S-1", "S-9"].map((id) => lot(id, { material: "timber" }))],
      entries: [
        entry("2025-03-10-glue", { batches: [batch("B-1", { joints: ["J-0"], timber: ["S-1"] })] }),
        entry("2025-04-01-open", { reworks: [rework] }),
      ],
    }),
  );
  expect(lots.get("S-9")).toMatchObject({ batches: [], joints: ["J-0"], formerJoints: [], assemblies: ["wing"] });
  expect(lots.get("S-1")).toMatchObject({ batches: ["B-1"], joints: [], formerJoints: ["J-0"], assemblies: [] });
});

it("A lot that a rework alone put in, and another took out again, was in that joint", () => {
  const rework = (day: string, lot: string, other: string) =>
    entry(`${day}-open`, {
      reworks: [
        {
          place: { file: "", line: 1, column: 1 },
          entry: `${day}-open`,
          day,
          joints: ["J-0"],
          why: "a gap",
          replaced: [{ lot, with: other }],
        },
      ],
    });
  const { lots } = reckon(
    record({
      assemblies: [assembly("wing", { joints: [joint("J-0"), joint("J-1")] })],
      lots: [lot("R-1"), lot("H-1"), ...["S-1", "S-9", "S-10"].map((id) => lot(id, { material: "timber" }))],
      entries: [
        entry("2025-03-10-glue", { batches: [batch("B-1", { joints: ["J-0", "J-1"], timber: ["S-1"] })] }),
        rework("2025-04-01", "S-1", "S-9"),
        rework("2025-04-02", "S-9", "S-10"),
      ],
    }),
  );
  expect(lots.get("S-9")).toMatchObject({ batches: [], joints: [], formerJoints: ["J-0"], assemblies: [] });
  expect(lots.get("S-10")).toMatchObject({ batches: [], joints: ["J-0"], formerJoints: [], assemblies: ["wing"] });
});
