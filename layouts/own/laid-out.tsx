/** Pages of the story, which the builder may lay out anew; no page of the evidence is among them. */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import { type PageFile, type Site, STORY_LAYOUTS, type StoryLayout } from "../../src/editions/shown.ts";
import { html, Page, type PageProps } from "../shell/page.tsx";
import { PAGE_KINDS } from "../shell/sheets.ts";

const REPLACED: readonly string[] = [...STORY_LAYOUTS, "own"];

/** What a page that none may lay out anew is called, in the names that layouts could have. */
export const EVIDENCE_LAYOUTS: ReadonlySet<string> = new Set(
  PAGE_KINDS.filter((kind) => !REPLACED.includes(kind)).map((kind) => kind.replace(" ", "-")),
);

/** @param make gives the page itself, an element of `Page` */
export function storyPage(
  site: Site,
  path: string,
  layout: StoryLayout,
  make: () => JSX.Element,
  entry?: string,
): PageFile {
  const main = (): { title: string; content: string } => {
    const { title, children } = make().props as PageProps;
    return { title, content: renderToString(<>{children}</>) };
  };
  return {
    path,
    make: () => {
      const own = site.own?.mains.get(path);
      const page = make();
      return html(own === undefined ? page : <Page {...(page.props as PageProps)} main={own} />);
    },
    story: { layout, main, ...(entry !== undefined && { entry }) },
  };
}
