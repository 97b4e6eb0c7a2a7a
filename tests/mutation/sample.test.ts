/** A few of the mutants, always the same of the same source, spread over all files. All of them: `npm run mutants`. */
import { spawnSync } from "node:child_process";
import { expect, it } from "vitest";

it("Of some sixty mutants of the reckoning and the evidence each is noticed, or listed as one that nothing can notice", () => {
  const run = spawnSync(process.execPath, ["--import", "tsx", "tests/mutation/run.ts", "--sample", "60"], {
    env: { ...process.env, MUTANTS_CACHE: ".cache/mutation-sample" },
    encoding: "utf8",
  });
  expect(`${run.stdout}${run.status === 0 ? "" : run.stderr}`).toMatch(
    /^all: \d+ mutants, \d+ killed \(\d+ by time\), 0 live that are listed, 0 that are not, 0 not reached: 100\.0 %$/mu,
  );
  expect(run.status).toBe(0);
}, 600_000);
