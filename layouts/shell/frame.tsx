/** What stands around every page: the name and the ways at its head, the caution at its foot. */
import type { JSX } from "preact";
import { renderToString } from "preact-render-to-string";
import { homeOf, relative } from "../../src/pages/address.ts";
import type { Edition, Site } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";
import type { PageKind } from "./page-kind.ts";
import { takesOwn } from "./sheets.ts";

interface FrameProps {
  readonly site: Site;
  readonly path: string;
  readonly kind: PageKind;
}

type Way = readonly [words: string, path: string, kinds: readonly PageKind[]];

const NAVIGATION: readonly Way[] = [
  ["Entries", "entries.html", ["entries", "entry"]],
  ["Assemblies", "assemblies.html", ["assemblies", "assembly", "tags"]],
  ["Hours", "hours.html", ["hours"]],
  ["Evidence", "evidence.html", ["evidence", "batch", "joint", "lot", "trial", "appendix"]],
  ["Hold points", "hold-points.html", ["hold points", "hold point"]],
  ["Open items", "open-items.html", ["open items"]],
  ["Departures", "departures.html", ["departures"]],
  ["About", "about.html", ["about"]],
  ["Search", "search.html", ["search"]],
];

/** The ways at the head of every page: their words and where they lead, from the site's root. */
export function waysIn({ shown: { edition }, own }: Site, kind: PageKind): readonly Way[] {
  const home: Way = ["Home", homeOf(edition), ["home"]];
  const first: readonly Way[] = edition === "archive" ? [["Start here", "index.html", ["archive"]], home] : [home];
  const ownPages = (takesOwn(kind) ? (own?.pages ?? []) : []).filter((page) => page.isInNavigation);
  return [...first, ...NAVIGATION, ...ownPages.map(({ title, path }): Way => [title, path, []])];
}

export const EDITION_WORDS: { readonly [edition in Edition]: string } = {
  public: "Public edition",
  inspector: "Inspector’s edition",
  archive: "Archive edition",
};

/** HTML that many pages of a site share, made for the first of them. */
function shared({ shown }: Site, key: string, make: () => JSX.Element): { readonly __html: string } {
  return shown.memo.named(shared, key, () => ({ __html: renderToString(make()) }));
}

const depthOf = (path: string): number => path.split("/").length;

export function Header(props: FrameProps): JSX.Element {
  const { site, path, kind } = props;
  const place = waysIn(site, kind).some(([, to]) => to === path) ? path : depthOf(path);
  return (
    <header class="head" dangerouslySetInnerHTML={shared(site, `head ${kind} ${place}`, () => <Ways {...props} />)} />
  );
}

function Ways({ site, path, kind }: FrameProps): JSX.Element {
  return (
    <>
      <div class="head__inner">
        <p class="head__name">
          <a href={relative(path, homeOf(site.shown.edition))}>{site.shown.record.aircraft.name}</a>
        </p>
        <nav class="head__nav" aria-label="Main">
          <ul>
            {waysIn(site, kind).map(([words, to, kinds]) => (
              <li>
                <a
                  href={relative(path, to)}
                  aria-current={to === path ? "page" : kinds.includes(kind) ? "true" : undefined}
                >
                  {words}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      </div>
      <div class="scarf" aria-hidden="true" />
    </>
  );
}

export function Footer({ site, path }: Omit<FrameProps, "kind">): JSX.Element {
  return (
    <footer
      class="foot"
      dangerouslySetInnerHTML={shared(site, `foot ${depthOf(path)}`, () => <Caution site={site} path={path} />)}
    />
  );
}

function Caution({ site, path }: Omit<FrameProps, "kind">): JSX.Element {
  const { record, edition } = site.shown;
  return (
    <>
      <div class="scarf" aria-hidden="true" />
      <div class="foot__inner">
        <p class="foot__caution">
          This site records what was written down; it does not certify airworthiness. The drawings, the adhesive maker’s
          data sheet, the authority’s rules and the inspector’s judgement stand above every limit shown here.
        </p>
        <p class="foot__facts">
          <span>{record.aircraft.name}</span> <span>{EDITION_WORDS[edition]}</span>{" "}
          <span>
            Record of <time dateTime={record.day}>{dateWords(record.day)}</time>
          </span>{" "}
          <a href={relative(path, "about.html")}>How verdicts are reached</a>
        </p>
      </div>
    </>
  );
}
