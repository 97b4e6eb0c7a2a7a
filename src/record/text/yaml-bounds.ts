/** YAML as its library's own tokens, counted as they are made, so that nothing too deep or too wide is ever composed. */
import { Composer, type CST, type Document, Lexer, Parser, YAMLParseError } from "yaml";
import { beyond, inThousands, LIMITS } from "../../facts/limits.ts";
import type { Fault } from "../../facts/reading.ts";

type Options = ConstructorParameters<typeof Composer>[0];

/** A fault, and where in the YAML it begins. */
export interface Beyond {
  readonly offset: number;
  readonly fault: Fault;
}

/** What `parseDocument` of the library gives, or where the text goes beyond a limit. */
export function composed(text: string, options: Options): Document.Parsed | Beyond {
  const tokens = boundedTokens(text);
  if (!Array.isArray(tokens)) return tokens;
  const [document, second] = new Composer(options).compose(tokens, true, text.length);
  if (document === undefined) throw new Error("the composer was asked for a document and gave none");
  if (second !== undefined)
    document.errors.push(new YAMLParseError([second.range[0], second.range[1]], "MULTIPLE_DOCS", "more than one"));
  return document as Document.Parsed;
}

function boundedTokens(text: string): CST.Token[] | Beyond {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  let count = 0;
  for (const lexeme of new Lexer().lex(text)) {
    const offset = parser.offset;
    if ((count += 1) > LIMITS.tokens) return { offset, fault: TOO_MANY };
    for (const token of parser.next(lexeme)) tokens.push(token);
    const fault = faultAt(parser.stack);
    if (fault) return { offset, fault };
  }
  for (const token of parser.end()) tokens.push(token);
  return tokens;
}

const TOO_MANY = beyond(
  "there are more facts in this file than are read",
  `${inThousands(LIMITS.tokens)} words, signs and blanks between the two --- lines`,
  "part it over several files, or tell in the prose what is no fact",
);

/** `stack` holds the document, and what is open in it. */
function faultAt(stack: readonly CST.Token[]): Fault | undefined {
  if (stack.length > LIMITS.depth && stack.filter((token) => "items" in token).length > LIMITS.depth)
    return beyond(
      "lists and blocks within each other are too many here",
      `${LIMITS.depth} within each other`,
      "look for brackets, hyphens or question marks that are not needed",
    );
  const top = stack.at(-1);
  if (top === undefined || !("items" in top)) return undefined;
  const isList = top.type === "block-seq" || (top.type === "flow-collection" && top.start.source === "[");
  const most = isList ? LIMITS.items : LIMITS.keys;
  if (top.items.length <= most) return undefined;
  return isList
    ? beyond("this list has more items than are read", `${inThousands(most)} items`, "part it over several files")
    : beyond(
        "this block has more keys than are read",
        `${most} keys`,
        "look for what is no key, and tell it in the prose",
      );
}
