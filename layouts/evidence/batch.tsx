import type { JSX } from "preact";
import type { BatchFile } from "../../src/evidence/types.ts";
import { byDefault, entriesOf } from "../../src/pages/evidence/by-default.ts";
import { batchPage, type BatchPage } from "../../src/pages/evidence/batch-page.ts";
import { PART_WORDS } from "../../src/pages/evidence/part-words.ts";
import { addressOf } from "../../src/pages/address.ts";
import { BATCH_MEANS, deciding } from "../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../src/words/dates.ts";
import { ended, listed } from "../../src/words/lists.ts";
import { toldFinding } from "../../src/words/findings/told.ts";
import { ChangesOf } from "../parts/amended.tsx";
import { Findings } from "../parts/findings.tsx";
import { To } from "../shell/link.tsx";
import { BatchMark, Mark } from "../parts/mark.tsx";
import { RatioFigure } from "./ratio-figure.tsx";
import { Sealed } from "../parts/sealed.tsx";
import { Page } from "../shell/page.tsx";
import { Facts, Id, ListTable, None, Section, Title, type Where } from "./parts.tsx";
import { Piece } from "./piece.tsx";
import { TrialPieces } from "./trial-pieces.tsx";

export function Batch({ site, file }: { readonly site: Where["site"]; readonly file: BatchFile }): JSX.Element {
  const { batch } = file;
  const from = addressOf({ kind: "batch", id: batch.id }) ?? "";
  const page = batchPage(site.shown, file);
  const where = { site, from };
  const about = [
    { kind: "batch", id: batch.id },
    { kind: "entry", id: batch.entry },
  ] as const;
  return (
    <Page
      site={site}
      path={from}
      kind="batch"
      title={`Batch ${batch.id}`}
      description={`Batch ${batch.id} of ${page.adhesive?.title ?? batch.adhesive}, ${dateWords(batch.day)}: ${file.verdict}.`}
    >
      <Head page={page} {...where} />
      <BatchVerdictBox file={file} {...where} />
      <ChangesOf
        about={[about[0], ...file.pieces.map(({ piece }) => ({ kind: "piece", id: piece.id }) as const)]}
        {...where}
      />
      <Section id="mix" title="The mix">
        <div class="pair">
          <ComponentTable page={page} {...where} />
          <RatioFigure file={file} page={page} />
        </div>
        <Facts rows={page.mix} />
      </Section>
      <div class="pair">
        <Section id="climate" title="Shop and wood">
          <Facts rows={page.climate} />
        </Section>
        <Section id="times" title="Working life">
          <Facts rows={page.times} />
        </Section>
      </div>
      <GlueUp page={page} />
      <BatchPieces page={page} {...where} />
      <Section id="joints" title="Joints it went into">
        <BatchJoints page={page} {...where} />
      </Section>
      <Section id="reasons" title="Every check and its source">
        <Findings {...where} findings={file.findings.map((one) => toldFinding(site.shown.say, one))} about={about} />
      </Section>
    </Page>
  );
}

function GlueUp({ page }: { readonly page: BatchPage }): JSX.Element | null {
  return page.glueUp.length === 0 ? null : (
    <Section id="glue-up" title="The glue-up">
      <Facts rows={page.glueUp} />
    </Section>
  );
}

function Head({ page, site, from }: Where & { readonly page: BatchPage }): JSX.Element {
  const { batch } = page.file;
  return (
    <Title
      place={
        <To site={site} from={from} to={{ kind: "entry", id: batch.entry }}>
          {dateWords(batch.day)}, {page.entry?.title}
        </To>
      }
      title={`Batch ${batch.id}`}
    >
      <p class="title__lead">
        {page.adhesive?.title ?? batch.adhesive}
        {byDefault(site.shown, batch, "adhesive")}
        {page.people.length === 0 ? "" : `. At work that day: ${listed(page.people)}`}.
      </p>
      <Sealed site={site} entries={entriesOf(batch)} />
    </Title>
  );
}

/** The verdict, and in one line each what decided it. */
export function BatchVerdictBox({ file, site, from }: Where & { readonly file: BatchFile }): JSX.Element {
  const { rejection } = file;
  // Told below with its day, which leads to the entry.
  const reasons = deciding(file.findings).filter(
    ({ rule }) => rejection === undefined || rule !== "builders-rejection",
  );
  return (
    <div class={`verdict verdict--${file.recalls.length > 0 ? "recalled" : file.verdict}`}>
      <p class="verdict__mark">
        <BatchMark file={file} />
      </p>
      <div class="verdict__body">
        <p>{BATCH_MEANS[file.verdict]}</p>
        {file.batch.discarded === undefined ? null : <p>Thrown away: {ended(file.batch.discarded)}</p>}
        {reasons.length === 0 ? null : (
          <ul>
            {reasons.map((finding) => (
              <li>{site.shown.say(finding)}</li>
            ))}
          </ul>
        )}
        {rejection === undefined ? null : (
          <p>
            Rejected by the builder on{" "}
            <To site={site} from={from} to={{ kind: "entry", id: rejection.entry }}>
              {dateWords(rejection.day)}
            </To>
            : {ended(rejection.why)}
          </p>
        )}
        {file.recalls.map((recall) => (
          <p>
            Lot <Id site={site} from={from} kind="lot" id={recall.lot} /> was recalled on{" "}
            <To site={site} from={from} to={{ kind: "entry", id: recall.entry }}>
              {dateWords(recall.day)}
            </To>
            . Joints that hold it are quarantined.
          </p>
        ))}
        <LookHere file={file} site={site} />
      </div>
    </div>
  );
}

/** What changes no verdict and is worth a look: whoever reads the verdict alone has seen it. A recall is told above. */
function LookHere({ file, site }: { readonly file: BatchFile; readonly site: Where["site"] }): JSX.Element | null {
  const cautions = file.findings.filter(({ severity, rule }) => severity === "caution" && rule !== "lot-recalled");
  if (cautions.length === 0) return null;
  return (
    <>
      <p>Look here all the same:</p>
      <ul>
        {cautions.map((finding) => (
          <li>{site.shown.say(finding)}</li>
        ))}
      </ul>
    </>
  );
}

function ComponentTable({ page, site, from }: Where & { readonly page: BatchPage }): JSX.Element {
  return (
    <ListTable
      caption={`Components of batch ${page.file.batch.id}`}
      heads={["Part", { word: "Amount", number: true }, "Lot", "Keeps"]}
    >
      {page.components.map(({ part, amount, lot, keeps, usual }) => (
        <tr>
          <th scope="row">{PART_WORDS[part]}</th>
          <td class="number">{amount}</td>
          <td>
            {part === "water" ? (
              ""
            ) : lot === undefined ? (
              "not noted, or not shown"
            ) : (
              <>
                <Id site={site} from={from} kind="lot" id={lot.id} />
                {lot.number === undefined ? "" : ` no. ${lot.number}`}
                {usual}
              </>
            )}
          </td>
          <td>{keeps}</td>
        </tr>
      ))}
      {page.timber.map((lot) => (
        <tr>
          <th scope="row">
            {lot.material === "plywood" ? "Plywood" : "Timber"}
            {lot.species === undefined ? "" : `, ${lot.species}`}
          </th>
          <td />
          <td>
            <Id site={site} from={from} kind="lot" id={lot.id} /> {lot.title}
          </td>
          <td />
        </tr>
      ))}
    </ListTable>
  );
}

function BatchPieces({ page, site, from }: Where & { readonly page: BatchPage }): JSX.Element {
  return (
    <Section id="pieces" title="Test pieces">
      {page.counting.length === 0 ? (
        <None>No test piece counts for this batch.</None>
      ) : (
        page.counting.map((file) => <Piece file={file} site={site} from={from} />)
      )}
      {page.forTrials.length === 0 ? null : (
        <h3 class="pieces__trial">Made for a trial; they do not count for the batch</h3>
      )}
      <TrialPieces pieces={page.forTrials} batch={page.file.batch.id} site={site} from={from} />
    </Section>
  );
}

function BatchJoints({ page, site, from }: Where & { readonly page: BatchPage }): JSX.Element {
  if (page.joints.length === 0) return <None>It went into no joint.</None>;
  return (
    <ListTable
      caption="Joints glued with this batch"
      heads={["Joint", "What it joins", "Assembly", "State", "This batch"]}
    >
      {page.joints.map(({ file, now }) => (
        <tr>
          <td>
            <Id site={site} from={from} kind="joint" id={file.joint.id} />
          </td>
          <td>{file.joint.title}</td>
          <td>
            <To site={site} from={from} to={{ kind: "assembly", id: file.joint.assembly }}>
              {site.shown.record.assemblies.get(file.joint.assembly)?.title}
            </To>
          </td>
          <td>
            <Mark of={file.state} />
          </td>
          <td>{now ? "in it now" : "taken out"}</td>
        </tr>
      ))}
    </ListTable>
  );
}
