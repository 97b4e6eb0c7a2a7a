/** YAML to plain data in which every value is text, a list or a block, and each keeps its place. */
import { isMap, isScalar, isSeq, parseDocument, type Node, type Pair, type YAMLMap, type YAMLSeq } from "yaml";
import type { Place, Problem } from "../../problem.ts";
import { type Fault, shown } from "../reading.ts";
import type { Source } from "./source.ts";
import { syntaxFault, tellingError } from "./yaml-faults.ts";

/** Text as typed, a list or a block. */
export type Data = string | readonly Data[] | { readonly [key: string]: Data };
export type Path = readonly PropertyKey[];

/** Stands where a problem has been reported already; no text can hold it. */
export const SPOILED = "\u0000";

export interface FrontMatter {
  readonly data: Data;
  /** Where the value at a path stands; where there is none, the block that lacks it. */
  readonly placeOf: (path: Path) => Place;
  /** Where the key at the end of a path stands. */
  readonly placeOfKey: (path: Path) => Place;
  /** The value at a path as typed. */
  readonly typedAt: (path: Path) => string;
}

const OPTIONS = {
  schema: "failsafe", version: "1.2", strict: true, uniqueKeys: true, stringKeys: true, prettyErrors: false, keepSourceTokens: false, logLevel: "error",
} as const;

export interface ParsedYaml {
  readonly front: FrontMatter;
  readonly problems: readonly Problem[];
  /** Whether the syntax was wrong, so that the data may not be what was meant. */
  readonly syntax: boolean;
}

/** `base` is where the YAML begins in the file. */
export function parseYaml(source: Source, text: string, base: number): ParsedYaml {
  const document = parseDocument(text, OPTIONS);
  const reader = new Reader(source, text, base);
  const data = reader.data(document.contents as Node | null);
  const errors = document.errors.filter((error) => error.code === "DUPLICATE_KEY");
  const other = tellingError(document.errors.filter((error) => error.code !== "DUPLICATE_KEY"));
  if (other) errors.push(other);
  const problems = errors.map((error) => source.problem(base + Math.min(error.pos[0], text.length), syntaxFault(error, text)));
  return { front: frontMatter(source, base, document.contents as Node | null, data), problems: other ? problems : [...problems, ...reader.problems], syntax: other !== undefined };
}

class Reader {
  readonly problems: Problem[] = [];
  readonly #source: Source;
  readonly #text: string;
  readonly #base: number;

  constructor(source: Source, text: string, base: number) {
    this.#source = source;
    this.#text = text;
    this.#base = base;
  }

  data(node: Node | null): Data {
    if (node === null) return "";
    if (isScalar(node)) this.#guard(node, node.anchor, node.tag);
    if (isScalar(node)) return this.#scalar(node.value, node.range);
    if (isSeq(node) || isMap(node)) this.#guard(node, node.anchor, node.tag);
    if (isSeq(node)) return (node as YAMLSeq<Node | null>).items.map((item) => this.data(item));
    if (isMap(node)) return this.#block(node as YAMLMap<Node, Node | null>);
    this.#report(node.range?.[0], { code: "yaml", message: "a reference such as *name is never followed", expected: "the value itself", mend: "write out what it stands for, or put it in quotation marks" });
    return SPOILED;
  }

  #scalar(value: unknown, range: readonly [number, number, number] | null | undefined): Data {
    const after = range ? this.#text.slice(range[1], range[2]) : "";
    const lost = /^[ \t]+(#[^\s#].*)/.exec(after);
    if (lost && range) {
      this.#report(range[1] + after.indexOf("#"), { code: "comment", message: "what follows # after a blank would not be read", found: shown(lost[1] ?? ""), mend: "put the whole text in quotation marks; if it is a comment, write a blank after #" });
    }
    return typeof value === "string" ? value : "";
  }

  #block(map: YAMLMap<Node, Node | null>): Data {
    const block: { [key: string]: Data } = Object.create(null) as { [key: string]: Data };
    let before: string | undefined;
    for (const pair of map.items) {
      const key = isScalar(pair.key) ? String(pair.key.value ?? "") : "";
      if (isScalar(pair.key)) this.#guard(pair.key, pair.key.anchor, pair.key.tag);
      if (before !== undefined && this.#isSplitByComma(pair, key, block[before])) block[before] = SPOILED;
      else {
        block[key] = this.data(pair.value);
        before = key;
      }
    }
    return block;
  }

  /** In `{ mass: 42,0 g }` YAML sees a mass of 42 and a key `0 g`. */
  #isSplitByComma(pair: Pair<Node, Node | null>, key: string, before: Data | undefined): boolean {
    const range = isScalar(pair.key) ? pair.key.range : undefined;
    if (pair.value !== null || !range || typeof before !== "string" || !/\d$/.test(before) || !/^\d/.test(key) || this.#text[range[0] - 1] !== ",") return false;
    const point = `${before}.${key}`;
    const thousands = /^\d{3}(?!\d)/.test(key) && /(?:^|\D)[1-9]\d{0,2}$/.test(before);
    const mend = !thousands ? `write ${point}` : key.includes(".") ? `write ${before}${key}` : `write ${before}${key} or ${point}, as it was meant`;
    this.#report(range[0] - 1, { code: "decimal-comma", message: "a comma ends the value in a line such as { a: 1, b: 2 }", expected: "a decimal point, such as 42.0 g", found: shown(`${before},${key}`), mend });
    return true;
  }

  #guard(node: Node, anchor: string | undefined, tag: string | undefined): void {
    if (anchor !== undefined) this.#report(node.range?.[0], { code: "yaml", message: "names such as &name are not used here", expected: "the value itself", found: `&${anchor}`, mend: "take the name away, or put the text in quotation marks" });
    if (tag !== undefined) this.#report(node.range?.[0], { code: "yaml", message: "tags such as !name are not used here", expected: "the value itself", found: shown(tag.replace("tag:yaml.org,2002:", "!!")), mend: "take the tag away, or put the text in quotation marks" });
  }

  #report(offset: number | undefined, fault: Fault): void {
    this.problems.push(this.#source.problem(this.#base + (offset ?? 0), fault));
  }
}

function frontMatter(source: Source, base: number, root: Node | null, data: Data): FrontMatter {
  const startOf = (node: Node | null | undefined): number => base + (node?.range?.[0] ?? 0);
  return {
    data,
    placeOf: (path) => source.at(startOf(nodeAt(root, path).value)),
    placeOfKey: (path) => {
      const { value, key } = nodeAt(root, path);
      return source.at(startOf(key ?? value));
    },
    typedAt: (path) => {
      const { value, whole } = nodeAt(root, path);
      return whole && value?.range ? source.text.slice(base + value.range[0], base + value.range[1]) : "";
    },
  };
}

interface Found {
  readonly value: Node | null;
  readonly key?: Node;
  /** Whether the whole path was found. */
  readonly whole: boolean;
}

function nodeAt(root: Node | null, path: Path): Found {
  let found: Found = { value: root, whole: true };
  for (const step of path) {
    const node = found.value;
    if (isMap(node)) {
      const pair = (node as YAMLMap<Node, Node | null>).items.find(({ key }) => isScalar(key) && String(key.value ?? "") === String(step));
      if (!pair) return { ...found, whole: false };
      found = { value: pair.value ?? pair.key, key: pair.key, whole: true };
    } else if (isSeq(node)) {
      const item = (node as YAMLSeq<Node | null>).items[Number(step)];
      if (item === undefined || item === null) return { ...found, whole: false };
      found = { value: item, whole: true };
    } else return { ...found, whole: false };
  }
  return found;
}
