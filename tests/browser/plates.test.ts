import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openBrowser } from "./browsers.ts";
import { builtDemo } from "./demo.ts";

const site = builtDemo("public");
const assemblies = site.pages.filter((path) => path.startsWith("assembly/"));
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

it.each([390, 1280])("At %i px no mark on a drawing of the demo covers a joint or another mark", async (width) => {
  const page = await browser.newPage({ viewport: { width, height: 900 } });
  const faults: string[] = [];
  let marks = 0;
  for (const path of assemblies) {
    await page.goto(pathToFileURL(`${site.folder}/${path}`).href);
    const found = await page.evaluate(() => {
      const sheet = document.querySelector(".plate__sheet")?.getBoundingClientRect();
      const dots = document.querySelector(".plate__dots")?.getAttribute("d") ?? "";
      if (sheet === undefined) return { marks: 0, faults: [] };
      const joints = [...dots.matchAll(/M([\d.]+) ([\d.]+)/g)].map(([, left, top]) => ({
        x: sheet.x + (Number(left) / 100) * sheet.width,
        y: sheet.y + (Number(top) / 100) * sheet.height,
      }));
      const boxes = [...document.querySelectorAll(".plate__marks a")].map((mark) => mark.getBoundingClientRect());
      const within = (box: DOMRect, { x, y }: { x: number; y: number }) =>
        x > box.left && x < box.right && y > box.top && y < box.bottom;
      const overlap = (a: DOMRect, b: DOMRect) =>
        a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
      return {
        marks: boxes.length,
        faults: boxes.flatMap((box, n) => [
          ...joints.flatMap((joint, m) => (within(box, joint) ? [`mark ${n} covers joint ${m}`] : [])),
          ...boxes
            .slice(n + 1)
            .flatMap((other, m) => (overlap(box, other) ? [`mark ${n} covers mark ${n + 1 + m}`] : [])),
          ...(box.left < sheet.left - 1 || box.right > sheet.right + 1 ? [`mark ${n} leaves the drawing`] : []),
        ]),
      };
    });
    marks += found.marks;
    faults.push(...found.faults.map((fault) => `${path}: ${fault}`));
  }
  await page.close();
  expect(marks).toBeGreaterThan(40);
  expect(faults).toEqual([]);
});
