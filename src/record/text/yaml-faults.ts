/** What is said where YAML itself cannot be read. */
import type { YAMLError } from "yaml";
import { type Fault, shown } from "../../facts/reading.ts";

type Said = Omit<Fault, "code" | "found">;

const QUOTE = "put the whole text in quotation marks";

const SAID: { readonly [code: string]: Said } = {
  TAB_AS_INDENT: {
    message: "a tab indents this line",
    expected: "blanks",
    mend: "indent with blanks, two for each step",
  },
  DUPLICATE_KEY: { message: "this key stands here twice", mend: "keep one of them, or join both under one key" },
  BAD_INDENT: {
    message: "the indentation does not fit",
    expected: "keys of one block one below another, and each bracket closed",
    mend: "line this up with the line it belongs to, and look for a bracket that is still open",
  },
  BLOCK_AS_IMPLICIT_KEY: {
    message: "a second colon stands in this value",
    expected: 'text in quotation marks, such as "Spar: rear"',
    mend: QUOTE,
  },
  MULTILINE_IMPLICIT_KEY: {
    message: "this line and the next were read as one",
    expected: "a blank after each colon, and keys of one block one below another",
    mend: "write a blank after the colon, and line the next key up with its block",
  },
  MULTIPLE_DOCS: {
    message: "the front matter is cut in two here",
    expected: "one block of facts",
    mend: "take this line away",
  },
  BAD_SCALAR_START: {
    message: "text cannot begin with this character",
    expected: 'text in quotation marks, such as "@ 20 °C"',
    mend: QUOTE,
  },
  NON_STRING_KEY: {
    message: "a key must be a plain word",
    expected: "a key, such as `title:`",
    mend: "write the key as one word",
  },
  BAD_ALIAS: {
    message: "* and & have a meaning of their own in YAML",
    expected: 'text in quotation marks, such as "* later"',
    mend: QUOTE,
  },
  BAD_DQ_ESCAPE: {
    message: "a backslash in double quotation marks begins a special character",
    expected: "text in single quotation marks, such as 'a\\b'",
    mend: "use single quotation marks, or write the backslash twice",
  },
  BLOCK_IN_FLOW: {
    message: "a list with hyphens cannot stand within brackets",
    expected: "items with commas, such as [a, b]",
    mend: "write the items with commas between them",
  },
};

const ELSE: Said = {
  message: "this cannot be read as YAML",
  expected: "`key: value` on each line",
  mend: "look at this line and the one before for a missing quotation mark, bracket, comma or colon",
};

export function syntaxFault(error: YAMLError, text: string): Fault {
  const said = bySentence(error.message, beginsLine(error, text)) ?? SAID[error.code] ?? ELSE;
  const found = foundAt(error, text);
  const mend = said.mend === QUOTE ? (quoted(found) ?? QUOTE) : said.mend;
  return {
    code: error.code === "DUPLICATE_KEY" ? "duplicate-key" : "yaml-syntax",
    ...said,
    ...(found !== "" && { found }),
    mend,
  };
}

/** The line with its value in quotation marks, or in the braces that were forgotten around several keys. */
function quoted(line: string): string | undefined {
  const [, head, keys] =
    /^(- |[a-z_]+: |- [a-z_]+: (?=[a-z_]+: ))?([a-z_]+: [^{}]+, *[a-z_]+: [^{}]+)$/.exec(line) ?? [];
  if (head !== undefined && keys !== undefined)
    return `put braces around the keys that stand on one line: ${head}{ ${keys} }`;
  const [, key, value] = /^((?:- )?[a-z_]+): ([^"'{}[\]]+)$/.exec(line) ?? [];
  return key === undefined || value === undefined ? undefined : `put the text in quotation marks: ${key}: "${value}"`;
}

/** The error that says best what is wrong, of those that one slip makes. */
export function tellingError(errors: readonly YAMLError[]): YAMLError | undefined {
  const [first, second] = errors;
  return first?.code === "BLOCK_AS_IMPLICIT_KEY" && second?.code === "MULTILINE_IMPLICIT_KEY" ? second : first;
}

function beginsLine(error: YAMLError, text: string): boolean {
  return text.slice(text.lastIndexOf("\n", error.pos[0] - 1) + 1, error.pos[0]).trim() === "";
}

function bySentence(message: string, beginsLine: boolean): Said | undefined {
  const bracket = /^Flow (map|sequence) .* end with a (.)$/.exec(message)?.[2];
  if (bracket !== undefined)
    return {
      message: "a bracket is still open here",
      expected: "each bracket closed, such as [a, b] and { a: 1 }",
      mend: `close it with ${bracket} where the list or block ends, before this line`,
    };
  if (message.startsWith("Missing directives-end"))
    return {
      message: "a line that begins with % has a meaning of its own in YAML",
      expected: "keys and values",
      mend: "take that line away",
    };
  if (message.startsWith("Missing closing")) {
    return {
      message: "a quotation mark is not closed",
      expected: 'text between two quotation marks, such as "Rear spar"',
      mend: "close it at the end of the text",
    };
  }
  if (message.includes("Comments must be separated"))
    return {
      message: "# stands right after a quotation mark or bracket",
      expected: "a blank before a comment",
      mend: "write a blank before #, or take the comment away",
    };
  if (message.startsWith("Sequence item without") || (beginsLine && message.includes("at node end")))
    return SAID["BAD_INDENT"];
  if (message.includes("at node end"))
    return {
      message: "something follows where the value had ended",
      expected: 'text wholly within its quotation marks, such as "3/4 in stock"',
      mend: QUOTE,
    };
  if (message.includes("block-seq-ind on same line"))
    return {
      message: "a list cannot begin on the line of its key",
      expected: "items on lines of their own, or [a, b]",
      mend: "move the hyphen to the next line",
    };
  return undefined;
}

function foundAt(error: YAMLError, text: string): string {
  const start = Math.min(error.pos[0], text.length);
  const line = text.slice(text.lastIndexOf("\n", start - 1) + 1).split("\n", 1)[0] ?? "";
  return shown(line.replaceAll("\t", "⇥").trim());
}
