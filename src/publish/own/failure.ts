/** Where in own pages an error came up, as far as what threw it says. */
import { existsSync, readFileSync } from "node:fs";
import { relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type { OwnFailure } from "./task.ts";

/** Lines of a page before what a template language is given: its front matter. */
class LinesBefore {
  readonly #known = new Map<string, number>();

  note(file: string, content: string): void {
    // What lays out a page of the story lies in no file.
    if (!existsSync(file)) return;
    const whole = readFileSync(file, "utf8");
    const at = content === "" ? -1 : whole.lastIndexOf(content);
    this.#known.set(file, at < 0 ? 0 : whole.slice(0, at).split("\n").length - 1);
  }

  of(file: string): number {
    return this.#known.get(file) ?? 0;
  }
}

export const linesBefore = new LinesBefore();

interface Told extends Error {
  readonly originalError?: unknown;
  /** Of YAML. */
  readonly mark?: { readonly line?: number; readonly column?: number };
  readonly reason?: string;
}

export function failureOf(error: unknown): OwnFailure {
  const chain = chainOf(error);
  const innermost = chain.at(-1);
  const failed = innermost?.reason ?? innermost?.message ?? String(error);
  const place = chain.map(inYaml).find(Boolean) ?? inStack(chain) ?? inTemplate(chain);
  return { failed: failed.split("\n", 1)[0] ?? "", ...place };
}

function chainOf(error: unknown): Told[] {
  const chain: Told[] = [];
  for (let one = error; one instanceof Error && !chain.includes(one as Told); ) {
    const told = one as Told;
    chain.push(told);
    one = told.originalError ?? told.cause;
  }
  return chain;
}

type At = Omit<OwnFailure, "failed">;

function inYaml({ mark }: Told, _at: number, chain: readonly Told[]): At | undefined {
  if (mark?.line === undefined) return undefined;
  return { ...named(chain), line: mark.line + 1, column: (mark.column ?? 0) + 1 };
}

/** The first line of own code that the error passed. */
function inStack(chain: readonly Told[]): At | undefined {
  for (const { stack = "" } of [...chain].reverse())
    for (const [, url = "", line, column] of stack.matchAll(
      /(file:\/\/\S+?)(?:\?\S*?)?:(\d+)(?::(\d+))?(?=\)|$|\s)/gm,
    )) {
      const file = relative(process.cwd(), fileURLToPath(url)).split(sep).join("/");
      if (!/^(?:pages|layouts)\//.test(file)) continue;
      return { file, line: Number(line), column: Number(column ?? 1) };
    }
  return undefined;
}

/** As template languages tell it: the file in the words of Eleventy, line and column within what they were given. */
function inTemplate(chain: readonly Told[]): At {
  const { file } = named(chain);
  if (file === undefined) return {};
  const words = chain.map(({ message }) => message).join("\n");
  const [, line, column] =
    /line:?\s*(\d+),\s*col(?:umn)?:?\s*(\d+)/i.exec(words) ?? /\[Line (\d+), Column (\d+)\]/.exec(words) ?? [];
  return line === undefined ? { file } : { file, line: Number(line) + linesBefore.of(file), column: Number(column) };
}

function named(chain: readonly Told[]): { readonly file?: string } {
  const words = chain.map(({ message }) => message).join("\n");
  const file = /(?:^|[\s"'`(./])((?:pages|layouts)\/[^\s"'`():,]+)/.exec(words)?.[1];
  return file === undefined ? {} : { file: file.replace(/\.$/, "") };
}
