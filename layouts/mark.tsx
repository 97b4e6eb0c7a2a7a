/**
 * A verdict or state as a word and a shape. Every shape is the section through a joint, two pieces of wood and the line
 * between them, so that the marks can be told apart in grey, in print and at the size of a letter.
 */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Marked } from "../src/pages/marked.ts";

export type { Marked };

export interface ShapeParts {
  /** Solid parts. */
  readonly solid?: string;
  /** Outlined parts. */
  readonly line?: string;
  readonly dashed?: boolean;
}

const JOINED: ShapeParts = { solid: "M1 1h18v5.4H1zM1 7.6h18V13H1z" };
const SHEARED: ShapeParts = { solid: "M0 0h13v4.6H0zM7 9.4h13V14H7z", line: "M13 7H7" };
const BARRED: ShapeParts = { line: "M1.7 1.7h16.6v10.6H1.7z", solid: "M0 12.2 17.2 0H20v1.8L2.8 14H0z" };
const SETTING: ShapeParts = { line: "M1.7 1.7h16.6v3.2H1.7zM1.7 9.1h16.6v3.2H1.7z", solid: "M2 6.2h2v1.6H2zM6.6 6.2h2v1.6h-2zM11.4 6.2h2v1.6h-2zM16 6.2h2v1.6h-2z" };
const UNKNOWN: ShapeParts = { line: "M1.7 1.7h16.6v10.6H1.7z", dashed: true };
const HALF: ShapeParts = { solid: "M1 1h18v6H1z", line: "M1.7 7v5.3h16.6V7" };
const EARLY: ShapeParts = { line: "M1.7 1.7h16.6v3.2H1.7zM1.7 9.1h16.6v3.2H1.7z", solid: "M1 1h6v12H1z" };
const WEDGE: ShapeParts = { solid: "M1 6.5 18.4 0 20 4.1 1 6.6zM1 7.4 20 9.9 18.4 14 1 7.5z" };
const APART: ShapeParts = { line: "M1.7 1.2h16.6v2.6H1.7zM1.7 10.2h16.6v2.6H1.7z" };
const LINED: ShapeParts = { line: "M1.7 1.7h16.6v10.6H1.7z", solid: "M1 5.6h18v2.8H1z" };

const STAMP: ShapeParts = { line: "M10 1.2 18.4 7 10 12.8 1.6 7z", solid: "M10 4 14.4 7 10 10 5.6 7z" };
const BLANK: ShapeParts = { line: "M10 1.2 18.4 7 10 12.8 1.6 7z" };
const JOG: ShapeParts = { solid: "M1 8.6h7.2V1H19v3.4h-7.6V12H1z" };
const TAKEN_OUT: ShapeParts = { line: "M1.7 1.2h16.6v2.6H1.7zM1.7 10.2h16.6v2.6H1.7z", solid: "M1 6h5v2H1zM14 6h5v2h-5z" };
const TAB: ShapeParts = { line: "M1.7 1.7h11l5.6 5.3-5.6 5.3h-11z" };
const TAB_DONE: ShapeParts = { solid: "M1 1h12l6.2 6-6.2 6H1z" };

const SHAPES: { readonly [of in Marked]: ShapeParts } = {
  accepted: JOINED, pass: JOINED, passed: JOINED, meets: JOINED, within: JOINED,
  rejected: SHEARED, fail: SHEARED, rejects: SHEARED, out: SHEARED,
  quarantined: BARRED, blocked: BARRED,
  pending: SETTING, waits: SETTING, "not broken": SETTING,
  unproven: UNKNOWN, "no tolerance": UNKNOWN,
  inconclusive: HALF, caution: HALF, "one side": HALF,
  "too early": EARLY,
  opened: WEDGE, reopened: WEDGE,
  "not glued": APART, ahead: APART,
  ready: LINED,
  signed: STAMP, "not signed": BLANK,
  departure: JOG, rework: TAKEN_OUT, recall: BARRED,
  raised: TAB, closed: TAB_DONE,
};

const ATTENTION: ReadonlySet<Marked> = new Set<Marked>(["rejected", "fail", "rejects", "out", "quarantined", "blocked", "opened", "reopened", "recall", "not signed"]);

/** Whether something is wrong. */
export function isGrave(of: Marked): boolean {
  return ATTENTION.has(of);
}

/** `mark--attention` where something is wrong: the one place where marks take the accent. */
export function markClass(of: Marked): string {
  return isGrave(of) ? "mark mark--attention" : "mark";
}

/** The parts of a shape in a box of 20 by 14, for drawings that place it themselves. */
export function shapeOf(of: Marked): ShapeParts {
  return SHAPES[of];
}

/** The shape alone, hidden from screen readers: a word stands beside it or names the link around it. */
export function Shape({ of }: { readonly of: Marked }): JSX.Element {
  const { solid, line, dashed } = SHAPES[of];
  return (
    <svg class="mark__shape" viewBox="0 0 20 14" width="20" aria-hidden="true">
      {line === undefined ? null : <path d={line} fill="none" stroke="currentColor" stroke-width="1.4" stroke-dasharray={dashed ? "2.6 2" : undefined} />}
      {solid === undefined ? null : <path d={solid} />}
    </svg>
  );
}

/** Marks that were made before: a few dozen stand many thousand times in a site. */
const made = new Map<string, { readonly __html: string }>();

/** The shape in a drawing, with its top left corner where it is put. */
export function ShapeAt({ of, x, y }: { readonly of: Marked; readonly x: number; readonly y: number }): JSX.Element {
  const { solid, line, dashed } = SHAPES[of];
  return (
    <g transform={`translate(${x} ${y})`}>
      {line === undefined ? null : <path d={line} fill="none" stroke="currentColor" stroke-width="1.4" stroke-dasharray={dashed ? "2.6 2" : undefined} />}
      {solid === undefined ? null : <path d={solid} fill="currentColor" />}
    </g>
  );
}

/** Shape and word. */
export function Mark({ of, word = of }: { readonly of: Marked; readonly word?: string }): JSX.Element {
  const key = `${of} ${word}`;
  const inner = made.get(key) ?? { __html: renderToString(<><Shape of={of} /><span class="mark__word">{word}</span></>) };
  made.set(key, inner);
  return <span class={markClass(of)} dangerouslySetInnerHTML={inner} />;
}
