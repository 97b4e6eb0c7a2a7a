import { execFileSync, spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { expect, it } from "vitest";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

/** Kills a build so many milliseconds after it began, as a power cut would. */
async function killed(folder: string, after: number): Promise<void> {
  const build = spawn(process.execPath, [COMMAND, "build", "--fresh"], { cwd: folder, stdio: "ignore" });
  const ended = new Promise((done) => build.once("exit", done));
  await pause(after);
  build.kill("SIGKILL");
  await ended;
}

it("A build killed at any time leaves the former site whole or the new one, and the next build leaves nothing beside it", async () => {
  const folder = scratch();
  const run = (): Map<string, string> => {
    execFileSync(process.execPath, [COMMAND, "build", "--fresh"], { cwd: folder, stdio: "ignore" });
    return contentOf(join(folder, "site"));
  };
  const record = await smallRecord();
  writeAll(join(folder, "content"), record);
  const former = run();
  writeAll(join(folder, "content"), {
    "entries/2021-03-12-new.md": "---\ndate: 2021-03-12\ntitle: A new day\nassembly: fin\n---\nNew.\n",
  });
  const found: Map<string, string>[] = [];
  for (const after of [60, 200, 300, 350, 400, 450, 500, 600]) {
    await killed(folder, after);
    found.push(contentOf(join(folder, "site")));
  }
  const renewed = run();
  expect(renewed.get("entries.html")).toContain("A new day");
  for (const site of found) expect([former, renewed]).toContainEqual(site);
  expect(readdirSync(folder).sort()).toEqual([".cache", "content", "site"]);
});
