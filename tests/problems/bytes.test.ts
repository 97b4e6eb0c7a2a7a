import { once } from "node:events";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { saidOf, withSmall } from "./cases.ts";

const LOT = "---\ntitle: Spruce\nmaterial: timber\nreceived: 2025-01-10\n---\n";

/** What the builder sees when `lots/S-2.md` holds these bytes. */
async function saidOfLot(bytes: string | Uint8Array): Promise<string> {
  return withSmall((folder) => {
    writeFileSync(join(folder, "lots/S-2.md"), bytes);
    return saidOf(folder);
  });
}

describe("Problems with bytes", () => {
  it("has none with line ends of CRLF, and keeps line and column", async () => {
    expect(await saidOfLot(LOT.replaceAll("\n", "\r\n"))).toBe("");
    expect(await saidOfLot(LOT.replace("timber", "wood").replaceAll("\n", "\r\n"))).toBe(
      `lots/S-2.md:3:11  this word is not known here  [unknown-word]
    expected  resin, hardener, timber, plywood or other
    found     wood
    mend      use one of these words`,
    );
  });

  it("tells of a carriage return alone", async () => {
    expect(await saidOfLot(LOT.replaceAll("\n", "\r"))).toBe(
      `lots/S-2.md:1:4  a carriage return stands here, which no editor shows  [control-character]
    expected  text and line feeds
    mend      save the file with line ends of one kind, LF or CRLF`,
    );
  });

  it("tells of a byte order mark", async () => {
    expect(await saidOfLot(`\ufeff${LOT}`)).toBe(
      `lots/S-2.md:1:1  the file begins with a byte order mark  [encoding]
    expected  plain UTF-8, without a mark before the first line
    mend      save it as UTF-8 without BOM`,
    );
  });

  it.each(["little", "big"])("tells of UTF-16, %s end first", async (end) => {
    const bytes = Buffer.from(`\ufeff${LOT}`, "utf16le");
    expect(await saidOfLot(end === "big" ? bytes.swap16() : bytes)).toBe(
      `lots/S-2.md:1:1  the file is UTF-16  [encoding]
    expected  plain UTF-8, without a mark before the first line
    mend      save it as UTF-8 without BOM`,
    );
  });

  it("tells of UTF-16 without a mark", async () => {
    expect(await saidOfLot(Buffer.from(LOT, "utf16le"))).toBe(
      `lots/S-2.md:1:2  a NUL stands here, which no editor shows  [control-character]
    expected  text and line feeds
    mend      take it out`,
    );
  });

  it("tells of Latin-1, and which letter it was", async () => {
    expect(await saidOfLot(Buffer.from(LOT.replace("Spruce", "Épicéa"), "latin1"))).toBe(
      `lots/S-2.md:2:8  the file is not UTF-8  [encoding]
    expected  UTF-8 text
    found     byte C9 (É in Latin-1)
    mend      open it in the encoding it was saved in and save it as UTF-8`,
    );
  });

  it("finds a broken byte behind a replacement character that was written", async () => {
    expect(await saidOfLot(Buffer.concat([Buffer.from(`${LOT}\ufffd\n`), Buffer.from([0x80, 0x0a])]))).toBe(
      `lots/S-2.md:7:1  the file is not UTF-8  [encoding]
    expected  UTF-8 text
    found     byte 80
    mend      open it in the encoding it was saved in and save it as UTF-8`,
    );
  });

  it("tells of a NUL and of control characters, in prose too", async () => {
    expect(await saidOfLot(LOT.replace("Spruce", "Spr\0uce"))).toBe(
      `lots/S-2.md:2:11  a NUL stands here, which no editor shows  [control-character]
    expected  text and line feeds
    mend      take it out`,
    );
    expect(await saidOfLot(`${LOT}\nA bell\u0007.\n`)).toBe(
      `lots/S-2.md:7:7  the control character U+0007 stands here, which no editor shows  [control-character]
    expected  text and line feeds
    mend      take it out`,
    );
  });

  it("tells of a tab that indents", async () => {
    expect(await saidOfLot(LOT.replace("material", "\tmaterial"))).toBe(
      `lots/S-2.md:3:1  a tab indents this line  [yaml-syntax]
    expected  blanks
    found     ⇥material: timber
    mend      indent with blanks, two for each step`,
    );
  });

  it("reads accents in two pieces as the accents they make", async () => {
    expect(await saidOfLot(LOT.replace("Spruce", "Épicéa".normalize("NFD")))).toBe("");
  });
});

describe("Problems with the folder", () => {
  it("tells of a folder that does not exist", async () => {
    expect(await saidOf("/nowhere/content")).toBe(
      `.:1:1  the record's folder does not exist  [no-folder]
    expected  a folder with aircraft.md in it
    found     /nowhere/content
    mend      give the folder after --content, or make it`,
    );
  });

  it("tells of a file in the folder's place", async () => {
    await withSmall(async (folder) => {
      const file = join(folder, "aircraft.md");
      expect(await saidOf(file)).toBe(
        `.:1:1  the record's folder is a file  [no-folder]
    expected  a folder with aircraft.md in it
    found     ${file}
    mend      give the folder after --content, or make it`,
      );
    });
  });

  it("tells of an empty folder", async () => {
    const folder = mkdtempSync(join(tmpdir(), "scarfline-empty-"));
    expect(await saidOf(folder)).toBe(
      `.:1:1  the record's folder is empty  [no-aircraft]
    expected  aircraft.md with the aircraft's name, type, units, time_zone, start, people and tasks
    mend      make aircraft.md, as the README shows it`,
    );
    rmSync(folder, { recursive: true });
  });

  it("reads a record with nothing but an aircraft", async () => {
    const folder = mkdtempSync(join(tmpdir(), "scarfline-young-"));
    writeFileSync(
      join(folder, "aircraft.md"),
      "---\nname: Dunlin\ntype: one-seat\nunits: metric\ntime_zone: Europe/Lisbon\nstart: 2025-01-04\npeople: []\ntasks: []\n---\n",
    );
    expect(await saidOf(folder)).toBe("");
    rmSync(folder, { recursive: true });
  });

  it("tells of symbolic links that lead out of the record, nowhere or to a folder", async () => {
    await withSmall(async (folder) => {
      symlinkSync("/etc/hostname", join(folder, "lots/S-2.md"));
      symlinkSync("nothing.md", join(folder, "lots/S-3.md"));
      symlinkSync("../entries", join(folder, "lots/more"));
      expect(await saidOf(folder)).toBe(
        `lots/S-2.md:1:1  this symbolic link leads out of the record  [symbolic-link]
    found     /etc/hostname
    mend      put the file itself in its place
lots/S-3.md:1:1  this symbolic link leads nowhere  [symbolic-link]
    mend      put the file itself in its place
lots/more:1:1  this symbolic link leads to a folder  [symbolic-link]
    mend      put the folder itself in its place`,
      );
    });
  });

  it("follows a symbolic link to a file of the same record", async () => {
    await withSmall(async (folder) => {
      symlinkSync("jig.jpg", join(folder, "photos/again.jpg"));
      writeFileSync(
        join(folder, "entries/2025-03-15-pieces.md"),
        readFileSync(join(folder, "entries/2025-03-15-pieces.md"), "utf8").replace("jig.jpg", "again.jpg"),
      );
      expect(await saidOf(folder)).toBe("");
    });
  });

  it("tells of a folder where a file of the record belongs", async () => {
    await withSmall(async (folder) => {
      mkdirSync(join(folder, "lots/S-2.md"));
      expect(await saidOf(folder)).toBe(
        `lots/S-2.md:1:1  a folder has the name of a record file  [folder-as-file]
    expected  a file
    mend      rename the folder, or put a file in its place`,
      );
    });
  });

  it("tells of what is neither a file nor a folder", async () => {
    await withSmall(async (folder) => {
      const server = createServer().listen(join(folder, "photos/socket"));
      await once(server, "listening");
      expect(await saidOf(folder)).toBe(
        `photos/socket:1:1  this is neither a file nor a folder that can be read  [unreadable]
    mend      take it out of the record`,
      );
      server.close();
    });
  });

  it("tells of two photographs that differ only in capital letters", async () => {
    await withSmall(async (folder) => {
      writeFileSync(join(folder, "photos/Jig.jpg"), readFileSync(join(folder, "photos/jig.jpg")));
      expect(await saidOf(folder)).toBe(
        `photos/jig.jpg:1:1  two files differ only in capital letters  [same-but-case]
    found     photos/Jig.jpg and photos/jig.jpg
    mend      rename one: on many disks they are the same file`,
      );
    });
  });

  it("tells of a HEIC picture how to mend it", async () => {
    await withSmall(async (folder) => {
      writeFileSync(
        join(folder, "photos/outside.png"),
        Buffer.concat([Buffer.from([0, 0, 0, 0x18]), Buffer.from("ftypheic")]),
      );
      expect(await saidOf(folder)).toBe(
        `aircraft.md:15:16  this is a HEIC picture  [no-picture]
    expected  a JPEG, PNG, WebP, GIF, AVIF, TIFF or SVG picture
    found     photos/outside.png
    mend      export it as JPEG; browsers do not show HEIC`,
      );
    });
  });

  it("leaves files with a dot before their names and the folder of schemas alone", async () => {
    await withSmall(async (folder) => {
      mkdirSync(join(folder, "schemas"));
      writeFileSync(join(folder, "schemas/notes.md"), "no front matter");
      writeFileSync(join(folder, "lots/.S-2.md.swp"), "no front matter");
      writeFileSync(join(folder, ".notes.md"), "no front matter");
      expect(await saidOf(folder)).toBe("");
    });
  });

  it("changes no file of the record", async () => {
    await withSmall(async (folder) => {
      const before = readFileSync(join(folder, "entries/2025-03-08-caps.md"));
      await saidOf(folder);
      expect(readFileSync(join(folder, "entries/2025-03-08-caps.md")).equals(before)).toBe(true);
    });
  });
});
