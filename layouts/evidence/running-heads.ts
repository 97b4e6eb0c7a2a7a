/** CSS that names the record, the edition and the date at the head of every printed page, and numbers them at the foot. */
export function runningHeads(name: string, edition: string, date: string): string {
  const small = "font: 8.5pt sans-serif; color: #333;";
  return `@page { size: A4; margin: 22mm 16mm 20mm;
  @top-left { content: ${cssString(name)}; ${small} }
  @top-center { content: ${cssString(edition)}; ${small} }
  @top-right { content: ${cssString(`Record of ${date}`)}; ${small} }
  @bottom-left { content: "Evidence of the glue lines"; ${small} }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); ${small} }
}`;
}

/** Anything but letters, digits and blanks goes in as its code point, so that no text can end the string or the element. */
function cssString(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N} ]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)}"`;
}
