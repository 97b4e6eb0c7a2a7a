import { createWriteStream, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pipeline } from "node:stream/promises";
import { gzipSync } from "node:zlib";
import { Header } from "tar";
import { describe, expect, it } from "vitest";
import { ZipFile } from "yazl";
import { scratchFolders } from "../publish/scratch.ts";
import { bagIn, found, hex, tool } from "./make.ts";

const scratch = scratchFolders();

interface Inside {
  readonly path: string;
  readonly text?: string;
  readonly type?: "File" | "SymbolicLink" | "Link" | "CharacterDevice";
  readonly link?: string;
}

/** The files of a sound bag in a folder `bag/`. */
function sound(more: string = ""): Inside[] {
  const manifest = `${hex("sha256", "a")}  data/a.txt\n${more}`;
  return [
    { path: "bag/bagit.txt", text: "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n" },
    { path: "bag/data/a.txt", text: "a" },
    { path: "bag/manifest-sha256.txt", text: manifest },
  ];
}

/** A tar by its headers alone, so that it can hold what no careful program writes. */
function tarOf(files: readonly Inside[]): Buffer {
  const blocks = files.flatMap(({ path, text = "", type = "File", link = "" }) => {
    const head = new Header({
      path,
      mode: 0o644,
      size: Buffer.byteLength(text),
      type,
      linkpath: link,
      mtime: new Date(0),
    });
    const block = Buffer.alloc(512);
    head.encode(block, 0);
    return [block, Buffer.from(text), Buffer.alloc((512 - (Buffer.byteLength(text) % 512)) % 512)];
  });
  return Buffer.concat([...blocks, Buffer.alloc(1024)]);
}

async function ofTar(files: readonly Inside[]): Promise<string[]> {
  const path = join(scratch(), "bag.tar.gz");
  writeFileSync(path, gzipSync(tarOf(files)));
  return (await found(path)).map((text) => text.replace(path, "BAG"));
}

/** A zip, with names put in place of as many letters after it is made, since no careful program writes them. */
async function zipOf(files: readonly Inside[], rename: readonly (readonly [string, string])[] = []): Promise<string> {
  const path = join(scratch(), "bag.zip");
  const zip = new ZipFile();
  for (const { path: name, text = "", type } of files)
    zip.addBuffer(Buffer.from(text), name, { mode: type === "SymbolicLink" ? 0o120777 : 0o100644 });
  zip.end();
  await pipeline(zip.outputStream, createWriteStream(path));
  let bytes = readFileSync(path, "latin1");
  for (const [from, to] of rename) bytes = bytes.replaceAll(from, to);
  writeFileSync(path, bytes, "latin1");
  return path;
}

async function ofZip(files: readonly Inside[], rename: readonly (readonly [string, string])[] = []): Promise<string[]> {
  const path = await zipOf(files, rename);
  return (await found(path)).map((text) => text.replace(path, "BAG"));
}

describe("A bag in a tar", () => {
  it("is read as it is, and compressed", async () => {
    expect(await ofTar(sound())).toEqual([]);
    const plain = join(scratch(), "bag.tar");
    writeFileSync(plain, tarOf(sound()));
    expect(await found(plain)).toEqual([]);
  });

  it.each<[Inside, string]>([
    [{ path: "../up.txt", text: "x" }, "fault ../up.txt: this path leads out of its folder with `..`; it was not read"],
    [
      { path: "/etc/passwd", text: "x" },
      "fault /etc/passwd: this path begins at the root of the disk; it was not read",
    ],
    [
      { path: "bag/data/link", type: "SymbolicLink", link: "/etc/passwd" },
      "fault bag/data/link: this is a symbolic link, not a file; it was not followed",
    ],
    [
      { path: "bag/data/hard", type: "Link", link: "bag/data/a.txt" },
      "fault bag/data/hard: this is a link to another file of the archive, not a file; it was not followed",
    ],
    [
      { path: "bag/data/tty", type: "CharacterDevice" },
      "fault bag/data/tty: this is of a kind that no record has (CharacterDevice), not a file; it was not followed",
    ],
    [{ path: "bag/data/a.txt", text: "other" }, "fault bag/data/a.txt: this name stands here twice"],
    [
      { path: "bag/data/A.TXT", text: "a" },
      "fault bag/data/a.txt: this name and bag/data/A.TXT differ only in capital letters; on many disks they are one file",
    ],
    [
      { path: "bag/data/a.txt/b", text: "b" },
      "fault bag/data/a.txt/b: bag/data/a.txt is a file and also a folder that this lies in",
    ],
    [{ path: "bag/data/new.txt", text: "b" }, "fault data/new.txt: unexpected: no manifest vouches for it"],
    [
      { path: "beside.txt", text: "b" },
      "fault .: the bag does not lie in one folder of its own within the archive, as RFC 8493 asks",
    ],
  ])("is told what is unsafe in it: %o", async (inside, says) => {
    const told = await ofTar([inside, ...sound()]);
    expect(
      told.map((text) =>
        text.replace("bag/data/A.TXT: this name and bag/data/a.txt", "bag/data/a.txt: this name and bag/data/A.TXT"),
      ),
    ).toContain(says);
  });

  it.each([0.2, 0.5, 0.8, 0.99])("is told to be damaged when it is cut off at %d of its length", async (share) => {
    const path = join(scratch(), "bag.tar.gz");
    const whole = gzipSync(tarOf(sound()));
    writeFileSync(path, whole.subarray(0, Math.floor(whole.length * share)));
    expect((await found(path)).join("\n")).toMatch(/fault .*bag\.tar\.gz: this archive is damaged: /);
  });

  it("is told to be a trap when it unpacks to far more than it has bytes", async () => {
    const path = join(scratch(), "bag.tar.gz");
    writeFileSync(
      path,
      gzipSync(tarOf([...sound(), { path: "bag/data/zeros", text: "\0".repeat(64 * 1024 * 1024) }]), { level: 9 }),
    );
    expect((await found(path)).join("\n")).toContain(
      "bag.tar.gz: this archive is damaged: it unpacks to more than 1000 times its size",
    );
  });
});

describe("A bag in a zip", () => {
  it("is read", async () => {
    expect(await ofZip(sound())).toEqual([]);
  });

  it.each([
    [
      "bag/data/uu/up.txt",
      "bag/data/../up.txt",
      "fault bag/data/../up.txt: this path leads out of its folder with `..`; it was not read",
    ],
    ["Xetc/passwd", "/etc/passwd", "fault /etc/passwd: this path begins at the root of the disk; it was not read"],
    ["Xx/secret.txt", "C:/secret.txt", "fault C:/secret.txt: this path names a drive; it was not read"],
    [
      "bag/data/..xup.txt",
      "bag/data/..\\up.txt",
      "fault bag/data/..\\up.txt: this path holds a backslash, which some systems take for the end of a folder's name; it was not read",
    ],
    [
      "bag/data/caf?.txt",
      "bag/data/caf\u00e9.txt",
      "fault bag/data/caf\\u{fffd}.txt: this path is not written in UTF-8; it was not read",
    ],
  ])("is told what is unsafe in it: %s as %s", async (placeholder, name, says) => {
    const from = placeholder.padEnd(name.length, "X");
    expect(await ofZip([...sound(), { path: from, text: "x" }], [[from, name]])).toContain(says);
  });

  it("is told of links, and of names that stand twice", async () => {
    expect(await ofZip([...sound(), { path: "bag/data/link", text: "/etc/passwd", type: "SymbolicLink" }])).toEqual([
      "fault bag/data/link: this is a symbolic link, not a file; it was not followed",
    ]);
    expect(
      await ofZip([...sound(), { path: "bag/data/a.txX", text: "other" }], [["bag/data/a.txX", "bag/data/a.txt"]]),
    ).toEqual(["fault bag/data/a.txt: this name stands here twice"]);
  });

  it("is told to be damaged where more comes out than it says, or where it is cut off", async () => {
    const path = await zipOf([
      ...sound().slice(0, 2),
      { path: "bag/manifest-sha256.txt", text: `${hex("sha256", "a")}  data/a.txt\n${"\n".repeat(5000)}` },
    ]);
    const bytes = readFileSync(path);
    const central = bytes.indexOf(Buffer.from("PK\u0001\u0002"));
    const last = bytes.lastIndexOf(Buffer.from("PK\u0001\u0002"));
    expect(last).toBeGreaterThan(central);
    bytes.writeUInt32LE(10, last + 24);
    bytes.writeUInt32LE(10, bytes.lastIndexOf(Buffer.from("PK\u0003\u0004")) + 22);
    writeFileSync(path, bytes);
    expect((await found(path)).join("\n")).toMatch(
      /this archive is damaged at bag\/manifest-sha256\.txt: too many bytes/,
    );
    writeFileSync(path, bytes.subarray(0, last));
    expect((await found(path)).join("\n")).toMatch(/bag\.zip: this archive is damaged: /);
  });

  it("reads what the system's tar packs", async () => {
    const folder = scratch();
    bagIn(join(folder, "bag"), { files: { "data/a.txt": "a", "data/deep/er/b.txt": "b" }, tagAlgorithms: ["sha256"] });
    expect(tool("tar", ["czf", "bag.tar.gz", "bag"], folder).code).toBe(0);
    expect(await found(join(folder, "bag.tar.gz"))).toEqual([]);
  });
});
