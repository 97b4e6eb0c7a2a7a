import type { JSX } from "preact";
import { FAA_SCALES, MOMENTS } from "../../src/evidence/sources.ts";
import { weightPage, type ScaleRow, type Sum, type WeightRow } from "../../src/pages/ledgers/weight.ts";
import { dateWords } from "../../src/words/dates.ts";
import { toldSource } from "../../src/words/findings/told.ts";
import { SourceWords } from "../parts/findings.tsx";
import { To } from "../shell/link.tsx";
import { Page } from "../shell/page.tsx";
import { ListPlace } from "./lists/lists.tsx";
import { EntryLink, ListTable, None, Title, type Where } from "./parts.tsx";

export function Weight({ site }: Pick<Where, "site">): JSX.Element {
  const from = "weight.html";
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Weight"
      description="Parts weighed on the way, their moments, and the aircraft on its scales."
    >
      <Title place={<ListPlace from={from} />} title="Weight">
        <p class="title__lead">Parts weighed on the way, with their moments, and the aircraft on its scales.</p>
      </Title>
      <WeightLedger site={site} from={from} level="h2" />
    </Page>
  );
}

interface LedgerProps extends Where {
  readonly level: "h2" | "h3";
}

export function WeightLedger({ site, from, level: Heading }: LedgerProps): JSX.Element {
  const page = weightPage(site.shown);
  const where = { site, from };
  return (
    <>
      <div class="prose">
        <p>
          {page.datum === undefined
            ? "The record names no datum, so no moments are reckoned."
            : `Datum: ${page.datum}. An arm is positive behind it and negative ahead of it.`}
          {site.shown.edition === "archive" ? "" : " Sums are over what this edition shows."}
        </p>
        <p>
          This page adds and divides, and claims no more. Whether a weight or a centre of gravity is within limits is
          for the plans, the data sheet and whoever is authorised to say.
        </p>
      </div>
      <section class="section">
        <Heading>Parts weighed on the way</Heading>
        {page.rows.length === 0 ? (
          <None>No parts weighed.</None>
        ) : (
          <>
            <PartTable rows={page.rows} {...where} />
            <Sums sums={page.sums} />
          </>
        )}
        <p class="small quiet">
          A part weighed again counts by its last weighing, and parts that are in another count no more by themselves.
          Moment: <SourceWords source={toldSource(site.shown.say, MOMENTS)} />.
        </p>
      </section>
      <section class="section">
        <Heading>On the scales</Heading>
        {page.scales.length === 0 ? (
          <None>No weighing on scales.</None>
        ) : (
          page.scales.map((row) => <OnScales row={row} {...where} />)
        )}
        <p class="small quiet">
          With a nose wheel D − F·L/W, with a tail wheel D + R·L/W: D is the arm of the main wheels, L the distance from
          them to the third wheel, F or R what that weighs, W all. Source:{" "}
          <SourceWords source={toldSource(site.shown.say, FAA_SCALES)} />.
        </p>
      </section>
    </>
  );
}

function PartTable({ rows, site, from }: Where & { readonly rows: readonly WeightRow[] }): JSX.Element {
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <ListTable
      caption="Parts in the order they were weighed"
      heads={["Day", "Part", "Assembly", number("Mass"), number("Arm"), number("Moment"), "Counts"]}
    >
      {rows.map(({ weighing, assembly, mass, arm, moment, replacedBy }) => (
        <tr class={replacedBy === undefined ? undefined : "quiet"}>
          <td>
            <EntryLink site={site} from={from} id={weighing.entry} />
          </td>
          <th scope="row" class="plainly">
            {weighing.part}
          </th>
          <td>
            <To site={site} from={from} to={{ kind: "assembly", id: weighing.assembly }}>
              {assembly}
            </To>
          </td>
          <td class="number">{mass}</td>
          <td class="number">{arm}</td>
          <td class="number">{moment}</td>
          <td>
            {replacedBy === undefined ? (
              "yes"
            ) : replacedBy.part === weighing.part ? (
              <>
                weighed again, <EntryLink site={site} from={from} id={replacedBy.entry} />
              </>
            ) : (
              `in: ${replacedBy.part}`
            )}
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

function Sums({ sums }: { readonly sums: readonly Sum[] }): JSX.Element {
  return (
    <dl class="facts facts--noted">
      {sums.map(({ word, value }) => (
        <>
          <dt>{word}</dt>
          <dd>{value}</dd>
        </>
      ))}
    </dl>
  );
}

function OnScales({ row: { on, readings, sums }, site, from }: Where & { readonly row: ScaleRow }): JSX.Element {
  return (
    <article class="scales">
      <p>
        <To site={site} from={from} to={{ kind: "entry", id: on.entry }}>
          {dateWords(on.day)}
        </To>
        {on.what === undefined ? "" : `: ${on.what}`}
      </p>
      <div class="pair">
        <Sums sums={readings} />
        {sums.length === 0 ? <None>These readings cannot be reckoned with.</None> : <Sums sums={sums} />}
      </div>
    </article>
  );
}
