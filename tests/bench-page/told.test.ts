/** What the page tells while something is noted or a clock runs, and who is asked for. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { readRecord } from "../../src/record/read.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { addressIn, benchOfRecord, Phone } from "./phone.ts";
import { BENCH_RECORD, HELPED_RECORD } from "./record.ts";

const scratch = scratchFolders();
let phone: Phone | undefined;
afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

async function opened(record = BENCH_RECORD): Promise<{ readonly on: Phone; readonly content: string }> {
  const { content, bench } = await benchOfRecord(scratch(), record);
  phone = await Phone.open();
  await phone.page.addInitScript(RINGS);
  await phone.page.clock.install();
  await phone.go(addressIn(bench));
  return { on: phone, content };
}

/** Counts what a phone would sound and buzz. */
const RINGS = `
  window.rung = { tones: 0, buzzes: 0 };
  window.AudioContext = class {
    state = "running"; currentTime = 0; destination = {};
    createOscillator() { return { frequency: {}, connect() {}, start() { window.rung.tones += 1; }, stop() {} }; }
    resume() { return Promise.resolve(); }
  };
  navigator.vibrate = () => { window.rung.buzzes += 1; return true; };
`;
const rungOn = ({ page }: Phone): Promise<unknown> =>
  page.evaluate(() => (window as unknown as { rung: unknown }).rung);
const MIN = 60_000;

describe("While a clock runs", () => {
  const TO_CLOCK = [/^Glue: Two-part/, /RD-J02/, /^These 1/, "20.0", "50", "10.2", /^S-1/, "40.3"];

  it("the page rings five minutes before the end and at the end, once each, and says what it cannot", async () => {
    const { on } = await opened();
    for (const words of [...TO_CLOCK, "The hardener goes in now", "It is in: note it", "17.8"]) await on.tap(words);
    expect(await on.mark()).toContain("Locked it cannot ring: watch for the time above.");
    expect(await on.text(".running")).toMatch(/B-002 (?:39|40) min until \d\d:\d\d/);
    await on.page.clock.runFor(34 * MIN);
    expect(await rungOn(on)).toEqual({ tones: 0, buzzes: 0 });
    await on.page.clock.runFor(2 * MIN);
    expect(await rungOn(on)).toEqual({ tones: 3, buzzes: 1 });
    expect(await on.text(".running .grave")).toMatch(/B-002 [34] min/);
    await on.page.clock.runFor(5 * MIN);
    expect(await rungOn(on)).toEqual({ tones: 6, buzzes: 2 });
    expect(await on.text(".running .grave")).toMatch(/^B-002 over until/);
    await on.page.clock.runFor(5 * MIN);
    expect(await rungOn(on)).toEqual({ tones: 6, buzzes: 2 });
  });

  it("behind a dark screen nothing rings, and what was over meanwhile does once it is lit", async () => {
    const { on } = await opened();
    for (const words of [...TO_CLOCK, "The hardener goes in now"]) await on.tap(words);
    await on.settled();
    await on.page.evaluate(() =>
      Object.defineProperty(document, "visibilityState", { value: "hidden", writable: true }),
    );
    await on.page.clock.runFor(36 * MIN);
    expect(await rungOn(on)).toEqual({ tones: 0, buzzes: 0 });
    await on.page.evaluate(() => Object.assign(document, { visibilityState: "visible" }));
    await on.page.clock.runFor(2000);
    expect(await rungOn(on)).toEqual({ tones: 3, buzzes: 1 });
  });
});

describe("Once air and wood are noted", () => {
  it("the dew point and the moisture that wood comes to are told in the build's words", async () => {
    const { on } = await opened();
    for (const words of [/^Glue: Two-part/, /RD-J02/, /^These 1/, "20.0", "50", "10.2"]) await on.tap(words);
    const told = await on.text("[data-conditions]");
    expect(told).toContain("The dew point was 9.3 °C");
    expect(told).toContain("The shop was at 20.0 °C.");
    expect(told).toContain("The wood was at 10.2 % by meter.");
    expect(told).toContain("In this air wood settles near 9.3 %.");
    expect(await on.page.locator("[data-conditions] .grave").count()).toBe(0);
  });

  it("what speaks against gluing stands out before anything is weighed", async () => {
    const { on } = await opened();
    for (const words of [/^Glue: Two-part/, /RD-J02/, /^These 1/, "20.0"]) await on.tap(words);
    for (const words of ["Another value", "9", "5", "Note 95 %", "Another value", "1", "3", "Note 13 %"])
      await on.tap(words);
    const against = await on.page.locator("[data-conditions] .grave").allInnerTexts();
    expect(against.join(" ")).toContain("water may have settled on them");
    expect(against.join(" ")).toContain("The wood was at 13 % by meter");
  });
});

describe("Who watched", () => {
  const BROKEN = ["In the wood", "100", "33–", "335", "In the glue line", "No load was read", "Not broken today"];

  it("is asked once of all that was broken, before any verdict, and stands at each test", async () => {
    const { on, content } = await opened(HELPED_RECORD);
    for (const words of ["Break 3 pieces", ...BROKEN]) await on.tap(words);
    expect(await on.heading()).toBe("Who watched?");
    expect(await on.page.locator("[data-verdict]").count()).toBe(0);
    for (const words of ["Sam", "Ines"]) await on.tap(words);
    const { name, text } = await on.saved();
    writeFileSync(join(content, "entries", name), text);
    const read = await readRecord(content, { today: new Date().toISOString().slice(0, 10) });
    if ("problems" in read) throw new Error(JSON.stringify(read.problems));
    const tests = read.record.entries.flatMap((entry) => entry.tests).filter(({ piece }) => piece !== "B-000/1");
    expect(tests.map(({ piece, witness }) => [piece, witness])).toEqual([
      ["B-001/1", "helper"],
      ["B-001/2", "helper"],
    ]);
  });

  it("may be nobody, and is not asked of a builder alone or where nothing was broken", async () => {
    const { on } = await opened(HELPED_RECORD);
    for (const words of ["Break 3 pieces", ...BROKEN, "Nobody but who broke them", "Ines"]) await on.tap(words);
    expect((await on.saved()).text).not.toContain("witness");
    await on.close();
    const { on: alone } = await opened();
    for (const words of ["Break 3 pieces", ...BROKEN]) await alone.tap(words);
    expect(await alone.heading()).toMatch(/^Who worked at/);
    await alone.close();
    const { on: unbroken } = await opened(HELPED_RECORD);
    for (const words of ["Break 3 pieces", ...Array.from({ length: 3 }, () => "Not broken today")])
      await unbroken.tap(words);
    expect(await unbroken.heading()).toMatch(/^Who worked at/);
  });
});
