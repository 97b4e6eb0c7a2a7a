import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { EXPLANATIONS, PROBLEM_CODES } from "../../src/problems/codes.ts";
import { readRecord } from "../../src/record/read.ts";
import { command } from "../cli/command.ts";
import { change } from "../record/change.ts";
import { TODAY, withSmall } from "./cases.ts";

const TESTS = new URL("..", import.meta.url).pathname;
const CASES = join(TESTS, "problems/cases");
const cases = [...readdirSync(CASES).map((name) => join(CASES, name)), join(TESTS, "problems/bytes.test.ts")]
  .map((path) => readFileSync(path, "utf8"))
  .join("\n");
/** Problems with what no text file can be: bytes, pictures, clips, permissions. Each is raised by the test named. */
const RAISED_BY: { readonly [code: string]: string } = {
  "clip-coding": "publish/clips/problems.txt",
  "clip-no-picture": "publish/clips/problems.txt",
  "clip-unreadable": "publish/clips/problems.txt",
  encoding: "problems/bytes.test.ts",
  "drawing-too-large": "publish/pictures.test.ts",
  "drawing-unreadable": "publish/pictures.test.ts",
  "drawing-unsafe": "publish/pictures.test.ts",
  "no-folder": "problems/bytes.test.ts",
  "no-typesetter": "paper/without.test.ts",
  "own-audience": "own/problems.test.ts",
  "own-layout": "own/problems.test.ts",
  "own-link": "own/problems.test.ts",
  "own-page": "own/problems.test.ts",
  "own-place": "own/problems.test.ts",
  "own-policy": "own/problems.test.ts",
  "own-sheet": "own/problems.test.ts",
  "own-title": "own/problems.test.ts",
  "picture-too-large": "publish/pictures.test.ts",
  "picture-unreadable": "publish/pictures.test.ts",
  unreadable: "problems/unreadable.test.ts",
};

describe("Each code of a problem", () => {
  it.each(PROBLEM_CODES)("%s is told of in whole sentences, and raised by a case", (code) => {
    const { title, happened, why, mend, example } = EXPLANATIONS[code];
    expect(title).toMatch(/^[A-Z#].*[^.]$/);
    for (const text of [happened, why, mend]) expect(text).toMatch(/^(?:[A-Z0-9#`]).*\.$/);
    const by = RAISED_BY[code];
    expect(typeof example === "string").toBe(by !== undefined);
    if (by === undefined) expect(cases.includes(`  [${code}]`), "is raised by a case").toBe(true);
    else expect(readFileSync(join(TESTS, by), "utf8")).toMatch(new RegExp(`["[]${code}["\\]]`));
  });

  const shown = PROBLEM_CODES.filter((code) => typeof EXPLANATIONS[code].example !== "string");
  it.each(shown)("%s is raised by its example, and nothing else is", async (code) => {
    await withSmall(async (folder) => {
      change(folder, EXPLANATIONS[code].example as readonly string[]);
      const read = await readRecord(folder, { today: TODAY });
      expect("problems" in read ? [...new Set(read.problems.map((problem) => problem.code))] : []).toEqual([code]);
    });
  });

  it("has a title of its own", () => {
    const titles = PROBLEM_CODES.map((code) => EXPLANATIONS[code].title);
    expect(new Set(titles).size).toBe(titles.length);
  });
});

describe("scarfline explain", () => {
  it("tells of one code, with or without its brackets", async () => {
    const { code, out } = await command(["explain", "no-unit"]);
    expect([code, out]).toEqual([
      0,
      `A number without its unit  [no-unit]

What happened   A quantity is typed without a unit.
Why it matters  42 can be grams or ounces; a guess could turn a bad mix into a good one.
What to do      Write the unit after the number.

For example
  in entries/2025-03-08-caps.md
    - mass: 42.0 g }
    + mass: 42 }
`,
    ]);
    expect((await command(["explain", "[no-unit]"])).out).toBe(out);
  });

  it("lists all codes, a line each", async () => {
    const { out } = await command(["explain"]);
    expect(out.trimEnd().split("\n")).toHaveLength(PROBLEM_CODES.length);
    expect(out).toMatch(/^no-unit +A number without its unit$/m);
  });

  it("says of a code that there is not which was meant", async () => {
    const { code, err } = await command(["explain", "no-units"]);
    expect([code, err]).toEqual([
      2,
      "No problem has the code no-units. Did you mean no-unit? List them all: scarfline explain\n",
    ]);
  });
});
