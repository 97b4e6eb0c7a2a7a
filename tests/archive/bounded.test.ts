import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { closeSync, createWriteStream, mkdirSync, openSync, statSync, writeSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { expect, it } from "vitest";
import { ZipFile } from "yazl";
import { scratchFolders } from "../publish/scratch.ts";
import { bagIn, hex } from "./make.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

interface Verified {
  readonly code: number | null;
  readonly err: string;
  readonly out: string;
  /** The most memory the process had, in MB. */
  readonly peak: number;
}

/** Verifies in a process of its own, by the bundled command. */
function verified(path: string): Verified {
  const watch = `process.on("exit", () => process.stderr.write("PEAK " + process.resourceUsage().maxRSS + "\\n"));`;
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["--import", `data:text/javascript,${encodeURIComponent(watch)}`, COMMAND, "verify", path],
    { encoding: "utf8", maxBuffer: 1e8 },
  );
  const [, peak = "NaN"] = /PEAK (\d+)/.exec(stderr) ?? [];
  return { code: status, err: stderr.replace(/PEAK \d+\n/, ""), out: stdout, peak: Number(peak) / 1024 };
}

function writeMany(path: string, chunk: string, times: number): void {
  const handle = openSync(path, "a");
  for (let index = 0; index < times; index += 1) writeSync(handle, chunk);
  closeSync(handle);
}

const bag = (): string => bagIn(join(scratch(), "bag"), { files: { "data/a.txt": "a" } });
/** MB, beside what the command takes for a bag of one small file: room for a collector of garbage that is in no hurry. */
const BOUND = 150;

it("A manifest of 200 MB and some two million lines is verified in little more memory than a small one", {
  timeout: 300_000,
}, () => {
  const small = verified(bag());
  expect(small.code).toBe(0);
  const path = bag();
  const lines = Array.from(
    { length: 10_000 },
    (_, index) => `${hex("sha256", "x")}  data/no-such-file-${index}-${"n".repeat(10)}.txt\n`,
  ).join("");
  writeMany(join(path, "manifest-sha256.txt"), lines, Math.ceil(200e6 / lines.length));
  const { code, err, out, peak } = verified(path);
  expect(code).toBe(1);
  expect(err.split("\n").filter((line) => line.includes("missing: manifest-sha256.txt"))).toHaveLength(100);
  expect(out).toMatch(/^and \d{7} more like these \(missing\)$/m);
  expect(peak).toBeLessThan(small.peak + BOUND);
});

it("A line that does not end is not read to its end", { timeout: 300_000 }, () => {
  const path = bag();
  writeMany(join(path, "manifest-sha256.txt"), "0".repeat(1_000_000), 300);
  const { code, err, peak } = verified(path);
  expect({ code, err }).toEqual({
    code: 1,
    err: "manifest-sha256.txt:2: this file has a line of more than 32768 letters; the rest of it was not read\n",
  });
  expect(peak).toBeLessThan(verified(bag()).peak + BOUND);
});

it("A bag that says too much of itself is not read to its end", { timeout: 300_000 }, () => {
  const path = bag();
  writeMany(join(path, "bag-info.txt"), `Note: ${"n".repeat(30_000)}\n ${"m".repeat(30_000)}\n`, 4000);
  const { code, err, peak } = verified(path);
  expect({ code, err }).toEqual({
    code: 1,
    err: "bag-info.txt: has more than 1000000 letters; the rest was not read\n",
  });
  expect(peak).toBeLessThan(verified(bag()).peak + BOUND);
});

it("A zip of 1 MB that unpacks to 1 GB streams", { timeout: 300_000 }, async () => {
  const path = join(scratch(), "bag.zip");
  const zip = new ZipFile();
  const zeros = (): Readable => Readable.from(Array.from({ length: 1000 }, () => Buffer.alloc(1_000_000)));
  const digest = createHash("sha256");
  for await (const chunk of zeros()) digest.update(chunk as Buffer);
  zip.addBuffer(Buffer.from("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"), "bag/bagit.txt");
  zip.addReadStream(zeros(), "bag/data/zeros");
  zip.addBuffer(Buffer.from(`${digest.digest("hex")}  data/zeros\n`), "bag/manifest-sha256.txt");
  zip.end();
  await pipeline(zip.outputStream, createWriteStream(path));
  expect(statSync(path).size).toBeLessThan(2e6);
  const { code, err, peak } = verified(path);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(peak).toBeLessThan(verified(bag()).peak + BOUND);
});

it("A file of 1 GB streams, in a folder and in a tar", { timeout: 300_000 }, () => {
  const folder = scratch();
  const path = bagIn(join(folder, "bag"), { files: { "data/a.txt": "a" } });
  mkdirSync(join(path, "data/films"));
  writeMany(join(path, "data/films/long.mp4"), "\u0001".repeat(1_000_000), 1000);
  writeMany(
    join(path, "manifest-sha256.txt"),
    execFileSync("sha256sum", ["data/films/long.mp4"], { cwd: path, encoding: "utf8" }),
    1,
  );
  const small = verified(bag());
  const whole = verified(path);
  expect(whole).toMatchObject({ code: 0, err: "" });
  expect(whole.peak).toBeLessThan(small.peak + BOUND);
  execFileSync("tar", ["cf", "bag.tar", "bag"], { cwd: folder });
  const packed = verified(join(folder, "bag.tar"));
  expect(packed).toMatchObject({ code: 0, err: "" });
  expect(packed.peak).toBeLessThan(small.peak + BOUND);
});
