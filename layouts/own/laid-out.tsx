/** Pages of the story, which the builder may lay out anew; no page of the evidence is among them. */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import type { PageFile, Site, StoryLayout } from "../../src/editions/shown.ts";
import type { PageKind } from "../shell/page-kind.ts";
import { html, Page, type PageProps } from "../shell/page.tsx";

/** What a page that none may lay out anew is called, in the names that layouts could have. */
export const EVIDENCE_LAYOUTS: ReadonlySet<string> = new Set(
  Object.entries({
    archive: true,
    home: false,
    entries: false,
    entry: false,
    assemblies: false,
    assembly: true,
    hours: false,
    evidence: true,
    batch: true,
    joint: true,
    lot: true,
    trial: true,
    "hold points": true,
    "hold point": true,
    "open items": true,
    departures: true,
    search: true,
    tags: true,
    about: true,
    appendix: true,
    own: false,
  } satisfies { readonly [kind in PageKind]: boolean }).flatMap(([kind, isKept]) =>
    isKept ? [kind.replace(" ", "-")] : [],
  ),
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
