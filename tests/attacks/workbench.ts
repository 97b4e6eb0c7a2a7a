/** One copy of the attacks' record, changed, read and put back again and again: only a file that is changed is parsed anew. */
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { readerOfCopies } from "../record/read-changed.ts";

const BASE = new URL("base", import.meta.url).pathname;

/** Each file of a record, by its path in the folder. */
export type Texts = ReadonlyMap<string, string>;

type Read = ReturnType<ReturnType<typeof readerOfCopies>>;

export class Workbench {
  readonly folder = mkdtempSync(join(tmpdir(), "scarfline-attack-"));
  readonly #read = readerOfCopies(BASE);
  readonly base: Texts;
  #there: Texts;

  constructor() {
    cpSync(BASE, this.folder, { recursive: true });
    this.base = this.#stored();
    this.#there = this.base;
  }

  /** The base as `change` leaves it. */
  changed(change: (folder: string) => void): Texts {
    this.#put(this.base);
    change(this.folder);
    this.#there = this.#stored();
    return this.#there;
  }

  /** Reads a record of these files. */
  async read(texts: Texts): Read {
    this.#put(texts);
    return this.#read(this.folder);
  }

  close(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  #put(texts: Texts): void {
    const there = this.#there;
    for (const file of there.keys()) if (!texts.has(file)) rmSync(join(this.folder, file));
    for (const [file, text] of texts) {
      if (there.get(file) === text) continue;
      mkdirSync(dirname(join(this.folder, file)), { recursive: true });
      writeFileSync(join(this.folder, file), text);
    }
    this.#there = texts;
  }

  #stored(): Map<string, string> {
    const items = readdirSync(this.folder, { recursive: true, withFileTypes: true }).filter((item) => item.isFile());
    return new Map(
      items.map((item) => {
        const path = join(item.parentPath, item.name);
        return [path.slice(this.folder.length + 1), readFileSync(path, "utf8")];
      }),
    );
  }
}
