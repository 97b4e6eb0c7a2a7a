/** Marks on a drawing in a PDF lead to what they point at, and their lines nowhere else. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { expect, it } from "vitest";
import { dataOf, type Paper } from "../../src/publish/paper/blocks.ts";
import { openMaker } from "../../src/publish/paper/typst.ts";
import { poppler } from "./pdf.ts";

const GREY = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100"><rect width="200" height="100" fill="#ccc"/></svg>`;
const paper: Paper = {
  title: "A plate",
  record: "Made up",
  edition: "Edition",
  day: "1 May 2025",
  seal: "No seal",
  date: [2025, 5, 1],
  language: "en",
  front: [],
  body: [
    {
      b: "plate",
      file: "grey.svg",
      alt: "Nothing",
      marks: [{ left: 10, top: 10, word: "J01", shape: "joined", grave: false, of: [90, 90] }],
    } as Paper["body"][number],
  ],
};
const DPI = 100;
/** Of the page's body, between its running heads, in parts of the page's height. */
const [FROM, TO] = [0.062, 0.93];

it("A line from a mark goes across its drawing and not beyond", async () => {
  const folder = mkdtempSync(join(tmpdir(), "scarfline-plate-"));
  const maker = await openMaker();
  writeFileSync(
    join(folder, "plate.pdf"),
    (await maker?.set(
      dataOf(paper),
      new Map(["grey.svg", "shape-joined.svg"].map((name) => [name, Buffer.from(GREY)])),
    )) ?? "",
  );
  poppler(
    "pdftoppm",
    "-r",
    String(DPI),
    "-gray",
    "-singlefile",
    "-png",
    join(folder, "plate.pdf"),
    join(folder, "plate"),
  );
  const { data, info } = await sharp(join(folder, "plate.png")).greyscale().raw().toBuffer({ resolveWithObject: true });
  rmSync(folder, { recursive: true });
  const darker = (x: number, y: number, than: number): boolean => (data[y * info.width + x] ?? 255) < than;
  const places = Array.from(
    { length: info.width * info.height },
    (_, at) => [at % info.width, Math.floor(at / info.width)] as const,
  ).filter(([x, y]) => y > info.height * FROM && y < info.height * TO && darker(x, y, 230));
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  // The picture is twice as wide as tall, and its frame is all that stands around it.
  expect((bottom - top) / (right - left)).toBeCloseTo(0.5, 1);
  const near = (part: number): boolean => {
    const [x, y] = [Math.round(left + part * (right - left)), Math.round(top + part * (bottom - top))];
    return [-1, 0, 1].some((dy) => darker(x, y + dy, 150));
  };
  expect([0.4, 0.5, 0.6, 0.7, 0.8].map(near)).toEqual([true, true, true, true, true]);
  expect(near(0.95)).toBe(false);
});
