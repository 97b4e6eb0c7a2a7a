import { expect, it } from "vitest";
import { visibilityOf } from "../../src/editions/visibility.ts";
import { markdownParser } from "../../src/record/text/markdown.ts";
import { readPassages } from "../../src/record/text/passages.ts";
import { Source } from "../../src/record/text/source.ts";
import { exampleRecord } from "../pages/example.ts";
import { CONSTRUCTS, OPENINGS } from "./constructs.ts";
import { mayShow, Words } from "./words.ts";

const PARSER = markdownParser();
const record = exampleRecord();

it("A passage of any construct, behind any other that is not ended, tells its readers all of it and nobody else a word", () => {
  let told = 0;
  for (const opening of OPENINGS)
    for (const construct of CONSTRUCTS) {
      const words = new Words();
      const say = (audience: "public" | "archive") => (what: string, optional?: boolean) =>
        words.say(what, audience, { optional: optional === true });
      const markdown = `${opening(say("public"))}\n::: archive\n${construct(say("archive"))}\n:::\n${say("public")("after")}`;
      const { body, problems } = readPassages(new Source("entry.md", markdown), markdown, 1);
      expect(problems, markdown).toEqual([]);
      for (const edition of ["public", "archive"] as const) {
        const shown = visibilityOf(record, edition).prose(body, "entries");
        const page = shown
          .map((one) =>
            one.blocks ? PARSER.renderer.render([...one.blocks], PARSER.options, {}) : PARSER.render(one.markdown),
          )
          .join("\n");
        const seen = words.all.filter((word) => page.includes(word.text));
        expect(
          seen.filter((word) => !mayShow(word, edition)).map(({ where }) => where),
          markdown,
        ).toEqual([]);
        const lacking = words.all.filter((word) => mayShow(word, edition) && !word.optional && !seen.includes(word));
        expect(
          lacking.map(({ where }) => where),
          markdown,
        ).toEqual([]);
        told += seen.length;
      }
    }
  expect(told).toBeGreaterThan(OPENINGS.length * CONSTRUCTS.length * 6);
});
