import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { bagIn, linkIn, recordIn } from "./make.ts";

const scratch = scratchFolders();

describe("The commands of the archive", () => {
  it.each(["seal", "verify", "bag", "restore"])(
    "tell in their help what they do, with examples and exit codes: %s",
    async (name) => {
      const { code, out } = await command([name, "--help"]);
      expect(code).toBe(0);
      expect(out).toContain(`Examples:\n  scarfline ${name}`);
      expect(out).toContain("faults in what was verified");
    },
  );

  it("say what is at a path that holds neither a record nor a bag", async () => {
    const folder = scratch();
    writeAll(folder, { "empty/note.txt": "n", "note.txt": "n" });
    expect(await command(["verify", join(folder, "gone")])).toMatchObject({
      code: 2,
      err: expect.stringContaining(`There is nothing at ${join(folder, "gone")}.`),
    });
    expect(await command(["verify", join(folder, "empty")])).toMatchObject({
      code: 2,
      err: expect.stringContaining("holds neither a bag (no bagit.txt) nor a record (no aircraft.md)"),
    });
    expect(await command(["verify", join(folder, "note.txt")])).toMatchObject({
      code: 2,
      err: expect.stringContaining("is neither a .zip nor a .tar.gz"),
    });
    expect(await command(["restore", join(folder, "empty"), join(folder, "back")])).toMatchObject({ code: 2 });
  });

  it("tell faults to the error stream, notes and the sum to the other, and all of it as JSON", async () => {
    const bag = bagIn(join(scratch(), "bag"), { files: { "data/a.txt": "a", "data/b.txt": "b" }, algorithms: ["md5"] });
    writeFileSync(join(bag, "data/a.txt"), "c");
    const note = "manifest-md5.txt: its algorithm shows a mistake, but not a change that someone made with skill\n";
    expect(await command(["verify", bag])).toEqual({
      code: 1,
      err: "data/a.txt: changed: its bytes are not those that manifest-md5.txt vouches for\n",
      out: `${note}The bag: 4 files, 2 bytes checked; 1 fault.\n`,
    });
    const { code, out } = await command(["verify", "--json", bag]);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toEqual({
      path: bag,
      faults: 1,
      untold: [],
      findings: [
        { kind: "not checked", severity: "note", place: "manifest-md5.txt", message: note.slice(18, -1) },
        {
          kind: "changed",
          severity: "fault",
          place: "data/a.txt",
          message: "changed: its bytes are not those that manifest-md5.txt vouches for",
        },
      ],
    });
  });

  it.each([[[]], [["--split", "600 kB"]], [["--serialise", "zip"]]])(
    "count the files and bytes of a bag alike, when it is written (%j) and when it is checked",
    async (words) => {
      const folder = scratch();
      const content = await recordIn(folder);
      const out = join(folder, "archive");
      const wrote = (await command(["bag", "--content", content, "--out", out, ...words])).out;
      const counted = /\d+ files, [\d.]+ \S?B/.exec(wrote)?.[0] ?? "none";
      const path = join(out, readdirSync(out)[0] ?? "");
      expect((await command(["verify", path])).out).toContain(`${counted} checked; nothing is missing`);
    },
  );

  it("bring nothing back from a bag without a record, or with a link in it", async () => {
    const folder = scratch();
    const bag = bagIn(join(folder, "bag"), { files: { "data/a.txt": "a" } });
    expect(await command(["restore", bag, join(folder, "back")])).toMatchObject({
      code: 2,
      err: "There is no record in it: no data/record/aircraft.md.\n",
    });
    linkIn(bag, "data/passwd", "/etc/passwd");
    expect(await command(["restore", bag, join(folder, "back")])).toMatchObject({
      code: 1,
      err: "data/passwd: this is a symbolic link, not a file; it was not followed\n",
    });
  });
});
