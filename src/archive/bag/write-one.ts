/** One bag: its payload, its tag files and the manifests that vouch for both. */
import { mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { bytesOf, Digester } from "../digest.ts";
import { writeDurably } from "../durable.ts";
import type { Piece } from "./payload.ts";
import { README } from "./readme.ts";
import { type BagInfo, DECLARATION, infoText, MANIFEST_ALGORITHMS, manifestText } from "./tags.ts";
import { bytesIn } from "./work.ts";

/** Paths of all files of a bag, sorted, and the bytes that its manifests vouch for: what a check of it counts. */
interface Written {
  readonly paths: readonly string[];
  readonly bytes: number;
}

/** Writes a bag's files into a folder that is not there yet, digesting what it writes as it goes. */
export async function writeOne(
  bag: string,
  pieces: readonly Piece[],
  info: BagInfo,
  readme: string,
  passed: (bytes: number) => void,
): Promise<Written> {
  const payload = new Map<string, ReadonlyMap<string, string>>();
  for (const { path, from } of pieces) {
    payload.set(`data/${path}`, await put(join(bag, "data", path), chunksOf(from), passed));
  }
  const tags = new Map<string, string>([
    [README, readme],
    ["bag-info.txt", infoText(info)],
    ["bagit.txt", DECLARATION],
    ...MANIFEST_ALGORITHMS.map((name) => [`manifest-${name}.txt`, manifestText(payload, name)] as const),
  ]);
  const vouched = new Map<string, ReadonlyMap<string, string>>();
  for (const [path, text] of tags) vouched.set(path, await put(join(bag, path), chunksOf({ text }), () => undefined));
  const lists = MANIFEST_ALGORITHMS.map((name) => [`tagmanifest-${name}.txt`, manifestText(vouched, name)] as const);
  for (const [path, text] of lists) await put(join(bag, path), chunksOf({ text }), () => undefined);
  const ofTags = [...tags.values()].reduce((sum, text) => sum + Buffer.byteLength(text), 0);
  return {
    paths: [...payload.keys(), ...tags.keys(), ...lists.map(([path]) => path)].sort(),
    bytes: bytesIn(pieces) + ofTags,
  };
}

async function put(
  path: string,
  chunks: AsyncIterable<Uint8Array>,
  passed: (bytes: number) => void,
): Promise<ReadonlyMap<string, string>> {
  const digester = new Digester(MANIFEST_ALGORITHMS);
  async function* digested(): AsyncGenerator<Uint8Array> {
    for await (const chunk of chunks) {
      digester.take(chunk);
      passed(chunk.length);
      yield chunk;
    }
  }
  await mkdir(dirname(path), { recursive: true });
  await writeDurably(path, digested());
  return digester.end().digests;
}

/** The bytes of a piece. */
export async function* chunksOf(from: Piece["from"]): AsyncGenerator<Uint8Array> {
  if ("text" in from) yield Buffer.from(from.text);
  else yield* bytesOf(from.file, { followLinks: true });
}
