/** How a part stands at the end of its history. */
import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { historyPath } from "../../src/pages/archive/history.ts";
import { HOLD_MEANS, JOINT_MEANS } from "../../src/pages/evidence/verdict-words.ts";
import { storyOf } from "../../src/pages/story/story.ts";
import type { HoldPointFile } from "../../src/evidence/types.ts";
import type { Ref } from "../../src/facts/types.ts";
import { hoursWords } from "../../src/words/durations.ts";
import { total } from "../../src/reckoning/hours/hours.ts";
import { Id, type Where } from "../evidence/parts.tsx";
import { Mark } from "../parts/mark.tsx";

export function Standing({ of, ...where }: Where & { readonly of: Ref }): JSX.Element {
  return of.kind === "joint" ? <OfJoint {...where} id={of.id} /> : <OfAssembly {...where} id={of.id} />;
}

function OfJoint({ id, ...where }: Where & { readonly id: string }): JSX.Element | null {
  const file = where.site.shown.evidence.joints.get(id);
  if (file === undefined) return null;
  const asking = [...where.site.shown.evidence.holdPoints.values()].filter(({ joints }) => joints.includes(id));
  return (
    <section class="section" aria-label="How it stands">
      <p>
        <Mark of={file.state} /> {JOINT_MEANS[file.state]}
      </p>
      <Points {...where} points={asking} />
    </section>
  );
}

function OfAssembly({ id, ...where }: Where & { readonly id: string }): JSX.Element | null {
  const { site, from } = where;
  const { evidence, record } = site.shown;
  const file = evidence.assemblies.get(id);
  const assembly = record.assemblies.get(id);
  if (file === undefined || assembly === undefined) return null;
  const { children, workOf } = storyOf(site.shown);
  const within = children.get(id) ?? [];
  return (
    <section class="section" aria-label="How it stands">
      <p>
        {hoursWords(total(workOf.get(id) ?? []))} of work, with all within it.
        {within.length === 0 ? "" : " What is within it has histories of its own: "}
        {within.map(({ id: child, title }, at) => (
          <>
            {at === 0 ? "" : ", "}
            <a href={relative(from, historyPath({ kind: "assembly", id: child }))}>{title}</a>
          </>
        ))}
      </p>
      {assembly.joints.length === 0 ? null : (
        <ul class="lines bare">
          {assembly.joints.map(({ id: joint, title }) => (
            <li>
              <a href={relative(from, historyPath({ kind: "joint", id: joint }))}>Joint {joint}</a>, {title}{" "}
              <Mark of={evidence.joints.get(joint)?.state ?? "not glued"} />
            </li>
          ))}
        </ul>
      )}
      <Points {...where} points={file.holdPoints.flatMap((point) => evidence.holdPoints.get(point) ?? [])} />
    </section>
  );
}

function Points({ points, ...where }: Where & { readonly points: readonly HoldPointFile[] }): JSX.Element | null {
  if (points.length === 0) return null;
  return (
    <ul class="lines bare">
      {points.map(({ holdPoint, state }) => (
        <li>
          Hold point <Id {...where} kind="hold point" id={holdPoint.id} />, {holdPoint.title}: <Mark of={state} />{" "}
          {HOLD_MEANS[state]}
        </li>
      ))}
    </ul>
  );
}
