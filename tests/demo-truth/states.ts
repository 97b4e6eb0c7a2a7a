/** Which words stand where in a value, by its type: `BatchFile.verdict` may be these, and is those. */
import { meaning, nameOf, type Property, properties, resolved, type Stated, within, wordsOf } from "./types.ts";

export interface States {
  /** By interface and field: what the type allows, and what a value has. */
  readonly allowed: ReadonlyMap<string, ReadonlySet<string>>;
  readonly held: ReadonlyMap<string, ReadonlySet<string>>;
}

const add = (to: Map<string, Set<string>>, where: string, words: readonly string[]): void => {
  to.set(where, new Set([...(to.get(where) ?? []), ...words]));
};

const ownerOf = ({ node }: Stated, otherwise: string): string => {
  if (node.type === "TSInterfaceDeclaration") return nameOf(node["id"]);
  return node.type === "TSTypeReference" && !node["typeArguments"] ? nameOf(node["typeName"]) : otherwise;
};

/** States that the type named `name` in `file` may have, all the way down. */
export function allowedBy(name: string, file: string): Map<string, Set<string>> {
  const root = meaning(name, file);
  if (root === undefined) throw new Error(`no type ${name} in ${file}`);
  const [allowed, seen] = [new Map<string, Set<string>>(), new Set<unknown>()];
  const visit = (stated: Stated, owner: string): void => {
    const found = resolved(stated) ?? stated;
    if (seen.has(found.node)) return;
    seen.add(found.node);
    const by = ownerOf(stated, owner);
    for (const field of properties(found)) visitField(field, `${by}.${field.name}`);
    for (const inner of within(found)) visit(inner, by);
  };
  const visitField = ({ stated }: Property, where: string): void => {
    const words = wordsOf(stated) ?? within(stated).flatMap((inner) => wordsOf(inner) ?? []);
    if (words.length > 0) add(allowed, where, words);
    if (words.length === 0) visit(stated, where);
  };
  visit(root, name);
  return allowed;
}

/** States that a value of that type has. */
export function heldBy(value: unknown, name: string, file: string): Map<string, Set<string>> {
  const root = meaning(name, file);
  if (root === undefined) throw new Error(`no type ${name} in ${file}`);
  const [held, seen] = [new Map<string, Set<string>>(), new Map<unknown, Set<unknown>>()];
  const visit = (stated: Stated, of: unknown, owner: string): void => {
    if (typeof of !== "object" || of === null) return;
    const found = resolved(stated) ?? stated;
    const before = seen.get(of) ?? new Set();
    if (before.has(found.node)) return;
    seen.set(of, before.add(found.node));
    const each = of instanceof Map ? [...of.values()] : Array.isArray(of) ? of : undefined;
    for (const inner of within(found)) for (const one of each ?? [of]) visit(inner, one, owner);
    if (each) return;
    const by = ownerOf(stated, owner);
    for (const field of properties(found))
      visitField(field, (of as Readonly<{ [key: string]: unknown }>)[field.name], `${by}.${field.name}`);
  };
  const visitField = ({ stated }: Property, of: unknown, where: string): void => {
    if (of === undefined) return;
    const flat = of instanceof Map ? [...of.values()] : [of].flat(2);
    const words = flat.filter((one) => typeof one === "string");
    add(held, where, words);
    visit(stated, of, where);
  };
  visit(root, value, name);
  return held;
}

/** `BatchFile.verdict: pending` for each state that is allowed and that no value has. */
export function missing({ allowed, held }: States): readonly string[] {
  return [...allowed].flatMap(([where, words]) =>
    [...words].filter((word) => !held.get(where)?.has(word)).map((word) => `${where}: ${word}`),
  );
}
