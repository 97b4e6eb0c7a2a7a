import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

/** Runs a command whose output nobody reads; its exit code, and what it says to the error stream. */
function unread(folder: string, ...words: readonly string[]): { code: string; err: string } {
  const line = `{ "$0" "$@" 3>&1 1>&4 4>&-; echo $? > code; } 4>&1 | true; cat code`;
  const { stdout, stderr } = spawnSync("sh", ["-c", line, process.execPath, COMMAND, ...words], {
    cwd: folder,
    encoding: "utf8",
  });
  return { code: stdout.trim(), err: stderr };
}

it("A command whose reader has left ends what it began, says nothing of it and keeps its exit code", async () => {
  const folder = scratch();
  writeAll(join(folder, "content"), await smallRecord());
  expect(unread(folder, "build")).toEqual({ code: "0", err: "" });
  expect(readdirSync(join(folder, "site"))).toContain("index.html");
  mkdirSync(join(folder, "none"));
  const many = Object.fromEntries(
    Array.from({ length: 400 }, (_, at) => [`entries/2021-01-01-${at}.md`, "---\ncolour: red\n---\n"]),
  );
  writeAll(join(folder, "none"), many);
  expect(unread(folder, "check", "--json", "--content", "none")).toEqual({ code: "1", err: "" });
});
