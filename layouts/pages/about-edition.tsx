/** What an edition leaves out, and where its ledgers lie. */
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

export function LeftOut({ site }: { readonly site: Site }): JSX.Element {
  const { leavesOut } = site.shown;
  return (
    <section class="section" id="left-out">
      <h2>What this edition leaves out</h2>
      {leavesOut.length === 0 ? (
        <p>Nothing: this is the whole record.</p>
      ) : (
        <>
          <p>
            Verdicts are those of the whole record, so nothing that is left out can better one. Sums of hours are over
            what is shown. Left out are:
          </p>
          <ul class="cautions">
            {leavesOut.map((words) => (
              <li>{words}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
