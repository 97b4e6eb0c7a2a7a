/** Photographs taken at the bench, and the ways out of the phone with them. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { readRecord } from "../../src/record/read.ts";
import { command } from "../cli/command.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { hostOf } from "./host.ts";
import { addressIn, benchOfRecord, NOW, Phone } from "./phone.ts";
import { BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();
let jpeg: Buffer;
beforeAll(async () => {
  jpeg = await sharp({ create: { width: 60, height: 40, channels: 3, background: "#a87" } })
    .jpeg()
    .toBuffer();
});
let phone: Phone | undefined;
afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

const photograph = (on: Phone, mimeType = "image/jpeg"): Promise<void> =>
  on.page.locator("input[type=file]").setInputFiles({ name: "IMG_0001.JPG", mimeType, buffer: jpeg });
const asked = ({ page }: Phone): Promise<void> =>
  page.getByRole("heading", { name: "What is on the photograph?" }).waitFor();
const kept = (on: Phone): Promise<number> => on.text("[data-kept]").then(Number);
const TO_CLOCK = [/^Glue: Two-part/, /RD-J02/, /^These 1/, "20.0", "50", "10.2", /^S-1/, "40.3"];
const TO_CLOSED = ["The hardener goes in now", "It is in: note it", "17.8", "Closed"];
const END = ["Nothing more to close", /^3 of S-1/, "Ines"];

/** A session of one joint with a photograph of it, up to the screen that takes it out. */
async function photographed(share?: string): Promise<{ readonly on: Phone; readonly content: string }> {
  const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
  phone = await Phone.open();
  if (share !== undefined) await phone.page.addInitScript(share);
  await phone.go(addressIn(bench));
  for (const words of [...TO_CLOCK, ...TO_CLOSED]) await phone.tap(words);
  await photograph(phone);
  await asked(phone);
  await phone.tap("RD-J02: Trailing rib");
  for (const words of END) await phone.tap(words);
  await phone.page.getByRole("button", { name: "Save it as a file" }).waitFor();
  return { on: phone, content };
}

describe("A photograph", () => {
  it("is kept at once, is asked about even after the tab was killed, and goes into the record with the entry that names it", async () => {
    const { content, bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    phone = await Phone.open();
    await phone.go(addressIn(bench));
    for (const words of [...TO_CLOCK, ...TO_CLOSED]) await phone.tap(words);
    const before = await kept(phone);
    await photograph(phone);
    await expect.poll(() => kept(phone as Phone)).toBe(before + 1);
    await phone.killTab(addressIn(bench));
    expect(await phone.heading()).toBe("What is on the photograph?");
    expect(await phone.text(".running")).toMatch(/^B-002/);
    await phone.tap("RD-J02: Trailing rib");
    for (const words of END) await phone.tap(words);
    const given = join(scratch(), "given");
    mkdirSync(given);
    const coming = new Promise<void>((done) => {
      let count = 0;
      phone?.page.on("download", async (download) => {
        writeFileSync(join(given, download.suggestedFilename()), readFileSync(await download.path()));
        if (++count === 2) done();
      });
    });
    await phone.tap("Save it as a file");
    await coming;
    expect(await command(["take", given, "--content", content], NOW)).toMatchObject({ code: 0, err: "" });
    expect(await command(["check", content], NOW)).toMatchObject({ code: 0, err: "" });
    const read = await readRecord(content, { today: new Date().toISOString().slice(0, 10) });
    if ("problems" in read) throw new Error(JSON.stringify(read.problems));
    const photos = read.record.entries.flatMap((entry) => entry.photos);
    expect(photos.map(({ alt }) => alt)).toEqual([
      expect.stringMatching(/^RD-J02: Trailing rib, at the bench at \d\d:\d\d$/),
    ]);
    expect(readFileSync(join(content, photos[0]?.file ?? "")).equals(jpeg)).toBe(true);
    await phone.tap("It is in the record");
    expect(await leftOn(phone)).toEqual({ events: 0, records: 0, photographs: 0 });
  });

  it("of a form that no record takes is refused, and the page says so", async () => {
    const { bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    phone = await Phone.open();
    await phone.go(addressIn(bench));
    await phone.tap(/^Glue: Two-part/);
    await phone.settled();
    await photograph(phone, "image/heic");
    await phone.page.getByRole("alert").waitFor();
    expect(await phone.text("[role=alert]")).toContain("was not kept: the camera gave image/heic");
    expect(await kept(phone)).toBe(1);
    expect(await phone.heading()).toBe("Which joints?");
  });
});

const leftOn = ({ page }: Phone): Promise<{ readonly [store: string]: number }> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open("scarfline-bench");
        opening.onsuccess = () => {
          const names = ["events", "records", "photographs"];
          const reading = opening.result.transaction(names);
          const counts = names.map((name) => reading.objectStore(name).count());
          reading.oncomplete = () =>
            done(Object.fromEntries(names.map((name, at) => [name, counts[at]?.result ?? -1])));
        };
      }),
  );

/** A phone's way of sharing, which takes files of some types and does with them what is said. */
const sharing = (takes: string, does: string): string => `
  window.shared = [];
  navigator.canShare = ({ files }) => files.every(({ type }) => ${takes});
  navigator.share = async ({ files }) => {
    ${does}
    for (const file of files) window.shared.push({ name: file.name, type: file.type, text: file.type.startsWith("text") ? await file.text() : file.size });
  };
`;
const sharedBy = ({ page }: Phone): Promise<readonly { name: string; type: string; text: string | number }[]> =>
  page.evaluate(() => (window as unknown as { shared: [] }).shared);

describe("Sharing", () => {
  it("hands over the entry as Markdown and its photograph as it was taken", async () => {
    const { on, content } = await photographed(sharing("true", ""));
    await on.tap("Share it");
    expect(await on.heading()).toBe("Has it arrived?");
    const [entry, picture] = await sharedBy(on);
    expect(entry).toMatchObject({
      type: "text/markdown",
      text: expect.stringContaining(`file: ../photos/${picture?.name}`),
    });
    expect(picture).toEqual({
      name: expect.stringMatching(/^[\d-]{10}-\w{6}-1\.jpg$/),
      type: "image/jpeg",
      text: jpeg.length,
    });
    expect(entry?.name).toMatch(/^[\d-]{10}-b-002-trailing-rib\.md$/);
    mkdirSync(join(content, "photos"));
    writeFileSync(join(content, "photos", picture?.name ?? ""), jpeg);
    writeFileSync(join(content, "entries", entry?.name ?? ""), String(entry?.text));
    expect(await command(["check", content], NOW)).toMatchObject({ code: 0, err: "" });
  });

  it("hands it over as plain text where the system takes no Markdown", async () => {
    const { on } = await photographed(sharing('type !== "text/markdown"', ""));
    await on.tap("Share it");
    const [entry] = await sharedBy(on);
    expect(entry).toMatchObject({ name: expect.stringMatching(/\.md\.txt$/), type: "text/plain" });
  });

  it("that was given up is told, and nothing counts as gone out", async () => {
    const { on } = await photographed(sharing("true", 'throw new DOMException("Share canceled", "AbortError");'));
    const before = await kept(on);
    await on.tap("Share it");
    expect(await on.mark()).toContain("It did not go out: Share canceled");
    expect(await on.heading()).toBe("Take it out");
    expect(await kept(on)).toBe(before);
  });

  it("is not offered where a browser has none, and nothing with a photograph is offered to be copied", async () => {
    const { on } = await photographed();
    expect(await on.page.getByRole("button", { name: /^(?:Share|Copy) it/ }).count()).toBe(0);
    expect(await on.mark()).toContain("With 1 photograph.");
  });
});

it("What an earlier page kept is kept by one that knows of photographs", async () => {
  const { bench } = await benchOfRecord(scratch(), BENCH_RECORD);
  const host = await hostOf(bench);
  phone = await Phone.open();
  await phone.page.goto(`${host.url}icon.svg`);
  const page = readFileSync(join(bench, "index.html"), "utf8");
  const given = /id="record" data-digest="(\w+)">(.*?)<\/script>/s.exec(page) ?? [];
  await phone.page.evaluate(
    ([digest, record]) =>
      new Promise<void>((done) => {
        const opening = indexedDB.open("scarfline-bench", 1);
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore("events", { keyPath: "id" });
          opening.result.createObjectStore("records");
          opening.result.createObjectStore("taken", { keyPath: "session" });
        };
        opening.onsuccess = () => {
          const writing = opening.result.transaction(["events", "records"], "readwrite");
          const tins = { adhesive: "two-part", lots: { resin: "R-1", hardener: "H-1" }, scale: "0.1 g" };
          const said = [
            { kind: "began", of: "gluing", tins, firstBatch: "B-002" },
            { kind: "joint", joint: "RD-J02", on: true },
          ];
          for (const [seq, one] of said.entries())
            writing
              .objectStore("events")
              .add({ session: "s", id: `e${seq}`, seq, instant: Date.now(), offset: 0, said: one, record: digest });
          writing.objectStore("records").put(JSON.parse(record ?? ""), digest);
          writing.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    [given[1], given[2]] as const,
  );
  await phone.go(host.url);
  expect(await kept(phone)).toBe(2);
  expect(await phone.mark()).toContain("✓ RD-J02");
  await photograph(phone);
  await asked(phone);
  await phone.tap("RD-J02: Trailing rib");
  expect(await kept(phone)).toBe(4);
  host.close();
});
