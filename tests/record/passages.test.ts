import spec from "commonmark-spec";
import { describe, expect, it } from "vitest";
import { markdownParser } from "../../src/record/text/markdown.ts";
import { readPassages } from "../../src/record/text/passages.ts";
import { Source } from "../../src/record/text/source.ts";

const PARSER = markdownParser();
const SECRET = "The vault's number";
const HIDDEN = ["::: archive", SECRET, ":::"];

function read(body: string): ReturnType<typeof readPassages> {
  return readPassages(new Source("entry.md", body), body, 1);
}

/** What everyone would see of a body that has no problems: text and HTML. */
function publicOf({ body }: ReturnType<typeof readPassages>): string {
  return body
    .filter(({ audience }) => audience === "public")
    .map(({ markdown }) => `${markdown}\n${PARSER.render(markdown)}`)
    .join("\n");
}

/** What is wrong with how a body that hides the secret is read; a problem told at a line of it is nothing wrong. */
function leakOf(body: string): string | undefined {
  const found = read(body);
  const lines = body.split("\n").length;
  if (found.problems.length > 0)
    return found.problems.every(({ line, mend }) => line <= lines && mend !== "") ? undefined : `no place: ${body}`;
  if (publicOf(found).includes(SECRET)) return `shown: ${body}`;
  return found.body.some(({ markdown }) => markdown.includes(SECRET)) ? undefined : `lost: ${body}`;
}

/** Blocks of a text as the parser tells them, and blocks of its passages one after the other. */
function blocks(body: string): string[] {
  return PARSER.parse(body, {})
    .filter(({ type }) => type !== "passage_mark")
    .map(({ type, content }) => `${type} ${content.trimEnd()}`);
}

describe("A passage for the archive", () => {
  // CommonMark 0.31.2, the examples of its specification (package commonmark-spec), seen.
  const examples = spec.tests.map(({ markdown }) => markdown.replaceAll("→", "\t").replace(/\n$/, "").split("\n"));

  it("is hidden or told wherever it stands in an example of CommonMark", () => {
    expect(examples.length).toBe(652);
    const leaks = examples.flatMap((lines) =>
      [...lines, ""].map((_, at) => leakOf([...lines.slice(0, at), ...HIDDEN, ...lines.slice(at)].join("\n"))),
    );
    expect(leaks.length).toBeGreaterThan(2200);
    expect(leaks.filter((leak) => leak !== undefined)).toEqual([]);
  });

  it("is hidden or told within the blocks of each example", () => {
    const before = ["> ", "- ", "1. ", "  ", "    ", "\t", "| ", "# ", "\u200b", "a "];
    const leaks = examples.flatMap((lines, number) =>
      [...lines, ""].map((_, at) => {
        const put = HIDDEN.map((line) => `${before[(number + at) % before.length]}${line}`);
        return leakOf([...lines.slice(0, at), ...put, ...lines.slice(at)].join("\n"));
      }),
    );
    expect(leaks.filter((leak) => leak !== undefined)).toEqual([]);
  });

  it("leaves every other block what the parser takes it for in the whole text", () => {
    let whole = 0;
    for (const lines of examples)
      for (let at = 0; at <= lines.length; at++) {
        const body = [...lines.slice(0, at), ...HIDDEN, ...lines.slice(at)].join("\n");
        const found = read(body);
        // What a label stands for is defined for each passage by itself, so that none tells of another's.
        if (found.problems.length > 0 || lines.some((line) => /^\s*\[.*\]:/.test(line))) continue;
        whole += 1;
        expect(
          found.body.flatMap(({ markdown }) => blocks(markdown)),
          body,
        ).toEqual(blocks(body));
      }
    expect(whole).toBeGreaterThan(1500);
  });

  it("that nothing marks is kept whole as it was typed", () => {
    for (const lines of examples) {
      const body = lines.join("\n");
      const found = read(body);
      expect(found.problems, body).toEqual([]);
      expect(found.body.map(({ markdown }) => markdown).join("")).toBe(body.replace(/^(?:[^\S\n]*\n)+/, "").trimEnd());
    }
  });
});

describe("What is like a mark and is none", () => {
  const told = (body: string): string =>
    read(body)
      .problems.map(({ line, message }) => `${line}: ${message}`)
      .join("\n");
  const NONE = "this is like the mark of a passage, but is none";
  const inThe = (where: string, line: number): string =>
    `this is like the mark of a passage, but stands in the ${where} of line ${line}`;

  it("is told by what it stands in", () => {
    expect(told(`\`\`\`\n${HIDDEN.join("\n")}`)).toBe(`2: ${inThe("code block", 1)}\n4: ${inThe("code block", 1)}`);
    expect(told(`\`\`\`\na\n\`\`\` js\n${HIDDEN.join("\n")}`)).toContain(inThe("code block", 1));
    expect(told(`a\n\n    ::: archive`)).toBe(`3: ${inThe("code block", 3)}`);
    expect(told(`a\n> ::: archive\n> b\n> :::`)).toBe(`2: ${inThe("quote", 2)}\n4: ${inThe("quote", 2)}`);
    expect(told(`- a\n  ::: archive\n  b\n  :::`)).toBe(`2: ${inThe("list", 1)}\n4: ${inThe("list", 1)}`);
    expect(told(`1. \`\`\`\n   ::: archive\n   \`\`\``)).toBe(`2: ${inThe("code block", 1)}`);
    expect(told("a ::: archive")).toBe(`1: ${NONE}`);
  });

  it("is told however it is written", () => {
    const written = [
      "：：： archive",
      ":: archive",
      ": : : archive",
      ": archive",
      "∶∶∶ archive",
      "∷: archive",
      "ː ː ː archive",
      "\u200b::: archive",
      ":\u200b:: archive",
      "\u2066:::\u2069 archive",
      ":\u0301:: archive",
      "\\::: archive",
      "| ::: archive |",
      "# ::: archive",
      "**::: archive**",
      "`::: archive`",
      "<div>::: archive",
      "[a]: ::: archive",
      "::",
      ";;: inspector",
      "︓︓︓ inspector",
      "﹕﹕﹕",
      "⫶ archive",
    ];
    for (const line of written) expect(told(`a\n\n${line}\n\nb`), line).toMatch(/^3: /);
  });

  it("is not told of times, ratios, tables, addresses and definitions", () => {
    const plain = [
      "At 12:30:15 the ratio was 100:28, see https://example.org.",
      "| a | b |\n|:---|:---:|\n| 1:30 | 2 |",
      "Archive: the papers",
      "# Archive",
      "Glue: archive",
      "&#58;&#58;&#58; archive",
      "[a]: https://example.org",
    ];
    for (const body of plain) expect(told(body), body).toBe("");
  });

  it("lies not deeper than the parser goes", () => {
    expect(told(`${">".repeat(99)} a`)).toBe("");
    expect(told(`${">".repeat(100)} a`)).toBe("1: quotes and lists within each other are too many here");
    expect(told(`${"- ".repeat(49)}a`)).toBe("");
    expect(told(`${"- ".repeat(60)}a`)).toBe("1: quotes and lists within each other are too many here");
  });

  it("in a code block that is never closed hides nothing that a former reader took for a passage", () => {
    const attack = "```RD-J01``` is the joint.\n\n::: archive\nThe vault's number\n:::\n";
    expect(read(attack).problems).toEqual([]);
    expect(publicOf(read(attack))).not.toContain(SECRET);
    expect(leakOf(`- \`\`\`\n  code\n${HIDDEN.join("\n")}`)).toBeUndefined();
    expect(leakOf(`\`\`\`\ncode\n\n${HIDDEN.join("\n")}`)).toBeUndefined();
  });
});
