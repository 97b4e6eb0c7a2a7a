/** Loaded into each contestant: notes at its end how much of the processor and of memory it took. */
import { writeFileSync } from "node:fs";

process.on("exit", () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  writeFileSync(process.env.BENCH_USAGE, JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1000, memory: maxRSS / 1024 }));
});
