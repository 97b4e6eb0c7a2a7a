/** What is wrong with own pages, each in its file and at its line as far as they can be found there. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { placed, type Place, type Problem } from "../../problem.ts";
import { isStray } from "../written.ts";
import type { OwnFailure, OwnFault, OwnMade, OwnReply, StoryTask } from "./task.ts";

/** In small letters: what is HTML under another ending would be looked at by nobody. */
const ENDINGS = /\.(?:html|json|txt|csv)$/;

/** @param taken paths of what the site has without own pages, by the same in small letters */
export function problemsOf(
  root: string,
  reply: OwnReply | OwnFailure,
  story: readonly StoryTask[],
  taken: ReadonlyMap<string, string>,
): Problem[] {
  if ("failed" in reply) return [failed(root, reply)];
  const laid = new Set(story.map(({ path }) => path));
  const own = reply.pages.filter(({ path }) => !laid.has(path));
  const there = new Set([...taken.values(), ...own.map(({ path }) => path)]);
  return [
    ...placeProblems(own, taken),
    ...own.flatMap((page) => (page.title === undefined && page.path.endsWith(".html") ? [untitled(page)] : [])),
    ...reply.links.flatMap(({ file, typed, path }) =>
      there.has(path) ? [] : [dead(placeIn(root, file, typed), path)],
    ),
    ...reply.faults.map((fault) => problemOf(fault, placeIn(root, fault.file, fault.typed))),
  ];
}

/** Where a text stands first in a file; its beginning, where it came from elsewhere. */
function placeIn(root: string, file: string, typed: string): Place {
  const path = [file, ...ENGINES.map((ending) => `${file}${ending}`)].find((each) => existsSync(join(root, each)));
  const text = path === undefined ? "" : readFileSync(join(root, path), "utf8");
  const before = text.slice(0, Math.max(0, text.indexOf(typed))).split("\n");
  return { file: path ?? file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

/** Endings of layouts, which are called without them. */
const ENGINES = [".liquid", ".njk", ".html", ".11ty.js", ".11ty.mjs", ".11ty.cjs", ".md"];

function failed(root: string, { failed: why, file, line, column }: OwnFailure): Problem {
  const isThere = file !== undefined && existsSync(join(root, file));
  return placed(
    { file: isThere ? file : "pages", line: isThere ? (line ?? 1) : 1, column: isThere ? (column ?? 1) : 1 },
    {
      code: "own-page",
      message: "this page or layout cannot be made",
      expected: "a template of Eleventy that needs nothing but `edition` and what lies in pages/ and layouts/",
      found: why,
      mend: "mend what it tells; nothing else of the site is in the way",
    },
  );
}

function placeProblems(own: readonly OwnMade[], taken: ReadonlyMap<string, string>): Problem[] {
  const seen = new Map(taken);
  return own.flatMap(({ file, path }) => {
    const other = seen.get(path.toLowerCase());
    seen.set(path.toLowerCase(), path);
    if (isStray(path)) return [misplaced(file, "this page would lie outside the site", path)];
    if (!ENDINGS.test(path)) return [misplaced(file, "own pages are pages, or files of data or text", path)];
    return other === undefined ? [] : [misplaced(file, "another page of the site lies there", path)];
  });
}

function misplaced(file: string, message: string, found: string): Problem {
  return placed(
    { file, line: 1, column: 1 },
    {
      code: "own-place",
      message,
      expected: "a place of its own that ends in .html, .json, .txt or .csv, such as visit.html",
      found,
      mend: "give it another name, or another `permalink`",
    },
  );
}

function untitled({ file, path }: OwnMade): Problem {
  return placed(
    { file, line: 1, column: 1 },
    {
      code: "own-title",
      message: "this page has no title",
      expected: "`title:` in its front matter, such as title: Come and see",
      found: path,
      mend: "say what it is called",
    },
  );
}

function dead(place: Place, found: string): Problem {
  return placed(place, {
    code: "own-link",
    message: "this link leads to nothing in this edition",
    expected: "a page or file of the site, such as /hours.html",
    found,
    mend: "correct it, or write it only where `edition` has what it leads to",
  });
}

const REFUSED: {
  readonly [kind in OwnFault["kind"]]: (typed: string) => Omit<Parameters<typeof placed>[1], "instead">;
} = {
  element: (found) => policy("no own page has an element of this kind", found),
  attribute: (found) => policy("no page has an attribute of this kind", found),
  elsewhere: (found) => policy("no page asks another host for anything", found),
  audience: (found) => ({
    code: "own-audience",
    message: "`for:` of this page names no edition",
    expected: "inspector or archive; or no `for:` at all, for all readers",
    found,
    mend: "write inspector or archive",
  }),
  late: (found) => ({
    code: "own-audience",
    message: "`for:` of this page is set only once it is known which pages are made",
    expected: "`for:` in its front matter, in data of its folder or in its layout, as it stands",
    found,
    mend: "write it there, and neither compute it nor page by it",
  }),
  "late layout": (found) => ({
    code: "own-audience",
    message: "the layout of this page is set only once it is known for whom it is",
    expected: "`layout:` in its front matter or in data of its folder, as it stands",
    found,
    mend: "write it there, and do not compute it",
  }),
  passage: (found) => ({
    code: "own-audience",
    message: "an own page has no passages for other readers",
    expected: "`for:` in its front matter, for the whole page",
    found,
    mend: "put what is for fewer readers, also in a part or layout that it takes in, on a page of its own, with `for:`",
  }),
};

const policy = (message: string, found: string): Omit<Parameters<typeof placed>[1], "instead"> => ({
  code: "own-policy",
  message,
  expected: "text, links and pictures of the site; styles stand in style.css",
  found,
  mend: "leave it out",
});

const problemOf = (fault: OwnFault, place: Place): Problem => placed(place, REFUSED[fault.kind](fault.typed));
