import { describe, expect, it } from "vitest";
import type { ToldNeed } from "../../src/words/findings/told.ts";
import { needsTogether } from "../../src/pages/evidence/needs.ts";
import { pictured, spreadOver } from "../../src/pages/story/pictured.ts";
import { entry } from "../evidence/make.ts";

const need = (id: string, sentence: string, blocks = false, kind: ToldNeed["about"]["kind"] = "joint"): ToldNeed => ({
  about: { kind, id },
  sentence,
  needs: "glue it",
  blocks,
  restsOn: [],
});

describe("What a hold point needs", () => {
  it("is said once for all joints that need the same, what blocks first", () => {
    const together = needsTogether([
      need("J1", "Joint J1 is not glued."),
      need("O-1", "O-1 is open since 1 January 2025: a block.", true, "open item"),
      need("J2", "Joint J2 is not glued."),
    ]);
    expect(together.map(({ about, sentence, needs }) => [about.map(({ id }) => id), sentence, needs])).toEqual([
      [["O-1"], "Open since 1 January 2025: a block.", "Glue it"],
      [["J1", "J2"], "Not glued.", "Glue it"],
    ]);
  });

  it("keeps apart what is said of different things", () => {
    expect(
      needsTogether([
        need("J1", "Joint J1 is pending. Batch B-1 is pending."),
        need("J2", "Joint J2 is pending. Batch B-2 is pending."),
      ]),
    ).toHaveLength(2);
  });
});

describe("Pictures over the course of the work", () => {
  const photo = { place: { file: "x", line: 1, column: 1 }, file: "a.jpg", alt: "a", audience: "public" as const };
  const entries = Array.from({ length: 9 }, (_, day) =>
    entry(`2025-01-0${day + 1}-x`, day === 4 ? {} : { photos: [photo] }),
  );

  it("are those of entries that have some", () => {
    expect(pictured(entries)).toHaveLength(8);
  });

  it("keep the first and the last where there are too many", () => {
    expect(spreadOver(pictured(entries), 3).map((one) => one.entry.day)).toEqual([
      "2025-01-01",
      "2025-01-06",
      "2025-01-09",
    ]);
    expect(spreadOver(pictured(entries), 20)).toHaveLength(8);
  });
});
