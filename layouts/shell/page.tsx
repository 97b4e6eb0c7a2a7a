import type { ComponentChildren, JSX, VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import { relative } from "../../src/pages/address.ts";
import type { Site } from "../../src/editions/shown.ts";
import type { Entry } from "../../src/facts/types.ts";
import { SharedHead } from "../feeds/shared.tsx";
import { Footer, Header } from "./frame.tsx";
import { ICON_FILE } from "./icon.ts";
import { withCards } from "./cards.ts";
import { closedShortly, withShapes } from "../parts/shapes.tsx";
import type { PageKind } from "./page-kind.ts";
import { joined, parted } from "./parted.ts";
import { type Allowed, withPolicy } from "./policy.ts";
import { carriesSheets, isForPaper, OWN_SHEET_PATH, sheetsOf, takesOwn } from "./sheets.ts";

export interface PageProps {
  readonly site: Site;
  /** From the site's root, such as `entry/2025-03-08-caps.html`. */
  readonly path: string;
  readonly title: string;
  readonly description?: string;
  readonly kind: PageKind;
  /** Names of files in `assets/` to run after the page has been read. */
  readonly scripts?: readonly string[];
  /** Styles of this page alone, such as running heads that name the record. */
  readonly styles?: string;
  /** The entry that the page tells, if it tells one. */
  readonly entry?: Entry;
  /** HTML in place of `children`: what an own page or an own layout made. */
  readonly main?: string;
  readonly children?: ComponentChildren;
}

/** A whole document, with its doctype and its policy. */
export function html(page: VNode, more: Allowed = {}): string {
  const { head, rest } = withCards(parted(renderToString(page)));
  return `<!doctype html>\n${joined(withPolicy({ head, rest: withShapes(closedShortly(rest)) }, more))}\n`;
}

function Head({ site, path, title, description, kind, scripts = [], styles, entry }: PageProps): JSX.Element {
  const { record, edition } = site.shown;
  const name = record.aircraft.name;
  const whole = kind === "home" ? title : `${title} · ${name}`;
  return (
    <head>
      <meta charSet="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{whole}</title>
      {description === undefined ? null : <meta name="description" content={description} />}
      {edition === "public" ? null : <meta name="robots" content="noindex, nofollow" />}
      <meta name="color-scheme" content="light dark" />
      <meta name="theme-color" media="(prefers-color-scheme: light)" content="#f4efe4" />
      <meta name="theme-color" media="(prefers-color-scheme: dark)" content="#1b1c1a" />
      <link rel="icon" href={relative(path, ICON_FILE)} />
      <Sheets site={site} path={path} kind={kind} />
      {site.own?.css === undefined || !takesOwn(kind) ? null : (
        <link rel="stylesheet" href={relative(path, OWN_SHEET_PATH)} />
      )}
      {path === "404.html" ? null : (
        <SharedHead site={site} path={path} title={title} description={description} entry={entry} />
      )}
      {styles === undefined ? null : <style dangerouslySetInnerHTML={{ __html: styles }} />}
      {scripts.map((script) => (
        <script defer src={relative(path, `assets/${script}`)} />
      ))}
    </head>
  );
}

function Sheets({ site, path, kind }: Pick<PageProps, "site" | "path" | "kind">): JSX.Element {
  const within = carriesSheets(kind) ? site.firstSheets : undefined;
  if (within !== undefined) return <style dangerouslySetInnerHTML={{ __html: within }} />;
  return (
    <>
      {sheetsOf(kind).map((sheet) => (
        <link
          rel="stylesheet"
          href={relative(path, `assets/${sheet}.css`)}
          media={isForPaper(sheet) ? "print" : undefined}
        />
      ))}
    </>
  );
}

/** The frame of every page: head, navigation, main part, footer. All links are relative to `path`. */
export function Page(props: PageProps): JSX.Element {
  const { site, path, kind, main, children } = props;
  return (
    <html lang="en">
      <Head {...props} />
      <body class={`page page--${kind.replace(" ", "-")}`} data-edition={site.shown.edition}>
        <a class="skip" href="#main">
          Skip to the page
        </a>
        <Header site={site} path={path} kind={kind} />
        {main === undefined ? (
          <main id="main" class="main" tabIndex={-1}>
            {children}
          </main>
        ) : (
          <main id="main" class="main" tabIndex={-1} dangerouslySetInnerHTML={{ __html: main }} />
        )}
        <Footer site={site} path={path} />
      </body>
    </html>
  );
}

/** HTML that was made by the site's own Markdown, and nothing else. */
/** Whatever else is said of a fact, beside it. */
export function Noted({ note }: { readonly note: string | undefined }): JSX.Element | null {
  return note === undefined ? null : <span class="noted"> {note}</span>;
}

interface ProseProps {
  readonly site: Site;
  readonly html: string;
  readonly class?: string;
}

export function Prose({ site, html: inner, class: name }: ProseProps): JSX.Element {
  const { language } = site.shown.record.aircraft;
  return (
    <div
      class={name === undefined ? "prose" : `prose ${name}`}
      lang={language}
      dangerouslySetInnerHTML={{ __html: inner }}
    />
  );
}
