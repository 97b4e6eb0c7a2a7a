/**
 * A runner for vitest: each test runs once as it is, then once for every living mutant that it reaches.
 * In a process for one mutant, which is on from the start, each test runs once.
 */
import { type RunnerTestCase, TestRunner } from "vitest";
import { read, write } from "./journal.ts";

/** Stryker's name for what the switches look at. */
interface Switches {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  /** Of this process, µs: beyond it any switch throws. */
  processorLimit?: number;
  mutantCoverage?: { static: Record<string, number>; perTest: Record<string, Record<string, number>> };
}

const switches = ((globalThis as { __stryker__?: Switches }).__stryker__ ??= {});
const LONGEST_MS = Number(process.env["MUTANTS_LONGEST_TEST"]);
/** How many tests of a file are asked of a mutant in this round: what they do not notice is left for the next. */
const MOST_TRIES = Number(process.env["MUTANTS_TRIES"] ?? Number.POSITIVE_INFINITY);
const ONE = process.env["MUTANTS_ONE"];
const notes = read();
const chosen = new Set(notes.flatMap((one) => (one.note === "chosen" ? one.ids : [])));
const settled = new Set(
  notes.flatMap((one) =>
    one.note === "killed" || one.note === "timed out" || one.note === "remembered" ? [one.id] : [],
  ),
);
const done = new Set(ONE ? [] : notes.flatMap((one) => (one.note === "done" ? [one.test] : [])));
const tooLong = new Set(notes.flatMap((one) => (one.note === "took" && one.ms > LONGEST_MS ? [one.test] : [])));

export default class TryMutants extends TestRunner {
  #reached = new Set<string>();
  #spoilt = false;
  #tries = new Map<string, number>();

  async runTask(test: RunnerTestCase): Promise<void> {
    const name = `${test.file.name}: ${test.fullTestName}`;
    if (this.#spoilt || done.has(name) || tooLong.has(name)) return;
    if (ONE) return this.#withOne(test, name);
    this.#noteImport(test.file.name);
    const { reached, micros } = await this.#unmutated(test, name);
    if (micros / 1000 > LONGEST_MS) return;
    let isLeft = false;
    for (const id of reached) {
      if (!chosen.has(id) || settled.has(id)) continue;
      const tries = this.#tries.get(id) ?? 0;
      this.#tries.set(id, tries + 1);
      if (tries >= MOST_TRIES) {
        isLeft = true;
        continue;
      }
      write({ note: "trying", test: name, id });
      const outcome = await tried(test, id, micros);
      if (outcome === "passed") continue;
      settled.add(id);
      this.#spoilt = (await tried(test)) !== "passed";
      write({ note: this.#spoilt ? "remembered" : outcome, id, by: name });
      if (this.#spoilt) return;
    }
    if (!isLeft) write({ note: "done", test: name });
  }

  async #withOne(test: RunnerTestCase, name: string): Promise<void> {
    write({ note: "trying", test: name, id: ONE ?? "" });
    await TestRunner.getTestFn(test)();
  }

  /** What ran while the file was read, before any test: such mutants need a process of their own. */
  #noteImport(file: string): void {
    if (this.#reached.size > 0) return;
    const ids = Object.keys(switches.mutantCoverage?.static ?? {});
    this.#reached.add("");
    write({ note: "covered", file, ids, onImport: true });
  }

  async #unmutated(test: RunnerTestCase, name: string): Promise<{ reached: string[]; micros: number }> {
    switches.currentTestId = name;
    const start = process.cpuUsage();
    if ((await tried(test)) !== "passed") throw new Error(`${name} fails without any mutant`);
    const micros = process.cpuUsage(start).user;
    switches.currentTestId = undefined;
    const reached = Object.keys(switches.mutantCoverage?.perTest[name] ?? {});
    const fresh = reached.filter((id) => !this.#reached.has(id));
    fresh.forEach((id) => this.#reached.add(id));
    write({ note: "covered", file: test.file.name, ids: fresh, onImport: false });
    write({ note: "took", test: name, ms: micros / 1000 });
    return { reached, micros };
  }
}

/** How the test ends with this mutant; one that takes far longer than without it is stopped by the switches. */
async function tried(
  test: RunnerTestCase,
  id?: string,
  micros = Number.POSITIVE_INFINITY,
): Promise<"passed" | "killed" | "timed out"> {
  const limit = process.cpuUsage().user + 500_000 + 20 * micros;
  Object.assign(switches, { activeMutant: id, processorLimit: limit });
  (test as { promises?: unknown }).promises = undefined;
  try {
    await TestRunner.getTestFn(test)();
    return "passed";
  } catch {
    return process.cpuUsage().user > limit ? "timed out" : "killed";
  } finally {
    Object.assign(switches, { activeMutant: undefined, processorLimit: Number.POSITIVE_INFINITY });
  }
}
