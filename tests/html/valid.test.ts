/** Pages as HTML, by another's reading of its standard: html-validate 10 with its recommended rules. */
import { HtmlValidate, StaticConfigLoader } from "html-validate";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { builtDemo, onePageOfEachKind } from "../browser/demo.ts";

/** Nothing that those rules find is left; two of them ask for one of two ways of writing that the standard holds alike. */
const RULES = {
  // HTML, 13.1.1: the doctype is matched in letters of any size.
  "doctype-style": ["error", { style: "lowercase" }],
  // HTML, 13.1.2.1: a void element may end with `/>`; our renderer writes what XML can read too.
  "void-style": ["error", { style: "selfclosing" }],
} as const;

const validator = new HtmlValidate(
  new StaticConfigLoader({ root: true, extends: ["html-validate:recommended"], rules: RULES as never }),
);

async function faultsOf(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(
      ({ ruleId, message, selector, line, column }) => `${ruleId}: ${message} (${selector ?? ""} ${line}:${column})`,
    ),
  );
}

describe("Every kind of page is HTML with nothing to find for html-validate", () => {
  it.each(["public", "inspector", "archive"] as const)(
    "in the %s edition",
    async (edition) => {
      const site = builtDemo(edition);
      const kinds = onePageOfEachKind(site);
      expect(kinds.length).toBeGreaterThan(20);
      const faults: string[] = [];
      for (const path of kinds) {
        const found = await faultsOf(readFileSync(`${site.folder}/${path}`, "utf8"));
        faults.push(...found.map((fault) => `${path}: ${fault}`));
      }
      expect(faults).toEqual([]);
    },
    1_200_000,
  );

  it("which finds faults where there are some", async () => {
    const page =
      '<!doctype html><html lang="en"><head><title>A</title></head><body><p><div>B</div></p><img src="a"/></body></html>';
    expect((await faultsOf(page)).length).toBeGreaterThan(1);
  });
});
