/** A few of the mutants, always the same of the same source, spread over all files. All of them: `npm run mutants`. */
import { spawnSync } from "node:child_process";
import { expect, it } from "vitest";

/** %. The sample leaves out what is listed as living, and new rules may have a few that live until the next whole run of `npm run mutants`. */
const LEAST = 90;

it("Of some sixty mutants of the reckoning and the evidence nine in ten and more are noticed", () => {
  const run = spawnSync(process.execPath, ["--import", "tsx", "tests/mutation/run.ts", "--sample", "60"], {
    env: { ...process.env, MUTANTS_CACHE: ".cache/mutation-sample" },
    encoding: "utf8",
  });
  const [, mutants = "0", share = "0"] = /^all: (\d+) mutants, .*: ([\d.]+) %$/mu.exec(run.stdout) ?? [];
  process.stdout.write(run.stdout);
  expect(Number(mutants), run.stderr).toBeGreaterThan(40);
  expect(Number(share), run.stdout).toBeGreaterThanOrEqual(LEAST);
}, 1_800_000);
