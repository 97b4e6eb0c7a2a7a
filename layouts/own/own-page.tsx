/** Own pages: what the builder wrote, within the frame that every page has. */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import type { OwnPage, PageFile, Site } from "../../src/editions/shown.ts";
import { html, Page } from "../shell/page.tsx";
import { OWN_SHEET_PATH } from "../shell/sheets.ts";

/** The pages and the sheet that the builder wrote. */
export function ownPages(site: Site): PageFile[] {
  if (site.own === undefined) return [];
  const { pages, css } = site.own;
  return [
    ...pages.map((own) => ({ path: own.path, make: () => fileOf(site, own) })),
    ...(css === undefined ? [] : [{ path: OWN_SHEET_PATH, make: () => css }]),
  ];
}

const fileOf = (site: Site, own: OwnPage): string =>
  own.path.endsWith(".html") ? html(<Own site={site} own={own} />) : own.content;

function Own({ site, own }: { readonly site: Site; readonly own: OwnPage }): JSX.Element {
  const { path, title, description, content } = own;
  const heading = /<h1[\s>]/i.test(content)
    ? ""
    : renderToString(
        <div class="title">
          <h1>{title}</h1>
        </div>,
      );
  return (
    <Page
      site={site}
      path={path}
      kind="own"
      title={title}
      {...(description !== undefined && { description })}
      main={`${heading}<div class="prose own">${content}</div>`}
    />
  );
}
