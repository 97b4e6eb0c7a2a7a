import fc from "fast-check";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isMap, isScalar, isSeq, parseDocument, type Node } from "yaml";
import type { readRecord } from "../../src/record/read.ts";
import { readerOfCopies } from "./read-changed.ts";

const SMALL = new URL("small", import.meta.url).pathname;
const ENTRY = "entries/2025-03-08-caps.md";
/** Files whose every text is kept as typed in the record. */
const FILES = [
  ENTRY,
  "entries/2025-03-15-pieces.md",
  "entries/2025-03-22-looked.md",
  "lots/R-1.md",
  "lots/S-1.md",
  "adhesives/resin-7.md",
  "trials/wiping.md",
];

const readCopy = readerOfCopies(SMALL);
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "scarfline-anything-"));
  cpSync(SMALL, folder, { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Reads the record with one file changed, and puts the file back. */
async function readWith(file: string, content: string | Uint8Array): ReturnType<typeof readRecord> {
  writeFileSync(join(folder, file), content);
  try {
    return await readCopy(folder);
  } finally {
    writeFileSync(join(folder, file), readFileSync(join(SMALL, file)));
  }
}

function expectTold(read: Awaited<ReturnType<typeof readRecord>>): void {
  if ("record" in read) return;
  expect(read.problems.length).toBeGreaterThan(0);
  for (const problem of read.problems) {
    expect(problem.message).not.toBe("");
    expect(problem.mend).not.toBe("");
    expect(problem.line).toBeGreaterThan(0);
    expect(problem.column).toBeGreaterThan(0);
  }
}

/** Where each value of a file's front matter stands in its text. */
function valuesIn(file: string): [file: string, start: number, end: number][] {
  const text = readFileSync(join(SMALL, file), "utf8");
  const found: [string, number, number][] = [];
  const visit = (node: Node | null): void => {
    if (isScalar(node) && node.range) found.push([file, node.range[0] + 3, node.range[1] + 3]);
    if (isSeq(node)) node.items.forEach((item) => visit(item as Node));
    if (isMap(node)) node.items.forEach((pair) => visit(pair.value as Node | null));
  };
  visit(parseDocument(text.slice(3).split("\n---\n")[0] ?? "", { schema: "failsafe" }).contents as Node);
  return found;
}

const values = FILES.flatMap(valuesIn);

/** Texts of the kinds that YAML, JavaScript or a spreadsheet would make something else of, and any others. */
const typed = fc.oneof(
  fc.constantFrom(
    "1:30",
    "0123",
    "0x1F",
    "1e3",
    "true",
    "no",
    "null",
    "~",
    "NaN",
    "Infinity",
    "-0",
    "2025-03-08T00:00:00Z",
    "1_000",
    "12:30:45",
    "__proto__",
    "constructor",
    "toString",
    "1/4 in",
    "42.0 g",
    "52 %",
    "2:45",
    "S-1",
    "builder",
    "flight",
    "+5 mm",
    "<b>",
    "[x](javascript:y)",
  ),
  fc.string({ unit: "grapheme", maxLength: 30 }),
  fc.string({
    unit: fc.constantFrom("0", "1", "9", ".", ",", ":", "/", "-", " ", "g", "h", "m", "%", "°", "C", "±", "'", '"'),
    maxLength: 10,
  }),
);

describe("Whatever is typed", () => {
  it("in any field is kept as typed or told as a problem", async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...values), typed, async ([file, start, end], text) => {
        const whole = readFileSync(join(SMALL, file), "utf8");
        const read = await readWith(file, `${whole.slice(0, start)}${JSON.stringify(text)}${whole.slice(end)}`);
        expectTold(read);
        if ("record" in read) {
          const kept = JSON.stringify(read.record, (_key, value: unknown) =>
            value instanceof Map ? Object.fromEntries(value) : value,
          );
          expect(kept).toContain(JSON.stringify(text).slice(1, -1));
        }
      }),
      { numRuns: 300 },
    );
  });

  it("without quotation marks never breaks the reader", async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...values), typed, async ([file, start, end], text) => {
        const whole = readFileSync(join(SMALL, file), "utf8");
        expectTold(await readWith(file, `${whole.slice(0, start)}${text}${whole.slice(end)}`));
      }),
      { numRuns: 300 },
    );
  });

  it("of bytes as an entry never breaks the reader", async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
        const read = await readWith(ENTRY, bytes);
        expectTold(read);
        expect("problems" in read).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  it("in place of stretches of an entry never breaks the reader", async () => {
    const whole = readFileSync(join(SMALL, ENTRY), "utf8");
    const cut = fc.tuple(
      fc.nat(whole.length),
      fc.nat(12),
      fc.string({
        unit: fc.constantFrom(
          "-",
          ":",
          " ",
          "\n",
          "{",
          "}",
          "[",
          "]",
          "&",
          "*",
          "!",
          "#",
          "|",
          ">",
          '"',
          "'",
          "%",
          "@",
          "`",
          ",",
          "?",
          "\t",
          "a",
          "1",
        ),
        maxLength: 6,
      }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(cut, { minLength: 1, maxLength: 4 }), async (cuts) => {
        const text = cuts.reduce(
          (before, [at, length, put]) => before.slice(0, at) + put + before.slice(at + length),
          whole,
        );
        expectTold(await readWith(ENTRY, text));
      }),
      { numRuns: 400 },
    );
  });

  it("in prose never breaks the reader", async () => {
    const whole = readFileSync(join(SMALL, ENTRY), "utf8");
    const prose = fc.string({
      unit: fc.constantFrom(
        "[",
        "]",
        "(",
        ")",
        "!",
        "<",
        ">",
        ":",
        ":::",
        "\n",
        "`",
        "```",
        " ",
        "a",
        "S-1",
        "../photos/jig.jpg",
        "inspector",
        "%",
        "#",
        "&lt;",
        "\\",
      ),
      maxLength: 30,
    });
    await fc.assert(
      fc.asyncProperty(prose, async (text) => expectTold(await readWith(ENTRY, `${whole}\n${text}\n`))),
      { numRuns: 300 },
    );
  });
});
