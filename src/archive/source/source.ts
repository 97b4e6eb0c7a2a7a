import type { Tellings } from "../finding.ts";

/** A regular file of an archive, with a safe path from the bag's own folder. */
export interface Member {
  readonly path: string;
  /** As declared; what streams out is held against it. */
  readonly size: number;
}

/**
 * Where a bag lies: a folder, a `.zip` or a `.tar.gz`. Nothing but its own regular files can be read through it:
 * what is a link, has an unsafe path or lies elsewhere is told and not offered.
 */
export interface BagSource {
  readonly name: string;
  /** Its regular files, sorted by path. */
  readonly list: (findings: Tellings) => Promise<readonly Member[]>;
  /** Streams files one after the other, in the source's own order; each is used to its end before the next. Only after `list`. */
  readonly visit: (
    wanted: (path: string) => boolean,
    use: (path: string, chunks: AsyncIterable<Uint8Array>) => Promise<void>,
  ) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** More files than any record has; a bag with more is refused rather than held in memory. */
export const MOST_FILES = 1_000_000;

/** The archive itself is damaged, so that no more can be read of it. */
export class Damaged extends Error {}
