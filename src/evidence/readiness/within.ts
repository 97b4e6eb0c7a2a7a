/** Assemblies within assemblies. */
import type { Assembly } from "../../facts/types.ts";
import { lookUp, type RecordIndex } from "../record-index.ts";

/** The assembly and all within it, parents first, children in the order of the record. */
export function within(index: RecordIndex, id: string): Assembly[] {
  const found: Assembly[] = [];
  const waiting = [lookUp(index.record.assemblies, id)];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    found.push(next);
    waiting.push(...[...(index.children.get(next.id) ?? [])].reverse());
  }
  return found;
}
