/** PDFs as others read them: poppler and qpdf, which share no code with what sets them. */
import { execFileSync, spawnSync } from "node:child_process";

/** What one of poppler's tools says of a PDF; its opinion of a flag in the tags, told beside, is its own. */
export function poppler(
  tool: "pdftotext" | "pdfinfo" | "pdffonts" | "pdfimages" | "pdftoppm",
  ...words: readonly string[]
): string {
  return execFileSync(tool, words, { encoding: "utf8", maxBuffer: 1 << 28, stdio: ["ignore", "pipe", "ignore"] });
}

/** All that stands in it, page by page, each in one line. */
export function pagesOf(pdf: string): string[] {
  return linesOf(pdf, []).map(oneLine);
}

/** The same without what stands at the head and the foot of each page: points from the top left. */
export function bodiesOf(pdf: string): string[] {
  return linesOf(pdf, ["-x", "0", "-y", "57", "-W", "596", "-H", "745"]);
}

function linesOf(pdf: string, part: readonly string[]): string[] {
  return poppler("pdftotext", "-raw", "-enc", "UTF-8", ...part, pdf, "-")
    .split("\f")
    .slice(0, -1);
}

/** Without what tells where a line was broken. */
export const oneLine = (text: string): string =>
  text
    .replace(/\u2060/g, "")
    .replace(/\s+/g, " ")
    .trim();

/** For comparing: a line that was broken may have lost a blank, and a cell has none between it and the next. */
export const bare = (text: string): string => text.replace(/[\s\u2060\u2066-\u2069\u202a-\u202e]+/g, "");

export function infoOf(pdf: string): ReadonlyMap<string, string> {
  const lines = poppler("pdfinfo", pdf).split("\n");
  return new Map(lines.map((line) => [line.slice(0, line.indexOf(":")), line.slice(line.indexOf(":") + 1).trim()]));
}

/** What qpdf finds wrong with it; nothing of a sound one. */
export function faultsOf(pdf: string): string {
  const { status, stdout, stderr } = spawnSync("qpdf", ["--check", pdf], { encoding: "utf8" });
  return status === 0 ? "" : `${stdout}${stderr}`;
}

interface Outline {
  readonly title: string;
  readonly kids: readonly Outline[];
}

/** Titles of its bookmarks, with those below them. */
export function bookmarksOf(pdf: string): string[] {
  const { outlines } = JSON.parse(
    execFileSync("qpdf", ["--json", "--json-key=outlines", pdf], { encoding: "utf8", maxBuffer: 1 << 28 }),
  ) as { readonly outlines: readonly Outline[] };
  const all = (of: readonly Outline[]): string[] => of.flatMap(({ title, kids }) => [title, ...all(kids)]);
  return all(outlines);
}
