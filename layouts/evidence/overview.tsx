import type { JSX } from "preact";
import { groupAnchor, relative } from "../../src/pages/address.ts";
import { overview, type Overview as OverviewFacts } from "../../src/pages/evidence/overview.ts";
import { BATCH_MEANS, JOINT_MEANS } from "../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { Mark, Shape, markClass, type Marked } from "../parts/mark.tsx";
import { Page } from "../shell/page.tsx";
import { AssemblyLink, LIST_SCRIPTS } from "./lists/lists.tsx";
import { To } from "../shell/link.tsx";
import { Id, None, Section, Telling, Title, type Where } from "./parts.tsx";
import { BatchTable, LotTable } from "./lists/batches-and-lots.tsx";
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
        <Tally
          title="Joints"
          counts={facts.joints}
          means={JOINT_MEANS}
          to={(state) => `${relative(from, "joints.html")}#${groupAnchor("joints", state)}`}
        />
        <Tally
          title="Batches"
          counts={facts.batchVerdicts}
          means={BATCH_MEANS}
          to={(verdict) => `#${groupAnchor("batches", verdict)}`}
        />
        <InTheWay facts={facts} {...where} />
      </div>
      <Ways from={from} />
      <Section id="every-joint" title="Every joint">
        <EveryJoint facts={facts} {...where} />
      </Section>
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
  ["joints.html", "Joints, the worst first"],
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
  /** The list of those that are counted. */
  readonly to: (of: T) => string;
}

function Tally<T extends Marked>({ title, counts, means, to }: TallyProps<T>): JSX.Element {
  return (
    <section class="tally" aria-label={`${title} by verdict`}>
      <h2 class="tally__title">{title}</h2>
      <dl>
        {counts.map(([of, count]) => (
          <div class={count === 0 ? "tally__row tally__row--none" : "tally__row"}>
            <dt>
              {count === 0 ? (
                <span class="mark">
                  <Shape of={of} />
                  <span class="mark__word">{of}</span>
                </span>
              ) : (
                <a class={markClass(of)} href={to(of)}>
                  <Shape of={of} />
                  <span class="mark__word">{of}</span>
                </a>
              )}
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

/** Ids by assembly: the shortest way to the page of a joint that nothing else leads to. */
function EveryJoint({ facts, site, from }: Where & { readonly facts: OverviewFacts }): JSX.Element {
  if (facts.jointsOf.length === 0) return <None>The record names no joints.</None>;
  return (
    <dl class="facts everyjoint">
      {facts.jointsOf.map(({ assembly, joints }) => (
        <>
          <dt>
            <AssemblyLink site={site} from={from} id={assembly} />
          </dt>
          <dd>
            {joints.map(({ joint }) => (
              <>
                <Id site={site} from={from} kind="joint" id={joint.id} />{" "}
              </>
            ))}
          </dd>
        </>
      ))}
    </dl>
  );
}
