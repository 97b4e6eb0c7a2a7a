import type { JSX } from "preact";

const LINES: readonly (readonly [words: string, wide?: true])[] = [
  ["Looked at"],
  ["Signed / not signed"],
  ["Name and authority"],
  ["Date"],
  ["Reference of this look"],
  ["To be closed by, or looked at again"],
  ["Remarks", true],
  ["Signature", true],
];

/** Lines to be filled in by hand, for paper. */
export function SignOff({ id }: { readonly id: string }): JSX.Element {
  return (
    <div class="signoff" role="group" aria-label={`Sign-off block for ${id}, to be filled in on paper`}>
      {LINES.map(([words, wide]) => (
        <p class={wide ? "signoff__line signoff__line--wide" : "signoff__line"}>
          <span>{words}</span>
        </p>
      ))}
    </div>
  );
}
