/** What a record proves, reckoned in one pass: how its time grows with batches and rows of a logger. Files are read before. */
import { join } from "node:path";
import { inFolder, measuredReckoning } from "../measure.mjs";
import { BATCHES_EVERY, writeClimate, writeRecord } from "../record.mjs";
import { slope, told } from "../table.mjs";

/** One in 6 h: rows that lie further apart prove nothing of the time between. */
const ROWS_PER_BATCH = 12;
/** What n log n has between the least and the greatest of these sizes, as a power of n. */
const powerOf = (sizes) => slope(sizes.map((n) => [Math.log(n), Math.log(n * Math.log(n))]));

export async function reckoning({ batches, rounds, dir }) {
  const points = [];
  for (const size of batches) {
    points.push(
      await inFolder(dir, (work) => {
        const measured = (thermometers) => {
          const content = join(work, thermometers ? "with" : "without");
          writeRecord(content, size * BATCHES_EVERY, { thermometers });
          writeClimate(content, size * BATCHES_EVERY, size * ROWS_PER_BATCH);
          return measuredReckoning(content, rounds);
        };
        return { size, without: measured(false).cpu, ...measured(true) };
      }),
    );
  }
  const power = slope(points.map(({ size, cpu }) => [Math.log(size), Math.log(cpu)]));
  return {
    title: `Reckoning alone, medians of ${rounds} rounds`,
    heads: ["batches", "rows of climate", "findings", "CPU s", "µs a batch", "without thermometers, CPU s"],
    rows: points.map(({ size, rows, findings, cpu, without }) => [
      String(size),
      String(rows),
      String(findings),
      told(cpu, 2),
      told((cpu / size) * 1e6, 0),
      told(without, 2),
    ]),
    notes: [
      `It grows to the power of ${told(power, 2)}, by least squares through the logarithms; n log n over these sizes to that of ${told(powerOf(batches), 2)}.`,
    ],
  };
}
