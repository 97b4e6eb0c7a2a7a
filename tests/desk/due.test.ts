import { expect, it } from "vitest";
import { command, type Ran } from "../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { WORKSHOP } from "./workshop.ts";

const scratch = scratchFolders();
const GLUED = "entries/2021-03-14-glue.md";

async function dueOn(on: string, changed: { readonly [path: string]: string } = {}): Promise<Ran> {
  const folder = scratch();
  writeAll(folder, { ...WORKSHOP, ...changed });
  const before = contentOf(folder);
  const ran = await command(["due", folder, "--on", on]);
  expect(contentOf(folder)).toEqual(before);
  return ran;
}

const edited = (path: keyof typeof WORKSHOP, ...edits: readonly (readonly [string, string])[]) => {
  let text: string = WORKSHOP[path];
  for (const [from, to] of edits) {
    expect(text).toContain(from);
    text = text.replaceAll(from, to);
  }
  return { [path]: text };
};

it("tells pieces that cure, lots, the next hold point and what it lacks, and open items", async () => {
  const { code, out, err } = await dueOn("2021-03-16");
  expect([code, err]).toEqual([0, ""]);
  expect(out).toMatchInlineSnapshot(`
    "Bulrush, as of the end of 16 March 2021

    No piece is known to have cured.

    Still curing
      B-001/1, B-001/2: from 21 Mar 2021, 11:00, at the 20.5 °C noted when it was glued

    Lots to look at
      R-1 Resin, first can: only until 1 May 2021; left: 460 g

    Next hold point: RD-H1 Before the second skin, Rudder: blocked
      Something is wrong that must be put right first.
      ! O-1: Open since 14 March 2021: Corner block to be fitted.
          Do it and close it in an entry
      ! O-2: Open since 14 March 2021: Ask for the certificate.
          Do it and close it in an entry
      - RD-J01: Pending. Batch B-001, glued on 14 March 2021, is pending. Batch B-001 has not cured for so long yet. If the shop stays as it was it will have by 21 March 2021, 11:00; until then nothing may load the joint.
          Break the test pieces of its batches
      - RD-J02: Not glued. No batch has gone into it.
          Glue it

    Open items
      O-1 Corner block to be fitted (since 14 March 2021, before close-up)
      O-2 Ask for the certificate (since 14 March 2021)
    "
  `);
});

it("tells of pieces from the day on by whose end they have cured, and by what", async () => {
  expect((await dueOn("2021-03-20")).out).toContain("\nStill curing\n  B-001/1, B-001/2: from 21 Mar 2021, 11:00");
  expect((await dueOn("2021-03-21")).out).toContain(
    "\nMay be broken\n  B-001/1, B-001/2: from 21 Mar 2021, 11:00, at the 20.5 °C noted when it was glued\n",
  );
});

it.each([
  ["no warmth is noted", ["    shop: { temperature: 20.5 °C, humidity: 48 % }\n", ""] as const],
  ["at what is noted nothing cures", ["20.5 °C", "12 °C"] as const],
])("calls no piece one that may be broken where %s", async (_, edit) => {
  const { out } = await dueOn("2021-04-21", edited(GLUED, edit));
  expect(out).toContain("No piece is known to have cured.");
  expect(out).toMatch(
    /\nDays over, warmth not told: broken now, these may prove nothing.*\n {2}B-001\/1, B-001\/2: from /,
  );
});

it("tells no more of a piece once it is broken", async () => {
  const broken = `---
date: 2021-03-28
assembly: rudder
title: Broken
tests:
  - { piece: B-001/1, at: "18:30", failure: wood, wood_failure: 100 %, load: 335 lbf }
---
`;
  const { out } = await dueOn("2021-03-28", { "entries/2021-03-28-broken.md": broken });
  expect(out).toContain("\nMay be broken\n  B-001/2: from");
  expect(out).not.toContain("B-001/1");
});

it("tells lots that are recalled, near or past their last day, as long as something may be left of them", async () => {
  expect((await dueOn("2021-03-15")).out).toContain("R-1 Resin, first can: only until 1 May 2021; left: 460 g");
  expect((await dueOn("2021-05-02")).out).toContain("R-1 Resin, first can: was good until 1 May 2021; left: 460 g");
  const gone = await dueOn("2021-05-02", edited("lots/R-1.md", ["500 g", "40 g"]));
  expect(gone.out).not.toContain("R-1");
  const recall = `---\ndate: 2021-03-20\ntitle: Letter\nrecalls:\n  - { lot: H-1, why: Wrong label }\n---\n`;
  const recalled = await dueOn("2021-03-20", { "entries/2021-03-20-letter.md": recall });
  expect(recalled.out).toContain("H-1 Hardener, first can: recalled; until 1 March 2022; left: not known");
});

it("tells open items no more once they are closed", async () => {
  const closed = "---\ndate: 2021-03-20\nassembly: rudder\ntitle: Block\nopen_items: { close: [O-1] }\n---\n";
  const { out } = await dueOn("2021-03-20", { "entries/2021-03-20-block.md": closed });
  expect(out).toContain("\nOpen items\n  O-2 Ask for the certificate (since 14 March 2021)\n");
  expect(out).not.toContain("O-1 ");
});

it("tells of today without a day", async () => {
  const folder = scratch();
  writeAll(folder, WORKSHOP);
  expect((await command(["due", folder])).out).toContain("Bulrush, as of the end of 1 June 2021");
});

it("refuses a day before the last entry, and a record with problems", async () => {
  const early = await dueOn("2021-03-13");
  expect([early.code, early.err]).toEqual([
    2,
    "The record goes up to 2021-03-14, and what it has since would tell on 2021-03-13. Give that day or a later one: --on 2021-03-14\n",
  ]);
  const wrong = await dueOn("2021-04-01", edited(GLUED, ["lot: R-1", "lot: R-9"]));
  expect([wrong.code, wrong.out]).toEqual([1, ""]);
  expect(wrong.err).toContain("What is due cannot be told of a record with problems.");
});

it("shows marks that a terminal would obey as what they are", async () => {
  const { out } = await dueOn("2021-03-16", edited(GLUED, ["Corner block", "Corner\u202e block"]));
  expect(out).toContain("Corner‹U+202E› block");
});

it("calls no piece breakable before the heat that the sheet asks for, and offers none to an entry", async () => {
  const heated = edited("adhesives/two-part.md", [
    "wood_moisture:",
    "post_cure: { temperature: 55 °C to 65 °C, time: 4 h }\nwood_moisture:",
  ]);
  const { out } = await dueOn("2021-03-25", heated);
  expect(out).toContain("No piece is known to have cured.\n\nNot in the heat that the sheet asks for");
  expect(out).toContain("note it\n  B-001/1, B-001/2: from 21 Mar 2021");
  const warmth = `---
date: 2021-03-16
title: In the box
post_cures: [{ joints: [RD-J01], pieces: [B-001/1], temperature: 58 to 62 °C, from: "2021-03-15 18:00", to: "2021-03-15 22:30" }]
---
`;
  const after = { ...heated, "entries/2021-03-16-heat.md": warmth };
  const told = (await dueOn("2021-03-25", after)).out;
  expect(told).toContain("May be broken\n  B-001/1: from");
  expect(told).toContain("note it\n  B-001/2: from");
  const folder = scratch();
  writeAll(folder, { ...WORKSHOP, ...after });
  const entry = await command(["entry", folder, "--title", "More"]);
  expect(entry.out).toContain("piece: B-001/1,");
  expect(entry.out).not.toContain("piece: B-001/2,");
});
