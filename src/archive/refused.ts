import type { Problem } from "../problem.ts";

/** What was asked of the archive cannot be done as things are; the message says why and what to do. */
export class ArchiveRefused extends Error {}

/** Problems of the record that came up only when its pages were made. */
export class PagesRefused extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super("Own pages of the record cannot be made.");
    this.problems = problems;
  }
}
