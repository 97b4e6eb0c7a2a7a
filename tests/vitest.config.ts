import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    globalSetup: ["tests/browser/browsers-setup.ts", "tests/browser/demo-setup.ts", "tests/archive/tools-setup.ts"],
    testTimeout: 120_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
  },
});
