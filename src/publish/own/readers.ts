/** For which readers own pages are: as they say before they are made, and as it shows in what they came to. */
import type { HtmlTree, MadePage } from "@11ty/eleventy";
import { type Audience, AUDIENCES, sees } from "../../facts/values.ts";
import type { OwnFault, OwnTask } from "./task.ts";

/** What an own page says before Eleventy computes anything; its layout may say for whom it is as well. */
export interface Saying {
  readonly for?: unknown;
  readonly layout?: unknown;
}

/** A mark of a passage, or of a whole page, that is for fewer readers than this text came to. */
const MARK = /^.*:::.*$|^\s*for:\s*["']?(?:inspector|archive)["']?\s*$/m;
const EVERYBODY = "public" satisfies Audience;

export class Readers {
  readonly #said = new Map<string, Saying>();
  readonly #task: OwnTask;
  #shown: string | undefined;

  constructor(task: OwnTask) {
    this.#task = task;
  }

  /** Pages that are for fewer readers are no part of the run, nor of any collection of it: `false` for them. */
  sees(file: string, said: Saying): boolean | OwnFault {
    this.#said.set(file, { for: said.for, layout: said.layout });
    const audience = said.for ?? EVERYBODY;
    const known = AUDIENCES.find((one) => one === audience);
    if (known === undefined) return { kind: "audience", file, typed: String(audience) };
    return sees(this.#task.view.edition, known);
  }

  /** Whatever was computed, paged or altered after `sees` was asked. */
  lateFaults(source: string, now: Saying, file: string): OwnFault[] {
    const said = this.#said.get(source) ?? {};
    const isLate = (said.for ?? EVERYBODY) !== (now.for ?? EVERYBODY);
    return [
      ...(isLate ? [{ kind: "late", file, typed: String(now.for ?? EVERYBODY) } as const] : []),
      ...(said.layout !== now.layout ? [{ kind: "late layout", file, typed: String(now.layout) } as const] : []),
    ];
  }

  treeFaults(tree: HtmlTree, file: string): OwnFault[] {
    const texts: string[] = [];
    tree.walk((node) => {
      texts.push(...(typeof node === "string" ? [node] : stringsIn(node.attrs)));
      return node;
    });
    return this.#textFaults(texts, file);
  }

  /** Of what is told of a page, and of pages that are no HTML. */
  madeFaults({ outputPath, content, data: { title, description } = {} }: MadePage, file: string): OwnFault[] {
    const isHtml = outputPath !== false && outputPath.endsWith(".html");
    return this.#textFaults([...stringsIn([title, description]), ...(isHtml ? [] : textsOf(String(content)))], file);
  }

  #textFaults(texts: readonly string[], file: string): OwnFault[] {
    const marked = texts.find((text) => MARK.test(text) && !this.#isShown(text.trim()));
    return marked === undefined ? [] : [{ kind: "passage", file, typed: MARK.exec(marked)?.[0].trim() ?? "" }];
  }

  /** Whether the edition shows this text of the record itself, such as code in an entry: its marks are none. */
  #isShown(text: string): boolean {
    this.#shown ??= stringsIn(this.#task).join("\n");
    return this.#shown.includes(text);
  }
}

function textsOf(content: string): string[] {
  try {
    return stringsIn(JSON.parse(content));
  } catch {
    return content.split("\n");
  }
}

function stringsIn(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(stringsIn) : [];
}
