/** YAML to plain data in which every value is text, a list or a block, and each keeps its place. */
import { isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap, type YAMLSeq } from "yaml";
import type { Problem } from "../../problem.ts";
import { withOurHours } from "../../facts/time/hours.ts";
import { type Fault, onlyYouKnow, shown, writes } from "../../facts/reading.ts";
import type { Path } from "../../facts/values.ts";
import type { Source } from "./source.ts";
import { type Data, type FrontMatter, frontMatter, type ReadValue, type Spot } from "./spots.ts";
import { type Beyond, composed } from "./yaml-bounds.ts";
import { syntaxFault, tellingError } from "./yaml-faults.ts";

export type { Data, FrontMatter, Path };

/** Stands where a problem has been reported already; no text can hold it. */
export const SPOILED = "\u0000";

const OPTIONS = {
  schema: "failsafe",
  version: "1.2",
  strict: true,
  uniqueKeys: true,
  stringKeys: true,
  prettyErrors: false,
  keepSourceTokens: false,
  logLevel: "error",
} as const;

export interface ParsedYaml {
  readonly front: FrontMatter;
  /** What `front` was made of. */
  readonly value: ReadValue;
  readonly problems: readonly Problem[];
  /** Whether the syntax was wrong, so that the data may not be what was meant. */
  readonly syntax: boolean;
}

/** `base` is where the YAML begins in the file. */
export function parseYaml(source: Source, text: string, base: number): ParsedYaml {
  const document = composed(text, OPTIONS);
  if ("fault" in document) return beyondReading(source, base, document);
  const reader = new Reader(source, text, base);
  const value = reader.read(document.contents as Node | null);
  const errors = document.errors.filter((error) => error.code === "DUPLICATE_KEY");
  const other = tellingError(document.errors.filter((error) => error.code !== "DUPLICATE_KEY"));
  if (other) errors.push(other);
  const problems = errors.map((error) =>
    source.problem(base + Math.min(error.pos[0], text.length), syntaxFault(error, text)),
  );
  return {
    front: frontMatter(source, base, value),
    value,
    problems: other ? problems : [...problems, ...reader.problems],
    syntax: other !== undefined,
  };
}

function beyondReading(source: Source, base: number, { offset, fault }: Beyond): ParsedYaml {
  const problems = [source.problem(base + offset, fault)];
  const value = { data: "", spot: { start: 0, end: 0 } };
  return { front: frontMatter(source, base, value), value, problems, syntax: true };
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

  /** `key` is where the key of a value stands, which is its place if nothing follows the key. */
  read(node: Node | null, key?: number): ReadValue {
    if (node === null) return { data: "", spot: spotOf(null, key) };
    if (isScalar(node)) {
      this.#guard(node, node.anchor, node.tag);
      return { data: this.#scalar(node.value, node.range), spot: spotOf(node, key) };
    }
    if (isSeq(node)) return this.#list(node as YAMLSeq<Node | null>, key);
    if (isMap(node)) return this.#block(node as YAMLMap<Node, Node | null>, key);
    this.#report(node.range?.[0], {
      code: "yaml-feature",
      message: "a reference such as *name is never followed",
      expected: "the value itself",
      mend: "put what it stands for in its place, or put it in quotation marks",
    });
    return { data: SPOILED, spot: spotOf(node, key) };
  }

  #scalar(value: unknown, range: readonly [number, number, number] | null | undefined): Data {
    const after = range && range[2] > range[1] ? this.#text.slice(range[1], range[2]) : "";
    const lost = after === "" ? null : /^[ \t]+(#[^\s#].*)/.exec(after);
    if (lost && range) {
      this.#report(range[1] + after.indexOf("#"), {
        code: "lost-comment",
        message: "what follows # after a blank would not be read",
        found: shown(lost[1] ?? ""),
        mend: "put the whole text in quotation marks; if it is a comment, write a blank after #",
      });
    }
    return typeof value === "string" ? value : "";
  }

  #list(list: YAMLSeq<Node | null>, key: number | undefined): ReadValue {
    this.#guard(list, list.anchor, list.tag);
    const items = list.items.map((item) => (item === null ? this.read(item, list.range?.[0]) : this.read(item)));
    return {
      data: items.map(({ data }) => data),
      spot: { ...spotOf(list, key), parts: items.map(({ spot }) => spot) },
    };
  }

  #block(map: YAMLMap<Node, Node | null>, at: number | undefined): ReadValue {
    this.#guard(map, map.anchor, map.tag);
    const data = Object.create(null) as { [key: string]: Data };
    const parts = Object.create(null) as { [key: string]: Spot };
    let before: string | undefined;
    for (const pair of map.items) {
      const key = isScalar(pair.key) ? String(pair.key.value ?? "") : "";
      if (isScalar(pair.key)) this.#guard(pair.key, pair.key.anchor, pair.key.tag);
      if (before !== undefined && this.#isSplitByComma(pair, key, data[before])) data[before] = SPOILED;
      else {
        const value = this.read(pair.value, pair.key.range?.[0]);
        data[key] = value.data;
        parts[key] = value.spot;
        before = key;
      }
    }
    return { data, spot: { ...spotOf(map, at), parts } };
  }

  /** In `{ mass: 42,0 g }` YAML sees a mass of 42 and a key `0 g`. */
  #isSplitByComma(pair: Pair<Node, Node | null>, key: string, before: Data | undefined): boolean {
    const range = isScalar(pair.key) ? pair.key.range : undefined;
    if (
      pair.value !== null ||
      !range ||
      typeof before !== "string" ||
      !/\d$/.test(before) ||
      !/^\d/.test(key) ||
      this.#text[range[0] - 1] !== ","
    )
      return false;
    const point = withOurHours(`${before}.${key}`);
    const thousands = /^\d{3}(?!\d)/.test(key) && /(?:^|\D)[1-9]\d{0,2}$/.test(before);
    const mending = !thousands
      ? writes(point)
      : key.includes(".")
        ? writes(`${before}${key}`)
        : onlyYouKnow(`write ${before}${key} or ${point}, as it was meant`);
    this.#report(
      range[0] - 1 - before.length,
      {
        code: "decimal-comma",
        message: "a comma ends the value in a line such as { a: 1, b: 2 }",
        expected: "a decimal point, such as 42.0 g",
        found: shown(`${before},${key}`),
        ...mending,
      },
      `${before},${key}`,
    );
    return true;
  }

  #guard(node: Node, anchor: string | undefined, tag: string | undefined): void {
    if (anchor !== undefined)
      this.#report(node.range?.[0], {
        code: "yaml-feature",
        message: "names such as &name are not used here",
        expected: "the value itself",
        found: `&${anchor}`,
        mend: "take the name away, or put the text in quotation marks",
      });
    if (tag !== undefined)
      this.#report(node.range?.[0], {
        code: "yaml-feature",
        message: "tags such as !name are not used here",
        expected: "the value itself",
        found: shown(tag.replace("tag:yaml.org,2002:", "!!")),
        mend: "take the tag away, or put the text in quotation marks",
      });
  }

  #report(offset: number | undefined, fault: Fault, typed = ""): void {
    const at = this.#base + (offset ?? 0);
    this.problems.push(this.#source.problem(at, fault, this.#source.text.startsWith(typed, at) ? typed : ""));
  }
}

function spotOf(node: Node | null, key: number | undefined): Spot {
  const start = node?.range?.[0] ?? key ?? 0;
  return key === undefined ? { start, end: node?.range?.[1] ?? start } : { start, end: node?.range?.[1] ?? start, key };
}
