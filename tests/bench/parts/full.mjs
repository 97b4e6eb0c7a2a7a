/** A whole build against other ways of making pages of the same Markdown. */
import { contestants, ELEVENTY, pagesIn, prepare } from "../contestants.mjs";
import { byTurns, inFolder } from "../measure.mjs";
import { told, TIMES, times } from "../table.mjs";

export function full({ entries, rounds, dir }) {
  return inFolder(dir, (work) => {
    prepare(work, entries);
    const all = contestants(work);
    const took = byTurns(all, rounds);
    const rows = all.map(({ name, out }) => {
      const { pages, megabytes } = pagesIn(out(0));
      const [own, yardstick] = [took.get(name), took.get(ELEVENTY)];
      return [
        name,
        String(pages),
        megabytes.toFixed(1),
        ...times(own, yardstick),
        told(own.memory, 0),
        told(own.memory / yardstick.memory, 2),
      ];
    });
    return {
      title: `A whole build of ${entries} entries, medians of ${rounds} rounds by turns`,
      heads: ["", "pages", "MB of HTML", ...TIMES, "MB memory", "ratio"],
      rows,
    };
  });
}
