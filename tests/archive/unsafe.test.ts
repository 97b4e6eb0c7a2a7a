import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { type BagShape, bagIn, found, hex, linkIn, tool } from "./make.ts";

const scratch = scratchFolders();
const SOUND = { "data/a.txt": "a", "data/b.txt": "b" };
const line = (path: string, text = "x"): string => `${hex("sha256", text)}  ${path}\n`;
const good = line("data/a.txt", "a") + line("data/b.txt", "b");

/** A bag with this text for its manifest. */
const listing = (manifest: string | Buffer, more: BagShape["files"] = {}): BagShape => ({
  files: { ...SOUND, ...more, "manifest-sha256.txt": manifest },
});

async function of(shape: BagShape): Promise<string[]> {
  return found(bagIn(join(scratch(), "bag"), shape));
}

describe("A path in a manifest that is not safe", () => {
  it.each([
    ["../outside.txt", "leads out of its folder with `..`"],
    ["data/../../outside.txt", "leads out of its folder with `..`"],
    ["data/..", "leads out of its folder with `..`"],
    ["/etc/hostname", "begins at the root of the disk"],
    ["//server/share/a", "begins at the root of the disk"],
    ["C:/secret.txt", "names a drive"],
    ["c:secret.txt", "names a drive"],
    ["C:\\secret.txt", "names a drive"],
    ["data\\..\\..\\outside.txt", "holds a backslash, which some systems take for the end of a folder's name"],
    ["\\\\server\\share", "holds a backslash, which some systems take for the end of a folder's name"],
    ["~/secret.txt", "begins in someone's home folder"],
    ["~root/secret.txt", "begins in someone's home folder"],
    ["data//a.txt", "is not written in its shortest form"],
    ["data/./a.txt", "is not written in its shortest form"],
    ["data/a.txt/", "is not written in its shortest form"],
  ])("is told and not read: %s", async (path, fault) => {
    expect(await of(listing(good + line(path)))).toEqual([
      `fault manifest-sha256.txt:3: the path ${path} ${fault}; it was not read`,
    ]);
  });

  it("is told when it hides behind percent signs that RFC 8493 decodes", async () => {
    expect(await of(listing(good + line("data/%0D%0A/../x")))).toEqual([
      "fault manifest-sha256.txt:3: the path data/%0D%0A/../x leads out of its folder with `..`; it was not read",
    ]);
    expect(await of(listing(good + line("data/%2e%2e/x")))).toEqual([
      "fault data/%2e%2e/x: missing: manifest-sha256.txt:3 vouches for it",
    ]);
  });

  it("is told in fetch.txt too; nothing is fetched", async () => {
    expect(
      await of({
        files: {
          ...SOUND,
          "fetch.txt":
            "http://127.0.0.1:9/x 5 data/c.txt\nhttp://127.0.0.1:9/y - ../y\nfile:///etc/hostname 3 data/a.txt\nnonsense\n",
        },
      }),
    ).toEqual([
      "fault fetch.txt:1: data/c.txt is not here, but at http://127.0.0.1:9/x; nothing is fetched",
      "fault fetch.txt:2: the path ../y leads out of its folder with `..`",
      "fault fetch.txt:3: data/a.txt has 1 bytes here, and 3 by this line",
      "fault fetch.txt:4: this line is not of the form `URL length path`",
      "note fetch.txt: no tag manifest vouches for it: there is none",
    ]);
  });

  it("that holds line breaks is read as RFC 8493 encodes it", async () => {
    const files = { "data/a\nb.txt": "1", "data/c\r.txt": "2", "data/100%.txt": "3" };
    expect(
      await of({
        files: {
          ...files,
          "manifest-sha256.txt":
            line("data/a%0Ab.txt", "1") + line("data/c%0d.txt", "2") + line("data/100%25.txt", "3"),
        },
      }),
    ).toEqual([]);
    expect(
      await of({
        files: {
          ...files,
          "manifest-sha256.txt":
            line("data/a%0Ab.txt", "9") + line("data/c%0D.txt", "2") + line("data/100%25.txt", "3"),
        },
      }),
    ).toEqual(["fault data/a\\u{a}b.txt: changed: its bytes are not those that manifest-sha256.txt vouches for"]);
  });
});

describe("Files of a bag that are not safe", () => {
  it("are links, which are told and never followed", async () => {
    const folder = scratch();
    writeFileSync(join(folder, "outside.txt"), "secret");
    mkdirSync(join(folder, "elsewhere"));
    writeFileSync(join(folder, "elsewhere/inner.txt"), "inner");
    const bag = bagIn(
      join(folder, "bag"),
      listing(good + line("data/link.txt", "secret") + line("data/folder/inner.txt", "inner")),
    );
    linkIn(bag, "data/link.txt", "../../outside.txt");
    linkIn(bag, "data/folder", "../../elsewhere");
    linkIn(bag, "bag-info.txt", "/etc/hostname");
    expect((await found(bag)).sort()).toEqual([
      "fault bag-info.txt: this is a symbolic link, not a file; it was not followed",
      "fault data/folder/inner.txt: missing: manifest-sha256.txt:4 vouches for it",
      "fault data/folder: this is a symbolic link, not a file; it was not followed",
      "fault data/link.txt: missing: manifest-sha256.txt:3 vouches for it",
      "fault data/link.txt: this is a symbolic link, not a file; it was not followed",
    ]);
  });

  it("are pipes and devices, which are told and never opened", async () => {
    const bag = bagIn(join(scratch(), "bag"), listing(good + line("data/pipe", "x")));
    expect(tool("mkfifo", ["data/pipe"], bag).code).toBe(0);
    expect(tool("mknod", ["data/zero", "c", "1", "5"], bag).code).toBe(0);
    expect((await found(bag)).sort()).toEqual([
      "fault data/pipe: missing: manifest-sha256.txt:3 vouches for it",
      "fault data/pipe: this is a device, a pipe or a folder whose name is not UTF-8, not a file; it was not followed",
      "fault data/zero: this is a device, a pipe or a folder whose name is not UTF-8, not a file; it was not followed",
    ]);
  });

  it("have names that some disks take for one", async () => {
    const files = { "data/Wing.txt": "1", "data/wing.txt": "2", "data/caf\u00e9.txt": "3", "data/cafe\u0301.txt": "4" };
    expect(await of({ files })).toEqual([
      "fault data/caf\u00e9.txt: this name and data/cafe\u0301.txt differ only in the form of their Unicode letters; on many disks they are one file",
      "fault data/wing.txt: this name and data/Wing.txt differ only in capital letters; on many disks they are one file",
    ]);
  });

  it("stand under another form of their name than the manifest has", async () => {
    expect(
      await of({ files: { "data/cafe\u0301.txt": "3", "manifest-sha256.txt": line("data/caf\u00e9.txt", "3") } }),
    ).toEqual([
      "fault manifest-sha256.txt:1: data/caf\u00e9.txt is not here; data/cafe\u0301.txt is, and the two names differ only in the form of their Unicode letters",
      "fault data/cafe\u0301.txt: unexpected: no manifest vouches for it",
    ]);
  });

  it("have backslashes in their names, or names that are not UTF-8", async () => {
    const bag = bagIn(join(scratch(), "bag"), { files: SOUND });
    writeFileSync(join(bag, "data/..\\up.txt"), "x");
    writeFileSync(Buffer.concat([Buffer.from(`${bag}/data/`), Buffer.from([0x63, 0xe9])]), "x");
    expect((await found(bag)).sort()).toEqual([
      "fault data/..\\up.txt: this path holds a backslash, which some systems take for the end of a folder's name; it was not read",
      "fault data/c\\u{fffd}: this path is not written in UTF-8; it was not read",
    ]);
  });
});

describe("Texts of a bag in the wrong form or encoding", () => {
  const encodings: readonly [string, BagShape, string[]][] = [
    [
      "a manifest that is not in the encoding that bagit.txt names",
      listing(Buffer.concat([Buffer.from(good), Buffer.from("e9\n", "hex"), Buffer.from([0xe9, 0x0a])])),
      [
        "fault manifest-sha256.txt:1: this file is not written in UTF-8; the rest of it was not read",
        "fault data/a.txt: unexpected: no manifest vouches for it",
        "fault data/b.txt: unexpected: no manifest vouches for it",
      ],
    ],
    [
      "a byte-order mark before bagit.txt",
      { files: SOUND, declaration: "\ufeffBagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n" },
      ["fault bagit.txt: begins with a byte-order mark, which RFC 8493 forbids here"],
    ],
    [
      "an encoding nobody knows",
      { files: SOUND, declaration: "BagIt-Version: 1.0\nTag-File-Character-Encoding: EBCDIC-9\n" },
      ["fault bagit.txt:2: an encoding that is not known here: EBCDIC-9"],
    ],
    [
      "a version nobody knows",
      { files: SOUND, declaration: "BagIt-Version: 7.1\nTag-File-Character-Encoding: UTF-8\n" },
      ["fault bagit.txt:1: a version of BagIt that is not known here: 7.1"],
    ],
    [
      "blanks where bagit.txt has none",
      { files: SOUND, declaration: "BagIt-Version : 1.0\nTag-File-Character-Encoding:UTF-8\nmore\n" },
      [
        "fault bagit.txt:1: the first line is not of the form `BagIt-Version: 1.0`",
        "fault bagit.txt:2: the second line is not of the form `Tag-File-Character-Encoding: UTF-8`",
        "fault bagit.txt:3: there is more than the two lines that RFC 8493 asks for",
      ],
    ],
    [
      "a manifest line that is none",
      listing(`${good}what is this\n`),
      ["fault manifest-sha256.txt:3: this line is not a sha256 digest and a path"],
    ],
    [
      "a digest too short",
      listing(`${good}abcdef  data/a.txt\n`),
      ["fault manifest-sha256.txt:3: this line is not a sha256 digest and a path"],
    ],
    [
      "two digests for one file",
      listing(good + line("data/a.txt", "z")),
      [
        "fault manifest-sha256.txt:3: data/a.txt stands here twice, with two digests",
        "fault data/a.txt: changed: its bytes are not those that manifest-sha256.txt vouches for",
      ],
    ],
    [
      "a payload manifest that names a tag file",
      listing(good + line("bagit.txt")),
      ["fault manifest-sha256.txt:3: bagit.txt is not below data/, where a payload lies"],
    ],
    [
      "an entry of bag-info.txt without a label",
      { files: { ...SOUND, "bag-info.txt": "Contact-Name: me\n and more\nnonsense\n" } },
      [
        "fault bag-info.txt:3: this line is not of the form `Label: value`",
        "note bag-info.txt: no tag manifest vouches for it: there is none",
      ],
    ],
    [
      "a count that is wrong",
      { files: { ...SOUND, "bag-info.txt": "Payload-Oxum: 3.2\n" } },
      [
        "note bag-info.txt: no tag manifest vouches for it: there is none",
        "fault bag-info.txt: Payload-Oxum says 3 bytes in 2 files; there are 2 bytes in 2 files",
      ],
    ],
    [
      "what would move the cursor of a terminal",
      { files: { ...SOUND, "bag-info.txt": "Payload-Oxum: \u001b[2J\u202e\n" } },
      [
        "note bag-info.txt: no tag manifest vouches for it: there is none",
        "fault bag-info.txt: Payload-Oxum is not of the form bytes.files: \\u{1b}[2J\\u{202e}",
      ],
    ],
  ];
  it.each(encodings)("are told: %s", async (_what, shape, says) => {
    expect(await of(shape)).toEqual(says);
  });

  it("are read in UTF-16 and in Latin letters, where bagit.txt says so", async () => {
    const name = "data/caf\u00e9.txt";
    const text = line(name, "3");
    const utf16 = Buffer.concat([Buffer.from([0xfe, 0xff]), Buffer.from(text, "utf16le").swap16()]);
    for (const [encoding, manifest] of [
      ["ISO-8859-1", Buffer.from(text, "latin1")],
      ["UTF-16", utf16],
    ] as const) {
      expect(
        await of({
          files: { [name]: "3", "manifest-sha256.txt": manifest },
          declaration: `BagIt-Version: 0.97\nTag-File-Character-Encoding: ${encoding}\n`,
        }),
      ).toEqual([]);
    }
  });
});

describe("What a bag lacks, or has too much", () => {
  it.each<[string, BagShape, string[]]>([
    [
      "a payload file that no manifest names",
      listing(line("data/a.txt", "a")),
      ["fault data/b.txt: unexpected: no manifest vouches for it"],
    ],
    [
      "a file that is not there",
      listing(good + line("data/c.txt")),
      ["fault data/c.txt: missing: manifest-sha256.txt:3 vouches for it"],
    ],
    [
      "a changed file",
      listing(good.replace(hex("sha256", "b"), hex("sha256", "c"))),
      ["fault data/b.txt: changed: its bytes are not those that manifest-sha256.txt vouches for"],
    ],
    [
      "a file that one of two manifests does not name",
      { files: { ...SOUND, "manifest-md5.txt": `${hex("md5", "a")}  data/a.txt\n` }, algorithms: ["sha256", "md5"] },
      ["fault data/b.txt: manifest-md5.txt does not name it, and every manifest must"],
    ],
    [
      "the same, by an earlier version of BagIt",
      {
        files: { ...SOUND, "manifest-md5.txt": `${hex("md5", "a")}  data/a.txt\n` },
        algorithms: ["sha256", "md5"],
        declaration: "BagIt-Version: 0.97\nTag-File-Character-Encoding: UTF-8\n",
      },
      [],
    ],
    [
      "no manifest",
      { files: SOUND, algorithms: [] },
      [
        "fault manifest-sha512.txt: missing: there is no manifest of the payload",
        "fault data/a.txt: unexpected: no manifest vouches for it",
        "fault data/b.txt: unexpected: no manifest vouches for it",
      ],
    ],
    [
      "only a manifest of an algorithm that is not known",
      { files: { ...SOUND, "manifest-crc32.txt": "00000000  data/a.txt\n" }, algorithms: [] },
      [
        "fault manifest-crc32.txt: no manifest of the payload is of an algorithm that is known here",
        "note manifest-crc32.txt: not checked: the algorithm crc32 is not known here",
        "fault data/a.txt: unexpected: no manifest vouches for it",
        "fault data/b.txt: unexpected: no manifest vouches for it",
      ],
    ],
    [
      "only a weak manifest",
      { files: SOUND, algorithms: ["md5", "sha1"] },
      [
        "note manifest-md5.txt and manifest-sha1.txt: its algorithm shows a mistake, but not a change that someone made with skill",
      ],
    ],
    [
      "a tag file that a tag manifest does not name",
      {
        files: {
          ...SOUND,
          "tagmanifest-sha256.txt":
            line("manifest-sha256.txt", good) +
            line("bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"),
          "notes.txt": "n",
        },
        tagAlgorithms: ["sha256"],
      },
      ["note notes.txt: tagmanifest-sha256.txt does not vouch for it"],
    ],
    [
      "a tag manifest that leaves out a manifest",
      {
        files: {
          ...SOUND,
          "tagmanifest-sha256.txt": line("bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"),
        },
        tagAlgorithms: ["sha256"],
      },
      ["fault manifest-sha256.txt: tagmanifest-sha256.txt does not name it, and must"],
    ],
    [
      "nothing, with every algorithm",
      {
        files: SOUND,
        algorithms: ["md5", "sha1", "sha224", "sha256", "sha384", "sha512"],
        tagAlgorithms: ["md5", "sha1", "sha224", "sha256", "sha384", "sha512"],
      },
      [],
    ],
    [
      "that a tag manifest went, where another is left",
      { files: SOUND, algorithms: ["sha256", "sha512"], tagAlgorithms: ["sha512"] },
      ["note tagmanifest-sha256.txt: not here, though manifest-sha256.txt and a tag manifest of another algorithm are"],
    ],
  ])("is told: %s", async (_what, shape, says) => {
    expect(await of(shape)).toEqual(says);
  });

  it("is told in the way others write their manifests, without a fault", async () => {
    const manifest = `${hex("sha256", "a").toUpperCase()} *data/a.txt\r\n${hex("sha256", "b")} ./data/b.txt`;
    expect(await of(listing(manifest))).toEqual([
      "note manifest-sha256.txt:2: the path begins with `./`",
      "note manifest-sha256.txt:1: this line does not end with a line feed alone",
      "note manifest-sha256.txt:1: this line has capital letters in its digest",
      "note manifest-sha256.txt:2: this line has no line end",
      "note manifest-sha256.txt:2: this line has something else than two blanks before its path",
    ]);
  });

  it("leaves every byte of a bag as it was", async () => {
    const bag = bagIn(join(scratch(), "bag"), listing(`${good}nonsense`));
    const before = contentOf(bag);
    await found(bag);
    expect(contentOf(bag)).toEqual(before);
  });
});
