/** Ids that nothing has yet. */

/**
 * The id after the greatest, of those with the beginning that most have: some may have ids of their own that tell of
 * nothing else.
 */
export function nextId(ids: readonly string[], first: string): string {
  const numbers = new Map<string, string[]>();
  for (const id of ids) {
    const [, start, digits] = /^(.*?)(\d+)$/.exec(id) ?? [];
    if (start !== undefined && digits !== undefined) numbers.set(start, [...(numbers.get(start) ?? []), digits]);
  }
  const [most] = [...numbers].sort(([, a], [, b]) => b.length - a.length);
  if (most === undefined) return first;
  const [start, digits] = most;
  const greatest = digits.reduce((a, b) => (BigInt(b) > BigInt(a) ? b : a));
  return `${start}${String(BigInt(greatest) + 1n).padStart(greatest.length, "0")}`;
}

/** Letters that a second phone at one bench can be given, so that no two phones give a cup one number. */
const LETTERS = ["A", "B", "C", "D", "E", "F"] as const;
type Letter = (typeof LETTERS)[number] | "";
export type NextByLetter = { readonly [letter in Letter]: string };

/** The next batch of each phone; that of the phone without a letter follows those without one, whichever are more. */
export function nextBatches(ids: readonly string[]): NextByLetter {
  const starts = new Set(ids.map(startOf));
  const plain = nextId(
    ids.filter((id) => !isLettered(startOf(id), starts)),
    "B-001",
  );
  const of = (letter: Letter): string => {
    const start = `${startOf(plain)}${letter}`;
    return nextId(
      ids.filter((id) => startOf(id) === start),
      `${start}001`,
    );
  };
  return { "": plain, A: of("A"), B: of("B"), C: of("C"), D: of("D"), E: of("E"), F: of("F") };
}

const startOf = (id: string): string => id.replace(/\d+$/u, "");

/** Whether it is another beginning of the record's ids with a letter more. */
const isLettered = (start: string, starts: ReadonlySet<string>): boolean =>
  LETTERS.some((letter) => start.endsWith(letter)) && starts.has(start.slice(0, -1));
