import { describe, expect, it } from "vitest";
import { barred, progressWords, problemWords, tellerFor } from "../../src/cli/teller.ts";
import { onlyTrouble } from "../../src/preview/overlay.ts";

function telling(
  isTerminal: boolean,
  columns = 50,
): { out: () => string; at: (ms: number) => void; teller: ReturnType<typeof tellerFor> } {
  let out = "";
  let time = 0;
  const teller = tellerFor({
    out: (text) => void (out += text),
    err: () => undefined,
    isTerminal,
    columns,
    hasColours: false,
    now: () => new Date(time),
    timeZone: "UTC",
    program: new URL("file:///"),
    untilStopped: () => Promise.resolve(),
  });
  return { out: () => out, at: (ms) => (time = ms), teller };
}

describe("Progress", () => {
  it("is one line on a terminal, within its width, and is gone when the next line is told", () => {
    const { out, at, teller } = telling(true);
    teller.progress(0, 100);
    at(1000);
    teller.progress(10, 100);
    at(2000);
    teller.progress(40, 100);
    teller.line("Done.");
    expect(out().split("\r\u001B[K")).toEqual([
      "",
      "Making pictures ready: 10 of 100, 10 a second, 9 s".slice(0, 49),
      "Making pictures ready: 40 of 100, 20 a second, 3 s".slice(0, 49),
      "Done.\n",
    ]);
  });

  it("has a bar before it where the terminal is wide enough, full only when all is done", () => {
    const { out, at, teller } = telling(true, 80);
    teller.progress(0, 100);
    for (const [ms, done] of [
      [1000, 10],
      [2000, 50],
      [3000, 99],
      [4000, 100],
    ] as const) {
      at(ms);
      teller.progress(done, 100);
    }
    expect(out().split("\r\u001B[K").slice(1)).toEqual([
      "[#---------------] Making pictures ready: 10 of 100, 10 a second, 9 s left",
      "[########--------] Making pictures ready: 50 of 100, 25 a second, 2 s left",
      "[###############-] Making pictures ready: 99 of 100, 33 a second, 1 s left",
      "[################] Making pictures ready: 100 of 100, 25 a second, 0 s left",
    ]);
    expect(
      out()
        .split("\r\u001B[K")
        .every((line) => line.length <= 79),
    ).toBe(true);
  });

  it("never goes beyond the line, however narrow", () => {
    const text = progressWords(50, 100, 2);
    for (let width = 0; width < 120; width += 1) expect(barred(text, 0.5, width).length).toBeLessThanOrEqual(width);
    expect(barred(text, 0.5, 200)).toBe(`[############------------] ${text}`);
    expect(barred(text, 1, text.length + 9)).toBe(`[######] ${text}`);
    expect(barred(text, 0, text.length + 8)).toBe(text);
    expect([barred("x", 2, 12), barred("x", -1, 12)]).toEqual(["[######] x", "[------] x"]);
  });

  it("is a plain line now and then elsewhere", () => {
    const { out, at, teller } = telling(false);
    for (let second = 0; second <= 30; second += 1) {
      at(second * 1000);
      teller.progress(second, 60);
    }
    expect(out().split("\n")).toEqual([
      "Making pictures ready: 10 of 60, 1.0 a second, 50 s left",
      "Making pictures ready: 20 of 60, 1.0 a second, 40 s left",
      "Making pictures ready: 30 of 60, 1.0 a second, 30 s left",
      "",
    ]);
  });

  it("says nothing of work that is over at once", () => {
    const { out, at, teller } = telling(true);
    teller.progress(1, 2);
    at(100);
    teller.progress(2, 2);
    expect(out()).toBe("");
  });

  it("tells the time left in minutes when it is long", () => {
    expect(progressWords(10, 1000, 10)).toBe("Making pictures ready: 10 of 1000, 1.0 a second, 17 min left");
  });
});

describe("Problems", () => {
  const problem = { file: "a.md", line: 2, column: 3, code: "no-unit", message: "Wrong.", mend: "right it" } as const;

  it("are told one by one and counted", () => {
    expect(problemWords([problem], false)).toBe(
      "a.md:2:3  Wrong.  [no-unit]\n    mend      right it\n\n1 problem in the record.",
    );
    expect(problemWords([problem, { ...problem, line: 1 }], false)).toMatch(
      /^a\.md:1:3[^]*\n\na\.md:2:3[^]*\n\n2 problems in the record\.$/,
    );
  });

  it("are counted with those that are not told one by one, in the preview's panel too", () => {
    const last = { ...problem, code: "limit", more: 101 } as const;
    expect(problemWords([problem, last], false)).toMatch(/\n\n102 problems in the record\.$/);
    expect(onlyTrouble({ problems: [problem, last] })).toContain("<summary>102 problems in the record.");
    expect(onlyTrouble({ problems: [problem] })).toContain("<summary>1 problem in the record.");
  });

  it("have their first line bold where there are colours", () => {
    expect(problemWords([problem], true)).toMatch(
      /^\u001B\[1ma\.md:2:3 {2}Wrong\. {2}\[no-unit\]\u001B\[22m\n {4}mend/,
    );
  });
});
