/** Front matter of which parts come from other files, each value with the place it was typed at. */
import type { Data, FrontMatter, Path } from "../text/yaml.ts";

interface Origin {
  readonly front: FrontMatter;
  readonly path: Path;
}

/** A text, a list or a block. Lists and blocks are changed in place while amendments are put into them. */
export interface Tree {
  readonly origin: Origin;
  /** The entry whose `in_use` put it there, where nothing was typed. */
  readonly usual?: string;
  readonly text?: string;
  readonly items?: Tree[];
  readonly fields?: Map<string, Tree>;
}

export function treeOf(front: FrontMatter, data: Data, path: Path): Tree {
  const origin = { front, path };
  if (typeof data === "string") return { origin, text: data };
  if (Array.isArray(data))
    return { origin, items: (data as readonly Data[]).map((item, at) => treeOf(front, item, [...path, at])) };
  return {
    origin,
    fields: new Map(Object.entries(data).map(([key, part]) => [key, treeOf(front, part, [...path, key])])),
  };
}

export function dataOf(tree: Tree): Data {
  if (tree.items) return tree.items.map(dataOf);
  return tree.fields
    ? Object.fromEntries([...tree.fields].map(([key, part]) => [key, dataOf(part)]))
    : (tree.text ?? "");
}

/** The tree as the schema is held against it, every place where it was typed. */
export function frontOf(root: Tree): FrontMatter {
  return {
    data: dataOf(root),
    placeOf: (path) => {
      const { origin } = lastOn(root, path).tree;
      return origin.front.placeOf(origin.path);
    },
    placeOfKey: (path) => {
      const {
        tree: { origin },
        whole,
      } = lastOn(root, path);
      return whole ? origin.front.placeOfKey(origin.path) : origin.front.placeOf(origin.path);
    },
    typedAt: (path) => {
      const {
        tree: { origin },
        whole,
      } = lastOn(root, path);
      return whole ? origin.front.typedAt(origin.path) : "";
    },
    usualFrom: (path) => {
      const { tree, whole } = lastOn(root, path);
      return whole ? usualOf(tree) : undefined;
    },
  };
}

/** The entry whose `in_use` put a value there. */
export const usualOf = ({ usual, origin }: Tree): string | undefined => usual ?? origin.front.usualFrom(origin.path);

/** The tree at the end of a path, if there is one. */
export function treeAt(root: Tree, path: Path): Tree | undefined {
  const { tree, whole } = lastOn(root, path);
  return whole ? tree : undefined;
}

function lastOn(root: Tree, path: Path): { readonly tree: Tree; readonly whole: boolean } {
  let tree = root;
  for (const step of path) {
    const next = typeof step === "number" ? tree.items?.[step] : tree.fields?.get(String(step));
    if (next === undefined) return { tree, whole: false };
    tree = next;
  }
  return { tree, whole: true };
}

/** The text of a field of a block, if it has one. */
export function textIn(tree: Tree, key: string): string | undefined {
  return tree.fields?.get(key)?.text;
}
