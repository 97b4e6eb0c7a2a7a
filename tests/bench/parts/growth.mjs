/** How time and memory of a whole build grow with the record. */
import { contestants, ELEVENTY, OURS, pagesIn, prepare } from "../contestants.mjs";
import { byTurns, inFolder } from "../measure.mjs";
import { slope, told } from "../table.mjs";

/** A whole build of so many entries and Eleventy's of the same. */
export function measureSize(size, rounds, dir) {
  return inFolder(dir, (work) => {
    prepare(work, size);
    const all = contestants(work).filter(({ name }) => name === OURS || name === ELEVENTY);
    const took = byTurns(all, rounds);
    return { size, ours: took.get(OURS), eleventy: took.get(ELEVENTY), ...pagesIn(all[0].out(0)) };
  });
}

export async function growth({ sizes, rounds, dir }) {
  const points = [];
  for (const size of sizes) {
    points.push(await measureSize(size, rounds, dir));
  }
  const exponent = slope(points.map(({ size, ours }) => [Math.log(size), Math.log(ours.cpu)]));
  return {
    title: `Growth with the record, medians of ${rounds} rounds`,
    points,
    heads: [
      "entries",
      "our pages",
      "our CPU s",
      "Eleventy CPU s",
      "ratio",
      "our MB memory",
      "Eleventy MB memory",
      "ratio",
    ],
    rows: points.map(({ size, pages, ours, eleventy }) => [
      String(size),
      String(pages),
      told(ours.cpu, 2),
      told(eleventy.cpu, 2),
      told(ours.cpu / eleventy.cpu, 2),
      told(ours.memory, 0),
      told(eleventy.memory, 0),
      told(ours.memory / eleventy.memory, 2),
    ]),
    notes: [
      `Our processor time grows with the entries to the power of ${exponent.toFixed(2)}, by least squares through the logarithms.`,
    ],
  };
}
