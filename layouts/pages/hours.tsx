import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { forecastView, forecastWords } from "../../src/pages/forecast/forecast.ts";
import { hoursView } from "../../src/pages/forecast/hours.ts";
import type { Cut, HoursView } from "../../src/pages/forecast/hours.ts";
import { plannedWithin } from "../../src/pages/story/planned.ts";
import type { Site } from "../../src/editions/shown.ts";
import { storyOf } from "../../src/pages/story/story.ts";
import { dateWords, monthWords } from "../../src/words/dates.ts";
import { hoursRounded, hoursWords } from "../../src/words/durations.ts";
import { percent } from "../../src/words/numbers.ts";
import { total } from "../../src/reckoning/hours/hours.ts";
import { Earlier } from "./earlier-hours.tsx";
import { CHART_SCRIPTS, ChartFigure } from "../parts/chart.tsx";
import { HoursBar } from "../parts/glances.tsx";
import { To } from "../shell/link.tsx";
import { Page } from "../shell/page.tsx";

const PATH = "hours.html";

export function HoursPage({ site }: { readonly site: Site }): JSX.Element {
  const view = hoursView(site.shown);
  const { pace } = view;
  const ahead = forecastView(site.shown);
  return (
    <Page
      site={site}
      path={PATH}
      kind="hours"
      title="Hours"
      description={`${hoursRounded(view.total)} since ${dateWords(view.since)}: by assembly, person and task, week by week.`}
      scripts={CHART_SCRIPTS}
    >
      <div class="title">
        <h1>Hours</h1>
        <p class="title__lead">
          {hoursWords(view.total)} worked since {dateWords(view.since)}
          {view.spanned === 0 ? "" : `, of which ${hoursRounded(view.spanned)} are known by month or year alone`}. Over
          the last {pace.weeks} weeks {hoursRounded(pace.recent)} a week
          {pace.target === undefined ? "" : `, where ${hoursRounded(pace.target)} are planned`}.
        </p>
        <p class="measure">
          {forecastWords(ahead)}{" "}
          <a href={relative(PATH, "forecast.html")}>The forecast, and what it takes for granted</a>
        </p>
      </div>
      <ChartFigure chart={view.cumulative} heading="h2" />
      <ChartFigure chart={view.weekly} heading="h2" />
      <ByAssembly site={site} view={view} />
      <div class="hours__two">
        <ByCut title="By person" view={view} cuts={view.people} chart={view.byPersonChart} word="Person" />
        <ByCut title="By task" view={view} cuts={view.tasks} chart={view.byTaskChart} word="Task" />
      </div>
      <p>
        <a href={relative(PATH, "credit.html")}>Who did which tasks, which is another ledger than hours</a>
      </p>
      <Earlier site={site} earlier={view.earlier} from={PATH} />
      <Months view={view} />
    </Page>
  );
}

function ByAssembly({ site, view }: { readonly site: Site; readonly view: HoursView }): JSX.Element {
  const { tree, workOf } = storyOf(site.shown);
  return (
    <section class="section">
      <ChartFigure chart={view.byAssemblyChart} heading="h2" />
      <table class="cut">
        <caption>Hours on each assembly, those within it included</caption>
        <thead>
          <tr>
            <th scope="col">Assembly</th>
            <th scope="col">Worked, of planned</th>
            <th scope="col" class="number">
              Share of all
            </th>
          </tr>
        </thead>
        <tbody>
          {tree.map(({ assembly, depth }) => {
            const minutes = total(workOf.get(assembly.id) ?? []);
            return (
              <tr>
                <th scope="row" class={`depth-${Math.min(depth, 4)}`}>
                  <To site={site} from={PATH} to={{ kind: "assembly", id: assembly.id }}>
                    {assembly.title}
                  </To>
                </th>
                <td>
                  <HoursBar minutes={minutes} planned={plannedWithin(site.shown, assembly.id)} />
                </td>
                <td class="number">{view.total === 0 ? "" : percent(minutes / view.total)}</td>
              </tr>
            );
          })}
          {view.ofNone === 0 ? null : (
            <tr>
              <th scope="row" class="depth-0">
                On no assembly
              </th>
              <td>{hoursWords(view.ofNone)}</td>
              <td class="number">{percent(view.ofNone / view.total)}</td>
            </tr>
          )}
        </tbody>
      </table>
    </section>
  );
}

interface ByCutProps {
  readonly title: string;
  readonly word: string;
  readonly view: HoursView;
  readonly cuts: readonly Cut[];
  readonly chart: HoursView["byPersonChart"];
}

function ByCut({ title, word, view, cuts, chart }: ByCutProps): JSX.Element {
  return (
    <section class="section">
      <ChartFigure chart={chart} heading="h2" />
      <table class="narrow">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">{word}</th>
            <th scope="col" class="number">
              Hours
            </th>
            <th scope="col" class="number">
              Share
            </th>
          </tr>
        </thead>
        <tbody>
          {cuts.map(({ name, minutes }) => (
            <tr>
              <th scope="row">{name}</th>
              <td class="number">{hoursWords(minutes)}</td>
              <td class="number">{percent(minutes / view.total)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">All</th>
            <td class="number">{hoursWords(view.total)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

function Months({ view }: { readonly view: HoursView }): JSX.Element {
  return (
    <section class="section">
      <h2>Month by month</h2>
      <table class="narrow">
        <thead>
          <tr>
            <th scope="col">Month</th>
            <th scope="col" class="number">
              Hours
            </th>
            <th scope="col" class="number">
              To date
            </th>
          </tr>
        </thead>
        <tbody>
          {view.months.map(({ month, minutes, sum }) => (
            <tr>
              <th scope="row">{month.length === 4 ? `${month}, month not known` : monthWords(month)}</th>
              <td class="number">{hoursWords(minutes)}</td>
              <td class="number">{hoursWords(sum)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
