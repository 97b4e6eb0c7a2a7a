import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { overview, type BatchRow, type Overview as OverviewFacts } from "../../src/pages/evidence/overview.ts";
import { BATCH_MEANS, JOINT_MEANS } from "../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { signedPercent } from "../../src/words/numbers.ts";
import { BatchMark, Mark, Shape, markClass, type Marked } from "../parts/mark.tsx";
import { Page } from "../shell/page.tsx";
import { LIST_SCRIPTS } from "./lists.tsx";
import { To } from "../shell/link.tsx";
import { DayCell, Id, ListTable, None, Section, Telling, Title, type Where } from "./parts.tsx";
import { Waiting } from "./waiting.tsx";

export function Overview({ site }: Pick<Where, "site">): JSX.Element {
  const from = "evidence.html";
  const facts = overview(site.shown);
  const where = { site, from };
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Evidence"
      scripts={LIST_SCRIPTS}
      description="What the record proves of each joint and batch, and what it does not."
    >
      <Title place={`As of ${dateWords(site.shown.record.day)}`} title="Evidence">
        <p class="title__lead">
          What the record shows of the glue lines, what it does not, and what stands in the way of each hold point.
        </p>
      </Title>
      <div class="overview">
        <Tally title="Joints" counts={facts.joints} means={JOINT_MEANS} />
        <Tally title="Batches" counts={facts.batchVerdicts} means={BATCH_MEANS} />
        <InTheWay facts={facts} {...where} />
      </div>
      <Ways from={from} />
      <Section id="batches" title="Batches">
        {facts.batches.length === 0 ? <None>No batches.</None> : <BatchTable rows={facts.batches} {...where} />}
      </Section>
      <Waiting {...where} />
      <Section id="lots" title="Lots">
        <LotTable facts={facts} {...where} />
      </Section>
      <Section id="trials" title="Trials">
        <Trials facts={facts} {...where} />
      </Section>
    </Page>
  );
}

const WAYS: readonly (readonly [to: string, words: string])[] = [
  ["charts.html", "Statistics"],
  ["climate.html", "Climate of the workshop"],
  ["stock.html", "Stock"],
  ["measurements.html", "Measurements"],
  ["weight.html", "Weight"],
  ["credit.html", "Major portion"],
  ["appendix.html", "Appendix for paper or PDF"],
  ["about.html", "Rules and their sources"],
];

function Ways({ from }: Pick<Where, "from">): JSX.Element {
  return (
    <nav class="ways" aria-label="More evidence">
      <ul class="bare">
        {WAYS.map(([to, words]) => (
          <li>
            <a href={relative(from, to)}>{words}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function Trials({ facts, ...where }: Where & { readonly facts: OverviewFacts }): JSX.Element {
  return facts.trials.length === 0 ? (
    <None>No trials.</None>
  ) : (
    <ul class="lines bare">
      {facts.trials.map((trial) => (
        <li>
          <To {...where} to={{ kind: "trial", id: trial.id }}>
            {trial.title}
          </To>
          : {trial.question}
        </li>
      ))}
    </ul>
  );
}

interface TallyProps<T extends Marked> {
  readonly title: string;
  readonly counts: readonly (readonly [T, number])[];
  readonly means: { readonly [of in T]: string };
}

function Tally<T extends Marked>({ title, counts, means }: TallyProps<T>): JSX.Element {
  return (
    <section class="tally" aria-label={`${title} by verdict`}>
      <h2 class="tally__title">{title}</h2>
      <dl>
        {counts.map(([of, count]) => (
          <div class={count === 0 ? "tally__row tally__row--none" : "tally__row"}>
            <dt>
              <span class={count === 0 ? "mark" : markClass(of)}>
                <Shape of={of} />
                <span class="mark__word">{of}</span>
              </span>
              <span class="tally__means">{means[of]}</span>
            </dt>
            <dd class="figures">{count}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function InTheWay({ facts, site, from }: Where & { readonly facts: OverviewFacts }): JSX.Element {
  return (
    <section class="way" aria-label="What stands in the way of hold points">
      <h2 class="tally__title">Hold points</h2>
      {facts.holdPoints.length === 0 ? <None>The record names no hold points.</None> : null}
      <ul class="bare">
        {facts.holdPoints.map(({ file, blocking, toDo }) => (
          <li class="way__point">
            <p>
              <To site={site} from={from} to={{ kind: "hold point", id: file.holdPoint.id }}>
                {file.holdPoint.title}
              </To>{" "}
              <Mark of={file.state} />
            </p>
            {blocking.length === 0 ? null : (
              <ul class="way__needs">
                {blocking.slice(0, 3).map((need) => (
                  <li>
                    <Telling site={site} from={from} about={need.about} sentence={need.sentence} />
                  </li>
                ))}
                {blocking.length > 3 ? <li>and {counted(blocking.length - 3, "more thing")} to be put right</li> : null}
              </ul>
            )}
            {toDo === 0 || file.state === "passed" ? null : (
              <p class="small quiet">{counted(toDo, "thing")} still to be done</p>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function BatchTable({
  rows,
  site,
  from,
  list = true,
}: Where & { readonly rows: readonly BatchRow[]; readonly list?: boolean }): JSX.Element {
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <ListTable
      list={list}
      caption="Batches, the newest first"
      heads={["Batch", "Day", "Verdict", "Because", number("Off ratio"), number("Pieces passed"), "Joints"]}
    >
      {rows.map(({ file, passed, counting, reasons }) => (
        <tr>
          <td>
            <Id site={site} from={from} kind="batch" id={file.batch.id} />
          </td>
          <DayCell day={file.batch.day} />
          <td>
            <BatchMark file={file} />
          </td>
          <td>
            {reasons[0] ?? ""}
            {reasons.length > 1 ? ` And ${counted(reasons.length - 1, "more reason")}.` : ""}
          </td>
          <td class="number" data-sort={file.ratio?.error}>
            {file.ratio === undefined ? "" : signedPercent(file.ratio.error)}
          </td>
          <td class="number" data-sort={passed}>
            {counting === 0 ? "none made" : `${passed} of ${counting}`}
          </td>
          <td>
            {file.batch.joints.map((id, at) => (
              <>
                {at > 0 ? ", " : ""}
                <Id site={site} from={from} kind="joint" id={id} />
              </>
            ))}
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

export function LotTable({
  facts,
  site,
  from,
  list = true,
}: Where & { readonly facts: OverviewFacts; readonly list?: boolean }): JSX.Element {
  if (facts.lots.length === 0) return <None>No lots.</None>;
  return (
    <ListTable
      list={list}
      caption="Lots, and how far each went"
      heads={[
        "Lot",
        "What",
        "Received",
        { word: "Batches", number: true },
        { word: "Joints now", number: true },
        "Notice",
      ]}
    >
      {facts.lots.map(({ lot, batches, joints, recalls }) => (
        <tr>
          <td>
            <Id site={site} from={from} kind="lot" id={lot.id} />
          </td>
          <td>{lot.title}</td>
          <DayCell day={lot.received} />
          <td class="number">{batches.length}</td>
          <td class="number">{joints.length}</td>
          <td>{recalls.length === 0 ? "" : <strong class="attention">recalled</strong>}</td>
        </tr>
      ))}
    </ListTable>
  );
}
