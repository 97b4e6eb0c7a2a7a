/** Two phones at one bench, and numbers that stand on cups and sticks by pen. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { nextBatches } from "../../src/desk/entry/next-id.ts";
import { readRecord } from "../../src/record/read.ts";
import { command } from "../cli/command.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { addressIn, benchOfRecord, buildBench, NOW, Phone } from "./phone.ts";
import { BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();
const open: Phone[] = [];
afterEach(async () => {
  for (const phone of open.splice(0)) await phone.close();
});

async function opened(bench: string): Promise<Phone> {
  const phone = await Phone.open();
  open.push(phone);
  await phone.go(addressIn(bench));
  return phone;
}

/** One joint glued from one cup, and the file saved into a folder. */
async function glued(on: Phone, joint: RegExp, folder: string): Promise<string> {
  const conditions = ["20.0", "50", "10.2", /^S-1/, "40.3"];
  const cup = ["The hardener goes in now", "It is in: note it", "17.8", "Closed", "Nothing more to close"];
  for (const words of [/^Glue: Two-part/, joint, /^These 1/, ...conditions, ...cup, /^3 of S-1/, "Ines"])
    await on.tap(words);
  const { name, text } = await on.saved();
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, name), text);
  await on.tap("It is in the record");
  return name;
}

describe("Two phones at one bench", () => {
  it("give numbers of their own once one has a letter, and both files come into one record", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    const given = join(scratch(), "given");
    const [first, second] = [await opened(bench), await opened(bench)];
    await second.tap("A second phone writes too");
    await second.tap(/^Phone A: B-A001/);
    expect(await second.mark()).toContain("Phone A. Its next cup is B-A001.");
    await second.killTab(addressIn(bench));
    expect(await second.mark()).toContain("Phone A. Its next cup is B-A001.");
    await glued(first, /RD-J02/, given);
    await glued(second, /RD-J03/, given);
    expect(await command(["take", given, "--content", content], NOW)).toMatchObject({ code: 0, err: "" });
    const read = await readRecord(content, { today: new Date().toISOString().slice(0, 10) });
    if ("problems" in read) throw new Error(JSON.stringify(read.problems));
    const ids = read.record.entries.flatMap(({ batches }) => batches.map(({ id }) => id));
    expect(ids.sort()).toEqual(["B-000", "B-001", "B-002", "B-A001"]);
    await buildBench(content, bench);
    for (const [phone, next] of [
      [first, "B-003"],
      [second, "B-A002"],
    ] as const) {
      await phone.go(addressIn(bench));
      if (phone === second) expect(await phone.mark()).toContain(`Its next cup is ${next}.`);
      await phone.tap(/^(?:A second phone|Another letter)/);
      expect(await phone.mark()).toContain(`: ${next}`);
    }
  }, 240_000);

  it("that gave one number are told at the desk: the second file is not taken, and pens are looked at", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    const [one, other] = [join(scratch(), "one"), join(scratch(), "other")];
    const names = [await glued(await opened(bench), /RD-J02/, one), await glued(await opened(bench), /RD-J03/, other)];
    expect(await command(["take", one, "--content", content], NOW)).toMatchObject({ code: 0, err: "" });
    const { code, err } = await command(["take", other, "--content", content], NOW);
    expect(code).toBe(1);
    expect(err).toContain("the id B-002 is already that of a batch");
    expect(err).toContain("look which carry it");
    expect(err).toContain(names[0]);
  }, 240_000);
});

describe("The next number of each phone", () => {
  it("follows that phone's own, whichever phone has given more", () => {
    expect(nextBatches([])).toMatchObject({ "": "B-001", A: "B-A001", F: "B-F001" });
    const ids = ["B-001", "B-A001", "B-A002", "B-A003", "B-C009"];
    expect(nextBatches(ids)).toEqual({
      "": "B-002",
      A: "B-A004",
      B: "B-B001",
      C: "B-C010",
      D: "B-D001",
      E: "B-E001",
      F: "B-F001",
    });
  });

  it("leaves a record's own letters what they are", () => {
    expect(nextBatches(["W-A01", "W-A02", "F-B01"])[""]).toBe("W-A03");
  });
});
