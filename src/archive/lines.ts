/** A text, line by line, from a stream of bytes, with never more in memory than one chunk and one line. */
export interface Line {
  readonly text: string;
  /** From 1. */
  readonly number: number;
  readonly end: "\n" | "\r" | "\r\n" | "";
}

/** The bytes are no text in their encoding, or have a line that is too long. */
export class UnreadableText extends Error {
  /** Near which line. */
  readonly line: number;

  constructor(message: string, line: number) {
    super(message);
    this.line = line;
  }
}

const LONGEST_LINE = 32_768;

/**
 * A byte-order mark stays at the head of the first line in UTF-8, where it does not belong.
 * @param encoding a name that TextDecoder knows
 * @throws UnreadableText
 */
export async function* linesOf(chunks: AsyncIterable<Uint8Array>, encoding: string): AsyncGenerator<Line> {
  let decoder: TextDecoder | undefined;
  let pending = "";
  let number = 0;
  const decoded = (chunk?: Uint8Array): string => {
    try {
      decoder ??= decoderFor(encoding, chunk);
      return chunk === undefined ? decoder.decode() : decoder.decode(chunk, { stream: true });
    } catch {
      throw new UnreadableText(`is not written in ${encoding}`, number + 1);
    }
  };
  for await (const chunk of chunks) {
    const { lines, rest } = cut(pending + decoded(chunk), false);
    for (const line of lines) yield { ...line, number: (number += 1) };
    if (rest.length > LONGEST_LINE)
      throw new UnreadableText(`has a line of more than ${LONGEST_LINE} letters`, number + 1);
    pending = rest;
  }
  const { lines, rest } = cut(pending + decoded(), true);
  for (const line of lines) yield { ...line, number: (number += 1) };
  if (rest !== "") yield { text: rest, number: number + 1, end: "" };
}

function decoderFor(encoding: string, first: Uint8Array | undefined): TextDecoder {
  const isBig = /^utf-?16$/i.test(encoding) && first?.[0] === 0xfe && first[1] === 0xff;
  return new TextDecoder(isBig ? "utf-16be" : encoding, { fatal: true, ignoreBOM: /^utf-?8$/i.test(encoding) });
}

const END = /\r\n|\n|\r/g;

/** A `\r` at the very end may be half of a line end, as long as more may come. */
function cut(text: string, isWhole: boolean): { lines: Omit<Line, "number">[]; rest: string } {
  const lines: Omit<Line, "number">[] = [];
  let from = 0;
  for (const { index, 0: end } of text.matchAll(END)) {
    if (end === "\r" && index === text.length - 1 && !isWhole) break;
    lines.push({ text: text.slice(from, index), end: end as Line["end"] });
    from = index + end.length;
  }
  return { lines, rest: text.slice(from) };
}
