/** Loaded into each contestant: notes at its end how much of the processor and of memory it took and whether it loaded the library that decodes pictures. */
import { readFileSync, writeFileSync } from "node:fs";

process.on("exit", () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const memory = (mostOnLinux() ?? maxRSS) / 1024;
  const decodes = /libvips/.test(ofThisProcess("maps"));
  writeFileSync(
    process.env.BENCH_USAGE,
    JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1000, memory, decodes }),
  );
});

/** In kB, of this program alone: what Node tells counts in what the program that started it held. */
function mostOnLinux() {
  const told = /^VmHWM:\s+(\d+) kB$/m.exec(ofThisProcess("status"));
  return told === null ? undefined : Number(told[1]);
}

/** What Linux tells of this process; nothing elsewhere. */
function ofThisProcess(name) {
  try {
    return readFileSync(`/proc/self/${name}`, "utf8");
  } catch {
    return "";
  }
}
