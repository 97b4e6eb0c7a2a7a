/** Preloaded by a test: kills the process at the n-th step that changes the disk, before or after it, or tells how many steps there were. */
import childProcess from "node:child_process";
import sync, { writeFileSync } from "node:fs";
import fs from "node:fs/promises";
import { syncBuiltinESMExports } from "node:module";

const at = Number(process.env.KILL_AT ?? "Infinity");
let steps = 0;

function counted(holder, name, isStep = () => true) {
  const original = holder[name];
  holder[name] = async function (...words) {
    if (!isStep(...words)) return original.apply(this, words);
    steps += 1;
    if (steps === at) process.kill(process.pid, "SIGKILL");
    const result = await original.apply(this, words);
    steps += 1;
    if (steps === at) process.kill(process.pid, "SIGKILL");
    return result;
  };
}

/** The same for what does not wait its turn. */
function countedAtOnce(holder, name) {
  const original = holder[name];
  holder[name] = function (...words) {
    steps += 1;
    if (steps === at) process.kill(process.pid, "SIGKILL");
    const result = original.apply(this, words);
    steps += 1;
    if (steps === at) process.kill(process.pid, "SIGKILL");
    return result;
  };
}

const handle = await fs.open("/dev/null");
for (const name of ["writeFile", "sync", "chmod"]) counted(Object.getPrototypeOf(handle), name);
await handle.close();
for (const name of ["rename", "rm", "mkdir", "rmdir"]) counted(fs, name);
counted(fs, "open", (_path, flags) => typeof flags === "number" && flags !== 0);
countedAtOnce(sync, "renameSync");
countedAtOnce(childProcess, "spawnSync");
syncBuiltinESMExports();
process.on("exit", () => {
  if (process.env.STEPS_TO) writeFileSync(process.env.STEPS_TO, String(steps));
});
