import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linesOf, rowsOf } from "../../../src/record/table/csv.ts";
import { LIMITS } from "../../../src/facts/limits.ts";

/** As the library reads it, quotation marks or none. */
function byLibrary(text: string, delimiter: string): readonly (readonly string[])[] {
  return parse(text, { relax_column_count: true, relax_quotes: true, skip_empty_lines: true, delimiter });
}

describe("The cells of a logger's file", () => {
  const line = fc.array(fc.constantFrom(",", ";", "\t", " ", "a", "1", "ä", "😀", '"')).map((signs) => signs.join(""));
  const text = fc.array(line).map((lines) => lines.join("\n"));

  it("are those that the library reads, where quotation marks stand or none", () => {
    let unquoted = 0;
    fc.assert(
      fc.property(text, fc.constantFrom(",", ";", "\t"), (typed, delimiter) => {
        const read = rowsOf(typed, delimiter as ",");
        if (!typed.includes('"')) unquoted += 1;
        if ("line" in read) expect(() => byLibrary(typed, delimiter)).toThrow(/Quote/);
        else expect(read).toEqual(byLibrary(typed, delimiter));
      }),
      { numRuns: 1000, seed: 11 },
    );
    expect(unquoted).toBeGreaterThan(100);
  });

  it("stand on the lines that the library counts", () => {
    const closed = text.filter((typed) => !typed.includes('"'));
    fc.assert(
      fc.property(closed, (typed) => {
        const lines = typed.split("\n");
        expect(linesOf(typed, ",").map((at) => lines[at - 1])).toEqual(byLibrary(typed, "\0").map(([whole]) => whole));
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it("are read in rows of any length up to the limit, and told beyond it with the line", () => {
    const most = "a".repeat(LIMITS.rowLength);
    expect(rowsOf(`a\n\n${most}\n`, ",")).toEqual([["a"], [most]]);
    expect(rowsOf(`a\n\n${most}a\n`, ",")).toEqual({ line: 3, isLong: true });
  });
});
