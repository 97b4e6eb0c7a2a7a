/**
 * The most of everything that is read. What is beyond is told as a problem with the code `limit` before any work is
 * done that grows with it. Each is some ten times what a builder's record was found to need; pictures have
 * theirs beside what decodes them (`publish/pictures`).
 */
import { type Fault, onlyYouKnow, shown } from "./reading.ts";

export const LIMITS = {
  /** Bytes of a Markdown file: a thick book. */
  fileBytes: 524_288,
  /** Bytes of a CSV file. */
  tableBytes: 67_108_864,
  /** Lines of a CSV file: a reading every minute for four years. */
  tableLines: 2_100_000,
  /** Columns of a CSV file. */
  tableColumns: 256,
  /** Rows of a table of earlier hours: some ten years, day by day. */
  earlierRows: 20_000,
  /** Characters of one row of a CSV file. */
  rowLength: 16_384,
  /** Words, signs and blanks of front matter, as the parser of YAML counts them: three hundred photographs have 10,000. */
  tokens: 60_000,
  /** Blanks and line feeds in a row within front matter: what parts it from the prose takes time by their square. */
  blanks: 1_000,
  /** Lists and blocks within each other in front matter. */
  depth: 24,
  /** Keys of one block. */
  keys: 200,
  /** Items of one list. */
  items: 5_000,
  /** Quotes and lists within each other in prose; the parser of Markdown shows nothing of what lies deeper. */
  quotes: 100,
  /** Links and pictures in the prose of one file. */
  links: 2_000,
  /** Characters of a text. */
  textLength: 20_000,
  /** Characters of any other value, such as a quantity or a path. */
  valueLength: 500,
  /** Characters of an id: files and pages are named by ids. */
  idLength: 100,
  /** Digits of a number, zeros before and after it included; a computer's number holds 17 that tell. */
  digits: 25,
  /** Greatest size of a quantity, in the unit of reckoning. */
  magnitude: 1e12,
  /** First and last year of a day. */
  years: { first: 1900, last: 2199 },
  /** Folders within each other. */
  folders: 12,
  /** Problems of one record that are told one by one. */
  problems: 500,
  drawing: {
    /** Of the file. */
    bytes: 5_000_000,
    /** Elements within elements. */
    depth: 100,
    /** Elements, and pieces of text between them. */
    nodes: 100_000,
    /** Attributes of one element. */
    attributes: 1_000,
    /** Characters of one sheet or style: the parser of CSS takes as long for each as for the longest before it. */
    css: 100_000,
    /** Elements as drawn, each counted as often as `use` or a pattern repeats it. */
    drawn: 200_000,
    /** References that lead to references. */
    chain: 500,
    /** Problems told of one drawing; the rest comes when these are mended. */
    objections: 200,
  },
} as const;

/** A number as it is read in a sentence: 20000 → `20,000`. */
export function inThousands(count: number): string {
  return String(count).replace(/\B(?=(?:\d{3})+$)/g, ",");
}

/** Bytes as they are read in a sentence: 524288 → `512 kB`. */
export function inBytes(bytes: number): string {
  const isLarge = bytes >= 1_048_576;
  return `${Math.ceil(bytes / (isLarge ? 1_048_576 : 1024))} ${isLarge ? "MB" : "kB"}`;
}

/** `expected` is what there may be at most. */
export function beyond(message: string, expected: string, mend: string, found?: string): Fault {
  return {
    code: "limit",
    message,
    expected: `at most ${expected}`,
    ...(found !== undefined && { found: shown(found) }),
    ...onlyYouKnow(mend),
  };
}

export function tooLong(typed: string, most: number): Fault | undefined {
  if (typed.length <= most) return undefined;
  return beyond(
    "this is longer than is read",
    `${inThousands(most)} characters`,
    most === LIMITS.textLength ? "make it shorter, or tell it in the prose" : "make it shorter",
    typed,
  );
}

const TOO_MANY_DIGITS = new RegExp(`(?:\\d\\D?){${LIMITS.digits + 1}}`);

/** Whether a text holds a number of more digits than are read. */
export function hasTooManyDigits(text: string): boolean {
  return TOO_MANY_DIGITS.test(text);
}
