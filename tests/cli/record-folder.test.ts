import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;
const PROGRAM = new URL("../..", import.meta.url).pathname;
const scratch = scratchFolders();

function run(cwd: string, ...words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...words], { cwd, encoding: "utf8" });
  return { code: status, out: stdout, err: stderr };
}

/** A folder with a record in `plane`, and whatever else. */
async function shed(folder: string): Promise<string> {
  const root = scratch();
  writeAll(join(root, folder), await smallRecord());
  return root;
}

const FINE = {
  code: 0,
  err: "",
  out: expect.stringMatching(/\nNo problems in the record\.\n(?:Without `address:` .*\n)?$/) as string,
};

describe("The record of a command", () => {
  it("is the one that is named, after the command or after --content", async () => {
    const root = await shed("plane");
    expect(run(root, "check", "plane")).toEqual(FINE);
    expect(run(root, "check", "--content", "plane")).toEqual(FINE);
    expect(run(root, "check", "plane", "--content", "plane")).toEqual(FINE);
    expect(run(join(root, "plane", "entries"), "check", "..")).toEqual(FINE);
    expect(run(root, "check", "plane", "--content", "other")).toEqual({
      code: 2,
      out: "",
      err: "The record is named twice: once after the command, once after --content. Leave one out.\n",
    });
    expect(run(root, "check", "plan")).toMatchObject({
      code: 2,
      err: expect.stringContaining("There is no folder plan"),
    });
  });

  it("is the folder that the command runs in, or one above it, or `content` in one of them", async () => {
    const root = await shed("plane");
    for (const place of ["plane", "plane/entries"]) expect(run(join(root, place), "check")).toEqual(FINE);
    const other = await shed("content");
    mkdirSync(join(other, "notes", "deep"), { recursive: true });
    for (const place of [".", "notes", "notes/deep", "content/entries"])
      expect(run(join(other, place), "check")).toEqual(FINE);
  });

  it("is none where no folder above is one, and that is said", () => {
    const empty = scratch();
    expect(run(empty, "check")).toEqual({
      code: 2,
      out: "",
      err: "No record is here or in a folder above: none holds aircraft.md, or content/aircraft.md. Say where the record is: --content DIR\n",
    });
  });

  it("is never the demo that comes with the program, unless it is named, by a link neither", () => {
    const link = join(scratch(), "link");
    symlinkSync(PROGRAM, link);
    for (const place of [PROGRAM, join(PROGRAM, "src"), join(PROGRAM, "content", "entries"), link])
      expect(run(place, "check")).toMatchObject({
        code: 2,
        err: expect.stringContaining("is the demo that comes with Scarfline"),
      });
  });

  it("has what is written put beside it, and nothing into it but schemas and seals", async () => {
    const root = await shed("plane");
    const before = contentOf(join(root, "plane"));
    expect(run(join(root, "plane", "entries"), "build").code).toBe(0);
    expect(existsSync(join(root, "site", "index.html"))).toBe(true);
    expect(contentOf(join(root, "plane"))).toEqual(before);
    expect(run(join(root, "plane", "entries"), "schemas").code).toBe(0);
    expect(existsSync(join(root, "plane", "schemas", "entry.schema.json"))).toBe(true);
    expect(run(join(root, "plane"), "seal")).toMatchObject({ code: 0 });
    expect(run(join(root, "plane", "entries"), "verify")).toMatchObject({ code: 0 });
    expect(run(join(root, "plane", "entries"), "bag")).toMatchObject({ code: 0 });
    expect(existsSync(join(root, "archive"))).toBe(true);
  });
});

describe("Help", () => {
  it("comes for `help`, and for `help` with a command", () => {
    expect(run(scratch(), "help")).toMatchObject({ code: 0, out: expect.stringContaining("Usage: scarfline") });
    expect(run(scratch(), "help", "build")).toMatchObject({
      code: 0,
      out: expect.stringContaining("Usage: scarfline build"),
    });
  });
});
