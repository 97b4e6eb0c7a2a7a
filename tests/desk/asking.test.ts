import { PassThrough } from "node:stream";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { askerOn } from "../../src/cli/desk/asker.ts";
import { readRecord } from "../../src/record/read.ts";
import { command, type Ran } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { WORKSHOP } from "./workshop.ts";

const scratch = scratchFolders();

/** A terminal at which each question that comes up is answered by these keys. */
async function atTerminal(
  words: readonly string[],
  keys: { readonly [asks: string]: readonly string[] },
): Promise<Ran> {
  const input = new PassThrough();
  const output = new PassThrough();
  const waiting = new Map(Object.entries(keys).map(([asks, typed]) => [asks, [...typed]]));
  let seen = "";
  output.on("data", (chunk: Buffer) => {
    seen += chunk.toString();
    for (const [asks, typed] of waiting) {
      if (!seen.includes(asks)) continue;
      const next = typed.shift();
      if (typed.length === 0) waiting.delete(asks);
      seen = "";
      setImmediate(() => input.write(next));
      return;
    }
  });
  return command(words, { asker: async () => askerOn({ input, output }) });
}

const DOWN = "\u001B[B";
const ASKED = {
  "The aircraft's name": ["Bulrush\r"],
  "Its type": ["parasol\r"],
  "Your full name": ["Ines Example\r"],
  "The name that visitors read": ["Ines\r"],
  "The units": [`${DOWN}\r`],
  "The time zone": ["\r"],
  "The day the build began": ["\r"],
  "The first part": ["Rudder\r"],
  "The adhesive, as": ["\r"],
  "The form of the test pieces": [`${DOWN}\r`],
  "What was done": ["Bench levelled\r"],
};

it("What no flag says is asked on a terminal, with what is likely offered", async () => {
  const folder = join(scratch(), "record");
  const { code, err } = await atTerminal(["begin", folder, "--name", "Heron"], ASKED);
  expect([code, err]).toEqual([0, ""]);
  const read = await readRecord(folder);
  if ("problems" in read) return expect.fail(JSON.stringify(read.problems));
  const { aircraft, assemblies, adhesives, procedures, entries } = read.record;
  expect(aircraft).toMatchObject({ name: "Heron", units: "imperial", timeZone: "Europe/Lisbon", start: "2021-06-01" });
  expect([...assemblies.keys(), ...adhesives.keys(), ...procedures.keys()]).toEqual(["rudder", "single-lap"]);
  expect(entries.map(({ day, title }) => [day, title])).toEqual([["2021-06-01", "Bench levelled"]]);
});

it("Whoever stops in the middle has changed nothing", async () => {
  const parent = scratch();
  const stopped = { ...ASKED, "Your full name": ["\u0003"] };
  const { code, err } = await atTerminal(["begin", join(parent, "record")], stopped);
  expect([code, err, readdirSync(parent)]).toEqual([2, "Stopped. Nothing was written.\n", []]);
});

it("An entry asks what was done, on what, into which joints, and by which adhesive where none is in use", async () => {
  const folder = scratch();
  writeAll(folder, WORKSHOP);
  const asked = {
    "What was done": ["Trailing rib\r"],
    "The part that was worked on": ["\r"],
    "The joints that one batch": ["RD-J02\r"],
    "The adhesive that was mixed": ["\r"],
  };
  const { code, err } = await atTerminal(["entry", folder], asked);
  expect([code, err]).toEqual([0, ""]);
  const read = await readRecord(folder);
  if ("problems" in read) return expect.fail(JSON.stringify(read.problems));
  const entry = read.record.entries.at(-1);
  expect([
    entry?.title,
    entry?.assembly,
    entry?.batches.map(({ id, adhesive, joints }) => [id, adhesive, joints]),
  ]).toEqual(["Trailing rib", "rudder", [["B-002", "two-part", ["RD-J02"]]]]);
});
