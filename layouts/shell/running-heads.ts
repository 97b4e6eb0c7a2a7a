import type { NamedSeal } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";
import type { Day } from "../../src/facts/types.ts";
import { sealWords } from "./seal.tsx";

/**
 * CSS that names the record, the edition and the date at the head of every printed page; at the foot what it is of,
 * the seal, and the page's number.
 */
export function runningHeads(
  name: string,
  edition: string,
  day: Day,
  seal: NamedSeal | undefined,
  what = "Evidence of the glue lines",
): string {
  const small = "font: 8.5pt sans-serif; color: #333;";
  return `@page { size: A4; margin: 22mm 16mm 20mm;
  @top-left { content: ${cssString(name)}; ${small} }
  @top-center { content: ${cssString(edition)}; ${small} }
  @top-right { content: ${cssString(`Record of ${dateWords(day)}`)}; ${small} }
  @bottom-left { content: ${cssString(what)}; ${small} }
  @bottom-center { content: ${cssString(sealWords(seal))}; ${small} }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); ${small} }
}`;
}

/**
 * Anything but letters, digits and blanks goes in as its code point, so that no text can end the string or the
 * element.
 */
export function cssString(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N} ]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)}"`;
}
