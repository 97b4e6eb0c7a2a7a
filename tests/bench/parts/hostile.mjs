/** What is made to stop the program: how the time of reading grows up to each limit, and that beyond it little is done. */
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { root } from "../measure.mjs";
import { slope, told } from "../table.mjs";

export async function hostile() {
  const words = ["--expose-gc", "--import", "tsx", join(root, "tests/bench/hostile-read.ts")];
  const results = JSON.parse(
    execFileSync(process.execPath, words, { cwd: root, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] }),
  );
  return {
    title: "Input made to stop the program, best of three rounds",
    heads: ["", "most", "CPU s at a quarter", "at half", "at the most", "grows as n to the", "at ten times"],
    rows: results.map(({ name, unit, most, sizes, cpu }) => [
      name,
      `${most} ${unit}`,
      ...[0, 1, 2].map((at) => told(cpu[at], 3)),
      told(slope([0, 1, 2].map((at) => [Math.log(sizes[at]), Math.log(cpu[at])])), 2),
      told(cpu[3], 3),
    ]),
    notes: [
      "The small record of the tests is read each time, and with it one such file. Ten times as much is told as a problem with the code `limit`.",
    ],
  };
}
