import { linkSync, lstatSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { seal } from "../../src/archive/seal/seal.ts";
import type { BuildRequest } from "../../src/build.ts";
import { buildUnlessStanding } from "../../src/cli/build-command.ts";
import type { Edition } from "../../src/editions/shown.ts";
import { writeStart } from "./edits.ts";
import { contentOf, scratchFolders, writeAll } from "./scratch.ts";

const scratch = scratchFolders();
const tell = { line: () => undefined, progress: () => undefined };
const installed = new URL("../..", import.meta.url).pathname;
const MIDDLE = "entries/2000-01-12-session-9.md";
/** Feeds tell of the 50 newest entries. */
const OF_MIDDLE = ["entry/2000-01-12-session-9.html", "feed.json", "feed.xml", "search-index.js"];
const NEWEST = "entries/2000-01-26-session-23.md";

let request: BuildRequest;

const built = async (
  editions: readonly Edition[] = ["public"],
  { program, fresh }: { readonly program: string | undefined; readonly fresh?: boolean } = { program: "a program" },
): Promise<void> => {
  const asked = { ...request, editions, apart: editions.length > 1 };
  expect(await buildUnlessStanding(asked, program, tell, fresh)).not.toHaveProperty("problems");
};

/** Of all that a build makes from the record, but for assets, which it always copies. */
const pages = (): string[] =>
  [...contentOf(request.out).keys()].filter((path) => !/assets\/|\.scarfline|photos/.test(path));

/** Pages that `building` made anew. A page that was kept is the same file. */
async function madeAnew(building: () => Promise<void>): Promise<string[]> {
  const file = (path: string): number | undefined => statSync(join(request.out, path), { throwIfNoEntry: false })?.ino;
  const before = new Map(pages().map((path) => [path, file(path)]));
  await building();
  return pages().filter((path) => before.get(path) !== file(path));
}

function edit(path: string, change: (text: string) => string): void {
  const file = join(request.content, path);
  const text = readFileSync(file, "utf8");
  expect(change(text)).not.toBe(text);
  writeFileSync(file, change(text));
}

const more = (path: string, words = "A sentence more."): void => edit(path, (text) => `${text}\n${words}\n`);

beforeEach(async () => {
  const folder = scratch();
  const [content, out, cache] = ["content", "site", ".cache"].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  request = { content, out, cache, today: "2030-01-01", program: installed, editions: ["public"], apart: false };
  await writeStart(content);
  await built();
});

describe("Where one entry’s prose changed", () => {
  it("its page, the feeds and the index of the search are made anew, and no other", async () => {
    more(MIDDLE);
    expect(await madeAnew(built)).toEqual(OF_MIDDLE);
    expect(pages().length).toBeGreaterThan(60);
  });

  it("of the newest entry those that tell how it begins are too", async () => {
    edit(NEWEST, (text) => text.replace(/\n---\n\n/, "\n---\n\nNobody wrote so before: "));
    const anew = ["entry/2000-01-26-session-23.html", "feed.json", "feed.xml", "index.html", "search-index.js"];
    expect(await madeAnew(built)).toEqual(anew);
    for (const path of anew) expect(readFileSync(join(request.out, path), "utf8"), path).toContain("wrote so before");
  });

  it("each edition makes its own anew, and none a passage that it does not show", async () => {
    await built(["public", "inspector", "archive"]);
    edit(MIDDLE, (text) => `${text}\n::: inspector\nFor few.\n:::\n`);
    await built(["public", "inspector", "archive"]);
    edit(MIDDLE, (text) => text.replace("For few.", "For very few."));
    const anew = await madeAnew(() => built(["public", "inspector", "archive"]));
    expect(anew.filter((path) => path.startsWith("public/"))).toEqual([]);
    expect(anew.filter((path) => path.startsWith("inspector/"))).toEqual([
      "inspector/entry/2000-01-12-session-9.html",
      "inspector/search-index.js",
    ]);
    expect(anew.filter((path) => path.startsWith("archive/"))).toEqual([
      "archive/entry/2000-01-12-session-9.html",
      "archive/search-index.js",
    ]);
  });

  it("before a passage for few, which then begins further down, no other page is made anew either", async () => {
    edit(MIDDLE, (text) => `${text}\n::: inspector\nFor few.\n:::\n`);
    await built(["inspector"]);
    edit(MIDDLE, (text) => text.replace(/\n---\n\n/, "\n---\n\n\n\nMore.\n\n"));
    expect(await madeAnew(() => built(["inspector"]))).toEqual([OF_MIDDLE[0], OF_MIDDLE.at(-1)]);
  });

  it("and another’s before, the pages of both are; and one that was kept still knows what it reads", async () => {
    const other = "entries/2000-01-04-session-1.md";
    more(MIDDLE);
    more(other);
    const ofOther = "entry/2000-01-04-session-1.html";
    expect(await madeAnew(built)).toEqual([ofOther, ...OF_MIDDLE]);
    more(MIDDLE);
    expect(await madeAnew(built)).toEqual(OF_MIDDLE);
    more(other, "Unseen before.");
    expect(await madeAnew(built)).toEqual([ofOther, ...OF_MIDDLE.slice(1)]);
    expect(readFileSync(join(request.out, ofOther), "utf8")).toContain("Unseen before.");
  });
});

describe("All pages are made anew", () => {
  const CHANGES: { readonly [what: string]: (() => unknown) | undefined } = {
    "where a mass changed": () => edit(MIDDLE, (text) => text.replace(/mass: [\d.]+/, "mass: 61.3")),
    "where hours changed": () => edit(MIDDLE, (text) => text.replace(/time: \d+:/, "time: 9:")),
    "where a title changed": () => edit(MIDDLE, (text) => text.replace(/title: .*/, "title: Otherwise")),
    "where a lot’s prose changed": () => more("lots/R-0.md"),
    "where a passage came": () => edit(MIDDLE, (text) => `${text}\n::: inspector\nFor few.\n:::\n`),
    "where an entry was struck out": () =>
      writeAll(request.content, {
        "entries/2029-01-01-struck.md":
          "---\ndate: 2029-01-01\ntitle: Struck\namends: [{ entry: 2000-01-12-session-9, why: not so }]\n---\n",
      }),
    "where a seal was set": () => seal({ content: request.content, date: "2029-02-01" }, () => undefined),
    "where a sheet of one’s own came": () => writeAll(request.content, { "style.css": ":root { --own: 1px }\n" }),
    "where a page of one’s own came": () =>
      writeAll(request.content, { "pages/visit.md": "---\ntitle: Visit\n---\nCome.\n" }),
    "where what is kept of pages was cut short": () => kept((text) => text.slice(0, -1)),
    "where what is kept of pages was altered": () => kept((text) => text.replace(/"entry\/[^"]*"/, '"index.html"')),
    "where nothing is kept of pages": () => rmSync(join(request.cache, "standing"), { recursive: true }),
  };
  const kept = (change: (text: string) => string): void => {
    const path = [...contentOf(request.cache).keys()].find((one) => one.endsWith(".pages")) ?? "";
    const file = join(request.cache, path);
    writeFileSync(file, change(readFileSync(file, "utf8")));
  };
  for (const [what, change] of Object.entries(CHANGES))
    it(`${what}, beside prose`, async () => {
      await change?.();
      more(MIDDLE);
      expect(await madeAnew(built)).toEqual(pages());
    });

  it("by another program, by one that nobody can tell, on another day, and where it is asked", async () => {
    const ways: readonly (() => Promise<void>)[] = [
      () => built(["public"], { program: "another program" }),
      () => built(["public"], { program: undefined }),
      () => built(["public"], { program: "a program", fresh: true }),
      () => {
        request = { ...request, today: "2030-01-02" };
        return built();
      },
    ];
    for (const [at, way] of ways.entries()) {
      await built();
      more(MIDDLE);
      expect(await madeAnew(way), `way ${at}`).toEqual(pages());
    }
  });

  it("where pages of one’s own may read every entry", async () => {
    writeAll(request.content, { "pages/visit.md": "---\ntitle: Visit\n---\nCome.\n" });
    await built();
    more(MIDDLE);
    expect(await madeAnew(built)).toEqual(pages());
  });

  it("where a seal holds the entry that was changed, so that its pages say another day", async () => {
    await seal({ content: request.content, date: "2029-02-01" }, () => undefined);
    await built();
    more(MIDDLE);
    expect(await madeAnew(built)).toEqual(pages());
  });
});

it("No passage stays in an edition that shows it no longer, though as many stand on the same lines", async () => {
  const marked = (one: string, other: string): string =>
    `\n::: ${one}\nThe first.\n:::\n::: ${other}\nThe second.\n:::\n`;
  edit(MIDDLE, (text) => text.replace(/\n---\n[^]*$/, `\n---\n${marked("inspector", "archive")}`));
  await built(["inspector"]);
  edit(MIDDLE, (text) => text.replace(/\n---\n[^]*$/, `\n---\n${marked("archive", "inspector")}`));
  await built(["inspector"]);
  const page = readFileSync(join(request.out, OF_MIDDLE[0] ?? ""), "utf8");
  expect([page.includes("The first."), page.includes("The second.")]).toEqual([false, true]);
});

describe("A page that stands is not believed", () => {
  const page = "batch/B-0004.html";
  const WAYS: { readonly [how: string]: (file: string) => void } = {
    "after a letter of it was changed": (file) =>
      writeFileSync(file, readFileSync(file, "utf8").replace("rejected", "accepted").replace("shown", "shewn")),
    "after it was cut short": (file) => writeFileSync(file, readFileSync(file, "utf8").slice(0, -1)),
    "once it is gone": (file) => rmSync(file),
    "where a link leads to it": (file) => {
      linkSync(file, join(request.out, "../elsewhere.html"));
      rmSync(file);
      symlinkSync(join(request.out, "../elsewhere.html"), file);
    },
  };
  for (const [how, change] of Object.entries(WAYS))
    it(how, async () => {
      const file = join(request.out, page);
      const before = readFileSync(file, "utf8");
      change(file);
      more(MIDDLE);
      expect(await madeAnew(built)).toEqual([page, ...OF_MIDDLE]);
      expect(readFileSync(file, "utf8")).toBe(before);
      expect(lstatSync(file).isFile()).toBe(true);
    });
});
