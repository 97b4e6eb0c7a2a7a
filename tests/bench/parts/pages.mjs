/** How fast pages of the public demo come by Lighthouse, as packed by a host and served from a sub-folder: medians over the rounds. */
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { tsImport } from "tsx/esm/api";
import { inFolder, median, root } from "../measure.mjs";

const PAGES = [
  "index.html",
  "entries.html",
  "entry/2026-11-20-where-it-stands.html",
  "assembly/wing.html",
  "assembly/wing-spar.html",
  "evidence.html",
  "batch/B-018.html",
  "hold-point/WG-H1.html",
];
const CATEGORIES = ["performance", "accessibility", "best-practices", "seo"];
const WRITTEN = ["Document", "Stylesheet", "Script"];

export function pages({ rounds, dir }) {
  return inFolder(dir, async (work) => {
    const site = join(work, "site");
    execFileSync(
      process.execPath,
      [join(root, ".build/cli.js"), "build", "--content", "content", "--fresh", "--out", site],
      { cwd: root, stdio: ["ignore", "ignore", "inherit"] },
    );
    const { openLighthouse } = await tsImport("../../browser/lighthouse.ts", import.meta.url);
    const { serve } = await tsImport("../../browser/serve.ts", import.meta.url);
    const served = await serve(site, "/club/pettichaps/");
    const lighthouse = await openLighthouse();
    const rows = [];
    for (const page of PAGES) {
      for (const form of ["mobile", "desktop"]) rows.push(await row(lighthouse, served.url, page, form, rounds));
    }
    await lighthouse.close();
    await served.close();
    return {
      title: `Pages of the public demo by Lighthouse, medians of ${rounds}`,
      heads: ["page", "as on", ...CATEGORIES, "largest paint, s", "layout shift", "kB without pictures", "requests"],
      rows,
      notes: [
        "Throttling is simulated, as is Lighthouse's own way. kB are as packed by the host, headers included; requests are those before anything is scrolled to.",
      ],
    };
  });
}

async function row(lighthouse, url, page, form, rounds) {
  const looks = [];
  for (let round = 0; round < rounds; round += 1) looks.push(await lighthouse.look(url + page, form, CATEGORIES));
  const middle = (of) => median(looks.map(of));
  const kilobytes = ({ requests }) =>
    requests.filter(({ type }) => WRITTEN.includes(type)).reduce((sum, { bytes }) => sum + bytes, 0) / 1000;
  return [
    page,
    form,
    ...CATEGORIES.map((id) => String(middle(({ scores }) => scores.get(id)))),
    (middle(({ largestPaint }) => largestPaint) / 1000).toFixed(2),
    String(middle(({ shift }) => shift)),
    middle(kilobytes).toFixed(1),
    String(middle(({ requests }) => requests.length)),
  ];
}
