import { defined } from "../defined.ts";
import { ALGORITHMS } from "./digest.ts";

/** A line of a manifest as `sha256sum` writes them and RFC 8493 allows. */
export function manifestLine(digest: string, path: string): string {
  return `${digest}  ${path}\n`;
}

export interface ManifestLine {
  /** Lower-case. */
  readonly digest: string;
  /** As written: what RFC 8493 has percent-encoded still is. */
  readonly path: string;
  /** What differs from what `sha256sum` writes, as the end of a sentence that begins with the line. */
  readonly oddity?: string;
}

/** Undefined where the line is none. */
export function manifestLineOf(text: string, algorithm: string): ManifestLine | undefined {
  const [, digest = "", between = "", path = ""] = /^([0-9A-Fa-f]+)([ \t]+\*?)(\S.*|\S)$/su.exec(text) ?? [];
  if (path === "" || digest.length !== (ALGORITHMS.get(algorithm)?.bytes ?? Number.NaN) * 2) return undefined;
  const oddity = oddityOf(digest, between);
  return defined({ digest: digest.toLowerCase(), path, oddity });
}

function oddityOf(digest: string, between: string): string | undefined {
  if (digest !== digest.toLowerCase()) return "has capital letters in its digest";
  if (between.endsWith("*")) return "has an asterisk before its path";
  return between === "  " ? undefined : "has something else than two blanks before its path";
}

/** A path as RFC 8493 writes it: line breaks, and the percent sign itself, are percent-encoded. */
export function pathDecoded(path: string): string {
  return path.replaceAll(/%(0[AaDd]|25)/g, (encoded) => decodeURIComponent(encoded));
}
