/** `npm run attacks -- 20000` searches further. */
import { afterAll, expect, it } from "vitest";
import { REMOVALS, STATES, unlisted } from "./search/listed.ts";
import { search } from "./search/search.ts";
import { namesInForms } from "./search/sites.ts";
import { Workbench } from "./workbench.ts";

const bench = new Workbench();
afterAll(() => bench.close());

const FIRST = 7000;

it("No edit betters a verdict: what is left out, added or altered but by a listed fact, what is amended alone, struck, reordered or noted less sharply at all", async () => {
  const { tried, found } = await search(bench, 350, FIRST);
  for (const [kind, n] of tried) expect(n, kind).toBeGreaterThan(40);
  expect(unlisted(found)).toEqual([]);
}, 600_000);

it("The lists of what may better a verdict name only what can be written", () => {
  const names = namesInForms();
  const others = ["climate rows", "rows file", "entry file", "climate file", "lot file", "assembly file"];
  for (const name of [...Object.keys(REMOVALS), ...Object.keys(STATES)])
    expect(names.has(name) || others.includes(name), name).toBe(true);
});
