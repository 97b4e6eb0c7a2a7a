import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, vi } from "vitest";
import { writePages } from "../../src/publish/eleventy.ts";
import { contentOf, scratchFolders } from "./scratch.ts";

const scratch = scratchFolders();

describe("Pages written through Eleventy", () => {
  it("come out byte for byte, whatever another template language would read in them", async () => {
    const out = join(scratch(), "site");
    const text = "---\ntitle: x\n---\n{{ page.url }} {% raw %} ${x} <%= y %>\n";
    await writePages(
      [
        { path: "index.html", make: () => text },
        { path: "entry/2031-01-01-a.b.html", make: () => "a" },
        { path: "data/hours.csv", make: () => "x,y\n" },
        { path: "feed.xml", make: () => "<a/>" },
      ],
      out,
    );
    expect(Object.fromEntries(contentOf(out))).toEqual({
      "index.html": text,
      "entry/2031-01-01-a.b.html": "a",
      "data/hours.csv": "x,y\n",
      "feed.xml": "<a/>",
    });
  });

  it("tell which page could not be made, and why", async () => {
    const broken = {
      path: "batch/B-1.html",
      make: () => {
        throw new TypeError("no such joint");
      },
    };
    await expect(writePages([broken], join(scratch(), "site"))).rejects.toThrow(
      "The page batch/B-1.html could not be made: no such joint",
    );
  });

  it.each(["../out.html", "/etc/x.html", "a/../../b.html", "a//b.html", "a\\b.html", ""])(
    "are refused at the stray path %j",
    async (path) => {
      await expect(writePages([{ path, make: () => "" }], join(scratch(), "site"))).rejects.toThrow(/stray path/);
    },
  );

  it("are refused where two would be one file, on a disk that does not tell upper from lower case too", async () => {
    const pages = ["a/B.html", "a/b.html"].map((path) => ({ path, make: () => "" }));
    await expect(writePages(pages, join(scratch(), "site"))).rejects.toThrow(
      "Two pages would be written to one file: a/B.html and a/b.html",
    );
  });

  it("leave no folder behind", async () => {
    const folder = scratch();
    vi.stubEnv("TMPDIR", folder);
    await writePages([{ path: "index.html", make: () => "" }], join(scratch(), "site"));
    expect(readdirSync(folder).filter((name) => !name.startsWith("scarfline-test-"))).toEqual([]);
    vi.unstubAllEnvs();
  });
});
