/** A page parted where its head ends, so that what is put there moves nothing of what follows: most pages are long. */
export interface Parted {
  /** Up to the end of the head. */
  readonly head: string;
  /** From `</head>` on. */
  readonly rest: string;
}

/** @throws Error where it has no head */
export function parted(page: string): Parted {
  const end = page.indexOf("</head>");
  if (end < 0) throw new Error("a page without a head");
  return { head: page.slice(0, end), rest: page.slice(end) };
}

export const joined = ({ head, rest }: Parted): string => head + rest;
