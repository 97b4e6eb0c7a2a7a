/** What a hold point still needs, as a list that can be worked down. */
import type { JSX } from "preact";
import { needsTogether, type NeedTogether } from "../../../src/pages/evidence/needs.ts";
import type { ToldNeed } from "../../../src/words/findings/told.ts";
import { To } from "../../shell/link.tsx";
import { Telling, type Where } from "../parts.tsx";

export function Needs({ needs, site, from }: Where & { readonly needs: readonly ToldNeed[] }): JSX.Element | null {
  if (needs.length === 0) return null;
  const blocking = needs.filter(({ blocks }) => blocks);
  const rest = needs.filter(({ blocks }) => !blocks);
  return (
    <div class="holdpoint__needs">
      {blocking.length === 0 ? null : <NeedList title="To be put right" needs={blocking} site={site} from={from} />}
      {rest.length === 0 ? null : <NeedList title="Still to be done" needs={rest} site={site} from={from} />}
    </div>
  );
}

function NeedList({
  title,
  needs,
  site,
  from,
}: Where & { readonly title: string; readonly needs: readonly ToldNeed[] }): JSX.Element {
  const alike = needsTogether(needs).filter(({ about }) => about.length > 1);
  const grouped = new Set(alike.flatMap(({ about }) => about));
  const single = needs.filter(({ about }) => !grouped.has(about));
  return (
    <>
      <p class="label">{title}</p>
      {single.length === 0 ? null : (
        <ul class="checklist bare">
          {single.map((need) => (
            <li>
              <span class="checklist__box" aria-hidden="true" />
              <span>
                <Telling site={site} from={from} about={need.about} sentence={need.sentence} />{" "}
                <span class="checklist__takes">Takes: {need.needs}</span>
              </span>
            </li>
          ))}
        </ul>
      )}
      {alike.map((group) => (
        <Alike group={group} site={site} from={from} />
      ))}
    </>
  );
}

/** Things that want the same, said once, each with a box of its own. */
function Alike({ group, site, from }: Where & { readonly group: NeedTogether }): JSX.Element {
  const titleOf = (id: string): string => site.shown.evidence.joints.get(id)?.joint.title ?? "";
  return (
    <div class="alike">
      <p>
        {group.sentence}{" "}
        <span class="checklist__takes">Takes: {group.needs.slice(0, 1).toLowerCase() + group.needs.slice(1)}</span>
      </p>
      <ul class="checklist checklist--alike bare">
        {group.about.map((about) => (
          <li>
            <span class="checklist__box" aria-hidden="true" />
            <span>
              <To site={site} from={from} to={about} class="id" /> {about.kind === "joint" ? titleOf(about.id) : ""}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
