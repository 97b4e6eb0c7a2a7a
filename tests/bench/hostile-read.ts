/** `tsx tests/bench/hostile-read.ts`: for each generator the seconds of processor time that reading takes, at three sizes up to its limit and at ten times it, as JSON. */
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { readRecord } from "../../src/record/read.ts";
import { readDrawing } from "../../src/publish/pictures/drawing.ts";
import { DRAWINGS, GENERATORS, type Generator } from "./hostile.mjs";

const SMALL = new URL("../record/small", import.meta.url).pathname;
const SHARES = [1 / 4, 1 / 2, 1];
const ROUNDS = 3;

async function seconds({ file }: Generator, size: number): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "scarfline-hostile-"));
  cpSync(SMALL, folder, { recursive: true });
  const { path, text } = file(size);
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
  try {
    return await best(() => readRecord(folder, { today: "2030-01-01" }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A drawing is read when pictures are made ready, after the record. */
async function drawnSeconds({ file }: Generator, size: number): Promise<number> {
  const bytes = Buffer.from(file(size).text);
  return best(() => readDrawing(bytes));
}

async function best(work: () => unknown): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    globalThis.gc?.();
    const before = process.cpuUsage();
    await work();
    const { user, system } = process.cpuUsage(before);
    times.push((user + system) / 1e6);
  }
  return Math.min(...times);
}

const results = [];
for (const generator of [...GENERATORS, ...DRAWINGS]) {
  const sizes = [
    ...SHARES.map((share) => Math.max(2, Math.floor(generator.most * share))),
    ...(generator.isBound ? [generator.most * 10] : []),
  ];
  const cpu: number[] = [];
  for (const size of generator.name === "a name of a file" ? sizes.slice(0, 3) : sizes)
    cpu.push(await (DRAWINGS.includes(generator) ? drawnSeconds : seconds)(generator, size));
  results.push({ name: generator.name, unit: generator.unit, most: generator.most, sizes, cpu });
}
process.stdout.write(JSON.stringify(results));
