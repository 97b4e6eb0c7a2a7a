/**
 * `npm run mutants [-- --sample 20] [-- --resume] [paths]`: tries the mutants of the reckoning and the evidence and tells who lived. A sample is spread evenly
 * and tried in one go, but for mutants that need a process each.
 * Fails where one lived that is not on the list of survivors.
 */
import { spawn } from "node:child_process";
import { mkdirSync, rmSync, statSync } from "node:fs";
import { availableParallelism, loadavg } from "node:os";
import { parseArgs } from "node:util";
import { instrument } from "./instrument.ts";
import { CACHE, JOURNAL_FILE, type Mutant, type Note, read, write } from "./journal.ts";
import { report } from "./report.ts";
import { isListed } from "./survivors.ts";

/** How long a test may take, ms, and how many of a file are asked of each mutant. */
interface Round {
  readonly longest: number;
  readonly tries?: number;
}

/** Quick tests go first, and few of each file; those that take longer than the last are never asked. */
const ROUNDS: readonly Round[] = [{ longest: 15, tries: 6 }, { longest: 15 }, { longest: 100 }, { longest: 1500 }];
/** Tests that go through so much that a sample would take minutes: the first are asked only of what lives after all others, the rest not at all, and a sample has nothing of what they are for. */
const SLOW = ["quarantine", "recall", "removal"].map((name) => `tests/evidence/${name}.test.ts`);
/** They reckon whole records: a sample asks them only of what lives after all others. */
const ATTACKS = "tests/attacks/attacks.test.ts";
const UNASKED = ["fisher", "forecast", "tolerance-factor", "trial-power"].map(
  (name) => `tests/reckoning/${name}.test.ts`,
);
const UNSAMPLED =
  /\/(?:binomial-coefficient|drawn-weeks|factorials|finish-week|fisher-exact|fisher-table|forecast-backtest|foretold|least-shown-effect|local-time|tolerance-factor|trial-power|work-ahead)\.ts$/;
const LONGEST_OF_SAMPLE_MS = [200, 6000];
const LONGEST_AFRESH_MS = 300;
const HANGS_AFTER_MS = 60_000;
const LOOKS_EVERY_MS = 5000;
/** These keep what they reckoned for as long as the process lives, so a mutant can hide behind it. */
const REMEMBERING = ["src/reckoning/time/calendar.ts", "src/evidence/amended.ts"];

const { values, positionals } = parseArgs({
  options: { sample: { type: "string" }, resume: { type: "boolean", default: false } },
  allowPositionals: true,
});

/** Runs vitest. It has hung, and is stopped, where a mutant is being tried and nothing was written down for too long, counted by what the machine has to do. */
function vitest(
  env: Record<string, string>,
  more: readonly string[] = [],
): Promise<{ code: number | null; hung: boolean }> {
  return new Promise((resolve) => {
    const args = [
      "node_modules/vitest/vitest.mjs",
      "run",
      "--config",
      "tests/mutation/vitest.config.ts",
      "--reporter=dot",
      ...more,
    ];
    const child = spawn(process.execPath, args, {
      env: { ...process.env, CI: "1", NODE_NO_WARNINGS: "1", ...env },
      stdio: ["ignore", "ignore", env["MUTANTS_ONE"] === undefined ? "inherit" : "ignore"],
      detached: true,
    });
    let hung = false;
    const start = Date.now();
    const watch = setInterval(() => {
      const share = Math.max(1, (loadavg()[0] ?? 0) / availableParallelism());
      if (
        Date.now() - Math.max(start, statSync(JOURNAL_FILE).mtimeMs) < HANGS_AFTER_MS * share ||
        child.pid === undefined
      )
        return;
      if (!["trying", "afresh"].includes(read().at(-1)?.note ?? "")) return;
      hung = true;
      process.kill(-child.pid, "SIGKILL");
    }, LOOKS_EVERY_MS);
    child.on("close", (code) => {
      clearInterval(watch);
      resolve({ code, hung });
    });
  });
}

async function tryAll({ longest, tries }: Round, but: readonly string[] = []): Promise<void> {
  for (;;) {
    const before = read().length;
    const { code, hung } = await vitest(
      { MUTANTS_LONGEST_TEST: String(longest), MUTANTS_TRIES: String(tries ?? Number.POSITIVE_INFINITY) },
      but.map((file) => `--exclude=${file}`),
    );
    const last = read().at(-1);
    if (hung && last?.note === "trying") write({ note: "timed out", id: last.id, by: last.test });
    else if (code !== 0) throw new Error(`the tests did not run: ${String(code)}`);
    if (
      !hung &&
      !read()
        .slice(before)
        .some((one) => one.note === "remembered")
    )
      return;
  }
}

/**
 * Mutants whose code ran before any test, or that may hide behind something remembered: a process for each. First it is
 * asked the files that noticed most others of the same source.
 */
async function tryAfresh(all: readonly Mutant[]): Promise<void> {
  for (const { id, file } of needingProcess(all)) {
    const notes = read();
    const files = [
      ...new Set(notes.flatMap((one) => (one.note === "covered" && one.ids.includes(id) ? [one.file] : []))),
    ];
    write({ note: "afresh", id, by: files.join(" ") });
    if (files.length === 0) continue;
    const of = noticing(notes, new Set(all.flatMap((one) => (one.file === file ? [one.id] : []))));
    files.sort((a, b) => (of.get(b) ?? 0) - (of.get(a) ?? 0));
    const env = { MUTANTS_ONE: id, MUTANTS_ORDER: files.join(" "), MUTANTS_LONGEST_TEST: String(LONGEST_AFRESH_MS) };
    const { code, hung } = await vitest(env, files);
    if (hung) write({ note: "timed out", id, by: "afresh" });
    else if (code !== 0) write({ note: "killed", id, by: "afresh" });
  }
}

/** How many of these mutants each test file has noticed. */
function noticing(notes: readonly Note[], ids: ReadonlySet<string>): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const one of notes) {
    if (one.note !== "killed" || !ids.has(one.id)) continue;
    const file = one.by.slice(0, one.by.indexOf(": "));
    times.set(file, (times.get(file) ?? 0) + 1);
  }
  return times;
}

const killed = (): Set<string> =>
  new Set(read().flatMap((one) => (one.note === "killed" || one.note === "timed out" ? [one.id] : [])));

function needingProcess(mutants: readonly Mutant[]): Mutant[] {
  const dead = killed();
  const apart = new Set(
    read().flatMap((one) =>
      one.note === "covered" && one.onImport ? one.ids : one.note === "remembered" ? [one.id] : [],
    ),
  );
  return mutants.filter(({ id, file }) => !dead.has(id) && (apart.has(id) || REMEMBERING.includes(file)));
}

/** Mutants that need a process each are left out. */
async function trySample(mutants: readonly Mutant[]): Promise<Mutant[]> {
  const [quick = 0, slow = 0] = LONGEST_OF_SAMPLE_MS;
  await tryAll({ longest: quick }, [...SLOW, ...UNASKED, ATTACKS]);
  const left = new Set(needingProcess(mutants));
  const tried = mutants.filter((one) => !left.has(one));
  const dead = killed();
  if (!tried.every(({ id }) => dead.has(id))) await tryAll({ longest: slow }, UNASKED);
  return tried;
}

/** Those that need a process each are many, and die of quick tests: the longest tests come after them. */
async function tryWhole(mutants: readonly Mutant[]): Promise<readonly Mutant[]> {
  for (const round of ROUNDS.slice(0, -1)) await tryAll(round, SLOW);
  await tryAfresh(mutants);
  for (const round of ROUNDS.slice(-1)) await tryAll(round, SLOW);
  return mutants;
}

/** As many as asked, spread evenly, none of them listed as a survivor. */
function sampleOf(mutants: readonly Mutant[], n: number): Mutant[] {
  const known = isListed();
  const open = mutants.filter((one) => !known(one) && !UNSAMPLED.test(one.file));
  return open.filter((_, i) => Math.floor((i * n) / open.length) !== Math.floor(((i - 1) * n) / open.length));
}

mkdirSync(CACHE, { recursive: true });
if (!values.resume) rmSync(JOURNAL_FILE, { force: true });
const all = await instrument(positionals.length > 0 ? positionals : ["src/"]);
const isSample = values.sample !== undefined;
const chosen = isSample ? sampleOf(all, Number(values.sample)) : all;
if (!values.resume) write({ note: "chosen", ids: chosen.map(({ id }) => id) });
const tried = await (isSample ? trySample(chosen) : tryWhole(chosen));
process.exitCode = report(tried, isSample) ? 0 : 1;
