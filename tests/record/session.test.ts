/** What a gluing session takes to write down, and that few lines say the same as many. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readRecord } from "../../src/record/read.ts";
import type { Batch } from "../../src/facts/types.ts";
import { TODAY, withSmall } from "../problems/cases.ts";

const HEAD = `date: 2025-04-05
assembly: spar
title: Caps of the left wing
hours: [{ who: builder, task: gluing, time: 2:45 }]
batches:
`;

/** Every fact of it typed. */
const LONG = `${HEAD}  - id: B-014
    adhesive: resin-7
    mixed: "14:20"
    closed: "14:55"
    scale: 0.1 g
    resin: { lot: R-1, mass: 42.0 g }
    hardener: { lot: H-1, mass: 35.1 g }
    shop: { temperature: 19.5 °C, humidity: 52 % }
    moisture: 10.5 %
    timber: [S-1]
    joints: [SP-J01]
    pieces:
      - { id: B-014/1, procedure: three-leg, lot: S-1, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }
      - { id: B-014/2, procedure: three-leg, lot: S-1, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }
      - { id: B-014/3, procedure: three-leg, lot: S-1, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }
reworks:
  - { joints: [SP-J01], why: Opened }`;

/** The same, where the entry before it says what is in use. */
const SHORT = `${HEAD}  - id: B-014
    mix: { at: "14:20", resin: 42.0 g, hardener: 35.1 g }
    closed: "14:55"
    shop: { temperature: 19.5 °C, humidity: 52 % }
    moisture: 10.5 %
    timber: [S-1]
    joints: [SP-J01]
    pieces: { ids: [B-014/1, B-014/2, B-014/3], procedure: three-leg, lot: S-1 }
reworks:
  - { joints: [SP-J01], why: Opened }`;

const IN_USE = `date: 2025-04-01
assembly: spar
title: New tins
in_use:
  adhesive: resin-7
  resin: R-1
  hardener: H-1
  scale: 0.1 g
  pieces: [{ procedure: three-leg, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }]`;

async function batchOf(entries: { readonly [id: string]: string }, id = "B-014"): Promise<Batch> {
  const read = await withSmall(async (folder) => {
    for (const [name, text] of Object.entries(entries))
      writeFileSync(join(folder, `entries/${name}.md`), `---\n${text}\n---\n`);
    return readRecord(folder, { today: TODAY });
  });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems, undefined, 1));
  const found = read.record.entries.flatMap(({ batches }) => batches).find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

const lines = (session: string): number => session.split("\nreworks:")[0]?.split("\n").length ?? 0;
const bare = ({ byDefault: _, ...batch }: Batch): unknown =>
  JSON.parse(JSON.stringify(batch, (key, value: unknown) => (key === "place" ? undefined : value)));

describe("a gluing session with three pieces", () => {
  it("takes 20 lines where everything is typed, and 13 where what is in use stands by default", () => {
    expect([lines(LONG), lines(SHORT)]).toEqual([20, 13]);
  });

  it("says the same in both", async () => {
    const long = await batchOf({ "2025-04-05-caps": LONG });
    const short = await batchOf({ "2025-04-01-tins": IN_USE, "2025-04-05-caps": SHORT });
    expect(bare(short)).toEqual(bare(long));
    expect(long.byDefault).toBeUndefined();
    expect(short.byDefault?.map(({ what, piece, lot, entry }) => [what, piece ?? lot ?? "", entry].join(" "))).toEqual([
      "adhesive  2025-04-01-tins",
      "lot of resin R-1 2025-04-01-tins",
      "lot of hardener H-1 2025-04-01-tins",
      "scale  2025-04-01-tins",
      ...["B-014/1", "B-014/2", "B-014/3"].flatMap((piece) =>
        ["thickness", "width", "overlap"].map((size) => `${size} ${piece} 2025-04-01-tins`),
      ),
    ]);
  });

  it("takes what is in use from its own entry on, and nothing from a later one", async () => {
    const own = SHORT.replace("batches:", "in_use: { adhesive: resin-7, scale: 0.5 g }\nbatches:");
    const batch = await batchOf({
      "2025-04-01-tins": IN_USE,
      "2025-04-05-caps": own,
      "2025-04-06-later": IN_USE.replace("04-01", "04-06").replace("scale: 0.1 g", "scale: 5 g"),
    });
    expect(batch.scale?.typed).toBe("0.5 g");
    expect(batch.resin?.lot).toBe("R-1");
  });

  it("takes nothing after it has ended, and what was typed stands", async () => {
    const typed = SHORT.replace("closed:", "adhesive: resin-7\n    closed:");
    const ended = IN_USE.replace("04-01", "04-02").replace(/in_use:[^]*/, "in_use: { ended: all }");
    const after = await batchOf({ "2025-04-01-tins": IN_USE, "2025-04-02-end": ended, "2025-04-05-caps": typed });
    expect([after.scale, after.resin?.lot, after.pieces[0]?.overlap, after.byDefault]).toEqual(
      Array(4).fill(undefined),
    );
    const stands = SHORT.replace("closed:", "scale: 2 g\n    closed:");
    const batch = await batchOf({ "2025-04-01-tins": IN_USE, "2025-04-05-caps": stands });
    expect([batch.scale?.typed, batch.byDefault?.some(({ what }) => what === "scale")]).toEqual(["2 g", false]);
  });

  it("takes the step of a measure for a mix by volume, and that of a scale for one by mass", async () => {
    const both = IN_USE.replace("scale: 0.1 g", "scale: 1 ml");
    const batch = await batchOf({ "2025-04-01-tins": both, "2025-04-05-caps": SHORT });
    expect(batch.scale).toBeUndefined();
    const volume = SHORT.replace("resin: 42.0 g, hardener: 35.1 g", "resin: 42 ml, hardener: 35 ml");
    const measured = await batchOf({ "2025-04-01-tins": both, "2025-04-05-caps": volume });
    expect([measured.scale?.typed, measured.resin?.volume?.typed]).toEqual(["1 ml", "42 ml"]);
  });

  it("is no longer by default in what an amendment states", async () => {
    const amending = `date: 2025-04-09
assembly: spar
title: Right
amends: [{ entry: 2025-04-05-caps, why: Another scale, batches: [{ id: B-014, scale: 1 g, struck: [resin.lot] }] }]`;
    const entries = { "2025-04-01-tins": IN_USE, "2025-04-05-caps": SHORT, "2025-04-09-right": amending };
    const batch = await batchOf(entries);
    expect([batch.scale?.typed, batch.resin?.lot]).toEqual(["1 g", undefined]);
    expect(batch.byDefault?.map(({ what }) => what)).not.toContain("scale");
  });
});

/** The line of the procedure by which the session was done; the times, and what was seen. */
const GLUE_UP =
  "    glue_up: std 09:30, spread 14:25 to 14:40, on 14:55, off 18:30, gap 0.2 mm, drop P-1, resin 19 °C, squeeze-out\n";

const STD = `title: Standard glue-up
form: glue-up
method:
  surfaces: planed, then scraped along the grain
  cleaned: vacuum, then a dry cloth
  faces: both
  end_grain: twice
  filler: none
  clamps: F-clamps every 80 mm
  staples: pulled
  scraped: yes
  second_cup: yes`;

const PLY = `title: Birch ply
material: plywood
species: birch
thickness: 1.5 mm
received: 2025-01-20`;

describe("a session that says all of its glue-up", () => {
  const session = SHORT.replace("    joints:", `${GLUE_UP}    joints:`);
  const read = (text: string): Promise<Batch> =>
    batchOf({ "2025-04-01-tins": IN_USE, "2025-04-05-caps": text, "../procedures/std": STD, "../lots/P-1": PLY });

  it("takes under 120 characters more than one that says nothing of it, and at most 18 lines", () => {
    expect(GLUE_UP.length).toBeLessThan(120);
    expect(lines(session)).toBe(14);
  });

  it("says the same in a line as in a block", async () => {
    const block = SHORT.replace(
      "    joints:",
      `    glue_up:
      by: std
      prepared: "09:30"
      spread: "14:25"
      spread_to: "14:40"
      on: "14:55"
      off: "18:30"
      gap: 0.2 mm
      drop: [P-1]
      resin: 19 °C
      squeeze_out: all along
    joints:`,
    );
    const short = await read(session);
    expect(bare(short)).toEqual(bare(await read(block)));
    expect(short.glueUp?.spreadTo?.typed).toBe("14:40");
  });
});
