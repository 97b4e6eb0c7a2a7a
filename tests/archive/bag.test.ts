import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, renameSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { sizeOf } from "../../src/archive/bag/parts.ts";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";
import { bagged, found, hex, recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;
const bag = (content: string, out: string, ...more: string[]) =>
  command(["bag", "--content", content, "--out", out, ...more]);

describe("scarfline bag", () => {
  it("writes a bag that sha256sum, sha512sum and verify find whole, with all of the record in it", async () => {
    const folder = scratch();
    const path = await bagged(folder);
    for (const [sum, manifest] of [
      ["sha256sum", "manifest-sha256.txt"],
      ["sha512sum", "manifest-sha512.txt"],
      ["sha256sum", "tagmanifest-sha256.txt"],
      ["sha512sum", "tagmanifest-sha512.txt"],
    ] as const) {
      expect(tool(sum, ["-c", "--quiet", "--strict", manifest], path)).toEqual({ code: 0, out: "" });
    }
    expect(tool("sha256sum", ["-c", "--quiet", "--strict", "record.sha256"], join(path, "data"))).toEqual({
      code: 0,
      out: "",
    });
    expect(await found(path)).toEqual([]);
    expect(contentOf(join(path, "data/record"))).toEqual(contentOf(join(folder, "content")));
    expect(readdirSync(path).sort()).toEqual([
      "README.txt",
      "bag-info.txt",
      "bagit.txt",
      "data",
      "manifest-sha256.txt",
      "manifest-sha512.txt",
      "tagmanifest-sha256.txt",
      "tagmanifest-sha512.txt",
    ]);
    expect(readdirSync(join(path, "data")).sort()).toEqual([
      "ledgers",
      "record",
      "record.sha256",
      "rules.json",
      "site",
    ]);
    const payload = contentOf(join(path, "data"));
    const bytes = [...payload.values()].reduce((sum, text) => sum + text.length, 0);
    expect(readFileSync(join(path, "bag-info.txt"), "utf8")).toBe(
      `External-Description: Record of the building of Stub, up to 2021-03-09\nInternal-Sender-Description: Begin with README.txt: it says what is here, how to read it and how to check it\nExternal-Identifier: stub-2021-03-09\nBagging-Date: 2021-03-09\nPayload-Oxum: ${bytes}.${payload.size}\nBag-Software-Agent: Scarfline 0.1.0\nScarfline-Form-Version: 3\nScarfline-Rules-Version: 2\n`,
    );
    expect(readFileSync(join(path, "bagit.txt"), "utf8")).toBe(
      "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n",
    );
  });

  it("holds the archive edition, which the builder's `--edition archive` also writes, and the ledgers and rules as they are in it", async () => {
    const folder = scratch();
    const path = await bagged(folder);
    await command([
      "build",
      "--content",
      join(folder, "content"),
      "--edition",
      "archive",
      "--out",
      join(folder, "site"),
    ]);
    const site = contentOf(join(folder, "site"));
    site.delete(".scarfline");
    expect(contentOf(join(path, "data/site"))).toEqual(site);
    for (const [name, text] of contentOf(join(path, "data/ledgers"))) expect(text).toBe(site.get(`data/${name}`));
    const { rules } = JSON.parse(readFileSync(join(path, "data/rules.json"), "utf8")) as {
      rules: { id: string; says: string; source: { text: string; known: string } }[];
    };
    expect(rules.length).toBeGreaterThan(10);
    const marks = ["record", "seen", "second-hand", "memory", "common practice"];
    expect(rules.flatMap(({ source }) => (marks.includes(source.known) ? [] : source.known))).toEqual([]);
  });

  it("holds a clip as the camera wrote it, in the record and in the site, and gives it back so", async () => {
    const folder = scratch();
    const content = await recordIn(folder);
    const clip = readFileSync(new URL("../publish/clips/planted.mp4", import.meta.url));
    writeAll(content, {
      "clips/flex.mp4": clip,
      "entries/2021-03-09-flex.md":
        "---\ndate: 2021-03-09\ntitle: Flexed\nassembly: fin\nclips: [{ file: ../clips/flex.mp4, poster: ../photos/jig.jpg, alt: It springs back }]\n---\nIt flexed.\n",
    });
    expect(await bag(content, join(folder, "archive"))).toMatchObject({ code: 0, err: "" });
    const data = join(folder, "archive/stub-2021-03-09/data");
    expect(readFileSync(join(data, "record/clips/flex.mp4")).equals(clip)).toBe(true);
    expect(
      readdirSync(join(data, "site/clips")).map((name) => readFileSync(join(data, "site/clips", name)).equals(clip)),
    ).toEqual([true]);
    expect(await command(["restore", join(folder, "archive/stub-2021-03-09"), join(folder, "again")])).toMatchObject({
      code: 0,
    });
    expect(contentOf(join(folder, "again"))).toEqual(contentOf(content));
  });

  it("never writes over a bag, says when the same one stands there, and is not put into the record", async () => {
    const folder = scratch();
    const path = await bagged(folder);
    const before = contentOf(path);
    const content = join(folder, "content");
    expect(await bag(content, join(folder, "archive"))).toMatchObject({
      code: 0,
      out: expect.stringContaining("the same to the last byte; nothing was written."),
    });
    writeFileSync(join(content, "papers/new.txt"), "new");
    expect(await bag(content, join(folder, "archive"))).toMatchObject({
      code: 2,
      err: expect.stringContaining(`Another bag stands at ${path}, and no bag is ever written over.`),
    });
    expect(contentOf(path)).toEqual(before);
    expect(readdirSync(join(folder, "archive"))).toEqual(["stub-2021-03-09"]);
    expect(await bag(content, join(content, "archive"))).toMatchObject({
      code: 2,
      err: expect.stringContaining("cannot be written into the record's own folder"),
    });
  });

  it("writes nothing of a record with problems, or with a name that tools would read in different ways", async () => {
    const folder = scratch();
    const content = await recordIn(folder);
    writeFileSync(join(content, "papers/50%.txt"), "x");
    expect(await bag(content, join(folder, "archive"))).toMatchObject({
      code: 2,
      err: expect.stringContaining('The name of "papers/50%.txt" has a percent sign in it'),
    });
    writeFileSync(join(content, "aircraft.md"), "nothing");
    renameSync(join(content, "papers/50%.txt"), join(content, "papers/50.txt"));
    expect(await bag(content, join(folder, "archive"))).toMatchObject({
      code: 1,
      err: expect.stringContaining("Nothing was written to"),
    });
    expect(readdirSync(folder)).toEqual(["content"]);
  });

  it("reads sizes with their unit, and nothing else", () => {
    expect(["650 MB", "4.7GB", "2 GiB", "1 kB"].map(sizeOf)).toEqual([650e6, 4.7e9, 2 ** 31, 1000]);
    expect(["650", "650 mb", "-1 MB", "1e3 MB", "1 XB", ""].map(sizeOf)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe("The work on a bag", () => {
  it.each([[[]], [["--serialise", "tar.gz"]], [["--split", "400 kB", "--serialise", "zip"]]])(
    "is told as it goes on, packing included, up to its end: %s",
    async (words) => {
      const folder = scratch();
      const content = await recordIn(folder);
      let time = Date.parse("2021-06-01T12:00:00");
      const { out } = await command(["bag", "--content", content, "--out", join(folder, "archive"), ...words], {
        isTerminal: true,
        now: () => new Date((time += 1000)),
      });
      const told = [...out.matchAll(/Bagging: (\d+(?:\.\d)?) (bytes|kB|MB) of (\S+ \S+),/g)].map(
        ([, amount, unit, of]) => ({
          done: Number(amount) * (unit === "MB" ? 1e6 : unit === "kB" ? 1e3 : 1),
          end: `${amount} ${unit}`,
          of,
        }),
      );
      expect(told.length).toBeGreaterThan(20);
      expect(new Set(told.map(({ of }) => of)).size).toBe(1);
      expect(told.map(({ done }) => done)).toEqual(told.map(({ done }) => done).sort((a, b) => a - b));
      expect(told.at(-1)?.end).toBe(told[0]?.of);
    },
  );
});

describe("The bytes of a bag", () => {
  it.each([[], ["--serialise", "zip"], ["--serialise", "tar.gz"], ["--split", "400 kB", "--serialise", "zip"]])(
    "are the same on another day, in another place, time zone and language: %s %s",
    async (...words) => {
      const made: Map<string, string>[] = [];
      for (const [instant, zone, language, umask] of [
        ["2021-06-01 12:00:00", "UTC", "C", "022"],
        ["2044-02-29 23:59:58", "Pacific/Chatham", "tr_TR.UTF-8", "077"],
      ] as const) {
        const folder = scratch();
        writeAll(join(folder, "my record"), await smallRecord());
        execFileSync(
          "sh",
          [
            "-c",
            `umask ${umask}; exec faketime '${instant}' "$@"`,
            "sh",
            process.execPath,
            COMMAND,
            "bag",
            "--content",
            "my record",
            ...words,
          ],
          {
            cwd: folder,
            env: { ...process.env, FAKETIME_DONT_FAKE_MONOTONIC: "1", TZ: zone, LANG: language, LC_ALL: language },
            stdio: "pipe",
          },
        );
        made.push(contentOf(join(folder, "archive")));
      }
      expect([...(made[0] ?? [])].map(([path, text]) => [path, hex("sha256", text)])).toEqual(
        [...(made[1] ?? [])].map(([path, text]) => [path, hex("sha256", text)]),
      );
    },
  );
});

describe("scarfline restore", () => {
  it.each<[string, string[]]>([
    ["a folder", []],
    ["a zip", ["--serialise", "zip"]],
    ["a tar.gz", ["--serialise", "tar.gz"]],
    ["parts", ["--split", "400 kB", "--serialise", "zip"]],
  ])("brings the record back from %s, and it builds to the same pages, byte for byte", async (_what, words) => {
    const folder = scratch();
    const path = await bagged(folder, {}, words);
    const back = join(folder, "back");
    expect(await command(["restore", path, back])).toMatchObject({ code: 0, err: "" });
    expect(contentOf(back)).toEqual(contentOf(join(folder, "content")));
    expect(await command(["verify", back])).toMatchObject({ code: 0 });
    for (const [content, out] of [
      ["content", "one"],
      ["back", "two"],
    ])
      await command([
        "build",
        "--content",
        join(folder, content ?? ""),
        "--edition",
        "all",
        "--out",
        join(folder, out ?? ""),
      ]);
    expect(contentOf(join(folder, "two"))).toEqual(contentOf(join(folder, "one")));
  });

  it("writes nothing into a folder that holds something, nor from a bag with a fault, nor where a part is lacking", async () => {
    const folder = scratch();
    const path = await bagged(
      folder,
      { "papers/long-1.txt": "1".repeat(200_000), "papers/long-2.txt": "2".repeat(200_000) },
      ["--split", "400 kB"],
    );
    const parts = readdirSync(path).sort();
    const lacking = parts.find((part) => existsSync(join(path, part, "data/record/papers/long-2.txt"))) ?? "";
    expect(existsSync(join(path, lacking, "data/record/aircraft.md"))).toBe(false);
    writeAll(join(folder, "full"), { "kept.txt": "kept" });
    expect(await command(["restore", path, join(folder, "full")])).toMatchObject({
      code: 2,
      err: expect.stringContaining("is not empty (kept.txt)"),
    });
    const some = join(folder, "some");
    writeAll(some, {});
    renameSync(path, some);
    renameSync(join(some, lacking), join(folder, "lacking"));
    expect(await command(["restore", some, join(folder, "back")])).toMatchObject({
      code: 1,
      err: expect.stringMatching(/^bag-info\.txt: these are \d+ parts of \d+; not here: \d+\n$/),
      out: expect.stringContaining("Nothing was written to"),
    });
    renameSync(join(folder, "lacking"), join(some, lacking));
    writeFileSync(join(some, parts[0] ?? "", "data/record/aircraft.md"), "changed");
    expect(await command(["restore", some, join(folder, "back")])).toMatchObject({
      code: 1,
      err: expect.stringContaining("data/record/aircraft.md: changed"),
      out: expect.stringContaining("Nothing was written to"),
    });
    expect(readdirSync(folder).sort()).toEqual(["archive", "content", "full", "some"]);
    expect(contentOf(join(folder, "full"))).toEqual(new Map([["kept.txt", "kept"]]));
  });
});

describe("A bag in parts", () => {
  it("has no part larger than asked, each sound by itself, and together they hold all", async () => {
    for (const words of [["--serialise", "zip"], ["--serialise", "tar.gz"], []]) {
      const path = await bagged(scratch(), {}, ["--split", "400 kB", ...words]);
      const parts = readdirSync(path);
      for (const part of parts) {
        expect(await found(join(path, part))).toEqual([
          expect.stringMatching(/^note bag-info\.txt: this is one part of \d+; not here: /),
        ]);
        expect(sizeIn(join(path, part))).toBeLessThanOrEqual(400_000);
      }
      expect(await found(path)).toEqual([]);
    }
  });

  it("is refused where one file is larger than a part", async () => {
    const folder = scratch();
    const content = await recordIn(folder);
    expect(await bag(content, join(folder, "archive"), "--split", "30 kB")).toMatchObject({
      code: 2,
      err: expect.stringMatching(/^\S+ has \d+ bytes and does not fit into a bag of 30000 bytes/),
    });
  });
});

function sizeIn(path: string): number {
  return statSync(path).isFile()
    ? statSync(path).size
    : [...contentOf(path).values()].reduce((sum, text) => sum + text.length, 0);
}
