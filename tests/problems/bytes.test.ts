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
  it("has none with line ends of CRLF, notes them, and keeps line and column", async () => {
    const note = "lots/S-2.md:1:1  note: this file has line ends of Windows (CRLF), and was read with them";
    expect(await saidOfLot(LOT.replaceAll("\n", "\r\n"))).toBe(note);
    expect(await saidOfLot(LOT.replace("timber", "wood").replaceAll("\n", "\r\n"))).toBe(
      `${note}
lots/S-2.md:3:11  this word is not known here  [unknown-word]
    expected  resin, hardener, glue, powder, timber, plywood, part, finish or other
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

  const UNKNOWN_WORD = `this word is not known here  [unknown-word]
    expected  resin, hardener, glue, powder, timber, plywood, part, finish or other
    found     Fichte, gehöft °
    mend      use one of these words`;
  const WRONG = LOT.replace("timber", "Fichte, gehöft °");

  it("reads over a byte order mark, notes it, and keeps line and column", async () => {
    const note = "lots/S-2.md:1:1  note: this file begins with a byte order mark, and was read without it";
    expect(await saidOfLot(`\ufeff${LOT}`)).toBe(note);
    expect(await saidOfLot(`\ufeff${WRONG}`)).toBe(`${note}\nlots/S-2.md:3:11  ${UNKNOWN_WORD}`);
    expect(await saidOfLot(`\ufeff${LOT.replace("---\n", "--\n")}`)).toContain("\nlots/S-2.md:1:1  ");
  });

  it("tells of a byte order mark that is not at the head", async () => {
    expect(await saidOfLot(`\ufeff\ufeff${LOT}`)).toBe(
      `lots/S-2.md:1:1  the control character U+FEFF stands here, which no editor shows  [control-character]
    expected  text and line feeds
    mend      take it out`,
    );
  });

  it.each([
    ["little", "\n"],
    ["big", "\n"],
    ["little", "\r\n"],
  ])("reads UTF-16, %s end first, notes it, and keeps line and column", async (end, lineEnd) => {
    const encoded = (text: string): Buffer => {
      const bytes = Buffer.from(`\ufeff${text.replaceAll("\n", lineEnd)}`, "utf16le");
      return end === "big" ? bytes.swap16() : bytes;
    };
    const note = [
      "lots/S-2.md:1:1  note: this file is UTF-16, and was read as such; most other programs that will read this record want UTF-8",
      ...(lineEnd === "\n"
        ? []
        : ["lots/S-2.md:1:1  note: this file has line ends of Windows (CRLF), and was read with them"]),
    ]
      .sort()
      .join("\n");
    expect(await saidOfLot(encoded(LOT))).toBe(note);
    expect(await saidOfLot(encoded(WRONG))).toBe(`${note}\nlots/S-2.md:3:11  ${UNKNOWN_WORD}`);
  });

  it("tells of UTF-16 that was cut off, or has half a character in it", async () => {
    const bytes = Buffer.from(`\ufeff${LOT}`, "utf16le");
    const said = `lots/S-2.md:1:1  the file begins as UTF-16 and is none, or was cut off  [encoding]
    expected  text in UTF-8, or whole UTF-16
    mend      open it in the program that wrote it and save it as UTF-8`;
    expect(await saidOfLot(bytes.subarray(0, -1))).toBe(said);
    expect(await saidOfLot(Buffer.concat([bytes, Buffer.from([0x00, 0xd8, 0x0a, 0x00])]))).toBe(said);
  });

  it("names all files of a form in one note", async () => {
    await withSmall(async (folder) => {
      for (const name of ["S-2", "S-3", "S-4"]) writeFileSync(join(folder, `lots/${name}.md`), `\ufeff${LOT}`);
      expect(await saidOf(folder)).toBe(
        "lots/S-2.md:1:1  note: this file begins with a byte order mark, and was read without it; so are lots/S-3.md, lots/S-4.md",
      );
    });
  });

  it("tells of UTF-16 without a mark", async () => {
    expect(await saidOfLot(Buffer.from(LOT, "utf16le"))).toBe(
      `lots/S-2.md:1:2  a NUL stands here, which no editor shows  [control-character]
    expected  text and line feeds
    mend      take it out`,
    );
  });

  it("tells of Windows-1252, and how the line would read", async () => {
    const windows = LOT.replace("Spruce", "Épicéa “n° 2” – 12 €");
    const bytes = Buffer.from(
      windows.replaceAll("“", "\x93").replaceAll("”", "\x94").replaceAll("–", "\x96").replaceAll("€", "\x80"),
      "latin1",
    );
    expect(await saidOfLot(bytes)).toBe(
      `lots/S-2.md:2:8  the file is not UTF-8  [encoding]
    expected  UTF-8 text
    found     byte C9; read as Windows-1252 the line would be: title: Épicéa “n° 2” – 12 €
    mend      if the line reads rightly so, open the file as Windows-1252 (ANSI, Western) and save it as UTF-8; else in the encoding it was saved in`,
    );
  });

  it("finds a broken byte behind a replacement character that was written", async () => {
    expect(await saidOfLot(Buffer.concat([Buffer.from(`${LOT}\ufffd\n`), Buffer.from([0x80, 0x0a])]))).toBe(
      `lots/S-2.md:7:1  the file is not UTF-8  [encoding]
    expected  UTF-8 text
    found     byte 80; read as Windows-1252 the line would be: €
    mend      if the line reads rightly so, open the file as Windows-1252 (ANSI, Western) and save it as UTF-8; else in the encoding it was saved in`,
    );
  });

  it("tells of bytes that are text in neither", async () => {
    expect(await saidOfLot(Buffer.concat([Buffer.from(LOT), Buffer.from([0x81, 0x8d])]))).toBe(
      `lots/S-2.md:6:1  the file is not UTF-8  [encoding]
    expected  UTF-8 text
    found     byte 81
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

describe("Notes", () => {
  it("name the files that nothing reads, and none that the record names or that lie elsewhere", async () => {
    await withSmall(async (folder) => {
      const files = [
        "entries/2025-03-09.odt",
        "entries/more/plan.docx",
        "lots/notes.txt",
        "to-do.txt",
        "papers/more.odt",
      ];
      mkdirSync(join(folder, "entries/more"));
      for (const file of files) writeFileSync(join(folder, file), "text");
      writeFileSync(join(folder, "entries/b.jpg"), readFileSync(join(folder, "photos/jig.jpg")));
      expect(await saidOf(folder)).toBe(
        `entries/2025-03-09.odt:1:1  note: nothing reads this file, and nothing in the record names it; nor entries/b.jpg, entries/more/plan.docx
lots/notes.txt:1:1  note: nothing reads this file, and nothing in the record names it
to-do.txt:1:1  note: nothing reads this file, and nothing in the record names it`,
      );
      const entry = join(folder, "entries/2025-03-15-pieces.md");
      writeFileSync(entry, readFileSync(entry, "utf8").replace("../photos/jig.jpg", "b.jpg"));
      expect(await saidOf(folder)).not.toContain("b.jpg");
    });
  });

  it("tell of HTML, which is shown as typed, at its place and by Markdown's own rules", async () => {
    const prose = "Words.\n\n- so <b>bold</b> &\n- 1 < 2 and 2 > 1, <https://example.org>, `<i>`\n\n<div>\n";
    expect(await saidOfLot(`\ufeff${`${LOT}\n${prose}`.replaceAll("\n", "\r\n")}`)).toContain(
      "lots/S-2.md:9:6  note: HTML is shown as it is typed, as words: <b> (and 2 more in this file)",
    );
    expect(await saidOfLot(`${LOT}\n1 < 2 and 2 > 1, <https://example.org>, \`<i>\`\n`)).toBe("");
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
