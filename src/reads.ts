/**
 * Tells what was read while something was made, whoever it was made for first. What is made is made at once: nothing
 * that is noted so waits for anything.
 */

/** What it is told of that it is read. */
export interface Readable {
  /** It was read, and nothing was being made that could note it. */
  readonly readByNobody: () => void;
}

/** Something made, with all that was read for it. */
export interface Made<T> {
  readonly made: T;
  readonly reads: readonly Readable[];
}

let open: Set<Readable> | undefined;
const NONE: readonly Readable[] = [];

/** Tells that `it` is read by whatever is being made. */
export function noteRead(it: Readable): void {
  if (open === undefined) it.readByNobody();
  else open.add(it);
}

/** What `make` gives and what it reads, of which what is made around it knows nothing before it is {@link given}. */
export function noting<T>(make: () => T): Made<T> {
  const around = open;
  const reads = new Set<Readable>();
  open = reads;
  try {
    return { made: make(), reads: reads.size === 0 ? NONE : [...reads] };
  } finally {
    open = around;
  }
}

/** What was made, for whatever is being made: that reads all that was read for it. */
export function given<T>({ made, reads }: Made<T>): T {
  for (const it of reads) noteRead(it);
  return made;
}
