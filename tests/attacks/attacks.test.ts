import { readdirSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { answer, attacksIn } from "./attack.ts";
import { Workbench } from "./workbench.ts";

const FOLDER = new URL("cases", import.meta.url).pathname;
const bench = new Workbench();
afterAll(() => bench.close());

for (const name of readdirSync(FOLDER).sort()) {
  describe(`An attack by ${name.replace(/\.txt$/, "").replaceAll("-", " ")}`, () => {
    for (const attack of attacksIn(join(FOLDER, name)))
      it(attack.title, async () => {
        expect(await answer(bench, attack), attack.why).toEqual(attack.expected);
      });
  });
}

it("Attacks are at least 400, no two alike", () => {
  const all = readdirSync(FOLDER).flatMap((name) => attacksIn(join(FOLDER, name)));
  expect(all.length).toBeGreaterThanOrEqual(400);
  expect(new Set(all.map(({ title }) => title)).size).toBe(all.length);
  const changes = all.flatMap((one) => (one.changes.length === 0 ? [] : [one.changes.join("\n")]));
  expect(changes.filter((one, at) => changes.indexOf(one) < at)).toEqual([]);
});
