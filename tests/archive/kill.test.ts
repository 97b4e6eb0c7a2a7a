import { execFileSync, spawn, spawnSync } from "node:child_process";
import { cpSync, existsSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, describe, expect, it } from "vitest";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";
import { command } from "../cli/command.ts";
import { found, tool } from "./make.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;
const PRELOADED = new URL("kill-at.mjs", import.meta.url).href;
/** Of each command; `npm run kills` has 200 in all. */
const KILLS = Number(process.env["SCARFLINE_KILLS"] ?? "10");
/** Of all commands: how many ran on until they were killed. */
let all = 0;
afterAll(() => process.stdout.write(`${all} kills of a command that still ran\n`));
const LATEST = { "entries/2021-03-12-new.md": "---\ndate: 2021-03-12\ntitle: A new day\nassembly: fin\n---\nNew.\n" };

function run(folder: string, ...words: string[]): number {
  const began = performance.now();
  execFileSync(process.execPath, [COMMAND, ...words], { cwd: folder, stdio: "ignore" });
  return performance.now() - began;
}

/** What a killed command was still writing: the next one takes it away. */
const isLeft = (path: string): boolean => path.includes("scarfline-new");

/** How long a command takes when nothing else holds it up, ms: the least of three. */
const quickest = (folder: string, ...words: string[]): number =>
  Math.min(...[1, 2, 3].map(() => run(folder, ...words)));

/** How many steps on the disk a command has. */
function stepsOf(folder: string, words: readonly string[], path = process.env["PATH"]): number {
  const steps = join(folder, ".steps");
  execFileSync(process.execPath, ["--import", PRELOADED, COMMAND, ...words], {
    cwd: folder,
    env: { ...process.env, PATH: path, STEPS_TO: steps },
    stdio: "ignore",
  });
  const count = Number(readFileSync(steps, "utf8"));
  rmSync(steps);
  return count;
}

/** Runs a command that kills itself at a step; whether it came so far. `path` is where it finds the system's tools. */
function killedAt(folder: string, step: number, words: readonly string[], path = process.env["PATH"]): boolean {
  const { status, signal } = spawnSync(process.execPath, ["--import", PRELOADED, COMMAND, ...words], {
    cwd: folder,
    env: { ...process.env, PATH: path, KILL_AT: String(step) },
    stdio: "ignore",
  });
  expect(signal === "SIGKILL" || status === 0).toBe(true);
  if (signal === "SIGKILL") all += 1;
  return signal === "SIGKILL";
}

/** Kills a command after so many milliseconds, as a power cut would; whether it had still been running. */
async function killed(folder: string, after: number, ...words: string[]): Promise<boolean> {
  const child = spawn(process.execPath, [COMMAND, ...words], { cwd: folder, stdio: "ignore" });
  const ended = new Promise((done) => child.once("exit", (_code, signal) => done(signal === "SIGKILL")));
  await pause(after);
  child.kill("SIGKILL");
  const isKilled = (await ended) === true;
  if (isKilled) all += 1;
  return isKilled;
}

/** Instants spread over the time that the command takes when it is let alone, in no order. */
function instants(whole: number): number[] {
  return Array.from(
    { length: KILLS },
    (_, index) => whole * (0.15 + (0.9 * ((index * 7) % KILLS)) / KILLS) + 30 * Math.random(),
  );
}

async function madeRecord(folder: string): Promise<void> {
  writeAll(join(folder, "content"), await smallRecord());
}

it(`A build killed at any of ${KILLS} instants leaves the former site or the new one`, {
  timeout: KILLS * 20_000,
}, async () => {
  const folder = scratch();
  await madeRecord(folder);
  run(folder, "build", "--fresh");
  const former = contentOf(join(folder, "site"));
  writeAll(join(folder, "content"), LATEST);
  const whole = quickest(folder, "build", "--fresh", "--out", "other");
  const renewed = contentOf(join(folder, "other"));
  let cut = 0;
  for (const after of instants(whole)) {
    if (await killed(folder, after, "build", "--fresh")) cut += 1;
    expect([former, renewed]).toContainEqual(contentOf(join(folder, "site")));
  }
  run(folder, "build", "--fresh");
  expect(contentOf(join(folder, "site"))).toEqual(renewed);
  expect(readdirSync(folder).sort()).toEqual([".cache", "content", "other", "site"]);
  expect(cut).toBeGreaterThan(KILLS / 3);
});

/** Those in which the site takes its place, and those in which it is noted how it and its pages were made. */
const LAST_STEPS = 20;

describe("A build killed before and after each of its last steps on the disk", { timeout: 600_000 }, () => {
  /** A site of a record, the site that the next build would make of it now, and how many steps that has. */
  async function changed(
    path?: string,
  ): Promise<{ folder: string; former: Map<string, string>; renewed: Map<string, string>; steps: number }> {
    const folder = scratch();
    await madeRecord(folder);
    run(folder, "build", "--fresh");
    const former = contentOf(join(folder, "site"));
    writeAll(join(folder, "content"), LATEST);
    cpSync(join(folder, "site"), join(folder, "other"), { recursive: true });
    return {
      folder,
      former,
      steps: stepsOf(folder, ["build", "--fresh", "--out", "other"], path),
      renewed: contentOf(join(folder, "other")),
    };
  }

  /** Without what was left beside, so that the next build has as many steps. */
  function putBack(folder: string, site: ReadonlyMap<string, string>): void {
    for (const name of readdirSync(folder).filter((each) => each === "site" || each.startsWith(".site.")))
      rmSync(join(folder, name), { recursive: true });
    writeAll(
      join(folder, "site"),
      Object.fromEntries([...site].map(([path, bytes]) => [path, Buffer.from(bytes, "latin1")])),
    );
  }

  it("leaves the former site or the new one in its place at every instant", async () => {
    const { folder, former, renewed, steps } = await changed();
    const after = { former: 0, renewed: 0 };
    for (let step = steps; step > steps - LAST_STEPS; step -= 1) {
      if (!killedAt(folder, step, ["build", "--fresh"])) continue;
      const site = contentOf(join(folder, "site"));
      expect([former, renewed], `killed at step ${step}`).toContainEqual(site);
      after[
        site.size === former.size && site.get("entries.html") === former.get("entries.html") ? "former" : "renewed"
      ] += 1;
      putBack(folder, former);
    }
    run(folder, "build", "--fresh");
    expect(readdirSync(folder).sort()).toEqual([".cache", "content", "other", "site"]);
    // Steps on both sides of the one in which the two change places.
    expect(Math.min(after.former, after.renewed)).toBeGreaterThan(0);
  });

  it("leaves it there or beside, where no tool can let two folders change places; the next build brings it back, of a record with problems too", async () => {
    const none = scratch();
    const { folder, former, renewed, steps } = await changed(none);
    let beside = 0;
    for (let step = steps; step > steps - LAST_STEPS; step -= 1) {
      if (!killedAt(folder, step, ["build", "--fresh"], none)) continue;
      if (!existsSync(join(folder, "site"))) {
        beside += 1;
        const [name = ""] = readdirSync(folder).filter((each) => each.startsWith(".site.scarfline-former-"));
        expect(contentOf(join(folder, name))).toEqual(former);
        writeAll(join(folder, "content"), { "entries/2021-03-13-problem.md": "---\n---\n" });
        expect(tool(process.execPath, [COMMAND, "build", "--fresh"], folder).code).toBe(1);
        rmSync(join(folder, "content/entries/2021-03-13-problem.md"));
      }
      expect([former, renewed], `killed at step ${step}`).toContainEqual(contentOf(join(folder, "site")));
      putBack(folder, former);
    }
    // After the one rename and before the other.
    expect(beside).toBe(2);
  });
});

it.each([[[]], [["--serialise", "zip"]], [["--serialise", "tar.gz", "--split", "400 kB"]]])(
  `A bag (%s) killed at any of its share of ${KILLS} instants is there whole or not at all, and a former one stands`,
  { timeout: KILLS * 20_000 },
  async (words) => {
    const folder = scratch();
    const archive = join(folder, "archive");
    await madeRecord(folder);
    run(folder, "bag", ...words);
    const former = contentOf(archive);
    writeAll(join(folder, "content"), LATEST);
    const whole = run(folder, "bag", ...words, "--out", "other");
    const renewed = new Map([...former, ...contentOf(join(folder, "other"))]);
    let cut = 0;
    for (const after of instants(whole).filter((_, index) => index % 3 === 0 || KILLS > 20)) {
      if (await killed(folder, after, "bag", ...words)) cut += 1;
      const seen = new Map([...contentOf(archive)].filter(([path]) => !path.startsWith(".")));
      expect([former, renewed]).toContainEqual(seen);
      for (const name of readdirSync(archive).filter((each) => !each.startsWith(".")))
        expect(await found(join(archive, name))).toEqual([]);
      expect(readdirSync(archive).filter((each) => each.startsWith(".")).length).toBeLessThanOrEqual(1);
    }
    run(folder, "bag", ...words);
    expect(contentOf(archive)).toEqual(renewed);
    expect(readdirSync(archive)).toHaveLength(2);
    expect(cut).toBeGreaterThan(0);
  },
);

it(`A seal killed at any of ${KILLS} instants is set or not, and the chain holds`, {
  timeout: KILLS * 20_000,
}, async () => {
  const folder = scratch();
  const content = join(folder, "content");
  await madeRecord(folder);
  run(folder, "seal", "--date", "2021-04-01");
  const whole = quickest(folder, "seal", "--date", "2021-04-01");
  let lines = contentOf(content).get("seals.txt") ?? "";
  let cut = 0;
  for (const [index, after] of instants(whole).entries()) {
    writeAll(content, { "papers/counted.txt": `${index}` });
    const before = contentOf(content);
    if (await killed(folder, after, "seal", "--date", "2021-04-01")) cut += 1;
    const now = contentOf(content);
    expect(now.get("seals.txt")?.startsWith(lines)).toBe(true);
    expect((now.get("seals.txt") ?? "").slice(lines.length)).toMatch(
      /^$|^2021-04-01 [0-9a-f]{64} [0-9a-f]{64} 10 seals\/2021-04-01-\d+\.sha256 form=2 rules=2\n$/,
    );
    lines = now.get("seals.txt") ?? "";
    for (const [path, bytes] of before)
      if (path !== "seals.txt" && !path.startsWith("seals/") && !isLeft(path)) expect(now.get(path), path).toBe(bytes);
    for (const [, manifest] of lines.matchAll(/ (seals\/\S+)\n/g))
      expect(existsSync(join(content, manifest ?? ""))).toBe(true);
    expect((await command(["verify", content])).code).toBeLessThanOrEqual(
      now.get("seals.txt") === before.get("seals.txt") ? 1 : 0,
    );
  }
  writeAll(content, { "papers/counted.txt": "at last" });
  run(folder, "seal", "--date", "2021-04-01");
  expect(await command(["verify", content])).toMatchObject({
    code: 0,
    out: expect.not.stringContaining("no seal in seals.txt names it"),
  });
  expect(Object.keys(Object.fromEntries(contentOf(content))).filter(isLeft)).toEqual([]);
  expect(cut).toBeGreaterThan(KILLS / 3);
});

it("A seal killed before and after each of its steps on the disk is set or not, and can be set again", {
  timeout: 600_000,
}, async () => {
  const folder = scratch();
  const content = join(folder, "content");
  await madeRecord(folder);
  const words = ["seal", "--date", "2021-04-01"];
  run(folder, ...words);
  writeAll(content, { "papers/counted.txt": "first" });
  const steps = stepsOf(folder, words);
  let kills = 0;
  for (let step = 1; step <= steps; step += 1) {
    const before = contentOf(content).get("seals.txt") ?? "";
    writeAll(content, { "papers/counted.txt": `${step}` });
    if (killedAt(folder, step, words)) kills += 1;
    const added = (contentOf(content).get("seals.txt") ?? "").slice(before.length);
    expect(contentOf(content).get("seals.txt")?.startsWith(before)).toBe(true);
    expect((await command(["verify", content])).code, `killed at step ${step}`).toBe(added === "" ? 1 : 0);
    expect((await command([...words, "--content", content])).code).toBe(0);
    expect(await command(["verify", content]), `after step ${step}`).toMatchObject({
      code: 0,
      out: expect.not.stringContaining("no seal in seals.txt"),
    });
  }
  expect(kills).toBeGreaterThan(15);
});

it("A bag killed at its last steps on the disk, and at some of those before, is there whole or not at all", {
  timeout: 600_000,
}, async () => {
  const folder = scratch();
  const archive = join(folder, "archive");
  await madeRecord(folder);
  run(folder, "build", "--fresh");
  const steps = stepsOf(folder, ["bag", "--out", "other"]);
  const after = { whole: 0, none: 0 };
  const whole = contentOf(join(folder, "other"));
  const last = Array.from({ length: 14 }, (_, index) => steps - index);
  for (const step of [...Array.from({ length: 8 }, (_, index) => Math.ceil((steps * (index + 1)) / 9)), ...last]) {
    const isKilled = killedAt(folder, step, ["bag"]);
    const names = readdirSync(archive, { withFileTypes: true }).filter(({ name }) => !name.startsWith("."));
    if (names.length > 0)
      expect(
        new Map([...contentOf(archive)].filter(([path]) => !path.startsWith("."))),
        `killed at step ${step}`,
      ).toEqual(whole);
    if (isKilled) after[names.length > 0 ? "whole" : "none"] += 1;
    rmSync(join(archive, "stub-2021-03-09"), { recursive: true, force: true });
  }
  run(folder, "bag");
  expect(contentOf(archive)).toEqual(whole);
  expect(readdirSync(archive)).toEqual(["stub-2021-03-09"]);
  // Steps on both sides of the one that puts it into place.
  expect(Math.min(after.whole, after.none)).toBeGreaterThan(0);
});
