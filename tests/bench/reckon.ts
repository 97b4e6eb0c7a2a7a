/** `tsx tests/bench/reckon.ts FOLDER ROUNDS`: reads a record, reckons it so many times and tells what that took, as JSON. */
import { reckon } from "../../src/evidence/evidence.ts";
import { readRecord } from "../../src/record/read.ts";

const [folder = "", rounds = "3"] = process.argv.slice(2);
const read = await readRecord(folder, { today: "2300-01-01" });
if ("problems" in read) throw new Error(JSON.stringify(read.problems.slice(0, 3)));
const { record } = read;
const times: number[] = [];
let findings = 0;
for (let round = 0; round < Number(rounds); round += 1) {
  // What an earlier round left behind is not this one's work.
  globalThis.gc?.();
  const before = process.cpuUsage();
  findings = reckon(record).findings.length;
  const { user, system } = process.cpuUsage(before);
  times.push((user + system) / 1e6);
}
const cpu = times.sort((a, b) => a - b)[Math.floor(times.length / 2)];
process.stdout.write(
  JSON.stringify({ cpu, findings, rows: record.climate.reduce((sum, log) => sum + log.times.length, 0) }),
);
