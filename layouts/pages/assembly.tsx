import type { JSX } from "preact";
import { assemblyView } from "../../src/pages/story/assembly.ts";
import type { AssemblyView } from "../../src/pages/story/assembly.ts";
import { relative } from "../../src/pages/address.ts";
import { pictured, spreadOver } from "../../src/pages/story/pictured.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";
import { hoursWords } from "../../src/words/durations.ts";
import { counted } from "../../src/words/lists.ts";
import { HistoryLink } from "../archive/history-link.tsx";
import { AssemblyMatters } from "./assembly-matters.tsx";
import { CHART_SCRIPTS, ChartFigure } from "../parts/chart.tsx";
import { daysPath, ListedHere } from "../day/days.tsx";
import { CoatsOn } from "../evidence/materials/coats.tsx";
import { FittedOn } from "../evidence/materials/fitted.tsx";
import { Plate } from "../parts/drawing.tsx";
import { HoursBar, JointCounts } from "../parts/glances.tsx";
import { HoldPointCard } from "../parts/hold-point.tsx";
import { JointTable } from "../parts/joint-table.tsx";
import { To } from "../shell/link.tsx";
import { Log } from "../parts/log.tsx";
import { Page, Prose } from "../shell/page.tsx";
import { Strip } from "../parts/strip.tsx";
import { Timeline } from "../parts/timeline.tsx";

interface PartProps {
  readonly site: Site;
  readonly from: string;
  readonly view: AssemblyView;
}

export function AssemblyPage({ site, id }: { readonly site: Site; readonly id: string }): JSX.Element | null {
  const view = assemblyView(site.shown, id);
  if (view === undefined) return null;
  const from = `assembly/${id}.html`;
  const { assembly, hours } = view;
  const part = { site, from, view };
  return (
    <Page
      site={site}
      path={from}
      kind="assembly"
      title={assembly.title}
      description={`${assembly.title}: its drawing, its joints and their proof, and all that was done on it.`}
      scripts={hours === undefined ? [] : CHART_SCRIPTS}
    >
      <Opening {...part} />
      <HistoryLink site={site} from={from} of={{ kind: "assembly", id }} />
      <Plate site={site} from={from} assembly={assembly} joints={view.joints} />
      <Joints {...part} />
      <Holds {...part} />
      <Children {...part} />
      <Course {...part} />
      <CoatsOn site={site} from={from} id={id} />
      <FittedOn site={site} from={from} id={id} />
      <AssemblyMatters {...part} />
      <Days {...part} />
    </Page>
  );
}

function Opening({ site, from, view }: PartProps): JSX.Element {
  const { assembly, above, minutes, planned } = view;
  const first = view.told[0]?.entry.day;
  return (
    <div class="parthead">
      <div class="title">
        <p class="title__place">
          <a href={relative(from, "assemblies.html")}>Assemblies</a>
          {above.map(({ id, title }) => (
            <>
              {" "}
              /{" "}
              <To site={site} from={from} to={{ kind: "assembly", id }}>
                {title}
              </To>
            </>
          ))}
        </p>
        <h1>{assembly.title}</h1>
        {assembly.body.map((passage) => (
          <Prose site={site} html={site.prose(passage, from)} />
        ))}
      </div>
      <dl class="facts">
        <dt>Hours</dt>
        <dd>
          <HoursBar minutes={minutes} planned={planned} />
        </dd>
        <dt>Joints</dt>
        <dd>
          <JointCounts counts={view.file.jointCounts} />
        </dd>
        {first === undefined ? null : (
          <>
            <dt>Begun</dt>
            <dd>{dateWords(first)}</dd>
          </>
        )}
        {assembly.finished === undefined ? null : (
          <>
            <dt>Finished</dt>
            <dd>{dateWords(assembly.finished)}</dd>
          </>
        )}
        <dt>Tag</dt>
        <dd>{assembly.id}</dd>
      </dl>
    </div>
  );
}

function Joints({ site, from, view: { joints, children } }: PartProps): JSX.Element | null {
  if (joints.length === 0) return null;
  return (
    <section class="section">
      <h2>Joints</h2>
      {children.length === 0 ? null : <p class="quiet">Those of the assemblies within stand on their own pages.</p>}
      <JointTable site={site} from={from} joints={joints} />
    </section>
  );
}

function Holds({ site, from, view: { next, holdPoints } }: PartProps): JSX.Element | null {
  const others = holdPoints.filter(({ holdPoint }) => holdPoint.id !== next?.holdPoint.id);
  if (next === undefined && others.length === 0) return null;
  return (
    <section class="section">
      <h2>{next === undefined ? "Hold points" : "Before its next hold point"}</h2>
      {next === undefined ? null : <HoldPointCard site={site} from={from} file={next} most={3} />}
      {others.length === 0 ? null : (
        <ul class="bare next__later">
          {others.map((file) => (
            <li>
              <HoldPointCard site={site} from={from} file={file} most={2} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Children({ site, from, view: { children } }: PartProps): JSX.Element | null {
  if (children.length === 0) return null;
  const files = site.shown.evidence.assemblies;
  return (
    <section class="section">
      <h2>Within it</h2>
      <ul class="bare within">
        {children.map(({ id, title }) => {
          const counts = files.get(id)?.jointCounts;
          return (
            <li>
              <p class="within__title">
                <To site={site} from={from} to={{ kind: "assembly", id }}>
                  {title}
                </To>
              </p>
              {counts === undefined ? null : <JointCounts counts={counts} />}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** How it grew: photographs, the line of time, the hours. */
function Course({ site, from, view }: PartProps): JSX.Element | null {
  const { timeline, hours, told, assembly } = view;
  if (timeline === undefined || hours === undefined)
    return (
      <section class="section">
        <h2>How it went</h2>
        <p>Nothing has been written of it yet.</p>
      </section>
    );
  const grew = spreadOver(pictured(told.map(({ entry }) => entry)), 6);
  const last = told[told.length - 1]?.entry.day ?? "";
  const says = `${counted(told.length, "entry", "entries")} from ${dateWords(told[0]?.entry.day ?? last)} to ${dateWords(last)}, ${hoursWords(view.minutes)} in all. Posts on the line are the hours of each day; marks above it are batches glued, what was put on, pieces broken, departures, open items and inspections. The entries of those days tell of each.`;
  return (
    <section class="section">
      <h2>How it went</h2>
      <p class="quiet" id="course">
        {says}
      </p>
      {grew.length < 2 ? null : <Strip site={site} from={from} pictures={grew} />}
      <Timeline from={from} inputs={timeline} title={`${assembly.title} on one line of time`} saidBy="course" />
      <ChartFigure chart={hours} />
    </section>
  );
}

function Days({ site, from, view: { assembly, told, listed, lately } }: PartProps): JSX.Element | null {
  if (told.length === 0) return null;
  const all = <a href={relative(from, daysPath(assembly.id))}>All {counted(listed.length, "day")}</a>;
  return (
    <section class="section" id="days">
      <h2>{lately.length < listed.length ? "The last days" : "Day by day"}</h2>
      {lately.length < listed.length ? (
        <p class="onward">
          {all}, from {dateWords(listed[0]?.entry.day ?? "")}
        </p>
      ) : null}
      <ListedHere from={from} told={told} listed={listed} />
      <Log site={site} from={from} told={lately} photos />
    </section>
  );
}
