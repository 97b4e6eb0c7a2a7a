import { given, type Made, noting } from "./reads.ts";

/** What is made of a thing when it is first asked for. A copy of a thing is another thing. Whoever asks has read all that was read for it. */
export class Memo {
  readonly #made = new Map<unknown, Map<unknown, Made<unknown>>>();

  /** `make` is told from others by itself: a function of a module, not one made anew at each call. */
  once<Of extends object, T>(of: Of, make: (of: Of) => T): T {
    return this.within(of, of, make);
  }

  /** The same of a thing, or of an id, and of the whole that holds it, which is the same for all that this memo is asked for by `make`. */
  within<Whole extends object, Of extends object | string, T>(
    whole: Whole,
    of: Of,
    make: (whole: Whole, of: Of) => T,
  ): T {
    return this.named(make, of, () => make(whole, of));
  }

  /** The same where `make` is made anew at each call, and always makes the same of one kind and name. */
  named<T>(kind: unknown, name: unknown, make: () => T): T {
    const made = this.#by(kind);
    let known = made.get(name);
    if (known === undefined) made.set(name, (known = noting(make)));
    return given(known) as T;
  }

  #by(kind: unknown): Map<unknown, Made<unknown>> {
    const known = this.#made.get(kind);
    if (known !== undefined) return known;
    const made = new Map<unknown, Made<unknown>>();
    this.#made.set(kind, made);
    return made;
  }
}
