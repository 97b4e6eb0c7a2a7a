import type { JSX } from "preact";
import type { Glance } from "../../src/pages/story/home.ts";
import { plannedWithin } from "../../src/pages/story/planned.ts";
import type { Site } from "../../src/editions/shown.ts";
import { hoursRounded } from "../../src/words/durations.ts";
import { STATES } from "./drawing.tsx";
import { To } from "../shell/link.tsx";
import { Mark, markClass, Shape } from "./mark.tsx";

interface GlancesProps {
  readonly site: Site;
  readonly from: string;
  readonly glances: readonly Glance[];
}

/** Assemblies as lines: hours against plan, joints by state, the next hold point. */
export function Glances({ site, from, glances }: GlancesProps): JSX.Element {
  return (
    <ul class="glances">
      {glances.map(({ assembly, depth, file, minutes, next }) => (
        <li class={`glance depth-${Math.min(depth, 4)}`}>
          <p class="glance__title">
            <To site={site} from={from} to={{ kind: "assembly", id: assembly.id }}>
              {assembly.title}
            </To>
          </p>
          <p class="glance__hours">
            <HoursBar minutes={minutes} planned={plannedWithin(site.shown, assembly.id)} />
          </p>
          <JointCounts counts={file.jointCounts} />
          <p class="glance__next">
            {next === undefined ? null : (
              <>
                <span class="unseen">Next hold point: </span>
                <To site={site} from={from} to={{ kind: "hold point", id: next.holdPoint.id }} />{" "}
                <Mark of={next.state} />
              </>
            )}
            {next === undefined && assembly.finished !== undefined ? <span class="quiet">finished</span> : null}
          </p>
        </li>
      ))}
    </ul>
  );
}

/** Hours as a length beside its words; a gap in it stands at what was planned where that is passed. */
export function HoursBar({
  minutes,
  planned,
}: {
  readonly minutes: number;
  readonly planned: number | undefined;
}): JSX.Element {
  if (planned === undefined) return <span class="hoursbar">{hoursRounded(minutes)}</span>;
  const most = Math.max(minutes, planned, 1);
  const share = (value: number): number => Math.round((value / most) * 1000) / 10;
  return (
    <span class="hoursbar">
      {hoursRounded(minutes)} of {hoursRounded(planned)}
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
  if (shown.length === 0) return <p class="counts quiet">no joints</p>;
  return (
    <ul class="counts">
      {shown.map((state) => (
        <li class={markClass(state)}>
          <Shape of={state} />
          <span>
            {counts[state]} {state}
          </span>
        </li>
      ))}
    </ul>
  );
}
