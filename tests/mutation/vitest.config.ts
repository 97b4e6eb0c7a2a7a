import { defineConfig } from "vitest/config";

/** The tests that judge mutants: those of the pure rooms, with few examples for each property so that a run ends. */
export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/reckoning/**/*.test.ts", "tests/evidence/**/*.test.ts"],
    setupFiles: ["tests/mutation/few-examples.ts"],
    testTimeout: 30_000,
  },
});
