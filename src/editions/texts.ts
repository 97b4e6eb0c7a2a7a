/**
 * The texts of a record's entries, which pages are held to have read one by one. Whatever else a page shows it may have
 * read of all that there is.
 */
import type { Token } from "markdown-it";
import type { Passage, Record } from "../facts/types.ts";
import { factOf } from "../facts/typing.ts";
import { noteRead, type Readable } from "../reads.ts";

/** Where it begins moves with the texts before it. */
type Words = Pick<Passage, "markdown" | "blocks" | "line">;

interface Noted {
  readonly words: Words;
  readonly text: Readable;
}

/** In a passage whose every reading is noted: its words, which nothing else holds. */
const NOTED = Symbol("noted");

const notedIn = (passage: Passage): Noted | undefined => (passage as { readonly [NOTED]?: Noted })[NOTED];

/** The text of one passage as the builder wrote it, and the line it begins on. */
export interface Text extends Readable, Pick<Passage, "markdown" | "line"> {
  /** Of the passage, the same in another record with the same entries. */
  readonly key: string;
}

/**
 * From here on every reading of the text of an entry of the record is noted, in whatever edition. What reads it while
 * nothing is being made that could note it is found out: then nobody knows what rests on a text.
 */
export class Texts {
  readonly #all = new Map<Readable, Text>();
  #isReadByNobody = false;

  constructor({ entries }: Record) {
    for (const { id, body } of entries)
      for (const [at, passage] of body.entries()) {
        // Read anew it has none; what had would be told by its value.
        if (passage.blocks !== undefined) continue;
        const readByNobody = (): void => void (this.#isReadByNobody = true);
        const { markdown, line } = passage;
        const text: Text = { key: `${id} ${at}`, markdown, line, readByNobody };
        this.#all.set(text, text);
        hide(passage, { words: { markdown, line }, text });
      }
  }

  /** Whether something read a text that cannot be told. */
  get isReadByNobody(): boolean {
    return this.#isReadByNobody;
  }

  get all(): Iterable<Text> {
    return this.#all.values();
  }

  /** The text that was read; undefined where it is of another record. */
  of(read: Readable): Text | undefined {
    return this.#all.get(read);
  }
}

/** No copy of the passage holds its text, and nobody reads it unnoted. */
function hide(passage: Passage, noted: Noted): void {
  const { words, text } = noted;
  const getter = <K extends keyof Words>(key: K): PropertyDescriptor => ({
    enumerable: false,
    get: (): Words[K] => {
      noteRead(text);
      return words[key];
    },
  });
  const unseen = { enumerable: false, value: noted };
  const getters: { readonly [key in keyof Required<Words>]: PropertyDescriptor } = {
    markdown: getter("markdown"),
    blocks: getter("blocks"),
    line: getter("line"),
  };
  Object.defineProperties(passage, { [NOTED]: unseen, ...getters });
}

/**
 * The passage with blocks in place of its Markdown, or itself where there are none for it. `blocksOf` alone may see a text without having
 * read it, since of it comes only what has to be read like it.
 */
export function withBlocks(passage: Passage, blocksOf: (markdown: string) => readonly Token[] | undefined): Passage {
  const noted = notedIn(passage);
  const { markdown, line } = noted?.words ?? passage;
  const blocks = blocksOf(markdown);
  if (blocks === undefined) return passage;
  const words = { line, markdown: "", blocks };
  const made = factOf<Passage>({ audience: passage.audience, ...words });
  if (noted !== undefined) hide(made, { words, text: noted.text });
  return made;
}
