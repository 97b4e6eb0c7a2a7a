type Make<Of, T> = (of: Of) => T;

/** What is made of a thing when it is first asked for, and goes when the thing goes. */
export class Memo {
  readonly #made = new WeakMap<object, Map<unknown, unknown>>();

  /** `make` is told from others by itself: a function of a module, not one made anew at each call. A copy of a thing is another thing. */
  once<const Of extends object, T>(of: Of, make: Make<Of, T>): T {
    const made = this.#made.get(of) ?? new Map<unknown, unknown>();
    this.#made.set(of, made);
    if (!made.has(make)) made.set(make, make(of));
    return made.get(make) as T;
  }
}
