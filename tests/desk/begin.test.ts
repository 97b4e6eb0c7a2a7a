import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { begin } from "../../src/desk/begin/begin.ts";
import { filesOf, type WholeAnswers } from "../../src/desk/begin/files.ts";
import { questions } from "../../src/desk/begin/questions.ts";
import { unanswered } from "../../src/desk/question.ts";
import { writeWhole } from "../../src/desk/whole-folder.ts";
import { readRecord } from "../../src/record/read.ts";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";

const scratch = scratchFolders();

const NEEDED = {
  name: "Bulrush",
  type: "single-seat open parasol, own drawings",
  builder: "Ines Example",
  publicName: "Ines",
  units: "metric",
  timeZone: "Europe/Lisbon",
  start: "2021-03-07",
} as const;
const FLAGS = ["--name", "Bulrush", "--type", NEEDED.type, "--builder", "Ines Example", "--public-name", "Ines"];
const MORE_FLAGS = ["--units", "metric", "--time-zone", "Europe/Lisbon", "--start", "2021-03-07"];
const ALL = [...FLAGS, ...MORE_FLAGS];
const PARTS = ["--assembly", "Rudder", "--adhesive", "Epoxy A", "--adhesive-kind", "two-part", "--sheet", "Sheet r2"];
const REST = [...PARTS, "--pieces", "three-leg", "--first", "Bench levelled"];

describe("scarfline begin", () => {
  it("writes a record from flags that check accepts and build builds, and says what to do next", async () => {
    const folder = join(scratch(), "record");
    const { code, out, err } = await command(["begin", folder, ...ALL, ...REST]);
    expect([code, err]).toEqual([0, ""]);
    const paths = ["adhesives/epoxy-a.md", "aircraft.md", "assemblies/rudder.md"];
    const more = ["entries/2021-03-07-bench-levelled.md", "procedures/three-leg.md"];
    expect([...contentOf(folder).keys()]).toEqual([...paths, ...more]);
    for (const path of [...paths, ...more]) expect(out).toContain(join(folder, path));
    expect(out).toContain(`scarfline check ${folder}`);
    expect(await command(["check", folder])).toMatchObject({ code: 0, err: "" });
    const site = join(scratch(), "site");
    expect(await command(["build", folder, "--out", site])).toMatchObject({ code: 0, err: "" });
    expect(readFileSync(join(site, "index.html"), "utf8")).toContain("Bulrush");
  });

  it("needs no more than the aircraft and its builder", async () => {
    const folder = join(scratch(), "record");
    expect(await command(["begin", folder, ...ALL])).toMatchObject({ code: 0, err: "" });
    expect([...contentOf(folder).keys()]).toEqual(["aircraft.md"]);
    expect(await command(["check", folder])).toMatchObject({ code: 0 });
  });

  it("states no figure that nobody gave", async () => {
    const files = filesOf({ ...NEEDED, adhesive: "A", adhesiveKind: "one-part", sheet: "S", pieces: "three-leg" });
    for (const [path, text] of files)
      expect(text.replaceAll("2021-03-07", "").replaceAll(/^# .*$/gm, ""), path).not.toMatch(/\d/);
    expect(files.get("adhesives/a.md")).not.toContain("by_mass");
  });

  it("tells all at once what is missing or cannot be read where nobody can be asked, and writes nothing", async () => {
    const parent = scratch();
    const few = ["--name", "Bulrush", "--time-zone", "Lisbon", "--start", "2021-02-30", "--adhesive", "Epoxy A"];
    const { code, out, err } = await command(["begin", join(parent, "record"), ...few]);
    expect([code, out, readdirSync(parent)]).toEqual([2, "", []]);
    expect(err).toMatchInlineSnapshot(`
      "Nothing was written.
      --time-zone Lisbon: there is no such time zone; did you mean Europe/Lisbon?
      --start 2021-02-30: there is no such day; give a day that the calendar has
      These are still to be said; on a terminal they are asked:
        --type <words>          Its type, in your own words, such as "single-seat open parasol, own drawings"
        --builder <name>        Your full name, which visitors do not get to see, such as "Ines Example"
        --public-name <name>    The name that visitors read for it, such as "Ines"
        --units <units>         The units that pages show beside what you type: metric, imperial
        --adhesive-kind <kind>  What the adhesive is made of: two-part, one-part, powder-and-water, applied-apart
        --sheet <words>         Name and revision of its data sheet, such as "Data sheet of the maker, revision 2"
      "
    `);
  });

  it("refuses what tells of an adhesive that is not named", async () => {
    const { code, err } = await command(["begin", join(scratch(), "record"), ...ALL, "--sheet", "Sheet r2"]);
    expect([code, err]).toEqual([
      2,
      "`--adhesive-kind` and `--sheet` tell of an adhesive: say which, --adhesive <words>\n",
    ]);
  });

  it("writes nothing where the record would have a problem", async () => {
    const parent = scratch();
    const late = [...FLAGS, "--units", "metric", "--time-zone", "Europe/Lisbon", "--start", "2021-07-07"];
    const { code, err } = await command(["begin", join(parent, "record"), ...late, "--first", "Bench levelled"]);
    expect(code).toBe(1);
    expect(err).toContain("entries/2021-07-07-bench-levelled.md:2:7");
    expect(err).toContain(`Nothing was written to ${join(parent, "record")}.`);
    expect(readdirSync(parent)).toEqual([]);
  });

  it("shows nothing of a session by the sheet and procedure that it left to be copied", async () => {
    const folder = scratch();
    const files = filesOf({
      ...NEEDED,
      assembly: "Rudder",
      adhesive: "Two part",
      adhesiveKind: "two-part",
      sheet: "S",
    });
    writeAll(folder, { ...Object.fromEntries(files), ...SESSION });
    writeAll(folder, { "assemblies/rudder.md": "---\ntitle: Rudder\njoints:\n  - { id: J1, title: Spar }\n---\n" });
    const { code, out } = await command(["build", folder, "--out", join(scratch(), "site")]);
    expect([code, /Reckoned: .*/.exec(out)?.[0]]).toEqual([
      0,
      "Reckoned: 1 batch (0 shown, 0 pending, 1 not shown, 0 rejected) and 1 joint.",
    ]);
  });
});

/** All that a session could say, in a record that has no limit. */
const SESSION = {
  "procedures/three-leg.md": "---\ntitle: Three-leg piece\nform: three-leg\n---\n",
  "lots/R-1.md": "---\ntitle: Resin\nmaterial: resin\nadhesive: two-part\nreceived: 2021-03-08\n---\n",
  "lots/H-1.md": "---\ntitle: Hardener\nmaterial: hardener\nadhesive: two-part\nreceived: 2021-03-08\n---\n",
  "lots/S-1.md": "---\ntitle: Spruce\nmaterial: timber\nspecies: Sitka spruce\nreceived: 2021-03-08\n---\n",
  "entries/2021-03-14-glue.md": `---
date: 2021-03-14
assembly: rudder
title: Spar
batches:
  - id: B-001
    adhesive: two-part
    mixed: "10:05"
    closed: "10:30"
    scale: 0.1 g
    resin: { lot: R-1, mass: 40.0 g }
    hardener: { lot: H-1, mass: 17.6 g }
    shop: { temperature: 20.5 °C, humidity: 48 % }
    moisture: 10 %
    timber: [S-1]
    joints: [J1]
    pieces:
      - { id: B-001/1, procedure: three-leg, lot: S-1, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }
---
`,
  "entries/2021-03-28-break.md": `---
date: 2021-03-28
assembly: rudder
title: Broken
thermometer:
  - { from: "2021-03-14 10:00", to: "2021-03-28 18:00", least: 19 °C, greatest: 23 °C }
tests:
  - { piece: B-001/1, at: "18:30", failure: wood, wood_failure: 100 %, load: 335 lbf }
---
`,
};

describe("What begins is written over nothing", () => {
  it("names what is in the folder, and leaves it", async () => {
    const folder = scratch();
    writeAll(folder, { "aircraft.md": "mine", "assemblies/rudder.md": "mine too", "notes.txt": "and this" });
    const before = contentOf(folder);
    const { code, err } = await command(["begin", folder, ...ALL, ...REST]);
    expect([code, err]).toEqual([
      2,
      `${folder} is not empty: aircraft.md, assemblies, notes.txt. Nothing is written over or beside them. Give a folder that is new or empty: scarfline begin FOLDER\n`,
    ]);
    expect(contentOf(folder)).toEqual(before);
  });

  it("goes into an empty folder in which hidden things may be", async () => {
    const folder = scratch();
    writeAll(folder, { ".git/HEAD": "ref" });
    expect(await command(["begin", folder, ...ALL, ...REST])).toMatchObject({ code: 0, err: "" });
    expect(readdirSync(folder).sort()).toEqual(
      [".git", "adhesives", "aircraft.md", "assemblies", "entries", "procedures"].sort(),
    );
  });

  it("refuses a file in the folder's place, a folder that cannot be made, and one within a record", async () => {
    const folder = scratch();
    writeAll(folder, { "file.txt": "kept", "record/aircraft.md": "mine" });
    const refused = async (path: string): Promise<string> => (await command(["begin", join(folder, path), ...ALL])).err;
    expect(await refused("file.txt")).toBe(`${folder}/file.txt is a file. Give a folder that is new or empty.\n`);
    expect(await refused("a/b")).toBe(`There is no folder ${folder}/a in which b could be made. Make it first.\n`);
    expect(await refused("record/more")).toContain(`lies in the record ${folder}/record`);
    expect([...contentOf(folder).keys()]).toEqual(["file.txt", "record/aircraft.md"]);
  });

  it.each(["aircraft.md", "lots/R-1.md"])("leaves %s that came meanwhile, and takes back its own", async (path) => {
    const folder = scratch();
    const files = new Map([...filesOf({ ...NEEDED, assembly: "Rudder" }), ["lots/L-1.md", "a lot"]]);
    const writing = writeWhole(folder, files, "aircraft.md", async () => {
      writeAll(folder, { [path]: "came meanwhile" });
      return true;
    });
    await expect(writing).rejects.toThrow(`Something came into ${folder} meanwhile.`);
    expect(contentOf(folder)).toEqual(new Map([[path, "came meanwhile"]]));
    expect(readdirSync(folder)).toEqual([path.split("/")[0]]);
  });

  it("leaves a folder of its name that came meanwhile", async () => {
    const folder = join(scratch(), "record");
    const writing = writeWhole(folder, filesOf(NEEDED), "aircraft.md", async () => {
      writeAll(folder, { "aircraft.md": "came meanwhile" });
      return true;
    });
    await expect(writing).rejects.toThrow("came into");
    expect(contentOf(folder)).toEqual(new Map([["aircraft.md", "came meanwhile"]]));
  });

  it("clears away what a killed command left beside", async () => {
    const parent = scratch();
    mkdirSync(join(parent, ".record.scarfline-new-999999999"));
    writeFileSync(join(parent, ".record.scarfline-new-999999999", "aircraft.md"), "half");
    expect(await command(["begin", join(parent, "record"), ...ALL])).toMatchObject({ code: 0 });
    expect(readdirSync(parent)).toEqual(["record"]);
  });
});

it("No two things that begin have one id", async () => {
  const folder = join(scratch(), "record");
  const same = {
    assembly: "Three leg",
    adhesive: "Three-leg",
    adhesiveKind: "one-part",
    sheet: "S",
    pieces: "three-leg",
  };
  const files = filesOf({ ...NEEDED, ...same });
  expect([...files.keys()].slice(1)).toEqual([
    "assemblies/three-leg.md",
    "adhesives/three-leg-adhesive.md",
    "procedures/three-leg-pieces.md",
  ]);
  expect(await begin(folder, files, "2021-06-01")).toEqual([]);
  const pathsOf = (answers: object) => [...filesOf({ ...NEEDED, ...answers }).keys()].slice(1);
  expect(pathsOf({ assembly: "Builder", first: "日本" })).toEqual([
    "assemblies/builder-part.md",
    "entries/2021-03-07-first.md",
  ]);
  expect(pathsOf({ ...same, adhesive: "Three-leg pieces" })).toEqual([
    "assemblies/three-leg.md",
    "adhesives/three-leg-pieces.md",
    "procedures/three-leg-pieces-pieces.md",
  ]);
  expect(pathsOf({ ...same, assembly: "{a", adhesive: "𝔸" })).toContain("adhesives/a-adhesive.md");
  expect(pathsOf({ assembly: "æ".repeat(70) })).toEqual([`assemblies/${"ae".repeat(30)}.md`]);
});

const TRAPS = ["no", "12:30", "null", "#", "# 1", "~", "1e3", "- a", "a: b", "{a", "[", "*a", "&a", "!a", "%a", "@a"];
const MORE_TRAPS = ["`a`", "'", '"', "\\", "yes # hm", " a", "a ", "---", "...", "?", "0x1", "2021-03-07", "<<", "="];
const word = fc.oneof(
  fc.constantFrom(...TRAPS, ...MORE_TRAPS, "a".repeat(300)),
  fc.string({ unit: "grapheme", maxLength: 30 }),
  fc.string({ unit: "binary", maxLength: 8 }),
);

it("Whatever is answered stands in the record as it was answered", async () => {
  const asked = questions({ today: "2021-06-01", timeZone: "Europe/Lisbon" });
  let told = 0;
  await fc.assert(
    fc.asyncProperty(fc.tuple(word, word, word, word, word, word, word, word), async (words) => {
      const [name, type, builder, publicName, assembly, adhesive, sheet, first] = words;
      const answers = { ...NEEDED, name, type, builder, publicName, assembly, adhesive, sheet, first };
      const whole: WholeAnswers = { ...answers, adhesiveKind: "powder-and-water" };
      fc.pre(unanswered(asked, whole).wrong.length === 0);
      told += 1;
      const folder = join(scratch(), "record");
      expect(await begin(folder, filesOf(whole), "2021-06-01")).toEqual([]);
      const read = await readRecord(folder);
      if ("problems" in read) return expect.fail(JSON.stringify(read.problems));
      const { aircraft, assemblies, adhesives, entries } = read.record;
      const person = aircraft.people.get("builder");
      expect([aircraft.name, aircraft.type, person?.name, person?.publicName]).toEqual(words.slice(0, 4));
      expect([...assemblies.values()].map(({ title }) => title)).toEqual([assembly]);
      expect([...adhesives.values()].map((one) => [one.title, one.sheet, one.kind])).toEqual([
        [adhesive, sheet, "powder-and-water"],
      ]);
      expect(entries.map(({ title }) => title)).toEqual([first]);
    }),
    { numRuns: 120 },
  );
  expect(told).toBe(120);
}, 60_000);
