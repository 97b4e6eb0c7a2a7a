import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { answer, attacksIn } from "./attack.ts";

const FOLDER = new URL("cases", import.meta.url).pathname;

for (const name of readdirSync(FOLDER).sort()) {
  describe(`An attack by ${name.replace(/\.txt$/, "").replaceAll("-", " ")}`, () => {
    for (const attack of attacksIn(join(FOLDER, name)))
      it(attack.title, async () => {
        expect(await answer(attack), attack.why).toEqual(attack.expected);
      });
  });
}
