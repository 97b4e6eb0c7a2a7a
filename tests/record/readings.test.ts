import { cpSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { beforeEach, describe, expect, it } from "vitest";
import { type Filed, kindOf, readFiles } from "../../src/record/filed.ts";
import { listFolder } from "../../src/record/folder.ts";
import { readRecord } from "../../src/record/read.ts";
import { readingKey, Readings } from "../../src/record/readings.ts";
import type { Data, Path } from "../../src/record/text/yaml.ts";
import { writeRecord } from "../bench/record.mjs";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { flipped, flipsIn } from "./anything/typed.ts";

const scratch = scratchFolders();
const PROGRAM = "a program";
const TODAY = "2030-01-01";
const DEMO = new URL("../../content", import.meta.url).pathname;
const SMALL = new URL("small", import.meta.url).pathname;
const ATTACKED = new URL("../attacks/base", import.meta.url).pathname;

const open = (file: string, program = PROGRAM, trusting = true): Readings => Readings.open(file, program, trusting);

function filesOf(
  content: string,
  readings?: Readings,
): { readonly filed: Filed<unknown>[]; readonly problems: number } {
  const folder = listFolder(content);
  if ("problem" in folder) throw new Error("there is no record");
  const { files, problems } = readFiles(folder, readings === undefined ? {} : { readings });
  return { filed: Object.values(files).flat(), problems: problems.length };
}

/** A record with short forms, what is in use, a problem, and files that are no plain UTF-8 with LF. */
function written(content: string): string {
  writeRecord(content, 40);
  const at = (name: string): string =>
    join(content, "entries", readdirSync(join(content, "entries")).find((each) => each.endsWith(name)) ?? "");
  const change = (name: string, from: RegExp, to: string): void =>
    writeFileSync(at(name), readFileSync(at(name), "utf8").replace(from, to));
  change("session-0.md", /mixed: (.*)/, "mix: { at: $1 }");
  change("session-3.md", /^date:/, "in_use: { adhesive: everyday, resin: R-0 }\ndate:");
  change("session-6.md", /^title:/m, "titel:");
  writeFileSync(at("session-7.md"), readFileSync(at("session-7.md"), "utf8").replaceAll("\n", "\r\n"));
  writeFileSync(at("session-8.md"), Buffer.from(`\ufeff${readFileSync(at("session-8.md"), "utf8")}`, "utf16le"));
  writeAll(content, { "entries/2001-01-01-odd.md": '---\ndate: 2001-01-01\ntitle: "\\u2028 \\ud800 \\""\n---\n:::\n' });
  return content;
}

function* pathsIn(data: Data, path: Path = []): Generator<Path> {
  yield path;
  yield [...path, "no such key"];
  if (typeof data === "string") return;
  for (const [step, part] of Object.entries(data) as [string, Data][])
    yield* pathsIn(part, [...path, Array.isArray(data) ? Number(step) : step]);
}

/** All that is known of a file, its places too. */
function told({ file, id, source, data, spec, whole, body, mentions, front, ...filed }: Filed<unknown>): unknown {
  const places = [...pathsIn(data)].map((path) => [
    filed.at(path),
    filed.rawAt(path),
    filed.typedAt(path),
    filed.usualFrom(path),
    front.placeOfKey(path),
  ]);
  return { file, id, text: source.text, data, spec, whole, body, mentions, places };
}

let kept: string;
beforeEach(() => {
  kept = join(scratch(), "readings");
});

describe("What files were read as is kept", () => {
  for (const [record, folderOf] of Object.entries({
    "the demo": () => DEMO,
    "a small record": () => SMALL,
    "the record that is attacked": () => ATTACKED,
    "a record with short forms, a problem and other encodings": () => written(join(scratch(), "content")),
  }))
    it(`as it is for every file of ${record}, with every place in it`, () => {
      const content = folderOf();
      const fresh = filesOf(content);
      filesOf(content, open(kept));
      const again = filesOf(content, open(kept));
      expect(again.problems).toBe(fresh.problems);
      expect(again.filed.length).toBe(fresh.filed.length);
      fresh.filed.forEach((filed, at) => {
        // `toStrictEqual` takes an object without a prototype for another: here they must be the same.
        expect(isDeepStrictEqual(told(again.filed[at] as Filed<unknown>), told(filed)), filed.file).toBe(true);
      });
      const readings = open(kept);
      for (const { file, whole } of fresh.filed) {
        const kind = kindOf(file) ?? "entry";
        const found = readings.find(readingKey(kind, readFileSync(join(content, file))));
        expect(found !== undefined, file).toBe(whole);
      }
    });

  it("only of files without a problem, of the same kind, and by the program that runs", () => {
    const bytes = Buffer.from("---\ntitle: Thing\n---\n");
    const reading = {
      bodyLine: 4,
      front: { data: "", spot: { start: 0, end: 0 } },
      spec: { title: "Thing" },
      mentions: [],
    };
    const readings = open(kept);
    readings.keep(readingKey("lot", bytes), reading);
    readings.close();
    expect(open(kept).find(readingKey("lot", bytes))).toEqual(reading);
    expect(open(kept).find(readingKey("trial", bytes))).toBeUndefined();
    expect(open(kept).find(readingKey("lot", Buffer.from("---\ntitle: Think\n---\n")))).toBeUndefined();
    expect(open(kept, "another program").find(readingKey("lot", bytes))).toBeUndefined();
    expect(open(kept, PROGRAM, false).find(readingKey("lot", bytes))).toBeUndefined();
  });

  it("not where JSON would give it back as something else", () => {
    for (const odd of [-0, Number.NaN, Number.POSITIVE_INFINITY, undefined, null, new Map(), new Date(0), 1n]) {
      const readings = open(kept);
      const front = { data: "", spot: { start: 0, end: 0 } };
      readings.keep("odd", { bodyLine: 4, front, spec: { within: [odd] }, mentions: [] });
      readings.close();
      expect(open(kept).find("odd"), String(odd)).toBeUndefined();
    }
  });

  it("for as long as the record has the file, and no longer", () => {
    const content = written(join(scratch(), "content"));
    filesOf(content, open(kept));
    const before = statSync(kept).size;
    const [first = ""] = readdirSync(join(content, "entries"));
    const bytes = readFileSync(join(content, "entries", first));
    writeFileSync(join(content, "entries", first), "---\ndate: 2000-01-03\ntitle: Other\n---\n");
    filesOf(content, open(kept));
    expect(statSync(kept).size).toBeLessThan(before);
    expect(open(kept).find(readingKey("entry", bytes))).toBeUndefined();
  });
});

describe("Of what was kept nothing is believed", () => {
  it("where a byte of it is another, or it is longer or shorter", () => {
    filesOf(SMALL, open(kept));
    const sound = readFileSync(kept);
    const keys = filesOf(SMALL).filed.map(({ file }) =>
      readingKey(kindOf(file) ?? "entry", readFileSync(join(SMALL, file))),
    );
    const found = (): number => keys.filter((key) => open(kept).find(key) !== undefined).length;
    expect(found()).toBe(keys.length);
    const altered = fc.oneof(
      fc.tuple(fc.nat(sound.length - 1), fc.integer({ min: 1, max: 255 })).map(([at, by]) => {
        const bytes = Buffer.from(sound);
        bytes[at] = (bytes[at] ?? 0) ^ by;
        return bytes;
      }),
      fc.nat(sound.length - 1).map((to) => sound.subarray(0, to)),
      fc.uint8Array({ minLength: 1, maxLength: 9 }).map((more) => Buffer.concat([sound, more])),
    );
    fc.assert(
      fc.property(altered, (bytes) => {
        writeFileSync(kept, bytes);
        return found() === 0;
      }),
      { numRuns: 60 },
    );
  });
});

it("A record whose bytes changed anywhere is read by what was kept as it is read without", async () => {
  const content = join(scratch(), "content");
  cpSync(SMALL, content, { recursive: true });
  const files = filesOf(SMALL).filed.map(({ file }) => file);
  const change = fc
    .constantFrom(...files)
    .chain((file) => flipsIn(readFileSync(join(SMALL, file)).length).map((flips) => ({ file, flips })));
  let sound = 0;
  await fc.assert(
    fc.asyncProperty(change, async ({ file, flips }) => {
      const before = readFileSync(join(SMALL, file));
      writeFileSync(join(content, file), flipped(before, flips));
      const fresh = await readRecord(content, { today: TODAY });
      for (const time of ["first", "second"])
        expect(await readRecord(content, { today: TODAY, readings: open(kept) }), time).toStrictEqual(fresh);
      if ("record" in fresh) sound += 1;
      writeFileSync(join(content, file), before);
    }),
    // Some three in a hundred such changes leave a record that is sound.
    { numRuns: 400 },
  );
  expect(sound).toBeGreaterThan(0);
}, 180_000);
