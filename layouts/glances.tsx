import type { JSX } from "preact";
import type { Glance } from "../src/pages/home.ts";
import type { Site } from "../src/pages/shown.ts";
import { hoursRounded } from "../src/pages/words.ts";
import { STATES } from "./drawing.tsx";
import { To } from "./link.tsx";
import { Mark, markClass, Shape } from "./mark.tsx";

interface GlancesProps {
  readonly site: Site;
  readonly from: string;
  readonly glances: readonly Glance[];
}

/** Assemblies as rows: hours against plan, joints by state, the next hold point. */
export function Glances({ site, from, glances }: GlancesProps): JSX.Element {
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label="Assemblies at a glance">
      <table class="glances">
        <thead><tr><th scope="col">Assembly</th><th scope="col">Hours</th><th scope="col">Joints</th><th scope="col">Next hold point</th></tr></thead>
        <tbody>
          {glances.map(({ assembly, depth, file, minutes, next }) => (
            <tr>
              <th scope="row" class={`depth-${Math.min(depth, 4)}`}><To site={site} from={from} to={{ kind: "assembly", id: assembly.id }}>{assembly.title}</To></th>
              <td><HoursBar minutes={minutes} planned={assembly.planned} /></td>
              <td><JointCounts counts={file.jointCounts} /></td>
              <td>{next === undefined ? <span class="quiet">{assembly.finished === undefined ? "none set" : "finished"}</span> : <><To site={site} from={from} to={{ kind: "hold point", id: next.holdPoint.id }} /> <Mark of={next.state} /></>}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Hours as a length beside its words; the tick stands at what was planned. */
export function HoursBar({ minutes, planned }: { readonly minutes: number; readonly planned: number | undefined }): JSX.Element {
  const words = planned === undefined ? hoursRounded(minutes) : `${hoursRounded(minutes)} of ${hoursRounded(planned)}`;
  if (planned === undefined) return <span class="hoursbar">{words}</span>;
  const most = Math.max(minutes, planned);
  const share = (value: number): number => Math.round((value / most) * 1000) / 10;
  return (
    <span class="hoursbar">
      {words}
      <svg viewBox="0 0 100 6" preserveAspectRatio="none" width="120" height="6" aria-hidden="true">
        <path class="hoursbar__plan" d="M0 3H100" />
        <path class="hoursbar__worked" d={`M0 3H${share(minutes)}`} />
        {minutes > planned ? <path class="hoursbar__tick" d={`M${share(planned)} 0V6`} /> : null}
      </svg>
    </span>
  );
}

export function JointCounts({ counts }: { readonly counts: Glance["file"]["jointCounts"] }): JSX.Element {
  const shown = STATES.filter((state) => counts[state] > 0);
  if (shown.length === 0) return <span class="quiet">none</span>;
  return <ul class="counts">{shown.map((state) => <li class={markClass(state)}><Shape of={state} /><span>{counts[state]} {state}</span></li>)}</ul>;
}
