/** Counts and lists of things, and the words of the builder within a sentence. */
import { grouped } from "./numbers.ts";

/** `1 joint`, `2 joints`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

/** Words of the builder at the end of a sentence: a full stop unless they bring their own. */
export const ended = (words: string): string =>
  /[.!?…]$/u.test(words.trimEnd()) ? words.trimEnd() : `${words.trimEnd()}.`;
