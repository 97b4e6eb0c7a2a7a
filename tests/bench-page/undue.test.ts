/** What the page foretells, and what it refuses before a cup is mixed, where the build would say less or no. */
import { describe, expect, it } from "vitest";
import type { Said } from "../../src/bench/event.ts";
import { foretell } from "../../src/bench/judged.ts";
import { refusals } from "../../src/bench/refusals.ts";
import { restored } from "../../src/bench/restored.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { givenOf, MADE, recordOf, sessionOfTaps } from "./given.ts";
import { BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();

describe("An amendment that no second person saw", () => {
  const LONG = {
    ...BENCH_RECORD,
    "entries/2021-03-14-glue.md": (BENCH_RECORD["entries/2021-03-14-glue.md"] ?? "").replaceAll(
      "overlap: 5/8 in",
      "overlap: 6/4 in",
    ),
    "entries/2021-03-16-right.md": `---
date: 2021-03-16
title: Read again
amends: [{ entry: 2021-03-14-glue, why: misread, batches: [{ id: B-001, pieces: [{ id: B-001/1, overlap: 5/8 in }] }] }]
---
`,
  };
  const BROKE = `date: 2021-06-01
title: Broken
assembly: rudder
tests:
  - { piece: B-001/1, at: "12:00", failure: wood, wood_failure: 95 %, load: 331 lbf }
`;

  it("betters no verdict that the page foretells of a piece, as it betters none of the build", async () => {
    const given = givenOf(await recordOf(scratch(), LONG));
    const tests = [{ piece: "B-001/1", at: "12:00", failure: "wood", wood_failure: "95 %", load: "331 lbf" }];
    const facts = { date: "2021-06-01", title: "Broken", assembly: "rudder", tests };
    const { pieces, told } = foretell(restored(given), [{ day: "2021-06-01", title: "Broken", facts }]);
    const built = reckon(await recordOf(scratch(), { ...LONG, "entries/2021-06-01-broken.md": `---\n${BROKE}---\n` }));
    expect(pieces.map(({ piece, verdict }) => [piece.id, verdict])).toEqual([
      ["B-001/1", built.pieces.get("B-001/1")?.verdict],
    ]);
    expect(pieces[0]?.verdict).toBe("inconclusive");
    expect(pieces.flatMap(told).map(({ sentence }) => sentence)).toContain(
      "It stays inconclusive. By what was amended in 2021-03-16 it would be pass, and no second person who saw the source is named there.",
    );
  });

  it("is given to the page only where it is of what the page judges", async () => {
    const { unseconded } = givenOf(await recordOf(scratch(), LONG));
    expect(unseconded?.days).toEqual(["2021-03-16"]);
    expect(unseconded?.before).toHaveLength(1);
    const title = LONG["entries/2021-03-16-right.md"].replace(
      /batches: .*?\] \}\] \}\]/,
      "hours: [{ who: me, task: gluing, time: 2:00 }] }]",
    );
    expect(
      givenOf(await recordOf(scratch(), { ...LONG, "entries/2021-03-16-right.md": title })).unseconded,
    ).toBeUndefined();
  });
});

describe("Before a cup is mixed the page refuses", () => {
  const LOTS = { resin: "R-1", hardener: "H-1" };
  const said = ({
    temperature = "20.0 °C",
    humidity = "50 %",
    moisture = "10.0 %",
    resin = "40.0 g",
    scale = "0.1 g",
  }) =>
    [
      { kind: "began", of: "gluing", tins: { adhesive: "two-part", lots: LOTS, scale }, firstBatch: "B-002" },
      { kind: "joint", joint: "RD-J02", on: true },
      { kind: "joints chosen" },
      { kind: "reading", of: "temperature", typed: temperature },
      { kind: "reading", of: "humidity", typed: humidity },
      { kind: "reading", of: "moisture", typed: moisture },
      { kind: "timber", lots: ["S-1"] },
      { kind: "amount", cup: 0, part: "resin", typed: resin },
    ] satisfies readonly Said[];

  async function against(how: Parameters<typeof said>[0], files = {}, at = MADE): Promise<readonly string[]> {
    const given = givenOf(await recordOf(scratch(), { ...BENCH_RECORD, ...files }));
    const session = sessionOfTaps(said(how), at, 60);
    return refusals(session, 0, given, restored(given), at + 600);
  }

  it("nothing of a cup that can be shown", async () => {
    expect(await against({})).toEqual([]);
  });

  it("a lot from the day after its last on, by the shop's midnight", async () => {
    const lots = { "lots/R-1.md": (BENCH_RECORD["lots/R-1.md"] ?? "").replace("2090-01-01", "2021-06-01") };
    // Lisbon is an hour before Greenwich then.
    expect(await against({}, lots, Date.parse("2021-06-01T22:40:00Z") / 1000)).toEqual([]);
    expect(await against({}, lots, Date.parse("2021-06-01T22:55:00Z") / 1000)).toEqual([
      expect.stringMatching(/R-1.*1 June 2021|1 June 2021.*R-1/),
    ]);
  });

  it("a recalled lot, a cold shop, wet wood and a scale too coarse", async () => {
    const recall = {
      "entries/2021-05-01-recall.md":
        "---\ndate: 2021-05-01\ntitle: Recalled\nrecalls: [{ lot: H-1, why: Maker's letter }]\n---\n",
    };
    expect(await against({}, recall)).toHaveLength(1);
    expect(await against({ temperature: "12.0 °C" })).toHaveLength(1);
    expect(await against({ moisture: "14.0 %" })).toHaveLength(1);
    expect(await against({ scale: "1 g", resin: "9 g" })).toEqual([
      expect.stringMatching(/^A scale that reads in 1 g/),
    ]);
  });

  it("a cup so big or a shop so warm that the sheet gives it no working life", async () => {
    expect(await against({ resin: "400.0 g" })).toEqual([expect.stringMatching(/gives no working life for 567.3 g/)]);
    expect(await against({ temperature: "27.0 °C" })).toHaveLength(1);
  });
});
