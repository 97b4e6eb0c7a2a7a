/** Runs programs and notes what they took. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));

/** A program of Node's: seconds on the clock, seconds of processor time (which other programs on the machine disturb less), most MB of memory, whether it can decode pictures. */
export function measuredNode(words, cwd) {
  const note = join(cwd, "usage.json");
  const seconds = timed(() =>
    execFileSync(process.execPath, ["--import", join(root, "tests/bench/usage.mjs"), ...words], {
      cwd,
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, BENCH_USAGE: note },
    }),
  );
  const { cpu, memory, decodes } = JSON.parse(readFileSync(note, "utf8"));
  return { seconds, cpu: cpu / 1000, memory, decodes };
}

/** Any other program; its memory is not known. `words` may hold several command lines, which then run one after another. */
export function measuredProgram(lines, cwd) {
  let cpu = 0;
  const seconds = timed(() => {
    for (const line of lines) {
      const told = execFileSync(
        "bash",
        ["-c", 'TIMEFORMAT="%U %S"; { time "$@" >&2 2>/dev/null; } 2>&1', "bash", ...line],
        { cwd, stdio: ["ignore", "pipe", "inherit"], encoding: "utf8" },
      );
      cpu += told
        .trim()
        .split(" ")
        .reduce((sum, part) => sum + Number(part), 0);
    }
  });
  return { seconds, cpu };
}

/** Seconds of processor time to reckon what a record proves, median of the rounds; how many findings and rows of climate. */
export function measuredReckoning(content, rounds) {
  const words = ["--expose-gc", "--import", "tsx", join(root, "tests/bench/reckon.ts"), content, String(rounds)];
  return JSON.parse(
    execFileSync(process.execPath, words, { cwd: root, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] }),
  );
}

function timed(work) {
  const began = performance.now();
  work();
  return (performance.now() - began) / 1000;
}

export function median(values) {
  const sorted = values.filter((value) => value !== undefined).sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

/** Medians of what several runs took. */
export function medians(runs) {
  const of = (what) => median(runs.map((run) => run[what]));
  return { seconds: of("seconds"), cpu: of("cpu"), memory: of("memory") };
}

/** Runs each contestant as often as there are rounds, by turns: medians of each, and its runs. `run` is given the number of the round. */
export function byTurns(contestants, rounds) {
  const runs = new Map(contestants.map(({ name }) => [name, []]));
  for (let round = 0; round < rounds; round += 1)
    for (const { name, run } of contestants) runs.get(name).push(run(round));
  return new Map([...runs].map(([name, all]) => [name, { ...medians(all), runs: all }]));
}

/** A folder that is gone after the work. None in it is removed before the end: some disks are slow to make files just after others were removed. */
export async function inFolder(dir, work) {
  const folder = mkdtempSync(join(dir ?? tmpdir(), "scarfline-bench-"));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
