/** The page itself, in a browser, on 200 random cups: what it says of each is what the build says. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, expect, it } from "vitest";
import { parse } from "yaml";
import type { BenchEvent, Said } from "../../src/bench/event.ts";
import { foretell } from "../../src/bench/judged.ts";
import { readRecord } from "../../src/record/read.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { addressIn, benchOfRecord, Phone } from "./phone.ts";
import { BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();
const SESSIONS = 10;
const CUPS = 20;
let phone: Phone | undefined;
afterEach(async () => {
  await phone?.close();
});

const tenths = (least: number, most: number, unit: string) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((n) => `${(n / 10).toFixed(1)} ${unit}`);
const cups = fc.array(
  fc.record({
    resin: tenths(2, 150, "g"),
    off: fc.integer({ min: -7, max: 7 }),
    minutes: fc.integer({ min: 1, max: 70 }),
  }),
  { minLength: CUPS, maxLength: CUPS },
);
const sessions = fc.record({
  cups,
  temperature: tenths(16, 29, "°C"),
  humidity: fc.integer({ min: 20, max: 80 }).map((n) => `${n} %`),
  moisture: tenths(8, 12.2, "%"),
});
type Random = typeof sessions extends fc.Arbitrary<infer T> ? T : never;

function saidIn({ temperature, humidity, moisture, cups: all }: Random): readonly (readonly [Said, number])[] {
  const tins = { adhesive: "two-part", lots: { resin: "R-1", hardener: "H-1" }, scale: "0.1 g" };
  const head: readonly Said[] = [
    { kind: "began", of: "gluing", tins, firstBatch: "B-002" },
    { kind: "joint", joint: "RD-J02", on: true },
    { kind: "joints chosen" },
    { kind: "reading", of: "temperature", typed: temperature },
    { kind: "reading", of: "humidity", typed: humidity },
    { kind: "reading", of: "moisture", typed: moisture },
    { kind: "timber", lots: ["S-1"] },
  ];
  const mixed = all.flatMap(({ resin, off, minutes }, cup): readonly (readonly [Said, number])[] => {
    const hardener = `${Math.max(0.1, Number.parseFloat(resin) * 0.44 * (1 + off / 100)).toFixed(1)} g`;
    return [
      ...(cup === 0 ? [] : [[{ kind: "another cup" }, 1] as const]),
      [{ kind: "amount", cup, part: "resin", typed: resin }, 1],
      [{ kind: "mixed", cup }, 1],
      [{ kind: "poured", cup }, 1],
      [{ kind: "amount", cup, part: "hardener", typed: hardener }, 1],
      [{ kind: "left as it is", cup }, 1],
      [{ kind: "closed", cup, joint: "RD-J02" }, minutes * 60],
    ];
  });
  return [
    ...head.map((said) => [said, 1] as const),
    ...mixed,
    [{ kind: "nothing more" }, 1],
    ...all.map((_, cup) => [{ kind: "pieces", cup, count: 0, sizes: {}, now: false }, 1] as const),
    [{ kind: "worked", who: [] }, 1],
  ];
}

/** From a morning of which no cup is left past midnight. */
function eventsOf(random: Random, at: number, record: string): readonly BenchEvent[] {
  let instant = Date.parse("2022-01-10T05:00:00Z");
  return saidIn(random).map(([said, seconds], seq) => {
    instant += seconds * 250;
    return { session: `s${at}`, id: `s${at}-${seq}`, seq, instant, offset: 0, said, record };
  });
}

/** Puts a session where the page keeps its own. */
async function put(on: Phone, events: readonly BenchEvent[]): Promise<void> {
  await on.page.evaluate(
    (all) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open("scarfline-bench");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const change = opening.result.transaction(["events", "records"], "readwrite");
          change.objectStore("events").clear();
          for (const event of all) change.objectStore("events").put(event);
          const given: unknown = JSON.parse(document.querySelector("#record")?.textContent ?? "");
          change.objectStore("records").put(given, all[0]?.record ?? "");
          change.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    events,
  );
}

it("the page says of 200 random cups the verdicts that the build gives its file, by the same reasons", async () => {
  const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
  const read = await readRecord(content, { today: "2022-02-01" });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  const digest = /data-digest="(\w+)"/.exec(readFileSync(join(bench, "index.html"), "utf8"))?.[1] ?? "";
  phone = await Phone.open();
  await phone.go(addressIn(bench));
  const verdicts: string[] = [];
  for (const [at, random] of fc.sample(sessions, { numRuns: SESSIONS, seed: 11 }).entries()) {
    await put(phone, eventsOf(random, at, digest));
    await phone.page.reload();
    await phone.page.waitForSelector("[data-verdict]");
    const told = await phone.page.$$eval("section:has([data-verdict])", (sections) =>
      sections.map((section) => [
        section.querySelector("[data-verdict]")?.textContent,
        ...[...section.querySelectorAll("li")].map((li) => li.textContent),
      ]),
    );
    const text = await phone.page.$eval("pre", (pre) => pre.textContent ?? "");
    const facts = parse(text.split("---\n")[1] ?? "", { schema: "failsafe" });
    const { batches, told: sentences } = foretell(read.record, [{ day: "2022-01-10", title: "random", facts }]);
    expect(told).toEqual(
      batches.map((file) => [
        file.verdict,
        ...sentences(file)
          .filter(({ severity }) => severity !== "meets")
          .map(({ sentence }) => sentence),
      ]),
    );
    verdicts.push(...batches.map(({ verdict }) => verdict));
  }
  expect(verdicts).toHaveLength(SESSIONS * CUPS);
  expect([...new Set(verdicts)].sort()).toEqual(["not shown", "rejected"]);
}, 600_000);
