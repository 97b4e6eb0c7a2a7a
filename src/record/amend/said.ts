/** Values of front matter as words, with the things that they name. */
import type { Data } from "../text/yaml.ts";
import type { Kind, Said } from "../../facts/types.ts";

const KINDS: { readonly [key: string]: Kind } = {
  who: "person",
  by: "person",
  accepted_by: "person",
  witness: "person",
  judged_by: "person",
  with: "lot",
  lot: "lot",
  timber: "lot",
  joints: "joint",
  adhesive: "adhesive",
  procedure: "procedure",
  trial: "trial",
  departure: "departure",
  close: "open item",
  assembly: "assembly",
  piece: "piece",
  batch: "batch",
  hold_point: "hold point",
};
/** The name of a file can tell what the file does not show. */
const FILES = new Set(["photo", "scan"]);
/** Told without the word for them: which they are is plain. */
const PLAIN = new Set(["who", "task", "time", "joints"]);

/** `key` is that of the value, or of the list that it stands in. */
export function saidOf(key: string, data: Data): Said {
  if (typeof data === "string")
    return [FILES.has(key) ? "a file" : KINDS[key] === undefined ? data : { kind: KINDS[key], id: data }];
  const parts = Array.isArray(data)
    ? (data as readonly Data[]).map((item) => saidOf(key, item))
    : Object.entries(data).map(([name, part]) => [
        ...(PLAIN.has(name) ? [] : [`${wordsOf(name)} `]),
        ...saidOf(name, part),
      ]);
  const blocks = Array.isArray(data) && data.some((item) => typeof item !== "string");
  return parts.length === 0
    ? ["none"]
    : parts.flatMap((part, at) => [...(at > 0 ? [blocks ? "; " : ", "] : []), ...part]);
}

export function wordsOf(...keys: readonly string[]): string {
  return keys.map((key) => key.replaceAll("_", " ")).join(" ");
}
