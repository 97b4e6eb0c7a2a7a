import { posix } from "node:path";
import { describe, expect, it } from "vitest";
import { conversionsIn } from "./conversions.ts";
import { MOST } from "./limits.ts";
import { ORDER } from "./order.ts";
import { functionsOf, importsOf, keptBy, type SourceFile, sourceFiles } from "./source.ts";

/** Rooms off that line, and what each may use. */
const BESIDE: { readonly [room: string]: readonly string[] } = {
  archive: [
    "problems",
    "problem",
    "defined",
    "memo",
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
  // The page at the bench runs what judges its file; other scripts of pages need none of it.
  browser: ["defined", "words", "reckoning", "facts", "bench"],
  compile: ["licences"],
};

const PURE = [
  ...["words", "reckoning", "evidence", "sentences", "editions", "charts", "pages", "layouts", "bench", "browser"],
];

/** Kept by text alone, of no record: whoever asks first gets what everybody gets. What is of a record goes with it, by `Memo`. */
const KEPT: { readonly [variable: string]: string } = {
  "layouts/parts/mark.tsx made": "HTML of a mark by its word: a few dozen, which stand many thousand times in a site",
  "layouts/shell/policy.ts hashed":
    "hashes of sheets by their text, at most 200: those of cards are the same on most pages",
  "src/facts/quantity/units.ts RECKONED":
    "units by their word: the library takes long for each, and a record needs few",
  "src/reckoning/time/calendar.ts numbers": "days by their text: the engine takes fifty times as long to read one anew",
};

/** A page names the sheets within it by their digest; chance of `node:crypto` is banned below. */
const DIGESTS = "layouts/shell/policy.ts";
const CONVERSIONS = "src/facts/quantity/conversions.ts";

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
          .filter((to) => to.startsWith("node:") && !(to === "node:crypto" && file.path === DIGESTS))
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

  it("lets no module of a pure room keep anything, but for what is the same whoever asks first", () => {
    const pure = product.filter(
      ({ path }) => [...PURE, "facts"].includes(roomOf(path)) && roomOf(path) !== "browser" && !path.endsWith(".css"),
    );
    expect(pure.flatMap((file) => keptBy(file).map((name) => `${file.path} ${name}`)).sort()).toEqual(
      Object.keys(KEPT),
    );
  });

  it("has no file over 250 lines, of tests 400", () => {
    const most = (path: string): number =>
      path.startsWith("tests/demo/") ? Number.POSITIVE_INFINITY : path.startsWith("tests/") ? 400 : MOST.file;
    expect(
      all
        .map((file) => ({ path: file.path, lines: file.text.split("\n").length - 1 }))
        .filter((file) => file.lines > most(file.path)),
    ).toEqual([]);
  });

  it("has no function over 50 lines, in tests 120", () => {
    const tests = (path: string): boolean => path.endsWith(".test.ts") || path.endsWith(".test.tsx");
    const scripts = all.filter((file) => !file.path.endsWith(".css") && !file.path.startsWith("tests/demo/"));
    expect(
      scripts.flatMap((file) =>
        functionsOf(file)
          .filter(
            (f) =>
              f.lines > (file.path.startsWith("tests/") ? 120 : MOST.function) &&
              !(tests(file.path) && f.name === "(no name)"),
          )
          .map((f) => `${file.path}:${f.line} ${f.name}, ${f.lines} lines`),
      ),
    ).toEqual([]);
  });

  it("has no folder of more than 20 files", () => {
    const counts = new Map<string, number>();
    for (const { path } of product) counts.set(posix.dirname(path), (counts.get(posix.dirname(path)) ?? 0) + 1);
    expect([...counts].filter(([, files]) => files > MOST.folder)).toEqual([]);
  });

  it("has at most one line in a hundred over 120 columns", () => {
    const lines = product.filter(({ path }) => !path.endsWith(".css")).flatMap(({ text }) => text.split("\n"));
    expect(lines.filter((line) => line.length > 120).length / lines.length).toBeLessThanOrEqual(0.01);
  });

  it("states each number of conversion in one file", () => {
    // The scripts of pages are classic, and the compiler is no part of the product: neither can import.
    const stating = product.filter(
      ({ path }) => path !== CONVERSIONS && !path.startsWith("src/browser/") && /\.tsx?$/.test(path),
    );
    expect(stating.flatMap((file) => conversionsIn(file).map((number) => `${file.path} ${number}`))).toEqual([]);
  });

  it("knows a number of conversion by what it is worth, in whatever direction, power or digits it is typed", () => {
    const typed = ["35.27396195", "39.37", "1550.0031", "33814.0227", "0.2248089431", "1.450377377e-4", "0.06242796"];
    const more = ["0.2048161436", "61023.74409", "25.4", "0.3048", "6894.757", "4.448", "273.15", "86_400", "24 * 60"];
    const text = [...typed, ...more].map((number) => `f(${number});`).join("\n");
    expect(conversionsIn({ path: "x.ts", text })).toEqual([...typed, ...more]);
    expect(conversionsIn({ path: "x.ts", text: "f(1000, 1e-6, 12, 16, 0.6366, 610.94, 17.625)" })).toEqual([]);
    expect(product.filter(({ path }) => path === CONVERSIONS).flatMap(conversionsIn)).toContain("0.45359237");
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
  const mayImportArchive = ["check", "desk", "cli"].includes(from);
  return target === "archive"
    ? mayImportArchive
    : ORDER.includes(from) && ORDER.indexOf(target) < ORDER.indexOf(from) && ORDER.includes(target);
}
