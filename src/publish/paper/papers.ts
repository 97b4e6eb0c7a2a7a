/** Papers of an edition: made of what its pages are made of, and of nothing else. */
import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import { DRAWN_LOOK } from "../../../layouts/paper/drawn.ts";
import { shapesAlone, shapesCalled } from "../../../layouts/parts/shapes.tsx";
import { EDITION_WORDS } from "../../../layouts/shell/frame.tsx";
import { sealWords } from "../../../layouts/shell/seal.tsx";
import type { Site } from "../../editions/shown.ts";
import { isOfMany } from "../../pages/appendix/sheets.ts";
import type { FilePath } from "../../facts/types.ts";
import { dateWords } from "../../words/dates.ts";
import type { Block, Paper } from "./blocks.ts";
import { idsIn, linksWithin } from "./links.ts";
import { blocksOf, type Making } from "./paper-blocks.ts";
import { type Element, treeOf } from "./tree.ts";
import { contained } from "./words.ts";

export interface Sheets {
  readonly title: string;
  readonly front: ComponentChildren;
  readonly body: ComponentChildren;
}

export interface Whole {
  readonly paper: Paper;
  /** Drawings made in pages, by the names that the paper calls them. */
  readonly drawn: ReadonlyMap<string, Buffer>;
  /** Pictures of the record, by the same. */
  readonly pictures: ReadonlyMap<string, FilePath>;
}

/** What is set, from what templates made. `settable` are pictures of the record that can be set, by the ending of their files. */
export function paperOf(site: Site, sheets: Sheets, settable: (file: FilePath) => string | undefined): Whole {
  const drawn = new Map<string, Buffer>();
  const pictures = new Map<string, FilePath>();
  const trees = { front: treeOf(sheets.front), body: treeOf(sheets.body) };
  const leads = linksWithin(idsIn([...trees.front, ...trees.body]));
  const making: Making = {
    leads,
    leadsInTables: isOfMany(site.shown) ? () => undefined : leads,
    first: firstOnly(),
    drawn: (svg) => kept(drawn, svgText(svg)),
    picture: (file) => {
      const ending = settable(file);
      if (ending === undefined) return undefined;
      const known = [...pictures].find(([, each]) => each === file);
      const name = known?.[0] ?? `picture-${pictures.size + 1}${ending}`;
      pictures.set(name, file);
      return name;
    },
  };
  const front: Block[] = [...blocksOf(trees.front, making), { b: "contents" }];
  const body = blocksOf(trees.body, making);
  for (const [kind, colour] of [
    ["shape", "#000"],
    ["grave", "#6d1c30"],
  ] as const)
    for (const [name, text] of shapesAlone(colour)) drawn.set(`${kind}-${name}.svg`, Buffer.from(text));
  return { paper: { ...headsOf(site, sheets.title), front, body }, drawn, pictures };
}

function headsOf({ shown }: Site, title: string): Omit<Paper, "front" | "body"> {
  const { record, edition, seal } = shown;
  const [year = 0, month = 1, day = 1] = record.day.split("-").map(Number);
  return {
    title: contained(`${title}: ${record.aircraft.name}`),
    record: contained(record.aircraft.name),
    edition: EDITION_WORDS[edition],
    day: `Record of ${dateWords(record.day)}`,
    seal: sealWords(seal),
    date: [year, month, day],
    language: "en",
  };
}

function kept(files: Map<string, Buffer>, text: string): string {
  const name = `drawn-${files.size + 1}.svg`;
  files.set(name, Buffer.from(text));
  return name;
}

/** A drawing of a page by itself, with the shapes that it calls and the look that paper gives it. */
function svgText({ source }: Element): string {
  const inner = source === undefined ? "" : renderToString(source);
  const start = inner.indexOf(">") + 1;
  const head = inner.slice(0, start).replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"');
  return `${head}<style>${DRAWN_LOOK}</style><defs>${shapesCalled(inner)}</defs>${inner.slice(start)}`;
}

/** Each id stands once: at the first place that asks for it. */
function firstOnly(): Making["first"] {
  const taken = new Set<string>();
  return (id) => {
    if (taken.has(id)) return [];
    taken.add(id);
    return [id];
  };
}
