import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readRecord } from "../../../src/record/read.ts";
import { noteText, problemText } from "../../../src/problem.ts";

let root = "";
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "climate-"));
});
afterEach(() => rmSync(root, { recursive: true }));

const AIRCRAFT = `---
name: Test
type: test
units: metric
time_zone: Europe/Lisbon
start: 2025-01-01
people: [{ id: builder, name: B, public: B, role: builder }]
tasks: [gluing]
---
`;

type Files = { readonly [name: string]: string | Buffer };

async function read(files: Files, today?: string) {
  for (const [name, text] of Object.entries({
    "aircraft.md": AIRCRAFT,
    "assemblies/wing.md": "---\ntitle: Wing\n---\n",
    ...files,
  })) {
    mkdirSync(dirname(join(root, name)), { recursive: true });
    writeFileSync(join(root, name), text);
  }
  const read = await readRecord(root, today === undefined ? {} : { today });
  const notes = read.notes.map(noteText);
  if ("problems" in read)
    return {
      notes,
      problems: read.problems.map(({ file, line, column, code }) => `${file}:${line}:${column} ${code}`),
      texts: read.problems.map(problemText),
    };
  return { notes, logs: read.record.climate };
}

const FIRST = "Time (UTC),Temp (°C),RH (%)\n2025-03-08 14:00,20,50\n2025-03-08 15:00,21,51\n2025-03-08 16:00,22,52\n";
const NEXT = "Time (UTC),Temp (°C),RH (%)\n2025-03-08 15:00,21,51\n2025-03-08 16:00,22,52\n2025-03-08 17:00,23,53\n";

describe("The climate folder", () => {
  it("is read with the record, oldest log first, each named by its file", async () => {
    const { logs } = await read({ "climate/b.csv": FIRST, "climate/a.csv": FIRST.replaceAll("03-08", "03-09") });
    expect(
      logs?.map(({ id, file, title, audience, gap, gapIsDefault }) => ({
        id,
        file,
        title,
        audience,
        gap,
        gapIsDefault,
      })),
    ).toEqual([
      { id: "b", file: "climate/b.csv", title: "b", audience: "public", gap: 7200, gapIsDefault: true },
      { id: "a", file: "climate/a.csv", title: "a", audience: "public", gap: 7200, gapIsDefault: true },
    ]);
    expect([...(logs?.[0]?.temperatures ?? [])]).toEqual([20, 21, 22]);
    expect([...(logs?.[0]?.humidities ?? [])]).toEqual([0.5, 0.51, 0.52]);
  });

  it("takes what a file beside the logger's says of it, and whom it is for", async () => {
    const beside =
      '---\nfile: shop-*.csv\ntitle: Over the bench\ntime: DD/MM/YYYY HH:mm\nzone: local\ntemperature: { column: Ch 1, unit: °F }\ndelimiter: tab\ndecimal: ","\ngap: 3 h\nfor: inspector\n---\nIt hangs there.\n\n::: archive\nBehind the calendar.\n:::\n';
    const { logs } = await read({
      "climate/shop.md": beside,
      "climate/shop-1.csv": "Time\tCh 1\n08/07/2025 15:00\t68,0\n",
      "climate/shop-2.csv": "Time\tCh 1\n09/07/2025 15:00\t68\n",
      "climate/other.csv": FIRST,
    });
    const shop = logs?.find(({ id }) => id === "shop-1");
    expect(logs?.map(({ id }) => id)).toEqual(["other", "shop-1", "shop-2"]);
    expect(shop).toMatchObject({ title: "Over the bench", audience: "inspector", gap: 10_800, gapIsDefault: false });
    expect(shop?.body.map(({ audience }) => audience)).toEqual(["public", "archive"]);
    expect(shop?.times[0]).toBe(Date.UTC(2025, 6, 8, 14) / 1000);
    expect(shop?.temperatures[0]).toBeCloseTo(20, 12);
    expect(shop?.humidities[0]).toBeNaN();
  });

  it("says in the record's list what is wrong, in file, line and column, with the mend", async () => {
    const { texts } = await read({ "climate/shop.csv": "Time,Temp (°C)\n2025-03-08 14:00,20\n" });
    expect(texts).toEqual([
      "climate/shop.csv:2:1  nothing says in which time zone the logger's clock ran  [climate-zone]\n    mend      say it in a file beside it, climate/shop.md: `zone: local` where it ran by the workshop's clock, summer time and all, else `zone: UTC` or `zone: +01:00`",
    ]);
  });

  it("lets two files tell of the same time only if they say the same", async () => {
    expect((await read({ "climate/a.csv": FIRST, "climate/b.csv": NEXT })).logs).toHaveLength(2);
    expect((await read({ "climate/a.csv": FIRST, "climate/b.csv": NEXT.replace("22,52", "22,53") })).problems).toEqual([
      "climate/b.csv:3:1 climate-overlap",
    ]);
    expect((await read({ "climate/a.csv": FIRST, "climate/b.csv": NEXT.replace("15:00", "15:30") })).problems).toEqual([
      "climate/b.csv:2:1 climate-overlap",
    ]);
    expect(
      (await read({ "climate/a.csv": FIRST, "climate/b.csv": NEXT.replace("2025-03-08 16:00,22,52\n", "") })).problems,
    ).toEqual(["climate/b.csv:3:1 climate-overlap"]);
    expect(
      (
        await read({
          "climate/a.csv": FIRST,
          "climate/b.csv": `${FIRST.split("\n")[0] ?? ""}\n2025-03-08 15:30,21,51\n`,
        })
      ).problems,
    ).toEqual(["climate/b.csv:2:1 climate-overlap"]);
  });

  it("refuses a file beside that names no logger file, or one that is named already", async () => {
    expect(
      (await read({ "climate/shop.csv": FIRST, "climate/x.md": "---\nfile: shopp.csv\n---\n" })).texts?.[0],
    ).toContain("did you mean shop.csv?");
    rmSync(join(root, "climate"), { recursive: true });
    const twice = await read({
      "climate/shop.csv": FIRST,
      "climate/x.md": "---\nfile: shop.csv\n---\n",
      "climate/y.md": '---\nfile: "*.csv"\n---\n',
    });
    expect(twice.problems).toEqual(["climate/y.md:2:7 climate-sidecar"]);
  });

  it("takes a point in a name for a point", async () => {
    expect((await read({ "climate/shop.csv": FIRST, "climate/x.md": "---\nfile: shop-csv\n---\n" })).problems).toEqual([
      "climate/x.md:2:7 climate-sidecar",
    ]);
  });

  it("does not tell of a logger file what mending the file beside it would mend", async () => {
    const { problems } = await read({
      "climate/shop.csv": FIRST.replace(" (UTC)", ""),
      "climate/shop.md": "---\nfile: shop.csv\nzone: nowhere\n---\n",
    });
    expect(problems).toEqual(["climate/shop.md:3:7 climate-zone"]);
    rmSync(join(root, "climate"), { recursive: true });
    const form = await read({
      "climate/shop.csv": FIRST,
      "climate/shop.md": "---\nfile: shop.csv\ntime: DD/MM HH:mm\n---\n",
    });
    expect(form.problems).toEqual(["climate/shop.md:3:7 climate-stamp"]);
  });

  it("reads files in whatever encoding they say by a mark, or else as Windows-1252, and notes it", async () => {
    const wide = Buffer.from(`\ufeff${FIRST}`, "utf16le");
    const files = {
      "climate/a.csv": Buffer.from(`\ufeff${FIRST.replaceAll("\n", "\r\n")}`),
      "climate/b.csv": wide,
      "climate/c.csv": Buffer.from(wide).swap16(),
      "climate/d.csv": Buffer.from(FIRST, "latin1"),
    };
    const { logs, notes } = await read(files);
    expect(logs?.map(({ times, temperatures }) => [times.length, temperatures[0]])).toEqual(Array(4).fill([3, 20]));
    expect(notes).toEqual([
      "climate/a.csv:1:1  note: this file begins with a byte order mark, and was read without it",
      "climate/a.csv:1:1  note: this file has line ends of Windows (CRLF), and was read with them",
      "climate/b.csv:1:1  note: this file is UTF-16, and was read as such; most other programs that will read this record want UTF-8; so is climate/c.csv",
      "climate/d.csv:1:1  note: this file is not UTF-8, and was read as Windows-1252: look whether signs such as ° and µ are right",
    ]);
  });

  it("refuses bytes that are no text in any of them", async () => {
    const bytes = Buffer.concat([Buffer.from(FIRST, "latin1"), Buffer.from([0x81])]);
    expect((await read({ "climate/a.csv": bytes, "climate/b.csv": FIRST })).problems).toEqual([
      "climate/a.csv:1:18 encoding",
    ]);
  });

  it("refuses names that are no ids, and readings after today", async () => {
    expect((await read({ "climate/my shop.csv": FIRST })).texts?.[0]).toContain("rename it to my-shop");
    rmSync(join(root, "climate"), { recursive: true });
    expect((await read({ "climate/shop.csv": FIRST }, "2025-03-08")).logs).toHaveLength(1);
    expect((await read({ "climate/shop.csv": FIRST }, "2025-03-07")).problems).toEqual([
      "climate/shop.csv:4:1 climate-time",
    ]);
  });

  it("takes what the page of the files of a record shows of one beside a logger's", async () => {
    const readme = readFileSync(new URL("../../../layouts/readme/record.md", import.meta.url), "utf8");
    const [, shown = ""] = /```yaml\n(---\nfile: shop[\s\S]*?)```/.exec(readme) ?? [];
    const { logs } = await read({
      "climate/shop.md": shown,
      "climate/shop-2026.csv": "Time,Ch 1,Ch 2\n03/04/2026 14:00,68,50\n",
    });
    expect(logs?.[0]).toMatchObject({ title: "Over the bench", gap: 10_800 });
    expect(logs?.[0]?.times[0]).toBe(Date.UTC(2026, 3, 3, 13) / 1000);
    expect(logs?.[0]?.temperatures[0]).toBeCloseTo(20, 12);
  });

  it("reads 200,000 rows", async () => {
    const rows = Array.from(
      { length: 200_000 },
      (_, i) =>
        `${new Date(Date.UTC(2023, 0, 1) + i * 300_000).toISOString().slice(0, 16)}Z,${(18 + (i % 40) / 10).toFixed(1)},5${i % 10}`,
    );
    const { logs } = await read({ "climate/shop.csv": `Time,Temp (°C),RH (%)\n${rows.join("\n")}\n` });
    expect(logs?.[0]?.times).toHaveLength(200_000);
  });
});
