import type { Piece } from "./payload.ts";

export const isOfRecord = ({ path }: Piece): boolean => path.startsWith("record/");

export function bytesIn(pieces: readonly Piece[]): number {
  return pieces.reduce((bytes, { size }) => bytes + size, 0);
}

/**
 * How far it has come, in bytes: of the record, which is read once for its list; of the payload; of the payload once
 * more where it is packed.
 */
export class Work {
  readonly #of: number;
  readonly #progress: (done: number, of: number) => void;
  #done = 0;

  constructor(pieces: readonly Piece[], isPacked: boolean, progress: (done: number, of: number) => void) {
    this.#of = bytesIn(pieces.filter(isOfRecord)) + bytesIn(pieces) * (isPacked ? 2 : 1);
    this.#progress = progress;
  }

  /** Small texts and the frame of an archive are not in the sum, so that it may come out a little short. */
  readonly passed = (bytes: number): void => {
    this.#done = Math.min(this.#done + bytes, this.#of);
    this.#progress(this.#done, this.#of);
  };

  end(): void {
    this.passed(this.#of - this.#done);
  }
}
