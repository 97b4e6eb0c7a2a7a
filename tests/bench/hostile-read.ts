/** `tsx tests/bench/hostile-read.ts`: for each generator the seconds of processor time that reading takes, at three sizes up to its limit and at ten times it, as JSON. */
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { readRecord } from "../../src/record/read.ts";
import { GENERATORS, type Generator } from "./hostile.mjs";

const SMALL = new URL("../record/small", import.meta.url).pathname;
const SHARES = [1 / 4, 1 / 2, 1];
const ROUNDS = 3;

async function seconds({ file }: Generator, size: number): Promise<{ cpu: number; told: string }> {
  const folder = mkdtempSync(join(tmpdir(), "scarfline-hostile-"));
  cpSync(SMALL, folder, { recursive: true });
  const { path, text } = file(size);
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
  try {
    const times: number[] = [];
    let told = "";
    for (let round = 0; round < ROUNDS; round += 1) {
      globalThis.gc?.();
      const before = process.cpuUsage();
      const read = await readRecord(folder, { today: "2030-01-01" });
      const { user, system } = process.cpuUsage(before);
      times.push((user + system) / 1e6);
      told = "record" in read ? "" : [...new Set(read.problems.map(({ code }) => code))].join(" ");
    }
    return { cpu: Math.min(...times), told };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const results = [];
for (const generator of GENERATORS) {
  const sizes = [
    ...SHARES.map((share) => Math.max(2, Math.floor(generator.most * share))),
    ...(generator.isBound ? [generator.most * 10] : []),
  ];
  const cpu: number[] = [];
  for (const size of generator.name === "a name of a file" ? sizes.slice(0, 3) : sizes)
    cpu.push((await seconds(generator, size)).cpu);
  results.push({ name: generator.name, unit: generator.unit, most: generator.most, sizes, cpu });
}
process.stdout.write(JSON.stringify(results));
