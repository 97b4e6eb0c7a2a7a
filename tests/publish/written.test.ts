import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writePages } from "../../src/publish/written.ts";
import { contentOf, scratchFolders } from "./scratch.ts";

const scratch = scratchFolders();

describe("Pages that are written", () => {
  it("come out byte for byte, whatever a template language would read in them", () => {
    const out = join(scratch(), "site");
    const text = "---\ntitle: x\n---\n{{ page.url }} {% raw %} ${x} <%= y %>\n";
    writePages(
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

  it("tell which page could not be made, and why", () => {
    const broken = {
      path: "batch/B-1.html",
      make: () => {
        throw new TypeError("no such joint");
      },
    };
    expect(() => writePages([broken], join(scratch(), "site"))).toThrow(
      "The page batch/B-1.html could not be made: no such joint",
    );
  });

  it.each(["../out.html", "/etc/x.html", "a/../../b.html", "a//b.html", "a\\b.html", ""])(
    "are refused at the stray path %j",
    (path) => {
      expect(() => writePages([{ path, make: () => "" }], join(scratch(), "site"))).toThrow(/stray path/);
    },
  );

  it("are refused where two would be one file, on a disk that does not tell upper from lower case too", () => {
    const pages = ["a/B.html", "a/b.html"].map((path) => ({ path, make: () => "" }));
    expect(() => writePages(pages, join(scratch(), "site"))).toThrow(
      "Two pages would be written to one file: a/B.html and a/b.html",
    );
  });
});
