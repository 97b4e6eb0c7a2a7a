/** What stands beside, between and after the files in a packed bag. */
import { readFileSync, writeFileSync } from "node:fs";
import { gunzipSync, gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { scratchFolders } from "../publish/scratch.ts";
import { bagged, found } from "./make.ts";

const scratch = scratchFolders();
const faultsOf = async (path: string): Promise<string[]> =>
  (await found(path)).filter((text) => text.startsWith("fault")).map((text) => text.replace(`${path}/`, ""));

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
