import { posix } from "node:path";
import { describe, expect, it } from "vitest";
import { ORDER } from "./order.ts";
import { functionsOf, importsOf, type SourceFile, sourceFiles } from "./source.ts";

/** Rooms off that line, and what each may use. */
const BESIDE: { readonly [room: string]: readonly string[] } = {
  archive: [
    "problems",
    "problem",
    "defined",
    "facts",
    "record",
    "words",
    "reckoning",
    "evidence",
    "sentences",
    "editions",
    "charts",
    "pages",
    "layouts",
    "publish",
  ],
  browser: ["words", "reckoning"],
};

const PURE = ["words", "reckoning", "evidence", "sentences", "editions", "charts", "pages", "layouts", "browser"];

const product = sourceFiles("src", "layouts");
const all = [...product, ...sourceFiles("tests")];

describe("The shape of the source", () => {
  it("lets imports run one way", () => {
    expect(
      product.flatMap((file) =>
        importsOf(file)
          .filter((to) => !isAllowed(file, to))
          .map((to) => `${file.path} imports ${to}`),
      ),
    ).toEqual([]);
  });

  it("keeps the disk, the network and the process out of the pure rooms", () => {
    const impure = product
      .filter((file) => PURE.includes(roomOf(file.path)))
      .flatMap((file) =>
        importsOf(file)
          // Of `node:crypto` its digests, which are the same of the same bytes; its chance is banned below.
          .filter((to) => to.startsWith("node:") && to !== "node:crypto")
          .map((to) => `${file.path} imports ${to}`),
      );
    expect(impure).toEqual([]);
  });

  it("keeps the clock, chance and the machine's locale out of the pure rooms", () => {
    const banned =
      /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\brandom(?:Bytes|UUID|Int|FillSync|Fill)\b|\bgetRandomValues\b|\.toLocale\w*\(|\bprocess\./;
    const pure = product.filter((file) => PURE.includes(roomOf(file.path)) && roomOf(file.path) !== "browser");
    expect(pure.filter((file) => banned.test(file.text)).map((file) => file.path)).toEqual([]);
  });

  it("has no file over 330 lines, of tests 520", () => {
    const most = (path: string): number =>
      path.startsWith("tests/demo/") ? Number.POSITIVE_INFINITY : path.startsWith("tests/") ? 520 : 330;
    expect(
      all
        .map((file) => ({ path: file.path, lines: file.text.split("\n").length - 1 }))
        .filter((file) => file.lines > most(file.path)),
    ).toEqual([]);
  });

  it("has no function over 80 lines, in tests 120", () => {
    const tests = (path: string): boolean => path.endsWith(".test.ts") || path.endsWith(".test.tsx");
    const scripts = all.filter((file) => !file.path.endsWith(".css") && !file.path.startsWith("tests/demo/"));
    expect(
      scripts.flatMap((file) =>
        functionsOf(file)
          .filter(
            (f) =>
              f.lines > (file.path.startsWith("tests/") ? 120 : 80) && !(tests(file.path) && f.name === "(no name)"),
          )
          .map((f) => `${file.path}:${f.line} ${f.name}, ${f.lines} lines`),
      ),
    ).toEqual([]);
  });

  it("has no folder of more than 20 files", () => {
    const counts = new Map<string, number>();
    for (const { path } of product) counts.set(posix.dirname(path), (counts.get(posix.dirname(path)) ?? 0) + 1);
    expect([...counts].filter(([, files]) => files > 20)).toEqual([]);
  });

  it("has at most one line in a hundred over 120 columns", () => {
    const lines = product.filter(({ path }) => !path.endsWith(".css")).flatMap(({ text }) => text.split("\n"));
    expect(lines.filter((line) => line.length > 120).length / lines.length).toBeLessThanOrEqual(0.01);
  });

  it("has no room for what has no name", () => {
    expect(
      all.filter((file) => /\/(utils?|helpers?|common|misc)(\/|\.)/.test(file.path)).map((file) => file.path),
    ).toEqual([]);
  });
});

function roomOf(path: string): string {
  const [top, next] = path.split("/");
  // The sentences know the codes of evidence, which itself makes no sentence.
  if (path.startsWith("src/words/findings/")) return "sentences";
  if (next === "climate") return "record";
  return top === "layouts" ? "layouts" : (next ?? "").replace(/\.\w+$/, "");
}

function isAllowed(file: SourceFile, to: string): boolean {
  if (!to.startsWith(".")) return true;
  const from = roomOf(file.path);
  const target = roomOf(posix.join(posix.dirname(file.path), to));
  if (from === target) return true;
  const beside = BESIDE[from];
  if (beside !== undefined) return beside.includes(target);
  const mayImportArchive = from === "build" || from === "cli";
  return target === "archive"
    ? mayImportArchive
    : ORDER.includes(from) && ORDER.indexOf(target) < ORDER.indexOf(from) && ORDER.includes(target);
}
