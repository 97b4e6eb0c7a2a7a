/** The last seal on the record, for whoever wants to hold it against the record years on. */
import type { JSX } from "preact";
import type { NamedSeal } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";

/** Enough of a digest to tell it by on paper. */
export const SHORT = 16;

/** In a line, for the foot of each printed page. */
export function sealWords(seal: NamedSeal | undefined): string {
  return seal === undefined
    ? "No seal"
    : `Seal ${seal.number} of ${dateWords(seal.date)}: ${seal.digest.slice(0, SHORT)}`;
}

export function SealText({ seal }: { readonly seal: NamedSeal | undefined }): JSX.Element {
  if (seal === undefined)
    return <p>No seal is named here: none has been set on this record, or the list of its seals is not whole.</p>;
  const { number, date, digest } = seal;
  return (
    <>
      <p>
        The last seal on this record is number {number}, of <time dateTime={date}>{dateWords(date)}</time>. Its digest
        is
      </p>
      <p>
        <code class="digest">{digest}</code>
      </p>
      <p class="small">
        That is the SHA-256 of the first {number === 1 ? "line" : `${number} lines`} of <code>seals.txt</code>, in which
        all files of the record as it was that day are held, and every seal before. With the record at hand,{" "}
        <code>head -n {number} seals.txt | sha256sum</code> prints it; what was altered or written since does not stand
        under it.
      </p>
    </>
  );
}
