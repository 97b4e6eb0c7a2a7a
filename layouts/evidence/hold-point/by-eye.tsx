/** What only eyes can see: boxes to tick and lines to write on, and that the record says nothing of it. */
import type { JSX } from "preact";

/** `write` where something is to be written down. */
export interface Look {
  readonly words: string;
  readonly write?: true;
}

export function ByEye({ looks }: { readonly looks: readonly Look[] }): JSX.Element {
  return (
    <div class="byeye">
      <p class="label">Only eyes can see, the record does not hold it</p>
      <ul class="checklist bare">
        {looks.map(({ words, write }) => (
          <li>
            <span class="checklist__box" aria-hidden="true" />
            <span class={write ? "byeye__write" : undefined}>{words}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
