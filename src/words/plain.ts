const ENTITIES: { readonly [name: string]: string } = { amp: "&", lt: "<", gt: ">", quot: '"' };

/** Plain words of HTML that the site's own renderer made: within tags and entities it has `<`, `>` and `&` for nothing else. */
export const plain = (html: string): string =>
  html
    .replace(/<(\/?(?:p|h\d|li|ul|ol|td|th|tr|table|blockquote|pre|br|hr|img)\b)[^>]*>/g, " ")
    .replace(/<[^>]*>/g, "")
    .replace(/&(amp|lt|gt|quot);/g, (whole, name: string) => ENTITIES[name] ?? whole)
    .replace(/\s+/g, " ")
    .trim();
