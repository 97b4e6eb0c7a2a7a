import type { JSX } from "preact";
import { fanDrawing, type FanInput } from "../../src/charts/fan.ts";
import { NARROW, WIDE, type Room } from "../../src/charts/frame.ts";
import { relative } from "../../src/pages/address.ts";
import { dayAt, inHours } from "../../src/pages/forecast/chart.ts";
import { forecastView, forecastWords, type Finish, type Forecast } from "../../src/pages/forecast/forecast.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateShort } from "../../src/words/dates.ts";
import { hoursRounded } from "../../src/words/durations.ts";
import { listed } from "../../src/words/lists.ts";
import { grouped, percent } from "../../src/words/numbers.ts";
import { cumulative } from "../../src/reckoning/hours/hours.ts";
import { Axes } from "../parts/axes.tsx";
import { To } from "../shell/link.tsx";
import { LookBacks } from "../parts/look-backs.tsx";
import { Page } from "../shell/page.tsx";

const PATH = "forecast.html";

export function ForecastPage({ site }: { readonly site: Site }): JSX.Element {
  const view = forecastView(site.shown);
  const { forecast, lookBacks } = view;
  return (
    <Page
      site={site}
      path={PATH}
      kind="hours"
      title="Forecast"
      description="When the planned work may be done, by the pace so far, with what that takes for granted."
    >
      <div class="title">
        <p class="title__place">
          <a href={relative(PATH, "hours.html")}>Hours</a>
        </p>
        <h1>Forecast</h1>
        <p class="title__lead">
          {view.forecast === undefined
            ? forecastWords(view)
            : `When the planned work may be done, by the pace so far. No promise, and no aim to hurry for. ${view.forecast.leftOut}`}
        </p>
      </div>
      {forecast === undefined ? null : <Told site={site} forecast={forecast} />}
      <LookBacks looks={lookBacks} />
    </Page>
  );
}

function Told({ site, forecast }: { readonly site: Site; readonly forecast: Forecast }): JSX.Element {
  return (
    <>
      <Fan site={site} forecast={forecast} />
      <section class="section">
        <h2>What that takes for granted</h2>
        <ul class="measure">
          {forecast.assumptions.map((sentence) => (
            <li>{sentence}</li>
          ))}
        </ul>
      </section>
      <Parts site={site} forecast={forecast} />
    </>
  );
}

const finishWords = ({ share, words }: Finish): string => `${percent(share)}: ${words}`;

function inputOf(site: Site, { plan, work, ahead, finish }: Forecast): FanInput {
  const sums = cumulative(work).map(({ day, sum }) => [dayAt(day), inHours(sum)] as const);
  const done = sums[sums.length - 1]?.[1] ?? 0;
  return {
    past: [[dayAt(site.shown.record.aircraft.start), 0], ...sums, [dayAt(site.shown.record.day), done]],
    ahead: ahead.map(({ day, wide, narrow, middle }) => ({
      day: dayAt(day),
      bands: [wide, narrow].map(([low, high]) => [inHours(low), inHours(high)] as const),
      middle: inHours(middle),
    })),
    goal: done + inHours(plan.left),
    marks: finish.flatMap(({ day }) => (day === undefined ? [] : [dayAt(day)])),
  };
}

function Fan({ site, forecast }: { readonly site: Site; readonly forecast: Forecast }): JSX.Element {
  const { finish, plan } = forecast;
  const left = `${hoursRounded(plan.left)} are left by the plan, as corrected.`;
  const says = `${left} The chances that they are done by then: ${listed(finish.map(finishWords))}.`;
  const input = inputOf(site, forecast);
  return (
    <figure class="chart fan" id="fan">
      <figcaption>
        <h2>Hours on what is planned, and what may come</h2>
        <p>{left}</p>
      </figcaption>
      <dl class="fan__dates">
        {finish.map(({ share, day, words }) => (
          <div>
            <dt>{percent(share)} likely done by</dt>
            <dd>{day === undefined ? words : <time dateTime={day}>{words}</time>}</dd>
          </div>
        ))}
      </dl>
      <div class="chart__drawing">
        <FanSvg input={input} room={WIDE} part="wide" says={says} />
        <FanSvg input={input} room={NARROW} part="narrow" says={says} />
      </div>
      <p class="small quiet">
        The line is what was worked; the dark band holds what comes with a chance of 80 %, the light one with 95 %, the
        broken line is as likely too high as too low. The level is all that is planned, as corrected; its ticks are the
        dates above.
      </p>
      <FanTable forecast={forecast} />
    </figure>
  );
}

interface SvgProps {
  readonly input: FanInput;
  readonly room: Room;
  readonly part: "wide" | "narrow";
  readonly says: string;
}

function FanSvg({ input, room, part, says }: SvgProps): JSX.Element {
  const { frame, past, bands, middle, goal, now, marks } = fanDrawing(input, { ...room, names: 8 });
  return (
    <svg
      class={`chart__${part}`}
      viewBox={`0 0 ${room.width} ${room.height}`}
      role="img"
      aria-labelledby={`fan-${part}-title fan-${part}-desc`}
    >
      <title id={`fan-${part}-title`}>Hours on what is planned, and what may come</title>
      <desc id={`fan-${part}-desc`}>{says}</desc>
      <Axes frame={frame} unit="hours" />
      {bands.map((band, at) => (
        <path class={`fan__band fan__band--${at + 1}`} d={band} />
      ))}
      <path class="fan__goal" d={`M${frame.left} ${goal}H${frame.right}`} />
      <path class="fan__now" d={`M${now} ${frame.top}V${frame.bottom}`} />
      <path class="fan__past" d={past} />
      <path class="fan__middle" d={middle} />
      {marks.map((x) => (
        <path class="fan__mark" d={`M${x} ${goal - 6}v12`} />
      ))}
    </svg>
  );
}

/** A row for every fourth week is enough to read off; the fan has all. */
function FanTable({ forecast }: { readonly forecast: Forecast }): JSX.Element {
  const rows = forecast.ahead.filter((_, at) => at % 4 === 3 || at === forecast.ahead.length - 1);
  const hours = (minutes: number): string => grouped(minutes / 60, 0);
  return (
    <details class="chart__table">
      <summary>These figures as a table</summary>
      <section class="scroll" tabIndex={0} aria-label="The forecast, as a table">
        <table class="data">
          <caption>Hours worked in all on what is planned</caption>
          <thead>
            <tr>
              <th scope="col">By</th>
              <th scope="col" class="number">
                Chance of 95 %
              </th>
              <th scope="col" class="number">
                Chance of 80 %
              </th>
              <th scope="col" class="number">
                Middle
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ day, wide, narrow, middle }) => (
              <tr>
                <th scope="row">{dateShort(day)}</th>
                <td class="number">
                  {hours(wide[0])} to {hours(wide[1])}
                </td>
                <td class="number">
                  {hours(narrow[0])} to {hours(narrow[1])}
                </td>
                <td class="number">{hours(middle)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}

function Parts({ site, forecast }: { readonly site: Site; readonly forecast: Forecast }): JSX.Element {
  return (
    <section class="section">
      <h2>Part by part</h2>
      <section class="scroll" tabIndex={0} aria-label="What is left, part by part">
        <table class="data">
          <caption>Hours on each part alone, without the parts within it</caption>
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col" class="number">
                Planned
              </th>
              <th scope="col" class="number">
                Worked
              </th>
              <th scope="col" class="number">
                Left, as corrected
              </th>
            </tr>
          </thead>
          <tbody>
            {forecast.plan.parts.map(({ id, planned, worked, finished, left }) => (
              <tr>
                <th scope="row">
                  <To site={site} from={PATH} to={{ kind: "assembly", id }}>
                    {site.shown.record.assemblies.get(id)?.title ?? id}
                  </To>
                </th>
                <td class="number">{hoursRounded(planned)}</td>
                <td class="number">{hoursRounded(worked)}</td>
                <td class="number">{finished ? "finished" : hoursRounded(left)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
