import { createHash, type Hash } from "node:crypto";
import { constants } from "node:fs";
import { open } from "node:fs/promises";

/** Names of algorithms as manifests have them, and Node's. All but the first two also withstand whoever wants to deceive. */
export const ALGORITHMS: ReadonlyMap<string, { readonly node: string; readonly bytes: number }> = new Map([
  ["md5", { node: "md5", bytes: 16 }],
  ["sha1", { node: "sha1", bytes: 20 }],
  ["sha224", { node: "sha224", bytes: 28 }],
  ["sha256", { node: "sha256", bytes: 32 }],
  ["sha384", { node: "sha384", bytes: 48 }],
  ["sha512", { node: "sha512", bytes: 64 }],
]);

export const WEAK_ALGORITHMS: ReadonlySet<string> = new Set(["md5", "sha1"]);

export interface Digested {
  readonly size: number;
  /** Lower-case hexadecimal digits by algorithm. */
  readonly digests: ReadonlyMap<string, string>;
}

/** Takes bytes as they pass. */
export class Digester {
  readonly #hashes: ReadonlyMap<string, Hash>;
  #size = 0;

  constructor(algorithms: readonly string[]) {
    this.#hashes = new Map(algorithms.map((name) => [name, createHash(ALGORITHMS.get(name)?.node ?? name)]));
  }

  take(chunk: Uint8Array): void {
    this.#size += chunk.length;
    for (const hash of this.#hashes.values()) hash.update(chunk);
  }

  end(): Digested {
    return { size: this.#size, digests: new Map([...this.#hashes].map(([name, hash]) => [name, hash.digest("hex")])) };
  }
}

/** @param passed told how many bytes went by */
export async function digestsOf(
  chunks: AsyncIterable<Uint8Array>,
  algorithms: readonly string[],
  passed: (bytes: number) => void = () => undefined,
): Promise<Digested> {
  const digester = new Digester(algorithms);
  for await (const chunk of chunks) {
    digester.take(chunk);
    passed(chunk.length);
  }
  return digester.end();
}

export function sha256Of(data: string | Uint8Array): string {
  return createHash("sha256").update(data).digest("hex");
}

/** The bytes of a file. Where links are not followed, a link at its place is an error with the code `ELOOP`. */
export async function* bytesOf(path: string, { followLinks = false } = {}): AsyncGenerator<Uint8Array> {
  const handle = await open(path, constants.O_RDONLY | (followLinks ? 0 : constants.O_NOFOLLOW));
  try {
    yield* handle.createReadStream({ autoClose: false, highWaterMark: 256 * 1024 }) as AsyncIterable<Uint8Array>;
  } finally {
    await handle.close();
  }
}
