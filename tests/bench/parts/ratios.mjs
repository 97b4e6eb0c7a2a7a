/**
 * All that speed is judged by, in one run: what we take, what is taken by others for the same, by turns, and what is aimed at. Public edition, no PDFs.
 */
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { contestants, ELEVENTY, prepare } from "../contestants.mjs";
import { byTurns, inFolder, measuredNode, median, root } from "../measure.mjs";
import { likeness } from "../likeness.mjs";
import { slope, told } from "../table.mjs";
import { measureSize } from "./growth.mjs";
import { measurePictures } from "./pictures.mjs";
import { AGAIN, measureUnchanged, WALK } from "./unchanged.mjs";

export async function ratios({ entries, rounds, photos, many, sizes, dir }) {
  const site = await siteRows(entries, rounds, dir);
  const { took } = await measureUnchanged(many, rounds, dir);
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
  const points = [await measureSize(least, rounds, dir), await measureSize(most, rounds, dir)];
  const [ours, eleventy] = [points[1].ours, points[1].eleventy];
  const growths = ours.runs.map((_, round) =>
    slope(points.map((point) => [Math.log(point.size), Math.log(point.ours.runs[round].cpu)])),
  );
  const made = await measurePictures(photos, rounds, dir, likeness);
  return {
    title: `All ratios, medians of ${rounds} rounds by turns, with the least and the most of them`,
    heads: ["", "unit", "ours", "against", "ratio", "least to most", "aim", "came of it"],
    rows: [
      ...site,
      row(`${many} photographs, nothing changed`, took.get(AGAIN).runs, took.get(WALK).runs, "a walk", 4),
      row(`memory at ${most} entries`, ours.runs, eleventy.runs, "Eleventy", 1, "memory"),
      single(`growth from ${least} to ${most} entries, as a power`, growths, 1),
      row(`${photos} photographs the first time`, made.alone.runs, made.yardstick.runs, "vipsthumbnail", 0.35),
    ],
    notes: [
      "Ratios are of processor time, and of memory where it says so, each of a round to that of the same round. No folder is removed between rounds.",
      ...made.seen,
    ],
  };
}

/** Everything about one site: made where none stands, over one that stands, and again with little or nothing to do. */
function siteRows(entries, rounds, dir) {
  return inFolder(dir, (work) => {
    const ids = prepare(work, entries);
    const content = join(work, "content");
    const standing = join(work, "standing");
    const nowhere = join(work, "nowhere");
    mkdirSync(nowhere);
    const scarfline = (...words) =>
      measuredNode([join(root, ".build/cli.js"), words[0], "--content", content, ...words.slice(1)], work);
    const runs = [
      ...contestants(work).filter(({ name }) => name === ELEVENTY),
      { name: "first build", run: (round) => scarfline("build", "--fresh", "--out", join(work, `first-${round}`)) },
      { name: "build anew over a standing site", run: () => scarfline("build", "--fresh", "--out", standing) },
      { name: "nothing changed", run: () => stands(standing, () => scarfline("build", "--out", standing)) },
      {
        name: "one entry edited, build",
        run: (round) => edited(content, standing, ids[Math.floor(ids.length / 2)], round, scarfline),
      },
      { name: "check", run: () => scarfline("check") },
      { name: "check, nothing kept", run: () => check(content, nowhere) },
    ];
    scarfline("build", "--out", standing);
    const took = byTurns(runs, rounds);
    const aims = [1.9, 1.9, 0.2, 0.8, 0.6, 0.6];
    return runs
      .slice(1)
      .map(({ name }, at) =>
        row(`${name}, ${entries} entries`, took.get(name).runs, took.get(ELEVENTY).runs, "Eleventy", aims[at]),
      );
  });
}

/** In a folder where nothing was kept, and where a check of a record without photographs keeps nothing. */
function check(content, folder) {
  if (existsSync(join(folder, ".cache"))) throw new Error("Something was kept of a check that was to know of nothing.");
  return measuredNode([join(root, ".build/cli.js"), "check", "--content", content], folder);
}

/** What is told of a build that has nothing to do counts only where it did nothing. */
function stands(site, build) {
  const of = () => statSync(join(site, "index.html")).ino;
  const before = of();
  const took = build();
  if (of() !== before) throw new Error("A site was built anew though nothing had changed.");
  return took;
}

function edited(content, site, entry, round, scarfline) {
  const file = join(content, `entries/${entry}.md`);
  writeFileSync(file, `${readFileSync(file, "utf8")}\nEdit ${round}.\n`);
  const took = scarfline("build", "--out", site);
  if (!readFileSync(join(site, `entry/${entry}.html`), "utf8").includes(`Edit ${round}.`))
    throw new Error("The page of the entry lacks the edit.");
  return took;
}

function row(name, ours, theirs, against, aim, what = "cpu") {
  const [unit, decimals] = what === "cpu" ? ["CPU s", 2] : ["MB", 0];
  const middle = (runs) => told(median(runs.map((run) => run[what])), decimals);
  const all = ours.map((run, round) => run[what] / theirs[round][what]);
  return [name, unit, middle(ours), `${middle(theirs)}, ${against}`, ...judged(all, aim, " ×")];
}

const single = (name, all, aim) => [name, "power", "–", "–", ...judged(all, aim, "")];

function judged(all, aim, times) {
  const range = `${told(Math.min(...all), 2)} to ${told(Math.max(...all), 2)}`;
  return [told(median(all), 2) + times, range, `≤ ${aim}${times}`, median(all) <= aim ? "hit" : "missed"];
}
