import fc from "fast-check";
import { posix, win32 } from "node:path";
import { expect, it } from "vitest";
import { foldedPath, pathFault } from "../../src/archive/safe-path.ts";
import { manifestLine, manifestLineOf, pathDecoded } from "../../src/archive/manifest.ts";
import { printable } from "../../src/archive/finding.ts";
import { linesOf } from "../../src/archive/lines.ts";

const piece = fc.oneof(
  fc.constantFrom(
    "..",
    ".",
    "",
    "a",
    "data",
    "C:",
    "c:x",
    "~",
    "~root",
    "\\",
    "..\\..",
    "\0",
    "con",
    " ",
    "...",
    "%2e%2e",
  ),
  fc.string({ unit: "binary", maxLength: 6 }),
);
const anyPath = fc.array(piece, { maxLength: 6 }).map((parts) => parts.join("/"));

it("A path that is found safe stays within its folder, on systems of either kind", () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      fc.pre(pathFault(path) === undefined);
      expect(posix.join("/bag", path).startsWith("/bag/")).toBe(true);
      expect(posix.resolve("/bag", path)).toBe(`/bag/${path}`);
      expect(win32.resolve("D:\\bag", path).startsWith("D:\\bag\\")).toBe(true);
    }),
    { numRuns: 20_000 },
  );
});

it("A path of plain names is always safe", () => {
  const name = fc
    .stringMatching(/^[A-Za-z0-9_ -][A-Za-z0-9_. -]{0,12}$/)
    .filter((text) => text !== "." && text !== "..");
  fc.assert(
    fc.property(
      fc.array(name, { minLength: 1, maxLength: 8 }),
      (parts) => void expect(pathFault(parts.join("/"))).toBeUndefined(),
    ),
  );
});

it("Names that differ only in capitals or in their Unicode form have one folded form", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 12 }), (name) => {
      for (const other of [
        name.normalize("NFC"),
        name.normalize("NFD"),
        name.normalize("NFC").toUpperCase(),
        name.normalize("NFD").toLowerCase(),
      ]) {
        if (other.toUpperCase().normalize("NFC") === name.toUpperCase().normalize("NFC"))
          expect(foldedPath(other)).toBe(foldedPath(name));
      }
    }),
  );
});

it("A line of a manifest reads as it was written", () => {
  const path = fc
    .string({ unit: "binary", minLength: 1, maxLength: 30 })
    .filter((text) => /^\S/u.test(text) && !/[\r\n]/.test(text));
  fc.assert(
    fc.property(
      fc.stringMatching(/^[0-9a-f]{64}$/),
      path,
      (digest, name) =>
        void expect(manifestLineOf(manifestLine(digest, name).slice(0, -1), "sha256")).toEqual({ digest, path: name }),
    ),
  );
  expect(pathDecoded("a%0Ab%0d%25%2e%")).toBe("a\nb\r%%2e%");
});

it("A text comes out line by line in the same way however its bytes are cut", async () => {
  const text = fc
    .array(fc.constantFrom("a", "\u00e9", "\u{1f6e9}", "\n", "\r", "\r\n", ""), { maxLength: 30 })
    .map((parts) => parts.join(""));
  await fc.assert(
    fc.asyncProperty(text, fc.integer({ min: 1, max: 7 }), async (whole, size) => {
      const bytes = Buffer.from(whole);
      const chunks = Array.from({ length: Math.ceil(bytes.length / size) }, (_, index) =>
        bytes.subarray(index * size, (index + 1) * size),
      );
      const lines: { text: string; end: string; number: number }[] = [];
      for await (const line of linesOf(
        (async function* () {
          yield* chunks;
        })(),
        "UTF-8",
      ))
        lines.push(line);
      expect(lines.map((line) => line.text + line.end).join("")).toBe(whole);
      expect(lines.every((line, index) => line.number === index + 1 && !/[\r\n]/.test(line.text))).toBe(true);
    }),
  );
});

it("A text of someone else's comes to the terminal without what would steer it", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "binary" }),
      (text) => void expect(printable(text)).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u),
    ),
  );
});
