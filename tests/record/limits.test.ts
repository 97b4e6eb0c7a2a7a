import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { type Problem, problemText } from "../../src/problem.ts";
import { LIMITS } from "../../src/facts/limits.ts";
import { readRecord } from "../../src/record/read.ts";
import { GENERATORS, type Generator } from "../bench/hostile.mjs";
import { TODAY, withSmall } from "../problems/cases.ts";

async function problemsWith({ file }: Generator, size: number): Promise<readonly Problem[]> {
  return withSmall(async (folder) => {
    const { path, text } = file(size);
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
    const read = await readRecord(folder, { today: TODAY });
    return "problems" in read ? read.problems : [];
  });
}

describe("What is made to stop the program", () => {
  const bounds = GENERATORS.filter(({ isBound }) => isBound);

  it("is told beyond each limit, in these words", async () => {
    const told: string[] = [];
    for (const generator of bounds) {
      const problems = await problemsWith(generator, generator.most + 1);
      const beyond = problems.filter(({ code }) => code === "limit");
      told.push(`== ${generator.name}`, ...beyond.map((problem) => problemText(problem)));
    }
    await expect(`${told.join("\n")}\n`).toMatchFileSnapshot("limits.golden.txt");
  });

  it.each(bounds.map((one) => [one.name, one] as const))("is read up to the limit: %s", async (_, generator) => {
    const problems = await problemsWith(generator, generator.most);
    expect(problems.filter(({ code }) => code === "limit").map(problemText)).toEqual([]);
  });

  it("is told one by one up to a number of problems, and then how many more there are", async () => {
    const lines = "  - { who: x, task: y, time: z }\n".repeat(600);
    await withSmall(async (folder) => {
      writeFileSync(
        join(folder, "entries/2025-03-09-more.md"),
        `---\ndate: 2025-03-09\ntitle: More\nassembly: wing\nhours:\n${lines}---\n`,
      );
      const read = await readRecord(folder, { today: TODAY });
      const problems = "problems" in read ? read.problems : [];
      expect(problems).toHaveLength(LIMITS.problems + 1);
      expect(problems.at(-1)?.more).toBe(1300);
      expect(problemText(problems.at(-1) as Problem)).toBe(
        `entries/2025-03-09-more.md:172:30  and 1,300 more problems, of which this is the place of the first  [limit]
    expected  at most 500 problems told one by one
    mend      mend those above, then look again`,
      );
    });
  });
});

describe("What a builder has", () => {
  it("is read: an entry with three hundred photographs, each with a long text", async () => {
    const photo = `  - { file: ../photos/jig.jpg, alt: "${"Both caps in the jig. ".repeat(10)}", caption: "${"Before. ".repeat(20)}" }\n`;
    await withSmall(async (folder) => {
      writeFileSync(
        join(folder, "entries/2025-03-09-more.md"),
        `---\ndate: 2025-03-09\ntitle: More\nassembly: wing\nphotos:\n${photo.repeat(300)}---\n${"Words of the day. ".repeat(3000)}\n`,
      );
      const read = await readRecord(folder, { today: TODAY });
      expect("problems" in read ? read.problems.map(problemText) : []).toEqual([]);
    });
  });
});
