import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { chartsView, type SeriesView, type ShareView } from "../../src/pages/evidence/evidence-charts.ts";
import { boundWords, intervalWords } from "../../src/pages/evidence/trial-page.ts";
import { Page } from "../shell/page.tsx";
import { To } from "../shell/link.tsx";
import { IndividualsFigure } from "./individuals.tsx";
import { ListTable, None, Section, Title, type Level, type Where } from "./parts.tsx";

export function Charts({ site }: Pick<Where, "site">): JSX.Element {
  const from = "charts.html";
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Statistics"
      description="How often test pieces passed, and how mixing ratios and stresses went from batch to batch."
    >
      <Title place={<a href={relative(from, "evidence.html")}>Evidence</a>} title="Statistics">
        <p class="title__lead">
          How often pieces passed, and how mixing and breaking went from batch to batch. Nothing here changes a verdict.
        </p>
      </Title>
      <StatisticsParts site={site} from={from} level="h2" />
    </Page>
  );
}

/** How often pieces passed; ratios and stresses from batch to batch. */
export function StatisticsParts({ site, from, level }: Where & { readonly level: Level }): JSX.Element {
  const { shares, ratios, stresses } = chartsView(site.shown);
  const where = { site, from };
  return (
    <>
      {site.shown.edition === "archive" ? null : <p class="small quiet">Reckoned over what this edition shows.</p>}
      <Section id="shares" title="Pieces that passed" level={level}>
        <Shares shares={shares} {...where} />
      </Section>
      <Section id="ratios" title="Error of the mixing ratio, batch by batch" level={level}>
        {ratios.length === 0 ? (
          <None>No batch has a ratio that could be reckoned.</None>
        ) : (
          <>
            <LimitWords />
            {ratios.map((series) => (
              <Series series={series} {...where} />
            ))}
          </>
        )}
      </Section>
      <Section id="stresses" title="Stress at breaking, batch by batch" level={level}>
        {stresses.length === 0 ? (
          <None>
            No load was noted on a piece that had its least cure, of a shape that its procedure allows and with its
            sizes.
          </None>
        ) : (
          <>
            <StressWords />
            {stresses.map((series) => (
              <Series series={series} {...where} />
            ))}
          </>
        )}
      </Section>
    </>
  );
}

function Shares({ shares, site, from }: Where & { readonly shares: readonly ShareView[] }): JSX.Element {
  if (shares.length === 0) return <None>No pieces.</None>;
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <>
      <p class="measure">
        Pieces are counted together only where adhesive, procedure and, in a trial, preparation are alike. “At least” is
        what so many show at 95 % confidence (exact, Clopper and Pearson) of the pieces that passed or failed: three of
        three show no more than 37 %.
      </p>
      <ListTable
        caption="Pieces that passed, of those that show something"
        heads={[
          "Pieces",
          number("Batches"),
          number("Passed"),
          number("At least"),
          number("Interval"),
          number("Show nothing"),
          number("Not broken"),
        ]}
      >
        {shares.map((share) => (
          <tr>
            <th scope="row" class="alike">
              {share.adhesiveTitle}, {share.procedureTitle}
              {share.trial === undefined ? null : (
                <span class="quiet plainly">
                  , trial <To site={site} from={from} to={{ kind: "trial", id: share.trial }} />
                  {share.preparation === undefined ? "" : `, ${share.preparation}`}
                </span>
              )}
            </th>
            <td class="number">{share.batches}</td>
            <td class="number">
              {share.passed} of {share.passed + share.failed}
            </td>
            <td class="number">{share.atLeast === undefined ? "" : boundWords(share.atLeast)}</td>
            <td class="number">{share.interval === undefined ? "" : intervalWords(share.interval)}</td>
            <td class="number">{share.silent}</td>
            <td class="number">{share.notBroken}</td>
          </tr>
        ))}
      </ListTable>
    </>
  );
}

function LimitWords(): JSX.Element {
  return (
    <p class="measure">
      Limits are the mean ± 3 times the mean range between one batch and the next, over 1.128 (NIST/SEMATECH handbook
      6.3.2.2, seen second-hand); of the range itself 3.267 times its mean (from memory). They show how the batches
      themselves vary and are not the data sheet’s. A batch outside them may have a cause of its own that is worth
      finding.
    </p>
  );
}

function StressWords(): JSX.Element {
  return (
    <p class="measure">
      The load over the glue faces when the piece broke, wherever it broke: where the wood gave way, the glue line
      carried at least that. Pieces of trials, those broken too early and those of a shape that their procedure does not
      allow are left out; low ones are not.
    </p>
  );
}

function Series({ series, site, from }: Where & { readonly series: SeriesView }): JSX.Element {
  const each = (batches: readonly string[]): JSX.Element => (
    <>
      {batches.map((id, at) => (
        <>
          {at > 0 ? ", " : ""}
          <To site={site} from={from} to={{ kind: "batch", id }} class="id" />
        </>
      ))}
    </>
  );
  return (
    <>
      <IndividualsFigure series={series} site={site} from={from} />
      {series.outside.length === 0 ? null : (
        <p class="measure">
          <strong>Outside the limits:</strong> {each(series.outside)}. What was particular there?
        </p>
      )}
      {series.jumps.length === 0 ? null : (
        <p class="measure">
          <strong>Further from the batch before than the limit:</strong> {each(series.jumps)}.
        </p>
      )}
      {series.tolerance === undefined ? null : <p class="measure">{series.tolerance}</p>}
    </>
  );
}
