/**
 * The shapes of the marks. Each is drawn once in a page and taken from there, since a page has many marks and few
 * shapes.
 */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Marked } from "../../src/pages/evidence/marked.ts";

interface ShapeParts {
  /** Solid parts. */
  readonly solid?: string;
  /** Outlined parts. */
  readonly line?: string;
  readonly dashed?: boolean;
}

/**
 * In a box of 20 by 14: the section through a joint, two pieces of wood and the line between them; stamps, jogs and
 * tabs for what is no joint.
 */
const DRAWN = {
  joined: { solid: "M1 1h18v5.4H1zM1 7.6h18V13H1z" },
  sheared: { solid: "M0 0h13v4.6H0zM7 9.4h13V14H7z", line: "M13 7H7" },
  barred: { line: "M1.7 1.7h16.6v10.6H1.7z", solid: "M0 12.2 17.2 0H20v1.8L2.8 14H0z" },
  setting: {
    line: "M1.7 1.7h16.6v3.2H1.7zM1.7 9.1h16.6v3.2H1.7z",
    solid: "M2 6.2h2v1.6H2zM6.6 6.2h2v1.6h-2zM11.4 6.2h2v1.6h-2zM16 6.2h2v1.6h-2z",
  },
  unknown: { line: "M1.7 1.7h16.6v10.6H1.7z", dashed: true },
  half: { solid: "M1 1h18v6H1z", line: "M1.7 7v5.3h16.6V7" },
  early: { line: "M1.7 1.7h16.6v3.2H1.7zM1.7 9.1h16.6v3.2H1.7z", solid: "M1 1h6v12H1z" },
  wedge: { solid: "M1 6.5 18.4 0 20 4.1 1 6.6zM1 7.4 20 9.9 18.4 14 1 7.5z" },
  apart: { line: "M1.7 1.2h16.6v2.6H1.7zM1.7 10.2h16.6v2.6H1.7z" },
  lined: { line: "M1.7 1.7h16.6v10.6H1.7z", solid: "M1 5.6h18v2.8H1z" },
  stamp: { line: "M10 1.2 18.4 7 10 12.8 1.6 7z", solid: "M10 4 14.4 7 10 10 5.6 7z" },
  blank: { line: "M10 1.2 18.4 7 10 12.8 1.6 7z" },
  alone: { line: "M1.7 4.6h16.6v4.8H1.7z" },
  jog: { solid: "M1 8.6h7.2V1H19v3.4h-7.6V12H1z" },
  emptied: { line: "M1.7 1.2h16.6v2.6H1.7zM1.7 10.2h16.6v2.6H1.7z", solid: "M1 6h5v2H1zM14 6h5v2h-5z" },
  tab: { line: "M1.7 1.7h11l5.6 5.3-5.6 5.3h-11z" },
  filled: { solid: "M1 1h12l6.2 6-6.2 6H1z" },
} as const satisfies { readonly [name: string]: ShapeParts };

type ShapeName = keyof typeof DRAWN;

const SHAPES: { readonly [of in Marked]: ShapeName } = {
  shown: "joined",
  pass: "joined",
  passed: "joined",
  meets: "joined",
  within: "joined",
  rejected: "sheared",
  fail: "sheared",
  rejects: "sheared",
  out: "sheared",
  quarantined: "barred",
  blocked: "barred",
  pending: "setting",
  waits: "setting",
  "not broken": "setting",
  unproven: "unknown",
  "not shown": "unknown",
  "in no joint": "alone",
  "thrown away": "alone",
  "no tolerance": "unknown",
  estimated: "half",
  inconclusive: "half",
  caution: "half",
  "one side": "half",
  "too early": "early",
  opened: "wedge",
  reopened: "wedge",
  "signed with things open": "half",
  "not glued": "apart",
  ahead: "apart",
  ready: "lined",
  signed: "stamp",
  "not signed": "blank",
  departure: "jog",
  rework: "emptied",
  recall: "barred",
  raised: "tab",
  closed: "filled",
};

const PREFIX = "shape-";
const CALL = `href="#${PREFIX}`;

/** What a `use` element in a page calls a shape. */
export function shapeRef(of: Marked): string {
  return `#${PREFIX}${shapeName(of)}`;
}

export function shapeName(of: Marked): string {
  return SHAPES[of];
}

function ShapeDefinition({ name }: { readonly name: ShapeName }): JSX.Element {
  const { solid, line, dashed }: ShapeParts = DRAWN[name];
  return (
    <g id={PREFIX + name}>
      {line === undefined ? null : (
        <path class="shape__line" d={line} stroke-dasharray={dashed ? "2.6 2" : undefined} />
      )}
      {solid === undefined ? null : <path d={solid} />}
    </g>
  );
}

/** An element of a drawing with nothing in it; text and data of a page have no `<` of their own. */
const EMPTY_DRAWN = /<(circle|line|path|rect|use)((?:"[^"]*"|[^"<>])*)><\/\1>/g;

/** Such elements closed shortly: a page has hundreds. */
export const closedShortly = (page: string): string => page.replace(EMPTY_DRAWN, "<$1$2/>");

const defined = new Map(
  (Object.keys(DRAWN) as ShapeName[]).map((name) => [name as string, renderToString(<ShapeDefinition name={name} />)]),
);

/** Each shape as a drawing of its own in one colour, by its name. */
export function shapesAlone(colour: string): ReadonlyMap<string, string> {
  const look = `.shape__line{fill:none;stroke:${colour};stroke-width:1.4}path{fill:${colour}}`;
  return new Map(
    [...defined].map(([name, drawn]) => [
      name,
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 14"><style>${look}</style>${drawn}</svg>`,
    ]),
  );
}

/** Definitions of the shapes that are called in a page or a drawing. */
export function shapesCalled(drawn: string): string {
  const names = new Set<string>();
  for (let at = drawn.indexOf(CALL); at >= 0; at = drawn.indexOf(CALL, at + 1))
    names.add(drawn.slice(at + CALL.length, drawn.indexOf('"', at + CALL.length)));
  return [...names]
    .sort()
    .map((name) => defined.get(name) ?? "")
    .join("");
}

/** A page with the shapes that are called in it ahead of its main part, closed shortly. */
export function withShapes(page: string): string {
  const main = page.indexOf("<main");
  const shapes = main < 0 ? "" : shapesCalled(page);
  if (shapes === "") return page;
  return `${page.slice(0, main)}<svg class="shapes" aria-hidden="true"><defs>${closedShortly(shapes)}</defs></svg>${page.slice(main)}`;
}
