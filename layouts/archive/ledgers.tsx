import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { PAGES } from "../../src/pages/archive/guide.ts";
import type { ColumnTold } from "../../src/pages/ledgers/column.ts";
import { filledLedgers, NO_LEDGER } from "../../src/pages/ledgers/ledgers.ts";
import type { Site } from "../../src/editions/shown.ts";
import { counted } from "../../src/words/lists.ts";
import { ListTable, None, Section, Title } from "../evidence/parts.tsx";
import { Page } from "../shell/page.tsx";
import { StartPlace } from "./place.tsx";

const PATH = PAGES.ledgers;

/** Every ledger, where it lies, and what stands in each of its columns. */
export function LedgersPage({ site }: { readonly site: Site }): JSX.Element {
  const filled = filledLedgers(site.shown);
  return (
    <Page
      site={site}
      path={PATH}
      kind="archive"
      title="Ledgers"
      description="The numbers and verdicts of the record as CSV and JSON, and what stands in each column."
    >
      <Title place={<StartPlace from={PATH} />} title="Ledgers">
        <p class="title__lead">
          Numbers and verdicts of the whole record, as CSV and as JSON with the same rows and columns, for spreadsheets,
          databases and whatever there will be.
        </p>
      </Title>
      <Section id="how" title="How to read them">
        {filled.length === 0 ? <None>{NO_LEDGER}</None> : <HowToRead filled={filled} />}
      </Section>
      {filled.map(({ ledger: { name, says, columns } }) => (
        <Section id={`ledger-${name}`} title={titleOf(name)}>
          <p>
            A row: {says} <a href={relative(PATH, `data/${name}.csv`)}>{name}.csv</a>{" "}
            <a href={relative(PATH, `data/${name}.json`)}>{name}.json</a>
          </p>
          <Columns name={name} columns={columns} />
        </Section>
      ))}
    </Page>
  );
}

function HowToRead({ filled }: { readonly filled: ReturnType<typeof filledLedgers> }): JSX.Element {
  return (
    <>
      <p class="measure">
        The first line of a CSV file names its columns; text is UTF-8. An empty field was not noted, or does not apply.
        Ids in one field have blanks between them. A text that a spreadsheet would take for a formula has an apostrophe
        before it in CSV. The same is told to programs in{" "}
        <a href={relative(PATH, "data/datapackage.json")}>datapackage.json</a>, by Frictionless Data. In an archive they
        lie in <code>ledgers/</code> too.
      </p>
      <ul class="lines bare">
        {filled.map(({ ledger: { name }, count }) => (
          <li>
            <a href={`#ledger-${name}`}>{titleOf(name)}</a>, {counted(count, "row")}
          </li>
        ))}
      </ul>
    </>
  );
}

function Columns({ name, columns }: { readonly name: string; readonly columns: readonly ColumnTold[] }): JSX.Element {
  return (
    <ListTable caption={`Columns of ${titleOf(name)}`} heads={["Column", "What it is", "Form", "Unit", "Source"]}>
      {columns.map(({ name: column, says, type, unit, field }) => (
        <tr>
          <th scope="row">
            <code>{column}</code>
          </th>
          <td>{says}</td>
          <td>{type}</td>
          <td>{unit ?? ""}</td>
          <td>{field === undefined ? "reckoned" : <code>{field}</code>}</td>
        </tr>
      ))}
    </ListTable>
  );
}

/** `hold-points` → `hold points` */
const titleOf = (name: string): string => name.replaceAll("-", " ");
