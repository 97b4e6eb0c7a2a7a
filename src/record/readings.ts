/**
 * What sound files of a record were read as, kept from one run to the next, so that what has not changed is not parsed
 * again. Safe to delete, and to kill at any time.
 */
import { createHash, hash, randomBytes } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import type { FileKind } from "../facts/kinds.ts";
import type { Mention } from "./text/prose.ts";
import { flattened, type ReadValue, unflattened } from "./text/spots.ts";
import type { Data } from "./text/yaml.ts";

/** Of a file without any problem. */
export interface Reading {
  /** The line that the Markdown begins on. */
  readonly bodyLine: number;
  readonly front: ReadValue;
  readonly spec: unknown;
  readonly mentions: readonly (readonly Mention[])[];
}

/** As it stands in a line, after the digest of the file's bytes and its kind. */
type Line = readonly [
  bodyLine: number,
  data: Data,
  spots: readonly number[],
  spec: unknown,
  mentions: Reading["mentions"],
];

const DIGEST = 64;
const NEW_LINE = 10;

/**
 * The first line of the file is a digest of the others, so that nothing is believed of one that was cut short or
 * altered; the second names the program, since another may read the same otherwise.
 */
export class Readings {
  readonly #file: string;
  readonly #program: string;
  /** Where each line of the file begins and ends, by what it is of. */
  readonly #kept = new Map<string, readonly [from: number, to: number]>();
  readonly #used = new Set<string>();
  #bytes: Buffer = Buffer.alloc(0);
  #anew: string[] = [];

  private constructor(file: string, program: string) {
    this.#file = file;
    this.#program = program;
  }

  /** `program` tells the program that runs from any other. Without `trusting` all files are read anew. */
  static open(file: string, program: string, trusting = true): Readings {
    const readings = new Readings(file, program);
    if (trusting) readings.#load();
    return readings;
  }

  find(key: string): Reading | undefined {
    const line = this.#kept.get(key);
    if (line === undefined) return undefined;
    this.#used.add(key);
    const [bodyLine, data, spots, spec, mentions] = JSON.parse(
      this.#bytes.toString("utf8", line[0] + key.length + 1, line[1]),
    ) as Line;
    return { bodyLine, front: unflattened(data, spots), spec, mentions };
  }

  keep(key: string, { bodyLine, front, spec, mentions }: Reading): void {
    if (!isPlain(spec)) return;
    const line: Line = [bodyLine, front.data, flattened(front), spec, mentions];
    this.#anew.push(`${key} ${JSON.stringify(line)}\n`);
  }

  /** Writes what was found and what was kept since it was opened; where that cannot be, the next run reads anew. */
  close(): void {
    const anew = this.#anew.length > 0;
    const lines = [
      `${this.#program}\n`,
      ...[...this.#used].map((key) => this.#bytes.subarray(...(this.#kept.get(key) ?? [0, 0]))),
      ...this.#anew,
    ];
    this.#anew = [];
    if (anew) this.#write(lines);
    this.#bytes = Buffer.alloc(0);
    this.#kept.clear();
  }

  #write(lines: readonly (string | Buffer)[]): void {
    const digest = createHash("sha256");
    const bytes = lines.map((line) => (typeof line === "string" ? Buffer.from(line) : line));
    for (const line of bytes) digest.update(line);
    const making = `${this.#file}.${randomBytes(4).toString("hex")}`;
    try {
      mkdirSync(dirname(this.#file), { recursive: true });
      writeFileSync(making, Buffer.concat([Buffer.from(`${digest.digest("hex")}\n`), ...bytes]));
      renameSync(making, this.#file);
    } catch {
      rmSync(making, { force: true });
    }
  }

  #load(): void {
    let bytes: Buffer;
    try {
      bytes = readFileSync(this.#file);
    } catch {
      return;
    }
    const rest = bytes.subarray(DIGEST + 1);
    if (bytes.toString("latin1", 0, DIGEST) !== hash("sha256", rest, "hex")) return;
    let from = rest.indexOf(NEW_LINE) + 1;
    if (rest.toString("utf8", 0, from - 1) !== this.#program) return;
    this.#bytes = rest;
    while (from < rest.length) {
      const to = rest.indexOf(NEW_LINE, from) + 1;
      this.#kept.set(rest.toString("latin1", from, rest.indexOf(" ", from + DIGEST)), [from, to]);
      from = to;
    }
  }
}

export const readingKey = (kind: FileKind, bytes: Uint8Array): string => `${hash("sha256", bytes, "hex")}${kind}`;

/** Whether JSON gives it back as it is. */
function isPlain(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value) && !Object.is(value, -0);
  if (typeof value !== "object" || value === null) return typeof value === "string" || typeof value === "boolean";
  if (Array.isArray(value)) return value.every(isPlain);
  return Object.getPrototypeOf(value) === Object.prototype && Object.values(value).every(isPlain);
}
