import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { LOSS_WORDS, stockPage, type StockPage, type StockRow, WOOD_WORDS } from "../../src/pages/ledgers/stock.ts";
import { Findings } from "../parts/findings.tsx";
import { Page } from "../shell/page.tsx";
import { CoatTable } from "./materials/coats.tsx";
import { FittedTable } from "./materials/fitted.tsx";
import { RemainsSection } from "./materials/remains.tsx";
import { Id, ListTable, None, Section, Title, type Level, type Where } from "./parts.tsx";

export function Stock({ site }: Pick<Where, "site">): JSX.Element {
  const from = "stock.html";
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Stock"
      description="What there should still be of adhesive and timber, what expires, and what is still to be glued."
    >
      <Title place={<a href={relative(from, "evidence.html")}>Evidence</a>} title="Stock">
        <p class="title__lead">
          What should still be on the shelf: what came, less what the batches took and what was cut. What was spilt or
          thrown away is not in the record, so there may be less.
        </p>
      </Title>
      <StockParts site={site} from={from} level="h2" />
    </Page>
  );
}

/** What should still be there, by adhesive; what expires; what is still to be glued. */
export function StockParts({ site, from, level }: Where & { readonly level: Level }): JSX.Element {
  const page = stockPage(site.shown);
  const where = { site, from };
  return (
    <>
      {site.shown.edition === "archive" ? null : <p class="small quiet">Reckoned over what this edition shows.</p>}
      {page.findings.length === 0 ? null : (
        <Section id="more-than-came" title="More used than came" level={level}>
          <Findings {...where} findings={page.findings} about={[]} />
        </Section>
      )}
      {page.adhesives.map(({ title, lots }, at) => (
        <Section id={`adhesive-${at + 1}`} title={title} level={level}>
          <Lots rows={lots} caption={`Lots of ${title}`} {...where} />
        </Section>
      ))}
      <RemainsSection remains={page.remains} caption="What was weighed as left, lot by lot" level={level} {...where} />
      <Section id="timber" title="Timber, plywood and the rest" level={level}>
        {page.others.length === 0 ? (
          <None>No other lots.</None>
        ) : (
          <>
            <p class="measure">{WOOD_WORDS}</p>
            <Lots rows={page.others} caption="Lots of timber, plywood and other things" {...where} />
          </>
        )}
      </Section>
      {page.cost === undefined ? null : (
        <Section id="cost" title="What it cost" level={level}>
          <p>{page.cost}</p>
        </Section>
      )}
      <PutOn page={page} level={level} {...where} />
      {page.fitted.length === 0 ? null : (
        <Section id="fitted" title="Parts bought in" level={level}>
          <FittedTable rows={page.fitted} caption="Parts bought in, and where they were fitted" {...where} />
        </Section>
      )}
      <Section id="ahead" title="What is still to be glued" level={level}>
        <Ahead page={page} />
      </Section>
    </>
  );
}

function PutOn({
  page,
  level,
  ...where
}: Where & { readonly page: StockPage; readonly level: Level }): JSX.Element | null {
  const { finishes, coats } = page;
  if (finishes.length + coats.length === 0) return null;
  return (
    <Section id="put-on" title="What is put on" level={level}>
      {finishes.length === 0 ? null : (
        <Lots rows={finishes} caption="Lots of primer, varnish, dope, paint, fabric and tape" {...where} />
      )}
      {coats.length === 0 ? null : <CoatTable rows={coats} caption="Coats, place by place" {...where} />}
    </Section>
  );
}

function Lots({
  rows,
  caption,
  site,
  from,
}: Where & { readonly rows: readonly StockRow[]; readonly caption: string }): JSX.Element {
  return (
    <ListTable
      caption={caption}
      heads={[
        "Lot",
        "What it is",
        { word: "Came", number: true },
        { word: "Used", number: true },
        { word: "Left at most", number: true },
        "Keeps",
      ]}
    >
      {rows.map(({ lot, received, used, left, keeps, urgent }) => (
        <tr>
          <th scope="row">
            <Id site={site} from={from} kind="lot" id={lot.id} />
          </th>
          <td>{lot.title}</td>
          <td class="number">{received}</td>
          <td class="number">{used}</td>
          <td class="number">{left}</td>
          <td class="stock__words">{urgent ? <strong>{keeps}</strong> : keeps}</td>
        </tr>
      ))}
    </ListTable>
  );
}

function Ahead({ page }: { readonly page: StockPage }): JSX.Element {
  return (
    <>
      <p class="measure">{page.ahead}</p>
      {page.needs.length === 0 ? null : (
        <>
          <p class="measure">{LOSS_WORDS}</p>
          <ListTable
            caption="If all of it were glued with one adhesive"
            heads={["Adhesive", { word: "Mixed", number: true }, "Of which"]}
          >
            {page.needs.map(({ title, mixed, parts }) => (
              <tr>
                <th scope="row" class="alike">
                  {title}
                </th>
                <td class="number">{mixed}</td>
                <td class="stock__words">{parts}</td>
              </tr>
            ))}
          </ListTable>
        </>
      )}
    </>
  );
}
