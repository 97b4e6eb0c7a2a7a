import type { JSX } from "preact";
import type { Site } from "../../src/editions/shown.ts";
import { addressOfSite, wholeAddress } from "../../src/pages/story/followed.ts";
import { waysIn } from "../shell/frame.tsx";
import { ICON } from "../shell/icon.ts";
import type { Allowed } from "../shell/policy.ts";

/** Of its own: a host shows this page at any address below the site, where no relative link leads anywhere. */
const STYLE = `:root{color-scheme:light dark}body{margin:0 auto;padding:12vh 1.5rem;max-width:36rem;background:#f4efe4;color:#1f2426;font:1.05rem/1.55 Georgia,serif}
h1{font-size:2rem;line-height:1.15;margin:0 0 1rem;border-bottom:3px solid #84243a;padding-bottom:.6rem}.name{margin:0 0 2rem}ul{list-style:none;margin:1.6rem 0 0;padding:0}a{display:inline-block;min-height:44px;line-height:44px;color:#84243a}
@media (prefers-color-scheme:dark){body{background:#1b1c1a;color:#ece5d6}h1{border-color:#eba0a8}a{color:#eba0a8}}`;

/** The sign stands within this page; without one a browser asks the host for another, and is told that there is none. */
export const NOT_FOUND_ALLOWED: Allowed = { "img-src": ["data:"] };

/** The ways of every page by whole addresses; where no address is known, where the site begins is not known either, and words say so. */
export function NotFoundPage({ site }: { readonly site: Site }): JSX.Element {
  const {
    record: { aircraft },
    edition,
  } = site.shown;
  const address = addressOfSite(site.shown);
  return (
    <html lang="en">
      <head>
        <meta charSet="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{`No such page · ${aircraft.name}`}</title>
        <meta name="robots" content="noindex, nofollow" />
        <meta name="color-scheme" content="light dark" />
        <meta name="generator" content="Scarfline" />
        <link rel="icon" href={`data:image/svg+xml,${encodeURIComponent(ICON)}`} />
        <style dangerouslySetInnerHTML={{ __html: STYLE }} />
      </head>
      <body data-edition={edition}>
        <main>
          <p class="name">{aircraft.name}</p>
          <h1>There is no such page</h1>
          <p>It may have been moved, or this edition does not show it.</p>
          {address === undefined ? (
            <p>
              Everything that is shown can be reached from the first page. To get there, shorten the address above, from
              its end, to where this site begins.
            </p>
          ) : (
            <nav aria-label="Main">
              <ul>
                {waysIn(site, "home").map(([words, path]) => (
                  <li>
                    <a href={wholeAddress(address, path)}>{words}</a>
                  </li>
                ))}
              </ul>
            </nav>
          )}
        </main>
      </body>
    </html>
  );
}
