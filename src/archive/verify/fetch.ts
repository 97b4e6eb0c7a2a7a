import type { Tellings } from "../finding.ts";
import { linesOf } from "../lines.ts";
import { pathDecoded } from "../manifest.ts";
import { pathFault } from "../safe-path.ts";

export const FETCH = "fetch.txt";

/** Files that a bag leaves to be fetched from elsewhere. Nothing is ever fetched; those that are not here are told. */
export async function checkFetch(
  chunks: AsyncIterable<Uint8Array>,
  encoding: string,
  isHere: (path: string) => boolean,
  findings: Tellings,
): Promise<void> {
  for await (const { text, number } of linesOf(chunks, encoding)) {
    const place = `${FETCH}:${number}`;
    const [, from, path] = /^(\S+)[ \t]+(?:\d+|-)[ \t]+(\S.*|\S)$/su.exec(text) ?? [];
    if (text === "") continue;
    if (from === undefined || path === undefined) {
      findings.fault("form", place, "this line is not of the form `URL length path`");
      continue;
    }
    const decoded = pathDecoded(path);
    const fault = pathFault(decoded) ?? (decoded.startsWith("data/") ? undefined : "is not below data/");
    if (fault !== undefined) findings.fault("unsafe path", place, `the path ${path} ${fault}`);
    else if (!isHere(decoded))
      findings.fault("not fetched", place, `${path} is not here, but at ${from}; nothing is fetched`);
  }
}
