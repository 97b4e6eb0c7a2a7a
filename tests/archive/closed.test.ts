/** What once passed without a word: each of these is a record or a bag that someone changed, and that a reader would take for whole. */
import {
  appendFileSync,
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { bagged, bagIn, found, hex, recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const ENTRY = "entries/2021-03-08-second.md";
const sealOn = (content: string, date: string, ...more: string[]) =>
  command(["seal", "--content", content, "--date", date, ...more]);
const faultsOf = async (path: string): Promise<string[]> =>
  (await found(path)).filter((text) => text.startsWith("fault")).map((text) => text.replace(`${path}/`, ""));

describe("verify --signers", () => {
  /** A record whose one seal is signed, the key, and the file of its signer. */
  async function signed(): Promise<{ content: string; signers: string; key: string; folder: string }> {
    const folder = scratch();
    const content = await recordIn(folder);
    const key = keyIn(folder, "builder");
    const signers = join(folder, "signers");
    writeFileSync(signers, `ansa@example.org ${readFileSync(`${key}.pub`, "utf8")}`);
    await sealOn(content, "2021-04-01", "--sign", key);
    return { content, signers, key, folder };
  }

  function keyIn(folder: string, name: string): string {
    const key = join(folder, name);
    tool("ssh-keygen", ["-q", "-t", "ed25519", "-N", "", "-C", name, "-f", key], folder);
    return key;
  }

  const checked = (content: string, signers: string) => command(["verify", content, "--signers", signers]);

  it("holds a signed record for what it is", async () => {
    const { content, signers } = await signed();
    expect(await checked(content, signers)).toMatchObject({
      code: 0,
      err: "",
      out: expect.stringContaining(
        `what was sealed is as it was, and each seal is signed by one of those in ${signers}.`,
      ),
    });
  });

  it("finds out the record that was sealed anew without a key after a change", async () => {
    const { content, signers } = await signed();
    rmSync(join(content, "seals"), { recursive: true });
    rmSync(join(content, "seals.txt"));
    appendFileSync(join(content, ENTRY), "\nIt weighed less.\n");
    await sealOn(content, "2021-04-01");
    expect(await checked(content, signers)).toMatchObject({
      code: 1,
      err: expect.stringMatching(
        /^seals\/2021-04-01\.sig: missing: the seal of 2021-04-01 is not signed by one of those in /,
      ),
    });
  });

  it("finds out seals that are gone, a signature that is gone, and seals after the signed one that are not signed", async () => {
    const { content, signers, folder } = await signed();
    const bare = join(folder, "bare");
    cpSync(content, bare, { recursive: true });
    rmSync(join(bare, "seals"), { recursive: true });
    rmSync(join(bare, "seals.txt"));
    expect(await checked(bare, signers)).toMatchObject({
      code: 1,
      err: `seals.txt: there is no seal, so none is signed by one of those in ${signers}\n`,
    });
    appendFileSync(join(content, ENTRY), "\nMore.\n");
    await sealOn(content, "2021-05-01");
    expect((await checked(content, signers)).err).toMatch(/^seals\/2021-05-01\.sig: missing/);
    rmSync(join(content, "seals/2021-04-01.sig"));
    expect((await checked(content, signers)).err.split("\n")).toHaveLength(3);
  });

  it("finds out a seal signed by another key, for another use, or of another text", async () => {
    const { content, signers, key, folder } = await signed();
    const file = join(content, "seals/2021-04-01.sig");
    const list = readFileSync(join(content, "seals.txt"), "utf8");
    const other = keyIn(folder, "other");
    for (const [by, use, text] of [
      [other, "scarfline-seal", list],
      [key, "file", list],
      [key, "scarfline-seal", `${list}\n`],
    ] as const) {
      writeFileSync(file, tool("ssh-keygen", ["-Y", "sign", "-f", by, "-n", use], folder, text).out);
      expect(await checked(content, signers)).toMatchObject({ code: 1, err: expect.stringContaining("does not hold") });
    }
  });

  it("lets whoever holds the key sign a seal afterwards, by the very line it says", async () => {
    const { content, signers, key } = await signed();
    appendFileSync(join(content, ENTRY), "\nMore.\n");
    await sealOn(content, "2021-05-01");
    const { err } = await checked(content, signers);
    const line = err.slice(err.indexOf("head -n"), -1).replace("KEY", key);
    expect(tool("sh", ["-c", line], content).code).toBe(0);
    expect(await checked(content, signers)).toMatchObject({ code: 0, err: "" });
  });

  it("says when the file of signers is not there or names nobody", async () => {
    const { content, folder } = await signed();
    expect(await checked(content, join(folder, "none"))).toMatchObject({
      code: 2,
      err: expect.stringContaining("The file of allowed signers cannot be read"),
    });
    writeFileSync(join(folder, "empty"), "# nobody yet\n\n");
    expect(await checked(content, join(folder, "empty"))).toMatchObject({
      code: 2,
      err: expect.stringContaining("names no signer"),
    });
  });
});

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

describe("After the end of a tar.gz", () => {
  async function packed(): Promise<{ path: string; bytes: Buffer; tar: Buffer }> {
    const path = await bagged(scratch(), {}, ["--serialise", "tar.gz"]);
    const bytes = readFileSync(path);
    return { path, bytes, tar: gunzipSync(bytes) };
  }

  it("nothing may stand: a second gzip member, an empty one, zeros, or other bytes", async () => {
    const { path, bytes, tar } = await packed();
    for (const more of [
      gzipSync(tar),
      gzipSync(""),
      Buffer.alloc(512),
      Buffer.alloc(1),
      Buffer.from("more"),
      bytes.subarray(0, 20),
    ]) {
      writeFileSync(path, Buffer.concat([bytes, more]));
      expect(await faultsOf(path)).toEqual([
        `fault ${path}: this archive goes on after the end of its gzip, and some tools would read more of it than others; no more of it was read`,
      ]);
    }
  });

  it("its own sum holds, and its tar has nothing after its end but zeros", async () => {
    const { path, bytes, tar } = await packed();
    const wrong = Buffer.from(bytes);
    wrong.writeUInt32LE(1, wrong.length - 8);
    writeFileSync(path, wrong);
    expect((await faultsOf(path))[0]).toContain("does not unpack to what it was made of");
    for (const more of [
      tar,
      tar.subarray(0, 512),
      Buffer.from("x"),
      Buffer.concat([Buffer.alloc(700), Buffer.from("x")]),
    ]) {
      writeFileSync(path, gzipSync(Buffer.concat([tar, more])));
      expect((await faultsOf(path))[0], `${more.length}`).toContain(
        "holds something after its end, which some tools would read",
      );
    }
    writeFileSync(path, gzipSync(Buffer.concat([tar, Buffer.alloc(10_240)])));
    expect(await found(path)).toEqual([]);
    writeFileSync(path, gzipSync(bytes));
    expect((await faultsOf(path))[0]).toContain("is packed by gzip twice");
  });

  it("its mark is missed, and one empty block in the middle is no mark", async () => {
    const { path, tar } = await packed();
    const end = tar.length - 1024;
    writeFileSync(path, gzipSync(tar.subarray(0, end)));
    expect(await found(path)).toEqual([
      `note ${path}: this tar has no mark at its end, so nothing in it shows that it was not cut off`,
    ]);
    writeFileSync(
      path,
      gzipSync(Buffer.concat([tar.subarray(0, end), Buffer.alloc(512), tar.subarray(0, end), Buffer.alloc(1024)])),
    );
    expect((await faultsOf(path)).at(-1)).toContain("goes on after an empty block, where some tools stop reading");
  });
});

describe("In a zip", () => {
  async function changed(change: (bytes: Buffer) => Buffer): Promise<string[]> {
    const path = await bagged(scratch(), {}, ["--serialise", "zip"]);
    writeFileSync(path, change(readFileSync(path)));
    return (await found(path)).map((text) => text.replace(path, "BAG"));
  }
  const LOCAL = Buffer.from("PK\u0003\u0004");
  const LIST = Buffer.from("PK\u0001\u0002");
  const END = Buffer.from("PK\u0005\u0006");

  it("nothing may stand before the files, between them and the list, or after it", async () => {
    const shifted = (bytes: Buffer, by: number): Buffer => {
      const end = bytes.lastIndexOf(END);
      const moved = Buffer.concat([
        bytes.subarray(0, bytes.indexOf(LIST)),
        Buffer.alloc(by, "x"),
        bytes.subarray(bytes.indexOf(LIST)),
      ]);
      moved.writeUInt32LE(bytes.readUInt32LE(end + 16) + by, end + by + 16);
      return moved;
    };
    expect(await changed((bytes) => shifted(bytes, 40))).toEqual([
      "fault BAG: this archive holds bytes before its list that the list does not know; no more of it was read",
    ]);
    expect(
      await changed((bytes) => {
        const end = bytes.lastIndexOf(END);
        return Buffer.concat([bytes.subarray(0, end), Buffer.alloc(30, "x"), bytes.subarray(end)]);
      }),
    ).toEqual([
      "fault BAG: this archive holds bytes after its list that the list does not know; no more of it was read",
    ]);
    expect((await changed((bytes) => Buffer.concat([bytes, Buffer.from("more")])))[0]).toMatch(
      /^fault BAG: this archive is damaged/,
    );
  });

  it("a file that the list leaves out does not pass unseen", async () => {
    const told = await changed((bytes) => {
      const first = bytes.indexOf(LIST);
      const second = bytes.indexOf(LIST, first + 4);
      const end = bytes.lastIndexOf(END);
      const less = Buffer.concat([bytes.subarray(0, first), bytes.subarray(second)]);
      const at = end - (second - first);
      less.writeUInt16LE(bytes.readUInt16LE(end + 8) - 1, at + 8);
      less.writeUInt16LE(bytes.readUInt16LE(end + 10) - 1, at + 10);
      less.writeUInt32LE(bytes.readUInt32LE(end + 12) - (second - first), at + 12);
      return less;
    });
    expect(told[0]).toMatch(/^fault BAG: this archive holds bytes before \S+ that its list does not know/);
  });

  it("the head of a file and the list say the same of it", async () => {
    const told = await changed((bytes) => {
      const at = bytes.indexOf(LOCAL) + 30;
      bytes.write("X", at + bytes.readUInt16LE(at - 4) - 1);
      return bytes;
    });
    expect(told[0]).toMatch(/says otherwise of \S+ in its list than at the file itself/);
  });

  it("no file needs a later unzip than there is, which would leave it out", async () => {
    const told = await changed((bytes) => {
      bytes.writeUInt16LE(84, bytes.lastIndexOf(LIST) + 6);
      return bytes;
    });
    expect(told[0]).toMatch(/says that \S+ needs a later unzip than there is; some tools would leave it out/);
  });

  it("a comment is told", async () => {
    const told = await changed((bytes) => {
      const end = bytes.lastIndexOf(END);
      bytes.writeUInt16LE(4, end + 20);
      return Buffer.concat([bytes, Buffer.from("note")]);
    });
    expect(told).toEqual(["note .: this zip has a comment, which no manifest vouches for"]);
  });
});
