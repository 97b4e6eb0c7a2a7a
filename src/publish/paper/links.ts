import type { Tree } from "./tree.ts";

/** Ids of things that stand in a paper, in their order. */
export function idsIn(trees: readonly Tree[]): ReadonlySet<string> {
  const ids = new Set<string>();
  const look = (nodes: readonly Tree[]): void => {
    for (const node of nodes) {
      if (typeof node === "string") continue;
      if (typeof node.attributes.id === "string") ids.add(node.attributes.id);
      look(node.children);
    }
  };
  look(trees);
  return ids;
}

/** `batch/B-014.html` and `batch/B-014.html#piece-B-014-1` lead to where the batch and the piece stand in the paper. */
export function linksWithin(ids: ReadonlySet<string>): (href: string) => string | undefined {
  return (href) => {
    const { path = "", fragment } = /^(?:\.\.\/)*(?<path>[^#]*)(?:#(?<fragment>.*))?$/.exec(href)?.groups ?? {};
    const page = path.replace(/\.html$/, "").replaceAll("/", "-");
    return [fragment, page].find((id) => id !== undefined && ids.has(id));
  };
}
