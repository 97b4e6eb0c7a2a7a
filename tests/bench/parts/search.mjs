/** How large the index of the search is, how long it takes to be opened and how long an answer, in Chromium as in a reader's browser. */
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { tsImport } from "tsx/esm/api";
import { prepare } from "../contestants.mjs";
import { inFolder, median, root } from "../measure.mjs";
import { told } from "../table.mjs";

/** An id, a word that is everywhere, two words, a beginning, a misspelt word, nothing. */
const ASKED = ["B-0123", "glue", "spar clamps", "clam", "thermomter", "zeppelin"];
const MOST_ENTRIES = 8000;

export function search({ rounds, sizes, dir }) {
  return inFolder(dir, async (work) => {
    const rows = [];
    for (const size of [...new Set([...sizes, MOST_ENTRIES])])
      rows.push(...(await rowsOf(join(work, String(size)), size, rounds)));
    return {
      title: `Search, medians of ${rounds} rounds`,
      heads: ["entries", "index, MB packed", "opened, ms", "words", "found", "answer, ms", "slowest, ms"],
      rows,
      notes: [
        "An answer is counted from the last key to the first frame that shows it, less the wait for another key.",
      ],
    };
  });
}

async function rowsOf(work, size, rounds) {
  prepare(work, size);
  const out = join(work, "site");
  execFileSync(
    process.execPath,
    [join(root, ".build/cli.js"), "build", "--fresh", "--content", join(work, "content"), "--out", out],
    { cwd: root, stdio: ["ignore", "ignore", "inherit"] },
  );
  const packed = gzipSync(readFileSync(join(out, "search-index.js"))).length / 1e6;
  const { openBrowser } = await tsImport("../../browser/browsers.ts", import.meta.url);
  const browser = await openBrowser();
  const page = await browser.newPage();
  await page.goto(pathToFileURL(join(out, "search.html")).href);
  const opened = await page.evaluate(answered, "glue");
  const rows = [];
  for (const words of ASKED) {
    const took = [];
    for (let round = 0; round < rounds; round += 1) {
      await page.evaluate(answered, "");
      took.push(await page.evaluate(answered, words));
    }
    const found = await page.locator("output").innerText();
    rows.push([
      String(size),
      told(packed, 2),
      told(opened, 0),
      words,
      found,
      told(median(took), 0),
      told(Math.max(...took), 0),
    ]);
  }
  await browser.close();
  return rows;
}

/** In the page: types words and waits until what was found stands there; ms without the wait for another key. */
async function answered(words) {
  const WAIT_MS = 60;
  const input = document.querySelector("[data-search] input");
  const list = document.querySelector(".search__found");
  const state = document.querySelector("output");
  state.textContent = "";
  list.replaceChildren();
  input.value = words;
  const began = performance.now();
  input.dispatchEvent(new Event("input"));
  if (words === "") return new Promise((done) => setTimeout(done, 2 * WAIT_MS, 0));
  await new Promise((done) => {
    new MutationObserver((_, observer) => {
      if (state.textContent === "") return;
      observer.disconnect();
      done();
    }).observe(state, { childList: true, characterData: true, subtree: true });
  });
  await new Promise((done) => requestAnimationFrame(done));
  return performance.now() - began - WAIT_MS;
}
