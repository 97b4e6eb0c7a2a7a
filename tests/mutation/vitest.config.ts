import { existsSync, readFileSync, statSync } from "node:fs";
import { relative, resolve } from "node:path";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import { COPIES } from "./journal.ts";

const root = new URL("../..", import.meta.url).pathname;
const copyOf = (id: string): string => resolve(root, COPIES, relative(root, id));
const one = process.env["MUTANTS_ONE"] !== undefined;
const order = process.env["MUTANTS_ORDER"]?.split(" ");

/** Small files first, unless an order is asked: they are about little, and notice best what is wrong with that. */
class SmallFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification): number => order?.indexOf(relative(root, moduleId)) ?? 0;
    if (order) return Promise.resolve([...files].sort((a, b) => place(a) - place(b)));
    const size = ({ moduleId }: TestSpecification): number =>
      moduleId.endsWith("attacks.test.ts") ? Number.POSITIVE_INFINITY : statSync(moduleId).size;
    return Promise.resolve([...files].sort((a, b) => size(a) - size(b)));
  }
}

/** The tests that judge mutants: those of the pure rooms, but for the two of great records, on the source with its mutants in it. */
export default defineConfig({
  root,
  plugins: [
    {
      name: "mutants",
      enforce: "pre",
      load: (id) => (existsSync(copyOf(id)) ? readFileSync(copyOf(id), "utf8") : undefined),
    },
  ],
  test: {
    include: ["tests/reckoning/**/*.test.ts", "tests/evidence/**/*.test.ts", "tests/attacks/attacks.test.ts"],
    exclude: ["tests/evidence/size.test.ts", "tests/evidence/climate-size.test.ts"],
    setupFiles: ["tests/mutation/one-mutant.ts"],
    runner: "tests/mutation/try-mutants.ts",
    ...(one ? { bail: 1, isolate: false } : {}),
    testTimeout: 600_000,
    sequence: { sequencer: SmallFirst },
    maxWorkers: 1,
    fileParallelism: false,
  },
});
