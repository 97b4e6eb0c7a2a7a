import { chmodSync, cpSync, mkdtempSync, rmSync } from "node:fs";
import { spawnSync } from "node:child_process";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const SMALL = new URL("../record/small", import.meta.url).pathname;
const ROOT = new URL("../..", import.meta.url).pathname;
const NOBODY = 65534;

/** What somebody sees who may not read one path of a record. Root may read anything, so root asks as nobody. */
function saidWithout(path: string): string {
  const folder = mkdtempSync(join(tmpdir(), "scarfline-locked-"));
  try {
    cpSync(SMALL, folder, { recursive: true });
    chmodSync(folder, 0o755);
    chmodSync(join(folder, path), 0);
    const who = process.getuid?.() === 0 ? { uid: NOBODY, gid: NOBODY } : {};
    const { status, stderr } = spawnSync(
      process.execPath,
      [join(ROOT, ".build/cli.js"), "check", "--content", folder],
      { ...who, cwd: folder, encoding: "utf8" },
    );
    expect(status).toBe(1);
    return stderr;
  } finally {
    chmodSync(join(folder, path), 0o755);
    rmSync(folder, { recursive: true });
  }
}

describe("What may not be read", () => {
  it.each([
    ["a folder", "papers", "papers:1:1  this folder cannot be read  [unreadable]"],
    ["the record's own folder", ".", ".:1:1  this folder cannot be read  [unreadable]"],
    ["a file of the record", "lots/S-1.md", "lots/S-1.md:1:1  this file cannot be read  [unreadable]"],
    ["a photograph", "photos/outside.png", "aircraft.md:15:16  this file cannot be read  [unreadable]"],
    ["a paper", "papers/invoice.txt", "this file cannot be read  [unreadable]"],
  ])("is told as a problem: %s", (_, path, text) => {
    expect(saidWithout(path)).toContain(text);
  });
});
