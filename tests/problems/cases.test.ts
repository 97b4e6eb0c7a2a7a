import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { casesIn, saidOfCase } from "./cases.ts";

const FOLDER = new URL("cases", import.meta.url).pathname;

for (const name of readdirSync(FOLDER).sort()) {
  describe(`Problems with ${name.replace(/\.txt$/, "").replaceAll("-", " ")}`, () => {
    for (const one of casesIn(join(FOLDER, name))) {
      it(one.title, async () => {
        expect(one.expected).not.toBe("");
        expect(await saidOfCase(one)).toBe(one.expected);
      });
    }
  });
}
