/** What is made of a thing when it is first asked for. A copy of a thing is another thing. */
export class Memo {
  readonly #made = new Map<unknown, Map<object, unknown>>();

  /** `make` is told from others by itself: a function of a module, not one made anew at each call. */
  once<Of extends object, T>(of: Of, make: (of: Of) => T): T {
    return this.within(of, of, make);
  }

  /** The same of a thing and of the whole that holds it, which is the same for all that this memo is asked for by `make`. */
  within<Whole extends object, Of extends object, T>(whole: Whole, of: Of, make: (whole: Whole, of: Of) => T): T {
    const made = this.#by(make);
    if (!made.has(of)) made.set(of, make(whole, of));
    return made.get(of) as T;
  }

  #by(make: unknown): Map<object, unknown> {
    const known = this.#made.get(make);
    if (known !== undefined) return known;
    const made = new Map<object, unknown>();
    this.#made.set(make, made);
    return made;
  }
}
