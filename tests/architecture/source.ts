import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import { type EcmaScriptModule, parseSync } from "oxc-parser";

/** A source file of the project, with its path from the project's root. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

export interface NamedFunction {
  readonly name: string;
  readonly line: number;
  readonly lines: number;
}

const ROOT = join(dirname(new URL(import.meta.url).pathname), "../..");

/** All TypeScript and style files below the given folders. */
export function sourceFiles(...folders: string[]): SourceFile[] {
  return folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.(tsx?|mjs|css)$/.test(name))
      .sort()
      .map((name) => ({ path: posix.join(folder, name), text: readFileSync(join(ROOT, folder, name), "utf8") })),
  );
}

/** What a file imports, as written, type imports included. */
export function importsOf(file: SourceFile): string[] {
  return [...new Set([...runningImportsOf(file), ...typeImportsOf(file)])];
}

/** What is loaded when the file is: imports and exports of values, and what it imports as it runs. */
export function runningImportsOf(file: SourceFile): string[] {
  const { module } = parseSync(file.path, file.text);
  const statics = module.staticImports
    .filter(({ entries }) => entries.length === 0 || entries.some(({ isType }) => !isType))
    .map((i) => i.moduleRequest.value);
  const dynamic = module.dynamicImports.map((i) =>
    file.text.slice(i.moduleRequest.start, i.moduleRequest.end).replaceAll(/["'`]/g, ""),
  );
  return [...statics, ...reExportsOf(module, false), ...dynamic];
}

function typeImportsOf(file: SourceFile): string[] {
  const { module } = parseSync(file.path, file.text);
  const statics = module.staticImports.filter(({ entries }) => entries.some(({ isType }) => isType));
  return [...statics.map((i) => i.moduleRequest.value), ...reExportsOf(module, true)];
}

function reExportsOf(module: EcmaScriptModule, types: boolean): string[] {
  return module.staticExports.flatMap(({ entries }) =>
    entries.flatMap(({ moduleRequest, isType }) =>
      moduleRequest === null || isType !== types ? [] : [moduleRequest.value],
    ),
  );
}

/** Every function, method and arrow with a body, and how many lines it covers. */
export function functionsOf(file: SourceFile): NamedFunction[] {
  const found: NamedFunction[] = [];
  const lineOf = (offset: number): number => file.text.slice(0, offset).split("\n").length;
  walk(parseSync(file.path, file.text).program, (node) => {
    if (!/^(FunctionDeclaration|FunctionExpression|ArrowFunctionExpression)$/.test(node.type)) return;
    const line = lineOf(node.start);
    found.push({ name: node.id?.name ?? "(no name)", line, lines: lineOf(node.end) - line + 1 });
  });
  return found;
}

/** Names of what a module keeps while it runs: variables, and maps and sets that begin empty. */
export function keptBy(file: SourceFile): string[] {
  const { body } = parseSync(file.path, file.text).program;
  return body
    .map((each) => (each.type === "ExportNamedDeclaration" && each.declaration ? each.declaration : each))
    .flatMap((each) => {
      if (each.type !== "VariableDeclaration") return [];
      const kept = each.declarations.filter(
        ({ init }) => each.kind !== "const" || (init?.type === "NewExpression" && init.arguments.length === 0),
      );
      return kept.map(({ id }) => file.text.slice(id.start, id.end));
    });
}

interface SyntaxNode {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly id?: { readonly name?: string } | null;
  readonly value?: unknown;
}

/** Every node of a tree, each before those within it. */
export function walk(value: unknown, visit: (node: SyntaxNode) => void): void {
  if (Array.isArray(value)) {
    for (const item of value) walk(item, visit);
  } else if (value !== null && typeof value === "object") {
    if ("type" in value && typeof value.type === "string") visit(value as SyntaxNode);
    for (const part of Object.values(value)) walk(part, visit);
  }
}
