/** Loaded into each contestant: notes at its end how much of the processor and of memory it took. */
import { readFileSync, writeFileSync } from "node:fs";

process.on("exit", () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  writeFileSync(process.env.BENCH_USAGE, JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1000, memory: (mostOnLinux() ?? maxRSS) / 1024 }));
});

/** In kB, of this program alone: what Node tells counts in what the program that started it held. */
function mostOnLinux() {
  try {
    return Number(/^VmHWM:\s+(\d+) kB$/m.exec(readFileSync("/proc/self/status", "utf8"))[1]);
  } catch {
    return undefined;
  }
}
