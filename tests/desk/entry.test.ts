import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { nextId } from "../../src/desk/entry/next-id.ts";
import { entryText } from "../../src/desk/entry/text.ts";
import { entrySchema } from "../../src/facts/entry/entry-form.ts";
import { readRecord } from "../../src/record/read.ts";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { WORKSHOP } from "./workshop.ts";

const scratch = scratchFolders();
const GLUED = "entries/2021-03-14-glue.md";
const PATH = "entries/2021-06-01-trailing-rib.md";
const TITLE = ["--title", "Trailing rib"];
const GLUE = [...TITLE, "--assembly", "rudder", "--joints", "RD-J02"];
const NOON = { now: () => new Date("2021-06-01T12:00:00Z") };

function workshop(changed: { readonly [path: string]: string } = {}): string {
  const folder = scratch();
  writeAll(folder, { ...WORKSHOP, ...changed });
  return folder;
}

const edited = (path: keyof typeof WORKSHOP, from: string, to: string): { readonly [path: string]: string } => {
  expect(WORKSHOP[path]).toContain(from);
  return { [path]: WORKSHOP[path].replaceAll(from, to) };
};

const textIn = (folder: string, path = PATH): string => readFileSync(join(folder, path), "utf8");
const frontOf = (text: string): string => /^---\n([\s\S]*?)\n---\n$/.exec(text)?.[1] ?? "";
const factsOf = (text: string): unknown => parse(frontOf(text), { schema: "failsafe" });
const IN_USE = "---\ndate: 2021-03-13\ntitle: Tins\nin_use: { adhesive: two-part, resin: R-1, hardener: H-1 }\n---\n";

describe("scarfline entry", () => {
  it("writes what was said as facts and nothing else, and prints it", async () => {
    const folder = workshop();
    const { code, out, err } = await command(["entry", folder, ...GLUE, "--adhesive", "two-part"]);
    expect([code, err]).toEqual([0, ""]);
    const text = textIn(folder);
    expect(out).toBe(`Wrote ${join(folder, PATH)}\n\n${text}`);
    expect(factsOf(text)).toEqual({
      date: "2021-06-01",
      title: "Trailing rib",
      assembly: "rudder",
      batches: [{ id: "B-002", adhesive: "two-part", joints: ["RD-J02"] }],
    });
    expect(await command(["check", folder])).toMatchObject({ code: 0, err: "" });
  });

  it("shows nothing by a batch of which nothing more is said", async () => {
    const folder = workshop();
    await command(["entry", folder, ...GLUE, "--adhesive", "two-part"]);
    const { out } = await command(["build", folder, "--out", join(scratch(), "site")]);
    expect(out).toContain("2 batches (0 shown, ");
  });

  it("has comments that are facts once they are filled in and freed", async () => {
    const folder = workshop();
    await command(["entry", folder, ...GLUE, "--adhesive", "two-part"]);
    expect(textIn(folder)).toMatchInlineSnapshot(`
      "---
      date: 2021-06-01
      title: Trailing rib
      assembly: rudder
      batches:
        - id: B-002
          adhesive: two-part
          joints:
            - RD-J02
          # mixed: ""
          # closed: ""
          # resin: { lot: , mass: }  # B-001 took R-1
          # hardener: { lot: , mass: }  # B-001 took H-1
          # shop: { temperature: , humidity: }
          # moisture:
          # timber: []
          # pieces: { ids: [B-002/1, B-002/2], procedure: three-leg, lot: }  # those that were glued
      # Free ids: batch B-002 is this one's, open item O-3, departure D-01
      # The batch before: B-001, two-part, 14 March 2021
      # Lots in date: H-1 Hardener, first can
      # hours:
      #   - { who: me, task: , time: }  # tasks: gluing, testing
      # tests:  # these may be broken
      #   - { piece: B-001/1, at: "", failure: , wood_failure: , load: }
      #   - { piece: B-001/2, at: "", failure: , wood_failure: , load: }
      # All that may stand here, and how it is written: scarfline fields entry
      ---
      "
    `);
    const freed = frontOf(textIn(folder)).replaceAll(/^( *)# ((?:\s*- )?(?:\w+:|\{).*)$/gm, "$1$2");
    const facts = parse(freed, { schema: "failsafe" }) as { readonly batches: readonly object[] };
    expect(Object.keys(facts).filter((key) => !(key in entrySchema.shape))).toEqual([]);
    expect(Object.keys(facts.batches[0] ?? {})).toContain("hardener");
    expect(Object.keys(facts)).toEqual(expect.arrayContaining(["hours", "tests"]));
  });

  it("takes the adhesive that is in use, and asks for one only where none is", async () => {
    const folder = workshop({ "entries/2021-03-13-tins.md": IN_USE });
    expect(await command(["entry", folder, ...GLUE])).toMatchObject({ code: 0, err: "" });
    expect(textIn(folder)).not.toMatch(/^ *adhesive:/m);
    const { code, err } = await command(["entry", workshop(), ...GLUE]);
    expect([code, err]).toEqual([
      2,
      "Nothing was written.\nThese are still to be said; on a terminal they are asked:\n  --adhesive <id>  The adhesive that was mixed: two-part\n",
    ]);
  });

  it("refuses ids that the record has not, all at once, and writes nothing", async () => {
    const folder = workshop();
    const before = contentOf(folder);
    const { code, err } = await command(["entry", folder, "--assembly", "ruder", "--joints", "RD-J02,RD-J9 X"]);
    expect(code).toBe(2);
    expect(err).toContain("--assembly ruder: it is one of rudder\n");
    expect(err).toContain("--joints RD-J02,RD-J9 X: there is no joint RD-J9, X\n");
    expect(err).toContain("--title <words>");
    expect(contentOf(folder)).toEqual(before);
  });

  it("never writes over a file", async () => {
    const folder = workshop({ [PATH]: "---\ndate: 2021-06-01\ntitle: Mine\n---\n" });
    const before = contentOf(folder);
    const { code, err } = await command(["entry", folder, ...TITLE]);
    expect([code, err]).toEqual([
      2,
      `${join(folder, PATH)} is there already, and is left as it is. Write on in it, or give another title.\n`,
    ]);
    expect(contentOf(folder)).toEqual(before);
  });

  it("keeps no file that brings a problem", async () => {
    const folder = workshop();
    const before = contentOf(folder);
    const { code, err } = await command(["entry", folder, ...TITLE, "--on", "2021-07-01"]);
    expect(code).toBe(1);
    expect(err).toContain("entries/2021-07-01-trailing-rib.md:2:7");
    expect(err).toContain("Nothing was written");
    expect(contentOf(folder)).toEqual(before);
  });

  it("tells the problems of a record that has some, and adds to it what brings no more", async () => {
    const folder = workshop(edited(GLUED, "lot: R-1", "lot: R-9"));
    const { code, out, err } = await command(["entry", folder, ...TITLE, "--assembly", "rudder"]);
    expect([code, out.startsWith(`Wrote ${join(folder, PATH)}`)]).toEqual([0, true]);
    expect(err).toContain("R-9");
    expect(factsOf(textIn(folder))).toEqual({ date: "2021-06-01", title: "Trailing rib", assembly: "rudder" });
    const more = await command(["entry", folder, "--title", "More", "--assembly", "ruder"]);
    expect([more.code, more.err.split("entries/2021-06-01-more.md").length]).toEqual([1, 3]);
    const glued = await command(["entry", folder, "--title", "More", "--joints", "RD-J02"]);
    expect(glued.code).toBe(2);
    expect(glued.err).toContain("Which ids are free cannot be told of a record with problems.");
    expect([...contentOf(folder).keys()].filter((path) => path.includes("06-01"))).toEqual([PATH]);
  });
});

describe("What an entry is given in comments", () => {
  const commentsIn = async (folder: string, more: readonly string[] = []): Promise<string> => {
    const { code, err, out } = await command(["entry", folder, ...TITLE, ...more], NOON);
    expect([code, err]).toEqual([0, ""]);
    return out;
  };

  it("are lots in date, not recalled and not used up", async () => {
    expect(await commentsIn(workshop(), ["--on", "2021-04-20"])).toContain(
      "# Lots in date: H-1 Hardener, first can; R-1 Resin, first can\n",
    );
    const recall = "---\ndate: 2021-03-20\ntitle: Letter\nrecalls:\n  - { lot: H-1, why: Wrong label }\n---\n";
    expect(await commentsIn(workshop({ "entries/2021-03-20-letter.md": recall }))).not.toContain("Lots in date");
    const gone = await commentsIn(workshop(edited("lots/R-1.md", "500 g", "40 g")), ["--on", "2021-04-20"]);
    expect(gone).toContain("# Lots in date: H-1 Hardener, first can\n");
  });

  it("are pieces that may be broken on that day, and none whose warmth is not told", async () => {
    expect(await commentsIn(workshop())).toContain("# tests:  # these may be broken\n#   - { piece: B-001/1, at:");
    expect(await commentsIn(workshop(), ["--on", "2021-03-15"])).not.toContain("tests:");
    expect(await commentsIn(workshop(edited(GLUED, "20.5 °C", "12 °C")))).not.toContain("tests:");
    const later = "---\ndate: 2021-05-20\ntitle: Later\n---\n";
    expect(await commentsIn(workshop({ "entries/2021-05-20-later.md": later }), ["--on", "2021-03-15"])).not.toContain(
      "tests:",
    );
  });

  it("are ids that nothing has", () => {
    expect(nextId([], "B-001")).toBe("B-001");
    expect(nextId(["B-009", "B-002"], "B-001")).toBe("B-010");
    expect(nextId(["B-099", "B-100", "K-400"], "B-001")).toBe("B-101");
    expect(nextId(["7", "x"], "B-001")).toBe("8");
    expect(nextId(["B-99999999999999999999"], "B-001")).toBe("B-100000000000000000000");
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[A-C]-?\d{1,4}$/)), (ids) => {
        expect(ids).not.toContain(nextId(ids, "B-001"));
      }),
    );
  });

  const log = (times: readonly string[]): { readonly [path: string]: string } => ({
    "climate/shop.csv": `Time (UTC),Temperature (°C),Humidity (%)\n${times.map((time, at) => `2021-06-01 ${time},${19 + at}.0,${50 + at}.0\n`).join("")}`,
  });

  it("are the logger's readings on both sides of now, and never one alone", async () => {
    expect(await commentsIn(workshop(log(["11:30:00", "12:30:00"])))).toContain(
      "# The logger has 19.0 °C to 20.0 °C, 50 % to 51 % around now\n",
    );
    expect(await commentsIn(workshop(log(["10:30:00", "11:30:00"])))).not.toContain("logger");
    expect(await commentsIn(workshop(log(["09:00:00", "10:00:00", "11:00:00", "14:00:00", "15:00:00"])))).not.toContain(
      "logger",
    );
    expect(await commentsIn(workshop(log(["11:30:00", "12:30:00"])), ["--on", "2021-05-31"])).not.toContain("logger");
  });
});

it("Whatever stands in the record, an entry says what was said and no more", async () => {
  const text = fc.oneof(
    fc.constantFrom("a\n---\nassembly: rudder", "# x", "no", "12:30", "x: y"),
    fc.string({ unit: "binary" }),
  );
  const read = await readRecord(workshop());
  if ("problems" in read) return expect.fail();
  const [lot] = read.record.lots.values();
  if (lot === undefined) return expect.fail();
  fc.assert(
    fc.property(text, text, fc.string({ minLength: 1 }), (title, task, said) => {
      const now = {
        lots: [{ ...lot, title }],
        pieces: [],
        joints: [],
        nextBatch: "B-1",
        nextItem: "O-1",
        nextDeparture: "D-1",
      };
      const record = { ...read.record, aircraft: { ...read.record.aircraft, tasks: [task] } };
      expect(factsOf(entryText("2021-06-01", { title: said }, { now, record }))).toEqual({
        date: "2021-06-01",
        title: said,
      });
    }),
    { numRuns: 300 },
  );
});
