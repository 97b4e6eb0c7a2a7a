import type { Tellings } from "../finding.ts";
import { type Line, linesOf } from "../lines.ts";

export interface Declaration {
  /** Such as 1.0 or 0.97. */
  readonly version: string;
  /** Of the tag files, as TextDecoder knows it. */
  readonly encoding: string;
}

const KNOWN = new Set(["0.93", "0.94", "0.95", "0.96", "0.97", "1.0"]);
const PLACE = "bagit.txt";

/** The two lines of `bagit.txt`. What is wrong with it is told, and the reading goes on as if it said `1.0` and `UTF-8`. */
export async function readDeclaration(chunks: AsyncIterable<Uint8Array>, findings: Tellings): Promise<Declaration> {
  const lines: Line[] = [];
  for await (const line of linesOf(chunks, "utf-8")) {
    lines.push(line);
    if (lines.length > 3) break;
  }
  if (lines[0]?.text.startsWith("\ufeff"))
    findings.fault("encoding", PLACE, "begins with a byte-order mark, which RFC 8493 forbids here");
  const [, version] = /^BagIt-Version: (\d+\.\d+)$/.exec(lines[0]?.text.replace(/^\ufeff/, "") ?? "") ?? [];
  const [, encoding] = /^Tag-File-Character-Encoding: (\S+)$/.exec(lines[1]?.text ?? "") ?? [];
  if (version === undefined)
    findings.fault("form", `${PLACE}:1`, "the first line is not of the form `BagIt-Version: 1.0`");
  else if (!KNOWN.has(version))
    findings.fault("form", `${PLACE}:1`, `a version of BagIt that is not known here: ${version}`);
  if (encoding === undefined)
    findings.fault("form", `${PLACE}:2`, "the second line is not of the form `Tag-File-Character-Encoding: UTF-8`");
  if (lines.slice(2).some(({ text }) => text !== "") || lines.length > 3)
    findings.fault("form", `${PLACE}:3`, "there is more than the two lines that RFC 8493 asks for");
  return { version: version ?? "1.0", encoding: known(encoding ?? "UTF-8", findings) };
}

function known(encoding: string, findings: Tellings): string {
  try {
    new TextDecoder(encoding);
    return encoding;
  } catch {
    findings.fault("encoding", `${PLACE}:2`, `an encoding that is not known here: ${encoding}`);
    return "UTF-8";
  }
}
