/**
 * Pages of the site that stands, kept by a build whose pages would come out the same: where all that they may have read is the same but
 * for texts of entries, and each of those that they did read is the same too. Safe to delete, and to kill at any time.
 */
import { hash, randomBytes } from "node:crypto";
import { lstatSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Texts } from "../../editions/texts.ts";
import type { Readable } from "../../reads.ts";
import { linkOrCopyFile } from "./link.ts";
import { bytesDigest, type SitePlace, standingFile } from "./standing.ts";

/** How a page came out, and the texts that it read, each as its place in a list. */
type Line = readonly [path: string, bytes: string, texts: readonly number[]];

interface EditionLines {
  /** Of all that its pages may have read, but for the texts. */
  readonly whole: string;
  /** Their keys and digests. */
  readonly texts: readonly (readonly [key: string, digest: string])[];
  readonly pages: readonly Line[];
}

interface Kept {
  readonly [folder: string]: EditionLines;
}

/** What a build is told of pages, and tells of them. */
export interface Keeper {
  /** Puts the page that stands at `path` at another place, if it would come out the same; tells whether it did. */
  readonly keeps: (path: string, to: string) => boolean;
  /** How a page came out that was made, and what it read. */
  readonly note: (path: string, bytes: Uint8Array, reads: readonly Readable[]) => void;
}

const DIGEST = 64;

/** The first line of the file is a digest of the others, so that nothing is believed of one that was cut short or altered. */
export class KeptPages {
  /** A digest of all that pages come from besides the record. */
  readonly madeWith: string;
  readonly #place: SitePlace;
  readonly #known: Kept;
  readonly #editions = new Map<string, EditionPages>();

  private constructor(place: SitePlace, madeWith: string, known: Kept) {
    this.madeWith = madeWith;
    this.#place = place;
    this.#known = known;
  }

  /** Without `trusting` all pages are made anew. */
  static open(place: SitePlace, madeWith: string, trusting = true): KeptPages {
    return new KeptPages(place, madeWith, trusting ? load(place) : {});
  }

  /** Pages of an edition that stands in a folder of the site; `whole` is undefined where nobody can tell what they rest on. */
  edition(folder: string, whole: string | undefined, texts: Texts): Keeper {
    const known = this.#known[folder];
    const pages = new EditionPages(
      join(this.#place.out, folder),
      whole,
      texts,
      known?.whole === whole ? known : undefined,
    );
    this.#editions.set(folder, pages);
    return pages;
  }

  /** Digests of the bytes of all pages that were written or kept, by their path from the site's root. */
  get digests(): ReadonlyMap<string, string> {
    return new Map(
      [...this.#editions].flatMap(([folder, { bytes }]) =>
        [...bytes].map(([path, digest]) => [folder === "" ? path : `${folder}/${path}`, digest] as const),
      ),
    );
  }

  /** Writes what was noted, once the pages stand; where that cannot be, the next build makes all anew. */
  close(): void {
    const lines = [...this.#editions].flatMap(([folder, pages]) => {
      const told = pages.lines();
      return told === undefined ? [] : [[folder, told] as const];
    });
    const text = JSON.stringify(Object.fromEntries(lines));
    const file = fileOf(this.#place);
    const making = `${file}.${randomBytes(4).toString("hex")}`;
    try {
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(making, `${hash("sha256", text, "hex")}\n${text}`);
      renameSync(making, file);
    } catch {
      rmSync(making, { force: true });
    }
  }
}

const fileOf = (place: SitePlace): string => standingFile(place, "pages");

function load(place: SitePlace): Kept {
  try {
    const text = readFileSync(fileOf(place), "utf8");
    const rest = text.slice(DIGEST + 1);
    return text.slice(0, DIGEST) === hash("sha256", rest, "hex") ? (JSON.parse(rest) as Kept) : {};
  } catch {
    return {};
  }
}

class EditionPages implements Keeper {
  /** By each page that was kept or made. */
  readonly bytes = new Map<string, string>();
  readonly #folder: string;
  readonly #whole: string | undefined;
  readonly #texts: Texts;
  readonly #known: ReadonlyMap<string, Line>;
  readonly #knownTexts: EditionLines["texts"];
  readonly #readBy = new Map<string, readonly string[]>();
  /** By the key of each text, as it is now. */
  readonly #digests: ReadonlyMap<string, string>;

  constructor(folder: string, whole: string | undefined, texts: Texts, known: EditionLines | undefined) {
    this.#folder = folder;
    this.#whole = whole;
    this.#texts = texts;
    this.#known = new Map(known?.pages.map((line) => [line[0], line]));
    this.#knownTexts = known?.texts ?? [];
    this.#digests = new Map(
      [...texts.all].map(({ key, line, markdown }) => [key, hash("sha256", `${line} ${markdown}`, "hex")]),
    );
  }

  keeps(path: string, to: string): boolean {
    const known = this.#isTold ? this.#known.get(path) : undefined;
    if (known === undefined) return false;
    const [, bytes, texts] = known;
    const read = texts.map((at) => this.#knownTexts[at]);
    if (!read.every((text) => text !== undefined && this.#digests.get(text[0]) === text[1])) return false;
    const stands = join(this.#folder, path);
    if (digestOfFile(stands) !== bytes) return false;
    linkOrCopyFile(stands, to);
    this.bytes.set(path, bytes);
    this.#readBy.set(
      path,
      read.flatMap((text) => text?.[0] ?? []),
    );
    return true;
  }

  note(path: string, bytes: Uint8Array, reads: readonly Readable[]): void {
    this.bytes.set(path, hash("sha256", bytes, "hex"));
    this.#readBy.set(
      path,
      reads.map((read) => this.#texts.of(read)?.key ?? UNKNOWN),
    );
  }

  /** What the next build may go by. */
  lines(): EditionLines | undefined {
    if (!this.#isTold || this.#whole === undefined) return undefined;
    const texts = [...this.#digests];
    const places = new Map(texts.map(([key], at) => [key, at]));
    const pages = [...this.#readBy].map(
      ([path, keys]): Line => [path, this.bytes.get(path) ?? "", keys.map((key) => places.get(key) ?? -1)],
    );
    return { whole: this.#whole, texts, pages };
  }

  get #isTold(): boolean {
    return this.#whole !== undefined && !this.#texts.isReadByNobody;
  }
}

/** Of a text that is of no entry of the record: none is ever the same. */
const UNKNOWN = "";

/** Of a file that is no link; undefined where there is none that can be read. */
function digestOfFile(file: string): string | undefined {
  try {
    const met = lstatSync(file);
    return met.isFile() ? bytesDigest(file, met.size) : undefined;
  } catch {
    return undefined;
  }
}
