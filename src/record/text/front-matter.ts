/** One file: its front matter as plain data with places, and its body. */
import matter from "gray-matter";
import { beyond, inThousands, LIMITS } from "../../facts/limits.ts";
import type { Problem } from "../../problem.ts";
import type { Fault } from "../../facts/reading.ts";
import type { Source } from "./source.ts";
import { frontMatter, type ReadValue } from "./spots.ts";
import { type FrontMatter, parseYaml } from "./yaml.ts";

export interface ReadFile {
  readonly source: Source;
  readonly front: FrontMatter;
  /** What `front` was made of. */
  readonly value: ReadValue;
  /** The Markdown after the front matter, and the line it begins on. */
  readonly body: string;
  readonly bodyLine: number;
  readonly problems: readonly Problem[];
  /** Whether the YAML could not be read, so that holding it against a schema would only mislead. */
  readonly syntax: boolean;
}

/** Where the YAML begins in a file: after the first three hyphens. */
const YAML_AT = 3;
const FENCE = /^---[ \t]*$/;
const EXPECTED = "--- alone on the first line, the facts, and --- alone on a line after them";

const BLANKS = new RegExp(`\\s{${LIMITS.blanks + 1}}`);
const TOO_BLANK = beyond(
  "there are more blanks and empty lines in a row here than are read",
  inThousands(LIMITS.blanks),
  "take away what is not needed of them",
);

function refused(): never {
  throw new Error("front matter in this language is never read");
}

/** The only engine is ours; the ones that would guess or execute are overwritten. */
const LANGUAGES = {
  json: refused,
  javascript: refused,
  js: refused,
  coffee: refused,
  coffeescript: refused,
  cson: refused,
  toml: refused,
};

export function readFrontMatter(source: Source): ReadFile | { readonly problem: Problem } {
  const close = closingFence(source.text);
  if (typeof close !== "number") return { problem: source.problem(close.offset, close.fault) };
  const run = BLANKS.exec(source.text.slice(0, close));
  if (run) return { problem: source.problem(run.index, TOO_BLANK) };
  let parsed: ReturnType<typeof parseYaml> | undefined;
  const yaml = (text: string): object => {
    parsed = parseYaml(source, text, YAML_AT);
    return {};
  };
  // The body is no concern of its: what it is given ends with the line that closes the front matter.
  matter(source.text.slice(0, close + YAML_AT), { language: "yaml", engines: { ...LANGUAGES, yaml } });
  if (parsed === undefined) {
    return {
      problem: source.problem(0, {
        code: "empty",
        message: "there is nothing between the two --- lines",
        mend: "write the facts there, such as `title: …`",
      }),
    };
  }
  const line = source.at(close).line + 1;
  return {
    source,
    front: parsed.front,
    value: parsed.value,
    problems: parsed.problems,
    syntax: parsed.syntax,
    body: source.text.slice(source.lineStart(line)),
    bodyLine: line,
  };
}

/** A file that was read before, of the same bytes and without any problem. */
export function frontMatterAgain(source: Source, value: ReadValue, bodyLine: number): ReadFile {
  const body = source.text.slice(source.lineStart(bodyLine));
  return { source, front: frontMatter(source, YAML_AT, value), value, problems: [], syntax: false, body, bodyLine };
}

/** Where the line begins that ends the front matter. */
function closingFence(text: string): number | { readonly offset: number; readonly fault: Fault } {
  const first = text.split("\n", 1)[0] ?? "";
  if (!FENCE.test(first)) return { offset: 0, fault: openingFault(text, first) };
  const next = text.indexOf("\n---", first.length) + 1;
  if (next === 0) {
    return {
      offset: 0,
      fault: {
        code: "fence",
        message: "the front matter is never closed",
        expected: EXPECTED,
        mend: "put --- alone on the line after the last fact",
      },
    };
  }
  const line = text.slice(next).split("\n", 1)[0] ?? "";
  if (FENCE.test(line)) return next;
  return {
    offset: next,
    fault: {
      code: "fence",
      message: "this line begins with --- but is not --- alone",
      expected: EXPECTED,
      found: line.slice(0, 80),
      mend: "if the front matter ends here, write --- alone",
    },
  };
}

function openingFault(text: string, first: string): Fault {
  const at = { code: "fence", expected: EXPECTED } as const;
  if (text.trim() === "") return { ...at, message: "the file is empty", mend: "write the facts, or delete the file" };
  const language = /^---\s*([A-Za-z]\w*)\s*$/.exec(first);
  if (language) {
    return {
      ...at,
      message: `front matter is never read as ${language[1]}`,
      found: first,
      mend: "begin with --- alone and the facts in YAML; nothing in a record is executed",
    };
  }
  if (/^\s*---[ \t]*$/m.test(text.slice(0, 400))) {
    return {
      ...at,
      message: "the front matter must begin on the first line",
      ...(first.trim() !== "" && { found: first.slice(0, 80) }),
      mend: "take away what stands before it",
    };
  }
  return {
    ...at,
    message: "the file has no front matter",
    found: first.slice(0, 80),
    mend: "begin the file with --- and the facts",
  };
}
