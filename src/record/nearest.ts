/** What the builder may have meant. */
import { closest, distance } from "fastest-levenshtein";

/** The known word nearest to a typed one, if it is near enough to be a slip of the fingers. */
export function nearest(typed: string, known: Iterable<string>): string | undefined {
  const words = [...known];
  if (words.length === 0 || typed === "") return undefined;
  const folded = new Map(words.map((word) => [fold(word), word]));
  const best = closest(fold(typed), [...folded.keys()]);
  const slips = distance(fold(typed), best);
  const allowed = typed.length < 3 ? 0 : typed.length < 5 ? 1 : typed.length < 9 ? 2 : 3;
  return slips <= Math.min(allowed, best.length - 1) ? folded.get(best) : undefined;
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
