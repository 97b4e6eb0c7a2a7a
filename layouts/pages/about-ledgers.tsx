import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { PAGES } from "../../src/pages/archive/guide.ts";
import { filledLedgers } from "../../src/pages/ledgers/ledgers.ts";
import type { Site } from "../../src/editions/shown.ts";
import { counted } from "../../src/words/lists.ts";

/** Where the ledgers of this edition lie; nothing of one that has none. */
export function AboutLedgers({ site, from }: { readonly site: Site; readonly from: string }): JSX.Element | null {
  const filled = filledLedgers(site.shown);
  if (filled.length === 0) return null;
  return (
    <section class="section" id="ledgers">
      <h2>Ledgers</h2>
      <p>
        The numbers and verdicts of these pages for spreadsheets and other programs, as CSV and as JSON with the same
        rows and columns.
        {site.shown.edition === "archive" ? (
          <>
            {" "}
            What stands in each column is told under <a href={relative(from, PAGES.ledgers)}>Ledgers</a>.
          </>
        ) : null}
      </p>
      <ul class="lines bare">
        {filled.map(({ ledger: { name }, count }) => (
          <li>
            {name.replaceAll("-", " ")}, {counted(count, "row")}:{" "}
            <a href={relative(from, `data/${name}.csv`)} aria-label={`${name}.csv`}>
              CSV
            </a>{" "}
            <a href={relative(from, `data/${name}.json`)} aria-label={`${name}.json`}>
              JSON
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
