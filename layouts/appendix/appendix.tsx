/** All of the evidence as one document, for paper or PDF. */
import type { ComponentChildren, JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import { departures, holdPoints, openItems } from "../../src/pages/evidence/evidence-lists.ts";
import { overview } from "../../src/pages/evidence/overview.ts";
import type { Site } from "../../src/editions/shown.ts";
import { BATCH_MEANS, JOINT_MEANS } from "../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../src/words/dates.ts";
import { Mark } from "../parts/mark.tsx";
import { EDITION_WORDS } from "../shell/frame.tsx";
import { Page } from "../shell/page.tsx";
import { SealText } from "../shell/seal.tsx";
import { AppendixBatches } from "./appendix-batches.tsx";
import { AppendixJoints } from "./appendix-joints.tsx";
import { AppendixRules, AppendixTrials } from "./appendix-rest.tsx";
import { StatisticsParts } from "../evidence/charts.tsx";
import { ClimateParts } from "../evidence/climate.tsx";
import { HoldPoint } from "../evidence/hold-point/hold-point.tsx";
import { CreditLedgers } from "../evidence/credit.tsx";
import { DepartureTable, OpenItemTable } from "../evidence/lists/lists.tsx";
import { MeasurementTable } from "../evidence/lists/measurements.tsx";
import { PairTable } from "../evidence/lists/pairs.tsx";
import { LotTable } from "../evidence/lists/batches-and-lots.tsx";
import { None } from "../evidence/parts.tsx";
import { StockParts } from "../evidence/stock.tsx";
import { WeightLedger } from "../evidence/weight.tsx";
import { runningHeads } from "../shell/running-heads.ts";

const PATH = "appendix.html";

const PARTS: readonly (readonly [
  id: string,
  title: string,
  make: (site: Site, number: number) => ComponentChildren,
])[] = [
  ["standing", "Where it stands", (site) => <Standing site={site} />],
  ["hold-points", "Hold points and sign-off", (site) => <HoldPointList site={site} />],
  ["joints", "Joints", (site, number) => <AppendixJoints site={site} from={PATH} number={number} />],
  ["batches", "Batches and test pieces", (site, number) => <AppendixBatches site={site} from={PATH} number={number} />],
  ["climate", "Climate of the workshop", (site) => <ClimateParts site={site} from={PATH} level="h3" />],
  ["lots", "Lots", (site) => <LotTable facts={overview(site.shown)} site={site} from={PATH} list="none" />],
  ["stock", "Stock", (site) => <StockParts site={site} from={PATH} level="h3" />],
  ["trials", "Trials", (site, number) => <AppendixTrials site={site} from={PATH} number={number} />],
  ["statistics", "Statistics", (site) => <StatisticsParts site={site} from={PATH} level="h3" />],
  ["departures", "Departures", (site) => <DepartureTable items={departures(site.shown)} site={site} from={PATH} />],
  ["open-items", "Open items", (site) => <OpenItemTable items={openItems(site.shown)} site={site} from={PATH} />],
  [
    "measurements",
    "Measurements",
    (site) => (
      <>
        <MeasurementTable site={site} from={PATH} />
        <PairTable site={site} from={PATH} />
      </>
    ),
  ],
  ["weight", "Weight", (site) => <WeightLedger site={site} from={PATH} level="h3" />],
  ["major-portion", "Major portion", (site) => <CreditLedgers site={site} from={PATH} level="h3" />],
  ["rules", "Rules and their sources", (site) => <AppendixRules site={site} />],
];

export function Appendix({ site }: { readonly site: Site }): JSX.Element {
  const { record, edition, seal } = site.shown;
  return (
    <Page
      site={site}
      path={PATH}
      kind="appendix"
      title="Appendix: all of the evidence"
      styles={runningHeads(record.aircraft.name, EDITION_WORDS[edition], record.day, seal)}
      description="All of the evidence as one document, for paper or PDF."
    >
      <article class="appendix">
        <Front site={site} />
        {PARTS.map(([id, title, make], at) => (
          <section class="appendix__part" aria-labelledby={id}>
            <h2 id={id}>
              {at + 1} {title}
            </h2>
            {make(site, at + 1)}
          </section>
        ))}
      </article>
    </Page>
  );
}

function Front({ site }: { readonly site: Site }): JSX.Element {
  const { record, edition, leavesOut, seal } = site.shown;
  const { name, type } = record.aircraft;
  return (
    <header class="appendix__front">
      <p class="appendix__name">
        {name}, {type}
      </p>
      <h1>Evidence of the glue lines</h1>
      <p class="title__lead">
        {EDITION_WORDS[edition]} of the record of {dateWords(record.day)}.
      </p>
      <p class="appendix__caution">
        This document says what was written down and what follows from it by the rules in its last part. It does not
        certify airworthiness. The drawings, the adhesive maker’s data sheet, the authority’s rules and the inspector’s
        judgement stand above every limit in it.
      </p>
      {leavesOut.length === 0 ? null : (
        <>
          <p class="label">This edition leaves out</p>
          <ul>
            {leavesOut.map((kind) => (
              <li>{kind}</li>
            ))}
          </ul>
        </>
      )}
      <p class="label">Seal</p>
      <SealText seal={seal} />
      <nav aria-label="Contents">
        <h2>Contents</h2>
        <ol class="appendix__contents">
          {PARTS.map(([id, title]) => (
            <li>
              <a href={`#${id}`}>{title}</a>
            </li>
          ))}
        </ol>
      </nav>
      <p class="screen-only small quiet">Print this page, or save it as PDF, for numbered pages with running heads.</p>
    </header>
  );
}

function Standing({ site }: { readonly site: Site }): JSX.Element {
  const { joints, batchVerdicts } = overview(site.shown);
  return (
    <table class="list">
      <caption>Joints by state and batches by verdict</caption>
      <thead>
        <tr>
          <th scope="col">Of</th>
          <th scope="col">Verdict</th>
          <th scope="col">What it means</th>
          <th scope="col" class="number">
            Number
          </th>
        </tr>
      </thead>
      <tbody>
        {joints.map(([state, count]) => (
          <tr>
            <td>Joints</td>
            <td>
              <Mark of={state} />
            </td>
            <td>{JOINT_MEANS[state]}</td>
            <td class="number">{count}</td>
          </tr>
        ))}
        {batchVerdicts.map(([verdict, count]) => (
          <tr>
            <td>Batches</td>
            <td>
              <Mark of={verdict} />
            </td>
            <td>{BATCH_MEANS[verdict]}</td>
            <td class="number">{count}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function HoldPointList({ site }: { readonly site: Site }): JSX.Element {
  const all = holdPoints(site.shown);
  if (all.length === 0) return <None>The record names no hold points.</None>;
  return (
    <>
      {all.map((file) => (
        <HoldPoint file={file} site={site} from={PATH} id={anchor("hold point", file.holdPoint.id)} level="h3" />
      ))}
    </>
  );
}
