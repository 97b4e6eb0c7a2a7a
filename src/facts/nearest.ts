/** What the builder may have meant. */
import { distance } from "fastest-levenshtein";

/** The known word nearest to a typed one, if it is near enough to be a slip of the fingers. */
export function nearest(typed: string, known: Iterable<string>): string | undefined {
  const folded = fold(typed);
  const allowed = folded.length < 3 ? 0 : folded.length < 5 ? 1 : folded.length < 9 ? 2 : 3;
  let best: string | undefined;
  let fewest = allowed + 1;
  for (const word of known) {
    const other = fold(word);
    const slips = Math.abs(other.length - folded.length) >= fewest ? fewest : distance(folded, other);
    if (slips < fewest && slips < other.length && sameNumbers(folded, other)) [best, fewest] = [word, slips];
  }
  return typed === "" ? undefined : best;
}

/** B-13 is no slip for B-14, which is another batch; but b14, B-014 and B-41 may be. */
function sameNumbers(a: string, b: string): boolean {
  const [left, right] = [a.replace(/\D/g, ""), b.replace(/\D/g, "")];
  const sorted = (digits: string): string => [...digits].sort().join("").replace(/^0+/, "");
  return sorted(left) === sorted(right);
}

function fold(word: string): string {
  return word.toLowerCase().replaceAll("_", "-").replaceAll(" ", "-");
}

/** Known words in one line, the first few of many. */
export function someOf(known: Iterable<string>, most = 8): string {
  const words = [...known];
  const first = words.slice(0, most).join(", ");
  return words.length > most ? `${first} and ${words.length - most} more` : first;
}

/** The few known words that are most like a typed one, in their own order. */
export function likest(typed: string, known: readonly string[], most = 6): string {
  if (known.length <= most) return someOf(known);
  const ranked = known
    .map((word, index) => ({ word, index, slips: distance(fold(typed), fold(word)) }))
    .sort((a, b) => a.slips - b.slips || a.index - b.index);
  const few = ranked.slice(0, most).sort((a, b) => a.index - b.index);
  return `${few.map(({ word }) => word).join(", ")} and ${known.length - most} more`;
}
