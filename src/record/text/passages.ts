/** A Markdown body as passages for different readers: `::: inspector` … `:::`. */
import type { Token } from "markdown-it";
import type { Problem } from "../../problem.ts";
import { nearest } from "../../facts/nearest.ts";
import { type Fault, shown } from "../../facts/reading.ts";
import type { Audience, Passage } from "../../facts/types.ts";
import { AUDIENCES } from "../../facts/values.ts";
import { LIMITS } from "../../facts/limits.ts";
import { MARK, markdownParser } from "./markdown.ts";
import { isMarkLike } from "./mark-like.ts";
import type { Source } from "./source.ts";

export interface ReadBody {
  readonly body: readonly Passage[];
  readonly problems: readonly Problem[];
}

const EXPECTED = "`::: inspector` or `::: archive` on a line alone, and `:::` on a line alone after the passage";
const PARSER = markdownParser();
/** What begins a line that may stand as deep within quotes and lists as the parser goes; most bodies have none, and parsing is slow. */
const DEEP = /^[\s>*+\-\d.)]{80}/m;

interface Open {
  readonly audience: Audience;
  readonly line: number;
}

/** `firstLine` is the line of the file that the body begins on. */
export function readPassages(source: Source, body: string, firstLine: number): ReadBody {
  const lines = body.split("\n");
  const alike = new Set(lines.flatMap((line, at) => (isMarkLike(line) ? [at] : [])));
  if (alike.size === 0 && !DEEP.test(body)) return { body: passage("public", lines, firstLine), problems: [] };
  const tokens: Token[] = [];
  PARSER.block.parse(body, PARSER, {}, tokens);
  return new BodyReader(source, lines, firstLine, tokens).read(alike);
}

/** Lines without the blank ones around them; nothing if none is left. */
function passage(audience: Audience, lines: readonly string[], firstLine: number): Passage[] {
  const first = lines.findIndex((line) => line.trim() !== "");
  if (first < 0) return [];
  return [{ audience, markdown: lines.slice(first).join("\n").trimEnd(), line: firstLine + first }];
}

/** Takes the marks from the parser's tokens; a line that is like one and is none is told, since what it was to hide would be shown. */
class BodyReader {
  readonly #source: Source;
  readonly #lines: readonly string[];
  readonly #firstLine: number;
  readonly #tokens: readonly Token[];
  readonly #body: Passage[] = [];
  readonly #problems: Problem[] = [];
  #open: Open | undefined;
  /** Passages within passages, which have been told and whose ends are no problem of their own. */
  #within = 0;
  #start = 0;

  constructor(source: Source, lines: readonly string[], firstLine: number, tokens: readonly Token[]) {
    this.#source = source;
    this.#lines = lines;
    this.#firstLine = firstLine;
    this.#tokens = tokens;
  }

  read(alike: ReadonlySet<number>): ReadBody {
    const marks = new Map(this.#tokens.flatMap((token) => (token.type === MARK ? [[lineOf(token), token]] : [])));
    for (const [line, token] of marks) this.#mark(token.info, line);
    if (this.#open)
      this.#report(this.#open.line, {
        code: "passage",
        message: "this passage is never closed",
        expected: EXPECTED,
        found: `::: ${this.#open.audience}`,
        mend: "put ::: alone on the line after it",
      });
    this.#end(this.#lines.length);
    for (const { line, around } of this.#around([...alike].filter((line) => !marks.has(line))))
      this.#report(line, this.#noMark(line, around));
    const deep = this.#tokens.find(({ type, level }) => NESTS.has(type) && level >= LIMITS.quotes - 1);
    if (deep)
      this.#report(lineOf(deep), {
        code: "limit",
        message: "quotes and lists within each other are too many here",
        expected: `at most ${LIMITS.quotes} of them within each other; what stands deeper would not be shown`,
        mend: "take away the signs at the beginning of the line that are not needed",
      });
    return { body: this.#body, problems: this.#problems };
  }

  #mark(word: string, line: number): void {
    if (word === "") this.#close(line);
    else this.#begin(word, line);
  }

  #close(line: number): void {
    if (!this.#open && this.#within > 0) this.#within -= 1;
    else if (!this.#open)
      this.#report(line, {
        code: "passage",
        message: "there is no passage to close here",
        expected: EXPECTED,
        found: ":::",
        mend: "take it away, or open the passage with ::: and the word for its readers",
      });
    this.#end(line);
    this.#open = undefined;
  }

  #begin(word: string, line: number): void {
    const found = shown(this.#lines[line] ?? "");
    if (this.#open) {
      this.#within += 1;
      this.#report(line, {
        code: "passage",
        message: `a passage begins within the one of line ${this.#firstLine + this.#open.line}`,
        expected: EXPECTED,
        found,
        mend: "close that one first with ::: alone on a line",
      });
    }
    const audience = AUDIENCES.find((known) => known === word);
    if (audience === undefined) {
      const meant = nearest(word, AUDIENCES);
      this.#report(
        line,
        {
          code: "passage",
          message: "no such readers are known",
          expected: EXPECTED,
          found,
          mend: meant === undefined ? "say inspector or archive after :::" : `did you mean ::: ${meant}?`,
        },
        AUDIENCES.find((known) => known === meant),
      );
    }
    this.#end(line);
    // Until it is mended, nobody is taken to be meant rather than everybody.
    this.#open = { audience: audience ?? "archive", line };
  }

  /** Of lines in their order, the blocks around each, the outermost first. */
  #around(lines: readonly number[]): { readonly line: number; readonly around: readonly Token[] }[] {
    const blocks = this.#tokens.filter(({ type, map }) => type in AROUND && map !== null);
    let next = 0;
    let open: readonly Token[] = [];
    return lines.map((line) => {
      const begun = next;
      while (next < blocks.length && (blocks[next]?.map?.[0] ?? 0) <= line) next += 1;
      open = [...open, ...blocks.slice(begun, next)].filter(({ map }) => line < (map?.[1] ?? 0));
      return { line, around: open };
    });
  }

  /** What a line is that is like a mark and stands where the parser knows none. */
  #noMark(line: number, around: readonly Token[]): Fault {
    const inner = around.at(-1);
    const outer = inner?.type === "fence" || inner?.type === "code_block" ? inner : around[0];
    const { where, mend } = (outer && AROUND[outer.type]) ?? {
      where: undefined,
      mend: "write three colons and the word for its readers on a line alone, with nothing before them, or take the colons away",
    };
    const begins = this.#firstLine + (outer ? lineOf(outer) : 0);
    return {
      code: "passage",
      message:
        where === undefined
          ? "this is like the mark of a passage, but is none"
          : `this is like the mark of a passage, but stands in the ${where} of line ${begins}`,
      expected: EXPECTED,
      found: shown(this.#lines[line] ?? ""),
      mend: mend.replace("LINE", String(begins)),
    };
  }

  #end(line: number): void {
    const lines = this.#lines.slice(this.#start, line);
    this.#body.push(...passage(this.#open?.audience ?? "public", lines, this.#firstLine + this.#start));
    this.#start = line + 1;
  }

  /** `audience` is the word that the mark on this line should have. */
  #report(line: number, fault: Fault, audience?: Audience): void {
    const problem = this.#source.problem(this.#source.lineStart(this.#firstLine + line), fault);
    const replace = this.#lines[line] ?? "";
    this.#problems.push(audience === undefined ? problem : { ...problem, edit: { replace, with: `::: ${audience}` } });
  }
}

const NESTS = new Set(["blockquote_open", "list_item_open"]);

function lineOf(token: Token): number {
  return token.map?.[0] ?? 0;
}

const CODE = {
  where: "code block",
  mend: "end the code block of line LINE before it; a code block cannot show such a line, prose can as &#58;&#58;&#58;",
};
const AROUND: { readonly [type: string]: { readonly where: string; readonly mend: string } } = {
  fence: CODE,
  code_block: { ...CODE, mend: "take away the blanks before it" },
  blockquote_open: { where: "quote", mend: "put it on a line of its own before the quote, without >" },
  bullet_list_open: { where: "list", mend: "put it at the beginning of a line, before or after the list" },
  ordered_list_open: { where: "list", mend: "put it at the beginning of a line, before or after the list" },
};
