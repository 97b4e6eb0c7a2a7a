import { expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Record } from "../../src/record/types.ts";
import { log } from "./logs.ts";
import { batch, glued, piece, test } from "./make.ts";

/** Of every twelve days' readings one is left out for four hours, so that there are gaps as well. */
function recordOf(batches: number, hours: number): Record {
  const day = (at: number): string => new Date(Date.UTC(2025, 0, 20) + Math.floor((at * hours) / batches / 24) * 86_400_000).toISOString().slice(0, 10);
  const all = Array.from({ length: batches }, (_, i) => batch(`B-${i}`, { joints: [], moisture: undefined, pieces: [piece(`B-${i}`)] }, day(i)));
  const tests = all.filter((_, i) => i % 2 === 0).map((one) => test(`${one.id}/1`, {}, new Date(Date.parse(one.day) + 9 * 86_400_000).toISOString().slice(0, 10)));
  const climate = log("shop", "2025-01-01", hours, (hour) => (hour % 288 < 4 ? undefined : { temperature: 19 + (hour % 24) / 8, humidity: 0.5 + (hour % 7) / 100 }));
  return { ...glued(all, tests), climate: [climate] };
}

const cpu = (work: () => void): number => {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
};

it("20,000 batches with 200,000 hours of climate are reckoned in a time that grows with their number and not with its square", () => {
  const [small, whole] = [recordOf(2500, 25_000), recordOf(20_000, 200_000)];
  cpu(() => reckon(small));
  const [less, more] = [cpu(() => reckon(small)), cpu(() => reckon(whole))];
  console.log(`2,500 batches, 25,000 readings: ${less.toFixed(2)} s; 20,000 batches, 200,000 readings: ${more.toFixed(2)} s of processor time`);
  // Eight times as much: n log n is 11, every batch against every reading 64.
  expect(more / less).toBeLessThan(32);
}, 120_000);
