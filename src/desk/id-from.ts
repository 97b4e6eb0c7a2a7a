import { idFault } from "../facts/id.ts";

const LONGEST = 60;

/**
 * An id made of words, as those who type ids make them: `Rear spar` becomes `rear-spar`. Without a letter that an id may
 * have, `otherwise`.
 */
export function idFrom(words: string, otherwise: string): string {
  const small = words
    .normalize("NFKC")
    .toLowerCase()
    .slice(0, LONGEST)
    .replaceAll(/[^\p{L}\p{M}\p{N}]+/gu, "-");
  const fault = idFault(small, otherwise);
  if (fault === undefined) return small;
  return fault.instead?.slice(0, LONGEST).replace(/[.-]+$/u, "") ?? otherwise;
}
