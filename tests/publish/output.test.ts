import { existsSync, mkdirSync, readdirSync, readlinkSync, renameSync, symlinkSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { beginOutput, MARKER } from "../../src/publish/output/folder.ts";
import { OutputRefused } from "../../src/publish/output/refused.ts";
import { contentOf, scratchFolders, writeAll } from "./scratch.ts";

const scratch = scratchFolders();
/** No process has so high a number. */
const DEAD = 999_999_999;

async function write(out: string, content: string, files: { readonly [path: string]: string }): Promise<void> {
  const making = await beginOutput(out, content);
  writeAll(making.folder, files);
  await making.moveIntoPlace();
}

function besides(out: string): string[] {
  return readdirSync(dirname(out)).filter((name) => name !== "site" && name !== "content");
}

function places(): { out: string; content: string } {
  const folder = scratch();
  mkdirSync(join(folder, "content"));
  return { out: join(folder, "site"), content: join(folder, "content") };
}

describe("The output folder", () => {
  it("holds the new files and none of an earlier build's", async () => {
    const { out, content } = places();
    await write(out, content, { "index.html": "one", "entry/old.html": "old" });
    await write(out, content, { "index.html": "two", "entry/new.html": "new" });
    const found = contentOf(out);
    expect(found.get(MARKER)).toBe("entry/new.html\nindex.html\n");
    expect([...found.keys()]).toEqual([MARKER, "entry/new.html", "index.html"]);
    expect(found.get("index.html")).toBe("two");
    expect(besides(out)).toEqual([]);
  });

  it("does not change before the new files are moved into place, nor when they are given up", async () => {
    const { out, content } = places();
    await write(out, content, { "index.html": "one" });
    const before = contentOf(out);
    const making = await beginOutput(out, content);
    writeAll(making.folder, { "index.html": "two" });
    expect(contentOf(out)).toEqual(before);
    await making.giveUp();
    expect(contentOf(out)).toEqual(before);
    expect(besides(out)).toEqual([]);
  });

  it("keeps what a builder put into it: hidden files at first, any file later", async () => {
    const { out, content } = places();
    writeAll(out, { ".gitignore": "*\n", ".git/HEAD": "ref" });
    await write(out, content, { "index.html": "one" });
    writeAll(out, { CNAME: "example.org", "entry/mine.txt": "mine" });
    symlinkSync("CNAME", join(out, "same"));
    await write(out, content, { "index.html": "two", "entry/a.html": "a" });
    expect([...contentOf(out).keys()]).toEqual([
      ".git/HEAD",
      ".gitignore",
      MARKER,
      "CNAME",
      "entry/a.html",
      "entry/mine.txt",
      "index.html",
      "same",
    ]);
    expect(readlinkSync(join(out, "same"))).toBe("CNAME");
  });

  it("is refused, and left alone, where a builder's file stands in the way of a page", async () => {
    const { out, content } = places();
    await write(out, content, { "index.html": "one" });
    writeAll(out, { "about.html": "mine" });
    const before = contentOf(out);
    await expect(write(out, content, { "index.html": "two", "about.html": "ours" })).rejects.toThrow(
      /about\.html is not from an earlier build/,
    );
    expect(contentOf(out)).toEqual(before);
  });

  it("is refused where it holds files that no build wrote", async () => {
    const { out, content } = places();
    writeAll(out, { "thesis.txt": "years of work" });
    await expect(beginOutput(out, content)).rejects.toThrow(OutputRefused);
    expect(besides(out)).toEqual([]);
    expect([...contentOf(out)]).toEqual([["thesis.txt", "years of work"]]);
  });

  it("is refused where it is the record, within it, around it, around the working folder, or a file", async () => {
    const { out, content } = places();
    writeAll(dirname(out), { "a-file": "" });
    symlinkSync(content, join(dirname(out), "also-content"));
    const refused = [
      content,
      join(content, "site"),
      dirname(content),
      process.cwd(),
      dirname(process.cwd()),
      join(dirname(out), "a-file"),
      join(dirname(out), "also-content", "x"),
    ];
    for (const folder of refused) await expect(beginOutput(folder, content), folder).rejects.toThrow(OutputRefused);
  });

  it("is followed where it is a link to a folder", async () => {
    const { out, content } = places();
    mkdirSync(join(dirname(out), "real"));
    symlinkSync("real", out);
    await write(out, content, { "index.html": "one" });
    expect(readlinkSync(out)).toBe("real");
    expect(existsSync(join(dirname(out), "real/index.html"))).toBe(true);
  });

  it("comes back where a build was killed between the two renames", async () => {
    const { out, content } = places();
    await write(out, content, { "index.html": "one" });
    const before = contentOf(out);
    renameSync(out, join(dirname(out), `.site.scarfline-former-${DEAD}`));
    writeAll(join(dirname(out), `.site.scarfline-new-${DEAD}`), { "index.html": "two" });
    await (await beginOutput(out, content)).giveUp();
    expect(contentOf(out)).toEqual(before);
    expect(besides(out)).toEqual([]);
  });

  it("leaves alone what a build that still runs is making", async () => {
    const { out, content } = places();
    const running = `.site.scarfline-new-${process.ppid}`;
    writeAll(join(dirname(out), running), { "index.html": "other" });
    await write(out, content, { "index.html": "one" });
    expect(besides(out)).toEqual([running]);
  });
});
