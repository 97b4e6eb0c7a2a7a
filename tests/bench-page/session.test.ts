/** A session of one batch, two joints and three pieces, and one of breaking three, by taps alone. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { readRecord } from "../../src/record/read.ts";
import { browserAsked, isChromium } from "../browser/browsers.ts";
import { command } from "../cli/command.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { FirefoxPhone } from "./firefox-phone.ts";
import { hostOf } from "./host.ts";
import { addressIn, benchOfRecord, type Hand, NOW, Phone } from "./phone.ts";
import { BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();
let phone: Hand | undefined;
afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

/** Puts a file into the record as it came from the phone, and reckons. */
async function takenIn(content: string, { name, text }: { readonly name: string; readonly text: string }) {
  writeFileSync(join(content, "entries", name), text);
  expect(await command(["check", content], NOW)).toMatchObject({ code: 0, err: "" });
  const read = await readRecord(content, { today: new Date().toISOString().slice(0, 10) });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return reckon(read.record);
}

const open = (): Promise<Hand> => (isChromium ? Phone.open() : FirefoxPhone.open());

describe(`A session at the bench in ${browserAsked()}, by taps alone`, () => {
  it("glues two joints from one cup with three pieces in 20 taps at most, its tab killed and its network cut on the way", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    const host = await hostOf(bench);
    phone = await open();
    await phone.go(host.url);
    await phone.ready();
    host.isUp = false;
    await phone.tap(/^Glue: Two-part/);
    await phone.tap(/RD-J02/);
    await phone.tap(/RD-J03/);
    await phone.tap("These 2");
    for (const value of ["20.0", "50", "10.2"]) await phone.tap(value);
    await phone.tap(/^S-1/);
    await phone.tap("40.3");
    await phone.killTab(host.url);
    expect(await phone.heading()).toBe("Read it back");
    await phone.tap("The hardener goes in now");
    await phone.tap("It is in: note it");
    await phone.tap("17.8");
    await phone.tap("Closed");
    await phone.tap("Closed");
    await phone.tap("Nothing more to close");
    await phone.tap(/^3 of S-1/);
    await phone.tap("Ines");
    const foretold = await phone.text("[data-verdict='B-002']");
    const file = await phone.saved();
    expect(await phone.mark()).toContain("Has it arrived?");
    await phone.tap("It is in the record");
    expect(await phone.mark()).toContain("Nothing is open.");
    expect(phone.taps).toBeLessThanOrEqual(20);
    const evidence = await takenIn(content, file);
    expect(evidence.batches.get("B-002")?.verdict).toBe(foretold);
    expect(foretold).toBe("pending");
    expect(file.text).toContain("RD-J03");
    expect(evidence.batches.get("B-002")?.pieces).toHaveLength(3);
    expect(phone.errors).toEqual([]);
    expect(phone.asked.filter((url) => !url.startsWith(host.url) && !/^(?:blob|data):/.test(url))).toEqual([]);
    host.close();
  });

  it("glues two joints from two cups with six pieces in 28 taps at most", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    phone = await open();
    await phone.go(addressIn(bench));
    const conditions = ["20.0", "50", "10.2", /^S-1/];
    const cup = ["40.3", "The hardener goes in now", "It is in: note it", "17.8"];
    const joints = [/^Glue: Two-part/, /RD-J02/, /RD-J03/, "These 2"];
    for (const words of [...joints, ...conditions, ...cup, "Another cup", ...cup]) await phone.tap(words);
    await phone.tap("Closed from B-002", "RD-J02");
    await phone.tap("Closed from B-003", "RD-J03");
    for (const words of ["Nothing more to close", /^3 of S-1/, /^3 of S-1/, "Ines"]) await phone.tap(words);
    const foretold = await Promise.all(["B-002", "B-003"].map((id) => phone?.text(`[data-verdict='${id}']`)));
    const file = await phone.saved();
    await phone.tap("It is in the record");
    expect(phone.taps).toBeLessThanOrEqual(28);
    const { batches } = await takenIn(content, file);
    const own = [batches.get("B-002"), batches.get("B-003")];
    expect(own.map((one) => one?.verdict)).toEqual(foretold);
    expect(own.map((one) => one?.batch.joints)).toEqual([["RD-J02"], ["RD-J03"]]);
    expect(own.map((one) => one?.pieces.length)).toEqual([3, 3]);
    expect(phone.errors).toEqual([]);
  });

  it("breaks three pieces in 20 taps at most, with the verdicts of the build", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    phone = await open();
    await phone.go(addressIn(bench));
    await phone.tap("Break 3 pieces");
    const loads = [
      ["33–", "335"],
      ["32–", "328"],
      ["34–", "341"],
    ] as const;
    for (const [tens, load] of loads) {
      await phone.tap("In the wood");
      await phone.tap("100");
      await phone.tap(tens);
      await phone.tap(load);
    }
    await phone.tap("Ines");
    const foretold = await Promise.all(
      ["B-001/1", "B-001/2", "B-001/3"].map((id) => phone?.text(`[data-verdict='${id}']`)),
    );
    const file = await phone.saved();
    await phone.tap("It is in the record");
    expect(phone.taps).toBeLessThanOrEqual(20);
    const evidence = await takenIn(content, file);
    expect(["B-001/1", "B-001/2", "B-001/3"].map((id) => evidence.pieces.get(id)?.verdict)).toEqual(foretold);
    expect(foretold).toEqual(["pass", "pass", "pass"]);
    expect(phone.errors).toEqual([]);
  });
});
