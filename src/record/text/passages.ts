/** A Markdown body as passages for different readers: `::: inspector` … `:::`. */
import type { Problem } from "../../problem.ts";
import { nearest } from "../../facts/nearest.ts";
import { type Fault, shown } from "../../facts/reading.ts";
import type { Audience, Passage } from "../../facts/types.ts";
import type { Source } from "./source.ts";

export interface ReadBody {
  readonly body: readonly Passage[];
  readonly problems: readonly Problem[];
}

const AUDIENCES: readonly Audience[] = ["public", "inspector", "archive"];
const EXPECTED = "`::: inspector` or `::: archive` on a line alone, and `:::` on a line alone after the passage";

interface Open {
  readonly audience: Audience;
  readonly line: number;
}

export function readPassages(source: Source, body: string, firstLine: number): ReadBody {
  if (!body.includes(":::")) return { body: passage("public", body.split("\n"), firstLine), problems: [] };
  return new BodyReader(source, firstLine).read(body.split("\n"));
}

/** Lines without the blank ones around them; nothing if none is left. */
function passage(audience: Audience, lines: readonly string[], firstLine: number): Passage[] {
  const first = lines.findIndex((line) => line.trim() !== "");
  if (first < 0) return [];
  return [{ audience, markdown: lines.slice(first).join("\n").trimEnd(), line: firstLine + first }];
}

class BodyReader {
  readonly #source: Source;
  readonly #firstLine: number;
  readonly #body: Passage[] = [];
  readonly #problems: Problem[] = [];
  #open: Open | undefined;
  /** Passages within passages, which have been told and whose ends are no problem of their own. */
  #within = 0;
  #lines: string[] = [];
  #start: number;
  #code = "";

  constructor(source: Source, firstLine: number) {
    this.#source = source;
    this.#firstLine = firstLine;
    this.#start = firstLine;
  }

  read(lines: readonly string[]): ReadBody {
    lines.forEach((line, index) => this.#line(line, this.#firstLine + index));
    if (this.#open)
      this.#report(this.#open.line, {
        code: "passage",
        message: "this passage is never closed",
        expected: EXPECTED,
        found: `::: ${this.#open.audience}`,
        mend: "put ::: alone on the line after it",
      });
    this.#end(this.#firstLine + lines.length);
    return { body: this.#body, problems: this.#problems };
  }

  #line(line: string, number: number): void {
    const code = /^ {0,3}(`{3,}|~{3,})/.exec(line)?.[1];
    if (this.#code !== "") {
      if (code?.startsWith(this.#code) && line.trim() === code) this.#code = "";
    } else if (code !== undefined) this.#code = code;
    const fence = this.#code === "" && code === undefined ? /^\s*:{3,}(.*)$/.exec(line) : null;
    if (!fence) this.#lines.push(line);
    else this.#fence(fence[1]?.trim() ?? "", line, number);
  }

  #fence(word: string, line: string, number: number): void {
    if (word === "") this.#close(number);
    else this.#begin(word, line, number);
  }

  #close(number: number): void {
    if (!this.#open && this.#within > 0) this.#within -= 1;
    else if (!this.#open)
      this.#report(number, {
        code: "passage",
        message: "there is no passage to close here",
        expected: EXPECTED,
        found: ":::",
        mend: "take it away, or open the passage with ::: and the word for its readers",
      });
    this.#end(number + 1);
    this.#open = undefined;
  }

  #begin(word: string, line: string, number: number): void {
    if (this.#open) {
      this.#within += 1;
      this.#report(number, {
        code: "passage",
        message: `a passage begins within the one of line ${this.#open.line}`,
        expected: EXPECTED,
        found: shown(line),
        mend: "close that one first with ::: alone on a line",
      });
    }
    const audience = AUDIENCES.find((known) => known === word);
    if (audience === undefined) {
      const meant = nearest(word, AUDIENCES);
      this.#report(number, {
        code: "passage",
        message: "no such readers are known",
        expected: EXPECTED,
        found: shown(line),
        mend: meant === undefined ? "write inspector or archive after :::" : `did you mean ::: ${meant}?`,
      });
    }
    this.#end(number + 1);
    // Until it is mended, nobody is taken to be meant rather than everybody.
    this.#open = { audience: audience ?? "archive", line: number };
  }

  #end(nextLine: number): void {
    this.#body.push(...passage(this.#open?.audience ?? "public", this.#lines, this.#start));
    this.#lines = [];
    this.#start = nextLine;
  }

  #report(line: number, fault: Fault): void {
    this.#problems.push(this.#source.problem(this.#source.lineStart(line), fault));
  }
}
