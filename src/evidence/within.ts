/** Assemblies within assemblies. */
import type { Assembly } from "../record/types.ts";
import { must, type Book } from "./book.ts";

/** The assembly and all within it, parents first, children in the order of the record. */
export function within(book: Book, id: string): Assembly[] {
  const found: Assembly[] = [];
  const waiting = [must(book.record.assemblies, id, "assembly")];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    found.push(next);
    waiting.push(...[...(book.children.get(next.id) ?? [])].reverse());
  }
  return found;
}
