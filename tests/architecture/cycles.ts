import { posix } from "node:path";
import type { SourceFile } from "./source.ts";

/** Files that import each other around a ring: each ring once, by Tarjan's strongly connected components. */
export function ringsOf(files: readonly SourceFile[], importsOf: (file: SourceFile) => readonly string[]): string[][] {
  const known = new Set(files.map(({ path }) => path));
  const next = new Map(
    files.map((file) => [
      file.path,
      importsOf(file)
        .filter((to) => to.startsWith("."))
        .map((to) => posix.join(posix.dirname(file.path), to))
        .filter((to) => known.has(to)),
    ]),
  );
  const seen = new Map<string, number>();
  const open: string[] = [];
  const rings: string[][] = [];
  const lowest = (path: string): number => {
    const own = seen.size;
    seen.set(path, own);
    open.push(path);
    let low = own;
    for (const to of next.get(path) ?? []) {
      if (!seen.has(to)) low = Math.min(low, lowest(to));
      else if (open.includes(to)) low = Math.min(low, seen.get(to) ?? own);
    }
    if (low < own) return low;
    const ring = open.splice(open.indexOf(path));
    if (ring.length > 1 || next.get(path)?.includes(path)) rings.push(ring.sort());
    return low;
  };
  for (const path of known) if (!seen.has(path)) lowest(path);
  return rings;
}
