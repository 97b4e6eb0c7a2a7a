import type { Tellings } from "../finding.ts";
import { linesOf } from "../lines.ts";

/** What `bag-info.txt` says, in its order; a label may come more than once. */
export type Info = readonly (readonly [label: string, value: string])[];

export const INFO = "bag-info.txt";
/** More lines, or letters in all, than any bag has to say of itself. */
const MOST = 10_000;
const LETTERS = 1_000_000;

export async function readInfo(chunks: AsyncIterable<Uint8Array>, encoding: string, findings: Tellings): Promise<Info> {
  const info: [string, string][] = [];
  let letters = 0;
  for await (const { text, number } of linesOf(chunks, encoding)) {
    const last = info.at(-1);
    letters += text.length;
    const [, label, value] = /^([^\s:][^:]*):[ \t]*(.*)$/su.exec(text.replace(/^\ufeff/, "")) ?? [];
    if (/^[ \t]/.test(text) && last !== undefined) last[1] += ` ${text.trim()}`;
    else if (label !== undefined && value !== undefined) info.push([label.trim(), value.trim()]);
    else if (text !== "") findings.fault("form", `${INFO}:${number}`, "this line is not of the form `Label: value`");
    if (info.length > MOST || letters > LETTERS) {
      findings.fault(
        "too much",
        INFO,
        `has more than ${info.length > MOST ? `${MOST} lines` : `${LETTERS} letters`}; the rest was not read`,
      );
      return info;
    }
  }
  return info;
}

export function infoOf(info: Info, label: string): string | undefined {
  return info.find(([found]) => found.toLowerCase() === label.toLowerCase())?.[1];
}

/** Holds how many bytes and files the bag says it has against those it has. */
export function checkOxum(
  info: Info,
  members: readonly { readonly path: string; readonly size: number }[],
  findings: Tellings,
): void {
  tellRepeated(info, findings);
  const said = infoOf(info, "Payload-Oxum");
  if (said === undefined) return;
  const payload = members.filter(({ path }) => path.startsWith("data/"));
  const is = `${payload.reduce((sum, { size }) => sum + size, 0)}.${payload.length}`;
  if (!/^\d+\.\d+$/.test(said)) findings.fault("form", INFO, `Payload-Oxum is not of the form bytes.files: ${said}`);
  else if (said !== is) findings.fault("count", INFO, `Payload-Oxum says ${words(said)}; there are ${words(is)}`);
}

/** Labels that are read here; with two values nobody could say which one holds. */
const SINGLE = ["Payload-Oxum", "Bag-Count", "Bag-Group-Identifier"];

function tellRepeated(info: Info, findings: Tellings): void {
  for (const label of SINGLE)
    if (info.filter(([found]) => found.toLowerCase() === label.toLowerCase()).length > 1)
      findings.fault("form", INFO, `${label} stands here more than once`);
}

function words(oxum: string): string {
  const [bytes = "", files = ""] = oxum.split(".");
  return `${bytes} bytes in ${files} ${files === "1" ? "file" : "files"}`;
}
