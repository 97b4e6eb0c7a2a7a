const NAMED: { readonly [name: string]: string } = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  nbsp: " ",
  shy: "",
};

/** Character references of HTML and XML as the characters that they stand for. */
export function decode(text: string): string {
  return text.replace(
    /&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi,
    (all, hex: string | undefined, decimal: string | undefined, name: string | undefined) =>
      hex !== undefined
        ? String.fromCodePoint(Number.parseInt(hex, 16))
        : decimal !== undefined
          ? String.fromCodePoint(Number(decimal))
          : (NAMED[name ?? ""] ?? all),
  );
}
