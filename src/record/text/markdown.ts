/** The one Markdown parser of the record: what the reader finds in a text is what pages show of it. */
import MarkdownIt, { type StateBlock } from "markdown-it";

/** An address of the web as it may stand in HTML. */
export const webAddress: (typed: string) => string = new MarkdownIt().normalizeLink;

/** Marks of passages are blocks of this type, their word in `info`. They stand outside of all other blocks. */
export const MARK = "passage_mark";

/** Every target is let through and left as typed, so that the record can be asked what it leads to. HTML is text like any other. */
export function markdownParser(): MarkdownIt {
  const parser = new MarkdownIt({ html: false, linkify: false, typographer: true });
  parser.validateLink = () => true;
  parser.normalizeLink = (target) => target;
  parser.block.ruler.before("table", MARK, passageMark, { alt: ["paragraph", "reference", "blockquote", "list"] });
  // A mark that is still there when a page is made would be shown together with what it hides.
  parser.renderer.rules[MARK] = () => {
    throw new Error("a passage was to be shown with its mark in it");
  };
  return parser;
}

const WHOLE_MARK = /^:{3,}[ \t]*(.*?)[ \t]*$/;

/** Ends whatever stands before it, like a fence; within a list or a quote it is no mark. */
function passageMark(state: StateBlock, line: number, _endLine: number, silent: boolean): boolean {
  if ((state.sCount[line] ?? 0) - state.blkIndent >= 4) return false;
  const start = (state.bMarks[line] ?? 0) + (state.tShift[line] ?? 0);
  if (state.src[start] !== ":") return false;
  const mark = WHOLE_MARK.exec(state.src.slice(start, state.eMarks[line]));
  if (mark === null) return false;
  if (silent) return true;
  if (state.level > 0 || state.blkIndent > 0) return false;
  const token = state.push(MARK, "", 0);
  token.map = [line, line + 1];
  token.info = mark[1] ?? "";
  state.line = line + 1;
  return true;
}
