import type { ComponentChildren, JSX, VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import { relative } from "../src/pages/address.ts";
import type { Edition, Site } from "../src/pages/shown.ts";
import { dateWords } from "../src/pages/words.ts";

/** What sort of page it is: marks its place in the navigation and lets styles address it. */
export type PageKind =
  | "home" | "entries" | "entry" | "assemblies" | "assembly" | "hours" | "evidence" | "batch" | "joint" | "lot" | "trial"
  | "hold points" | "open items" | "departures" | "about" | "appendix" | "not found";

interface PageProps {
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
  readonly children?: ComponentChildren;
}

const NAVIGATION: readonly (readonly [words: string, path: string, kinds: readonly PageKind[]])[] = [
  ["Home", "index.html", ["home"]],
  ["Entries", "entries.html", ["entries", "entry"]],
  ["Assemblies", "assemblies.html", ["assemblies", "assembly"]],
  ["Hours", "hours.html", ["hours"]],
  ["Evidence", "evidence.html", ["evidence", "batch", "joint", "lot", "trial", "appendix"]],
  ["Hold points", "hold-points.html", ["hold points"]],
  ["Open items", "open-items.html", ["open items"]],
  ["Departures", "departures.html", ["departures"]],
  ["About", "about.html", ["about"]],
];

export const EDITION_WORDS: { readonly [edition in Edition]: string } = {
  public: "Public edition", inspector: "Inspector’s edition", archive: "Archive edition",
};

/** A whole document, with its doctype. */
export function html(page: VNode): string {
  return `<!doctype html>\n${renderToString(page)}\n`;
}

function Header({ site, path, kind }: Pick<PageProps, "site" | "path" | "kind">): JSX.Element {
  const { name } = site.shown.record.aircraft;
  return (
    <header class="head">
      <div class="head__inner">
        <p class="head__name"><a href={relative(path, "index.html")}>{name}</a></p>
        <nav class="head__nav" aria-label="Main">
          <ul>
            {NAVIGATION.map(([words, to, kinds]) => (
              <li><a href={relative(path, to)} aria-current={to === path ? "page" : kinds.includes(kind) ? "true" : undefined}>{words}</a></li>
            ))}
          </ul>
        </nav>
      </div>
      <div class="scarf" aria-hidden="true" />
    </header>
  );
}

function Footer({ site, path }: Pick<PageProps, "site" | "path">): JSX.Element {
  const { record, edition } = site.shown;
  return (
    <footer class="foot">
      <div class="scarf" aria-hidden="true" />
      <div class="foot__inner">
        <p class="foot__caution">
          This site records what was written down; it does not certify airworthiness. The drawings, the adhesive maker’s data sheet,
          the authority’s rules and the inspector’s judgement stand above every limit shown here.
        </p>
        <p class="foot__facts">
          <span>{record.aircraft.name}</span> <span>{EDITION_WORDS[edition]}</span>{" "}
          <span>Record of <time dateTime={record.day}>{dateWords(record.day)}</time></span>{" "}
          <a href={relative(path, "about.html")}>How verdicts are reached</a>
        </p>
      </div>
    </footer>
  );
}

function Head({ site, path, title, description, kind, scripts = [], styles }: PageProps): JSX.Element {
  const { record, edition } = site.shown;
  const name = record.aircraft.name;
  const whole = kind === "home" ? title : `${title} · ${name}`;
  return (
    <head>
      <meta charSet="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{whole}</title>
      {description === undefined ? null : <meta name="description" content={description} />}
      <meta name="robots" content={edition === "public" && kind !== "not found" ? "index, follow" : "noindex, nofollow"} />
      <meta name="color-scheme" content="light dark" />
      <meta name="theme-color" media="(prefers-color-scheme: light)" content="#f4efe4" />
      <meta name="theme-color" media="(prefers-color-scheme: dark)" content="#1b1c1a" />
      <meta name="generator" content="Scarfline" />
      <link rel="stylesheet" href={relative(path, "assets/style.css")} />
      {styles === undefined ? null : <style dangerouslySetInnerHTML={{ __html: styles }} />}
      {scripts.map((script) => <script defer src={relative(path, `assets/${script}`)} />)}
    </head>
  );
}

/** The frame of every page: head, navigation, main part, footer. All links are relative to `path`. */
export function Page(props: PageProps): JSX.Element {
  const { site, path, kind, children } = props;
  return (
    <html lang="en">
      <Head {...props} />
      <body class={`page page--${kind.replace(" ", "-")}`} data-edition={site.shown.edition}>
        <a class="skip" href="#main">Skip to the page</a>
        <Header site={site} path={path} kind={kind} />
        <main id="main" class="main" tabIndex={-1}>{children}</main>
        <Footer site={site} path={path} />
      </body>
    </html>
  );
}

/** HTML that was made by the site's own Markdown, and nothing else. */
export function Prose({ html: inner, class: name }: { readonly html: string; readonly class?: string }): JSX.Element {
  return <div class={name === undefined ? "prose" : `prose ${name}`} dangerouslySetInnerHTML={{ __html: inner }} />;
}
