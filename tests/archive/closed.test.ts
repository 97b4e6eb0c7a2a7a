/** What once passed without a word: each of these is a record or a bag that someone changed, and that a reader would take for whole. */
import { cpSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { bagged, bagIn, found, hex } from "./make.ts";

const scratch = scratchFolders();
const faultsOf = async (path: string): Promise<string[]> =>
  (await found(path)).filter((text) => text.startsWith("fault")).map((text) => text.replace(`${path}/`, ""));

describe("A folder of parts", () => {
  it.each([[[]], [["--serialise", "zip"]], [["--serialise", "tar.gz"]]])(
    "with any one gone is not whole, to verify or restore: %s",
    async (words) => {
      const folder = scratch();
      const parts = await bagged(folder, { "papers/long.txt": "1".repeat(300_000) }, ["--split", "400 kB", ...words]);
      const names = readdirSync(parts).sort();
      expect(names.length).toBeGreaterThan(2);
      expect(await command(["verify", parts])).toMatchObject({ code: 0, err: "" });
      for (const [index, name] of names.entries()) {
        renameSync(join(parts, name), join(folder, name));
        const says = `bag-info.txt: these are ${names.length - 1} parts of ${names.length}; not here: ${index + 1}\n`;
        expect(await command(["verify", parts])).toMatchObject({ code: 1, err: says });
        expect(await command(["restore", parts, join(folder, "back")])).toMatchObject({ code: 1, err: says });
        renameSync(join(folder, name), join(parts, name));
      }
      expect(readdirSync(folder)).not.toContain("back");
    },
  );

  it("with all but one gone is not whole; that one by itself says so and is sound", async () => {
    const parts = await bagged(scratch(), {}, ["--split", "400 kB"]);
    const [first = "", ...others] = readdirSync(parts).sort();
    for (const name of others) rmSync(join(parts, name), { recursive: true });
    expect(await command(["verify", parts])).toMatchObject({
      code: 1,
      err: expect.stringContaining("this is one part of"),
    });
    expect(await command(["verify", join(parts, first)])).toMatchObject({
      code: 0,
      out: expect.stringContaining("this is one part of"),
    });
  });

  it("of two bags, each sound, is not one; nor is a part that is there twice", async () => {
    const [one, other] = [scratch(), scratch()];
    const parts = await bagged(one, {}, ["--split", "400 kB"]);
    const others = await bagged(other, { "papers/letter.txt": "Another.\n" }, ["--split", "400 kB"]);
    const [first = "", second = ""] = readdirSync(parts).sort();
    expect(readdirSync(others)).toContain(second);
    rmSync(join(parts, second), { recursive: true });
    cpSync(join(others, second), join(parts, second), { recursive: true });
    expect((await command(["verify", parts])).err).toMatch(
      /data\/record\.sha256: is another file in .*: these are not parts of one bag\n/,
    );
    cpSync(join(parts, first), join(parts, `${first}-again`), { recursive: true });
    expect((await command(["verify", parts])).err).toContain("part 1 is here 2 times");
  });

  it("says what else lies in it", async () => {
    const parts = await bagged(scratch(), {}, ["--split", "400 kB"]);
    writeFileSync(join(parts, "READ ME.txt"), "");
    expect((await command(["verify", parts])).out).toContain(
      "READ ME.txt: this lies beside the bags and is none; it was not looked at\n",
    );
  });
});

describe("A manifest", () => {
  const line = `${hex("sha256", "a")}  data/a.txt\n`;
  const of = (second: string, version = "1.0") =>
    found(
      bagIn(join(scratch(), "bag"), {
        files: {
          "data/a.txt": "a",
          "data/b.txt": "b",
          "manifest-sha256.txt": `${line}${second}${hex("sha256", "b")}  data/b.txt\n`,
        },
        declaration: `BagIt-Version: ${version}\nTag-File-Character-Encoding: UTF-8\n`,
      }),
    );

  it.each([line, line.replace("data/", "./data/"), line.toUpperCase().replace("DATA/A.TXT", "data/a.txt")])(
    "of BagIt 1.0 names no file twice: %s",
    async (second) => {
      expect(await of(second)).toContain("fault manifest-sha256.txt:2: data/a.txt stands here twice");
      expect(await of(second, "0.97")).toContain("note manifest-sha256.txt:2: data/a.txt stands here twice");
    },
  );

  it("names no file twice by the two ways of writing a percent sign", async () => {
    const files = { "data/5%.txt": "a" };
    const manifest = `${hex("sha256", "a")}  data/5%.txt\n${hex("sha256", "a")}  data/5%25.txt\n`;
    expect(
      await found(bagIn(join(scratch(), "bag"), { files: { ...files, "manifest-sha256.txt": manifest } })),
    ).toEqual(["fault manifest-sha256.txt:2: data/5%.txt stands here twice"]);
  });
});

describe("A bag of ours", () => {
  it.each([
    [["tagmanifest-sha256.txt", "tagmanifest-sha512.txt"]],
    [["tagmanifest-sha256.txt"]],
    [["tagmanifest-sha256.txt", "tagmanifest-sha512.txt", "bag-info.txt"]],
    [["tagmanifest-sha256.txt", "tagmanifest-sha512.txt", "manifest-sha256.txt"]],
  ])("is not whole without %s", async (names) => {
    const bag = await bagged(scratch());
    for (const name of names) rmSync(join(bag, name));
    expect(await faultsOf(bag)).toEqual(
      expect.arrayContaining(names.map((name) => `fault ${name}: missing: every bag that this program writes has it`)),
    );
  });

  it("is not whole when its tag manifests are gone and it disowns us in bag-info.txt", async () => {
    const bag = await bagged(scratch());
    for (const name of ["tagmanifest-sha256.txt", "tagmanifest-sha512.txt"]) rmSync(join(bag, name));
    writeFileSync(join(bag, "bag-info.txt"), "Bagging-Date: 2020-01-01\n");
    expect(await faultsOf(bag)).toContain(
      "fault bag-info.txt: Payload-Oxum is missing: every bag that this program writes has it",
    );
  });

  it("has no file beside its tag files", async () => {
    const bag = await bagged(scratch());
    writeFileSync(join(bag, "READ-THIS-FIRST.txt"), "");
    expect(await faultsOf(bag)).toEqual([
      "fault READ-THIS-FIRST.txt: unexpected: no bag that this program writes has it",
    ]);
  });

  it("says of an empty folder that nothing vouches for it", async () => {
    const bag = await bagged(scratch());
    mkdirSync(join(bag, "data/record/entries/2021-03-09"));
    expect(await found(bag)).toEqual([
      "note data/record/entries/2021-03-09: an empty folder, which no manifest can vouch for",
    ]);
  });
});

describe("bag-info.txt", () => {
  it.each(["Payload-Oxum: 1.1", "Bag-Count: 1 of 1", "bag-group-identifier: wing"])(
    "says each thing once that is read in it: %s",
    async (line) => {
      const files = { "data/a.txt": "a", "bag-info.txt": `${line}\n${line}\n` };
      expect((await faultsOf(bagIn(join(scratch(), "bag"), { files })))[0]).toMatch(/ stands here more than once$/);
    },
  );
});
