import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";
import { found } from "./make.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

/** Runs work on a disk of so many bytes, which root can mount. */
async function onSmallDisk(size: string, work: (disk: string) => Promise<void>): Promise<void> {
  const disk = join(scratch(), "disk");
  mkdirSync(disk);
  execFileSync("mount", ["-t", "tmpfs", "-o", `size=${size}`, "tmpfs", disk]);
  try {
    await work(disk);
  } finally {
    execFileSync("umount", [disk]);
  }
}

function run(cwd: string, ...words: string[]): { code: number | null; err: string } {
  const { status, stderr } = spawnSync(process.execPath, [COMMAND, ...words], { cwd, encoding: "utf8" });
  return { code: status, err: stderr };
}

const FULL = {
  code: 74,
  err: expect.stringMatching(
    /^The disk is full: ENOSPC.*\nThe record, and what was written earlier, are as they were\.\n$/,
  ),
};

it("A full disk is told, and what stood there before stands: bag, site and seals", { timeout: 120_000 }, async () => {
  const folder = scratch();
  writeAll(join(folder, "content"), await smallRecord());
  await onSmallDisk("2m", async (disk) => {
    const content = join(disk, "content");
    writeAll(content, await smallRecord());
    expect(run(folder, "seal", "--content", content, "--date", "2021-04-01").code).toBe(0);
    expect(run(folder, "bag", "--content", content, "--out", join(disk, "archive")).code).toBe(0);
    const before = contentOf(disk);
    writeAll(content, {
      "entries/2021-03-12-new.md": "---\ndate: 2021-03-12\ntitle: A new day\nassembly: fin\n---\nNew.\n",
    });
    const record = contentOf(content);
    execFileSync("sh", ["-c", "cat /dev/zero > filler 2> /dev/null; true"], { cwd: disk });
    expect(run(folder, "seal", "--content", content, "--date", "2021-05-01")).toEqual(FULL);
    expect(contentOf(content)).toEqual(record);
    for (const words of [["bag"], ["bag", "--serialise", "zip"], ["bag", "--serialise", "tar.gz"]]) {
      expect(run(folder, ...words, "--content", content, "--out", join(disk, "archive"))).toEqual(FULL);
      expect(readdirSync(join(disk, "archive"))).toEqual(["stub-2021-03-09"]);
    }
    expect(run(folder, "restore", join(disk, "archive/stub-2021-03-09"), join(disk, "back"))).toEqual(FULL);
    expect(readdirSync(disk).sort()).toEqual(["archive", "content", "filler"]);
    execFileSync("rm", ["filler"], { cwd: disk });
    const after = contentOf(disk);
    after.delete("content/entries/2021-03-12-new.md");
    expect(after).toEqual(before);
    expect(await found(join(disk, "archive/stub-2021-03-09"))).toEqual([]);
  });
});

it("A site on a disk that fills up stays as it was", { timeout: 120_000 }, async () => {
  const folder = scratch();
  writeAll(join(folder, "content"), await smallRecord());
  await onSmallDisk("1500k", async (disk) => {
    expect(run(folder, "build", "--fresh", "--out", join(disk, "site")).code).toBe(0);
    const before = contentOf(join(disk, "site"));
    execFileSync("sh", ["-c", "cat /dev/zero > filler 2> /dev/null; true"], { cwd: disk });
    writeAll(join(folder, "content"), {
      "entries/2021-03-12-new.md": "---\ndate: 2021-03-12\ntitle: A new day\nassembly: fin\n---\nNew.\n",
    });
    expect(run(folder, "build", "--fresh", "--out", join(disk, "site"))).toEqual(FULL);
    expect(contentOf(join(disk, "site"))).toEqual(before);
    expect(readdirSync(disk).sort()).toEqual(["filler", "site"]);
  });
});
