/**
 * A verdict or state as a word and a shape, so that marks can be told apart in grey, in print and at the size of a
 * letter.
 */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import type { BatchFile } from "../../src/evidence/types.ts";
import type { Marked } from "../../src/pages/evidence/marked.ts";
import { batchMark } from "../../src/pages/evidence/verdict-words.ts";
import { shapeRef } from "./shapes.tsx";

export type { Marked };

const ATTENTION: ReadonlySet<Marked> = new Set<Marked>([
  "rejected",
  "fail",
  "rejects",
  "out",
  "quarantined",
  "blocked",
  "opened",
  "reopened",
  "signed with things open",
  "recall",
  "not signed",
]);

/** Whether something is wrong. */
export function isGrave(of: Marked): boolean {
  return ATTENTION.has(of);
}

/** `mark--attention` where something is wrong: the one place where marks take the accent. */
export function markClass(of: Marked): string {
  return isGrave(of) ? "mark mark--attention" : "mark";
}

/** The shape alone, hidden from screen readers: a word stands beside it or names the link around it. */
export function Shape({ of }: { readonly of: Marked }): JSX.Element {
  return (
    <svg class="mark__shape" viewBox="0 0 20 14" aria-hidden="true">
      <use href={shapeRef(of)} />
    </svg>
  );
}

/** The shape in a drawing, with its top left corner where it is put. */
export function ShapeAt({ of, x, y }: { readonly of: Marked; readonly x: number; readonly y: number }): JSX.Element {
  return <use class="shape" href={shapeRef(of)} x={x} y={y} />;
}

/** Marks that were made before: a few dozen stand many thousand times in a site. */
const made = new Map<string, { readonly __html: string }>();

/** Shape and word. */
export function Mark({ of, word = of }: { readonly of: Marked; readonly word?: string }): JSX.Element {
  const key = `${of} ${word}`;
  const inner = made.get(key) ?? {
    __html: renderToString(
      <>
        <Shape of={of} />
        <span class="mark__word">{word}</span>
      </>,
    ),
  };
  made.set(key, inner);
  return <span class={markClass(of)} dangerouslySetInnerHTML={inner} />;
}

/** That of a batch, with the recall of a lot in it. */
export function BatchMark({ file }: { readonly file: BatchFile | undefined }): JSX.Element {
  const { mark, word } = batchMark(file);
  return <Mark of={mark} word={word} />;
}
