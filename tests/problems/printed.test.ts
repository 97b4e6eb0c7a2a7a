import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type Problem, problemsJson, problemText } from "../../src/problem.ts";
import { saidOf, withSmall } from "./cases.ts";

const HOSTILE = "\u202ered\u2069 \u001b[31m\u0007 \u200fa\u009b \u{e0041}\u2028";
const PROBLEM: Problem = {
  file: "lots/\nS-2\u202e.md",
  line: 1,
  column: 2,
  code: "unknown-word",
  message: `no "${HOSTILE}"`,
  expected: HOSTILE,
  found: HOSTILE,
  mend: HOSTILE,
};
const OBEYED = /[\p{Cc}\p{Cf}\u2028\u2029]/u;

describe("A problem as it is printed", () => {
  it("obeys no mark that turns or colours text: each is written out", () => {
    const text = problemText(PROBLEM);
    expect(text.replaceAll("\n    ", "")).not.toMatch(OBEYED);
    expect(text).toContain("lots/‹U+000A›S-2‹U+202E›.md:1:2");
    expect(text).toContain("‹U+202E›red‹U+2069› ‹U+001B›[31m‹U+0007› ‹U+200F›a‹U+009B› ‹U+E0041›‹U+2028›");
  });

  it("holds none of them raw in JSON, and says the same there", () => {
    const json = problemsJson([PROBLEM]);
    expect(json.replaceAll("\n", "")).not.toMatch(OBEYED);
    expect(JSON.parse(json)).toEqual([PROBLEM]);
  });

  it("writes them out where they stand in a record", async () => {
    await withSmall(async (folder) => {
      mkdirSync(join(folder, "lots"), { recursive: true });
      writeFileSync(
        join(folder, "lots/S-2.md"),
        "---\ntitle: Spruce\nmaterial: timber \u202eylno\nreceived: 2025-01-10\n---\n",
      );
      expect(await saidOf(folder)).toContain("found     timber ‹U+202E›ylno");
    });
  });

  it("leaves the letters of any language as they are", () => {
    const message = "Épicéa, Ørsted, 木, नमस्ते, 👩‍🔧";
    expect(problemText({ ...PROBLEM, message })).toContain(message);
  });
});

describe("A day of one person", () => {
  it("may have 24 hours, and another person as many", async () => {
    await withSmall(async (folder) => {
      const lines = ["builder", "helper"].flatMap((who) =>
        ["gluing", "shaping"].map((task) => `  - { who: ${who}, task: ${task}, time: 12:00 }\n`),
      );
      writeFileSync(
        join(folder, "entries/2025-03-09-long.md"),
        `---\ndate: 2025-03-09\ntitle: Long\nassembly: wing\nhours:\n${lines.join("")}---\n`,
      );
      expect(await saidOf(folder)).toBe("");
    });
  });
});
