import type { Tellings } from "../finding.ts";
import { linesOf } from "../lines.ts";
import { pathDecoded } from "../manifest.ts";
import { pathFault } from "../safe-path.ts";

export const FETCH = "fetch.txt";

/**
 * Files that a bag leaves to be fetched from elsewhere. Nothing is ever fetched; those that are not here are told.
 * @param sizes of the files that are here, by path
 */
export async function checkFetch(
  chunks: AsyncIterable<Uint8Array>,
  encoding: string,
  sizes: ReadonlyMap<string, number>,
  findings: Tellings,
): Promise<void> {
  for await (const { text, number } of linesOf(chunks, encoding)) {
    const place = `${FETCH}:${number}`;
    const [, from, length, path] = /^(\S+)[ \t]+(\d+|-)[ \t]+(\S.*|\S)$/su.exec(text) ?? [];
    if (text === "") continue;
    if (from === undefined || path === undefined) {
      findings.fault("form", place, "this line is not of the form `URL length path`");
      continue;
    }
    const decoded = pathDecoded(path);
    const fault = pathFault(decoded) ?? (decoded.startsWith("data/") ? undefined : "is not below data/");
    const size = sizes.get(decoded);
    if (fault !== undefined) findings.fault("unsafe path", place, `the path ${path} ${fault}`);
    else if (size === undefined)
      findings.fault("not fetched", place, `${path} is not here, but at ${from}; nothing is fetched`);
    else if (length !== "-" && Number(length) !== size)
      findings.fault("count", place, `${path} has ${size} bytes here, and ${length} by this line`);
  }
}
