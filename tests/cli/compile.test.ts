import { spawn, spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { scratchFolders } from "../publish/scratch.ts";

const ROOT = new URL("../..", import.meta.url).pathname;
const scratch = scratchFolders();

it("A command that runs while the program is compiled anew finds a whole program, the old or the new", async () => {
  const folder = scratch();
  for (const name of ["src", "layouts", "package.json", ".build"])
    cpSync(join(ROOT, name), join(folder, name), { recursive: true });
  symlinkSync(join(ROOT, "node_modules"), join(folder, "node_modules"));
  mkdirSync(join(folder, "empty"));
  const compiling = spawn(process.execPath, ["src/compile.mjs"], { cwd: folder });
  let done = false;
  const ended = new Promise<number | null>((resolve) => compiling.on("exit", (code) => resolve(code)));
  void ended.then(() => (done = true));
  let runs = 0;
  while (!done) {
    const run = spawnSync(process.execPath, [".build/cli.js", "check", "--content", "empty"], {
      cwd: folder,
      encoding: "utf8",
    });
    expect(run.stderr).toContain("the record's folder is empty");
    expect(run.status).toBe(1);
    runs += 1;
    await new Promise((resolve) => setImmediate(resolve));
  }
  expect(await ended).toBe(0);
  expect(runs).toBeGreaterThan(0);
  expect(
    readdirSync(join(folder, ".build"), { recursive: true, encoding: "utf8" }).filter((name) => /\.\d+$/.test(name)),
  ).toEqual([]);
  expect(existsSync(join(folder, ".build/styles"))).toBe(true);
});
