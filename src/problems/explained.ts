/** What is told of one kind of problem. */
export interface Explanation {
  readonly title: string;
  readonly happened: string;
  /** Why it matters. */
  readonly why: string;
  /** What to do about it. */
  readonly mend: string;
  /**
   * Lines that bring it about: `@ FILE`, then what stands there after - and what is written in its place after +;
   * `@ new FILE` and `@ delete FILE` too. In words where a text cannot bring it about.
   */
  readonly example: readonly string[] | string;
}

export interface Explained {
  readonly [code: string]: Explanation;
}
