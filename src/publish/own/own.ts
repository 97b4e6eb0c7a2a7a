/** Own pages, layouts and sheet of a record, made for one edition, or all that keeps them from being made. */
import { existsSync, readdirSync, realpathSync } from "node:fs";
import { join } from "node:path";
import { EVIDENCE_LAYOUTS } from "../../../layouts/own/laid-out.tsx";
import { editionViewOf } from "../../../layouts/own/edition-view.tsx";
import { ICON_FILE } from "../../../layouts/shell/icon.ts";
import { OWN_SHEET_PATH } from "../../../layouts/shell/sheets.ts";
import { defined } from "../../defined.ts";
import type { OwnPage, OwnSite, PageFile, Site } from "../../editions/shown.ts";
import { inOrder, placed, type Problem } from "../../problem.ts";
import { OWN_SHEET } from "../../record/own.ts";
import { problemsOf } from "./problems.ts";
import { runOwn } from "./run.ts";
import { ownSheet } from "./sheet.ts";
import type { OwnMade, OwnReply, StoryTask } from "./task.ts";

export interface OwnRequest {
  /** The record's folder. */
  readonly content: string;
  /** Where the program is installed. */
  readonly program: string;
  /** Whether they are left out, as for a record whose builder is not trusted to run code here. */
  readonly plain?: boolean;
}

interface LaidOut {
  readonly site: Site;
  readonly pages: readonly PageFile[];
  readonly placings: ReadonlyMap<string, unknown>;
}

/** Of a site that was laid out without them. */
export async function ownOf(
  { content, program }: OwnRequest,
  laidOut: LaidOut,
): Promise<OwnSite | { readonly problems: readonly Problem[] }> {
  const root = realpathSync(content);
  const sheet = existsSync(join(root, OWN_SHEET)) ? ownSheet(root) : undefined;
  const names = layoutNames(root);
  const misnamed = names.filter((name) => EVIDENCE_LAYOUTS.has(nameOf(name))).map(misnamedLayout);
  const story = laidOut.pages.flatMap(({ story: told, path }): StoryTask[] =>
    told === undefined || !names.some((name) => nameOf(name) === told.layout)
      ? []
      : [defined({ path, layout: told.layout, entry: told.entry, ...told.main() })],
  );
  const hasPages = story.length > 0 || existsSync(join(root, "pages"));
  const reply = hasPages ? await runOwn({ view: editionViewOf(laidOut.site), story }, root, program) : NOTHING;
  const found = problemsOf(root, reply, story, await placesOf(laidOut, program));
  const problems = inOrder([...(sheet?.problems ?? []), ...misnamed, ...found]);
  if (problems.length > 0 || "failed" in reply) return { problems };
  return siteOf(reply, story, sheet?.css);
}

const NOTHING: OwnReply = { pages: [], links: [], faults: [] };

function siteOf({ pages }: OwnReply, story: readonly StoryTask[], css: string | undefined): OwnSite {
  const laid = new Set(story.map(({ path }) => path));
  return {
    pages: pages.filter(({ path }) => !laid.has(path)).map(pageOf),
    mains: new Map(pages.filter(({ path }) => laid.has(path)).map(({ path, content }) => [path, content])),
    ...(css !== undefined && { css }),
  };
}

const pageOf = ({ path, content, title = "", description, nav }: OwnMade): OwnPage => ({
  path,
  content,
  title,
  isInNavigation: nav,
  ...(description !== undefined && { description }),
});

/** Files of layouts as they are called, without folders below. */
const layoutNames = (root: string): string[] =>
  existsSync(join(root, "layouts")) ? readdirSync(join(root, "layouts")).filter((name) => !name.startsWith(".")) : [];

const nameOf = (file: string): string => file.split(".", 1)[0] ?? "";

function misnamedLayout(name: string): Problem {
  return placed(
    { file: `layouts/${name}`, line: 1, column: 1 },
    {
      code: "own-layout",
      message: "pages of the evidence have no layout of one's own",
      expected: "the name of a layout of the story, such as entry or home, or a name of its own",
      found: name,
      mend: "give it another name",
    },
  );
}

/** Every path that something of the site lies at, in small letters, by how it is spelled. */
async function placesOf({ pages, placings }: LaidOut, program: string): Promise<ReadonlyMap<string, string>> {
  const assets = ["styles", "browser"].flatMap((folder) => readdirSync(join(program, ".build", folder)));
  const others = ["chart.umd.js", "chart.LICENSE.txt", ...assets].map((name) => `assets/${name}`);
  const all = [...pages.map(({ path }) => path), ...placings.keys(), ...others, ICON_FILE, OWN_SHEET_PATH];
  return new Map(all.map((path) => [path.toLowerCase(), path]));
}
