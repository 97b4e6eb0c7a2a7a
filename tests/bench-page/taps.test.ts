/** Second taps that were meant for the screen before. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { addressIn, benchOfRecord, Phone } from "./phone.ts";
import { BENCH_RECORD } from "./record.ts";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const folder = mkdtempSync(join(tmpdir(), "scarfline-taps-"));
let phone: Phone;
beforeAll(async () => {
  const { bench } = await benchOfRecord(folder, BENCH_RECORD);
  phone = await Phone.open();
  await phone.go(addressIn(bench));
});
afterAll(async () => {
  await phone.close();
  rmSync(folder, { recursive: true, force: true });
});

const INTERVALS = [0, 60, 150, 260, 330, 400, 460];

/**
 * Two taps at one place of the screen, so many milliseconds apart by the browser's own clock; the second hits whatever
 * stands there then. How many taps were kept, and how far apart they were.
 */
async function twice(words: RegExp, apart: number): Promise<{ readonly kept: number; readonly apart: number }> {
  await phone.settled();
  const button = phone.page.getByRole("button", { name: words }).first();
  await button.scrollIntoViewIfNeeded();
  const box = await button.boundingBox();
  if (box === null) throw new Error(`no button ${words.source}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return phone.page.evaluate(
    async ([left, top, wait]) => {
      const count = (): number => Number(document.querySelector("[data-kept]")?.textContent ?? 0);
      const hit = (): void => document.elementFromPoint(left, top)?.closest("button")?.click();
      const before = count();
      const first = performance.now();
      hit();
      await new Promise((done) => setTimeout(done, wait));
      const second = performance.now();
      hit();
      await new Promise((done) => setTimeout(done, 400));
      return { kept: count() - before, apart: second - first };
    },
    [x, y, apart] as const,
  );
}

/** Taps that go from the first screen to the last of a session. */
const WAY = [
  /^Glue: Two-part/,
  /RD-J02/,
  /^These 1/,
  /^20\.0$/,
  /^50$/,
  /^10\.2$/,
  /^S-1/,
  /^40\.3$/,
  /^The hardener goes in now/,
  /^It is in/,
  /^17\.8$/,
  /^Closed$/,
  /^Nothing more/,
  /^3 of S-1/,
  /^Ines$/,
];

it("write nothing at any interval up to half a second, on each screen of a session", async () => {
  const wrong: string[] = [];
  for (const [at, words] of WAY.entries()) {
    const wanted = INTERVALS[at % INTERVALS.length] ?? 0;
    const { kept, apart } = await twice(words, wanted);
    if (apart <= 500 && kept !== 1)
      wrong.push(`${words.source}: ${kept} kept of two taps ${apart.toFixed(0)} ms apart`);
    if (apart > 500) expect(kept, "a slow machine: the second tap came late, and may count").toBeGreaterThan(0);
  }
  expect(wrong).toEqual([]);
  expect(await phone.heading()).toBe("Take it out");
});

it("take nothing back where the button that takes back is hit twice", async () => {
  const before = Number(await phone.text("[data-kept]"));
  const { kept } = await twice(/^Take back the last tap/, 200);
  expect(kept).toBe(1);
  expect(Number(await phone.text("[data-kept]"))).toBe(before + 1);
  expect(await phone.heading()).toMatch(/^Who worked/);
});
