import type { JSX } from "preact";
import { anchor, relative } from "../../src/pages/address.ts";
import type { HoldPointFile, HoldState } from "../../src/evidence/types.ts";
import { holdPoints } from "../../src/pages/evidence/evidence-lists.ts";
import { needsTogether, type NeedTogether } from "../../src/pages/evidence/needs.ts";
import { assemblyPath } from "../../src/pages/evidence/trace-index.ts";
import { HOLD_KIND, HOLD_MEANS, NOT_LOOKED_AT } from "../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { toldChange, toldNeed, type ToldChange, type ToldNeed } from "../../src/words/findings/told.ts";
import type { Inspection } from "../../src/facts/types.ts";
import { To } from "../shell/link.tsx";
import { Mark } from "../parts/mark.tsx";
import { Page } from "../shell/page.tsx";
import { Id, None, Telling, Title, type Where } from "./parts.tsx";

export function HoldPoints({ site }: Pick<Where, "site">): JSX.Element {
  const from = "hold-points.html";
  const all = holdPoints(site.shown);
  return (
    <Page
      site={site}
      path={from}
      kind="hold points"
      title="Hold points"
      description="Where work stops until someone has looked, and what each still needs."
    >
      <Title place={<a href={relative(from, "evidence.html")}>Evidence</a>} title="Hold points">
        <p class="title__lead">Work stops here until someone has looked. Each list can be worked down.</p>
      </Title>
      {all.length === 0 ? (
        <None>The record names no hold points.</None>
      ) : (
        all.map((file) => (
          <HoldPoint file={file} site={site} from={from} id={anchor("hold point", file.holdPoint.id)} level="h2" />
        ))
      )}
    </Page>
  );
}

const SIGNED: ReadonlySet<HoldState> = new Set<HoldState>(["passed", "reopened", "signed with things open"]);

interface HoldPointProps extends Where {
  readonly file: HoldPointFile;
  readonly id: string;
  readonly level: "h2" | "h3";
}

export function HoldPoint({ file, site, from, id, level: Heading }: HoldPointProps): JSX.Element {
  const { holdPoint, state, needs, joints, changes } = file;
  return (
    <section class="holdpoint" id={id} aria-label={holdPoint.title}>
      <header class="holdpoint__head">
        <Heading>{holdPoint.title}</Heading>
        <p class="quiet">
          <span class="id">{holdPoint.id}</span>, {HOLD_KIND[holdPoint.kind]},{" "}
          <To site={site} from={from} to={{ kind: "assembly", id: holdPoint.assembly }}>
            {assemblyPath(site.shown.record, holdPoint.assembly)}
          </To>
          , {counted(joints.length, "joint")}
        </p>
        {holdPoint.joints === undefined ? null : (
          <p class="quiet">
            Names {holdPoint.joints.length === 1 ? "joint" : "joints"}{" "}
            {holdPoint.joints.map((joint, i) => (
              <>
                {i === 0 ? "" : ", "}
                <Id site={site} from={from} kind="joint" id={joint} />
              </>
            ))}
          </p>
        )}
        <p class="holdpoint__state">
          <Mark of={state} /> {HOLD_MEANS[state]}
        </p>
      </header>
      {file.inspections.length === 0 ? null : (
        <ul class="lines bare">
          {file.inspections.map((inspection) => (
            <li>
              <Looked inspection={inspection} site={site} from={from} />
            </li>
          ))}
        </ul>
      )}
      {SIGNED.has(state) && file.signed === undefined ? (
        <None>It was signed in an entry that this edition does not show.</None>
      ) : null}
      {file.remarks.map((remark) => (
        <p class="quiet">{site.shown.say(remark)}</p>
      ))}
      <p class="quiet">{NOT_LOOKED_AT}</p>
      <Changes changes={changes.map((one) => toldChange(site.shown.say, one))} site={site} from={from} />
      <Needs needs={needs.map((one) => toldNeed(site.shown.say, one))} site={site} from={from} />
      {state === "passed" ? null : <SignOff id={holdPoint.id} />}
    </section>
  );
}

function Looked({ inspection, site, from }: Where & { readonly inspection: Inspection }): JSX.Element {
  const scan = inspection.scan === undefined ? undefined : site.files.get(inspection.scan);
  const { authority, mayReturn } = site.shown.record.aircraft.people.get(inspection.by) ?? {};
  return (
    <>
      <To site={site} from={from} to={{ kind: "entry", id: inspection.entry }}>
        {dateWords(inspection.day)}
      </To>
      : <strong>{inspection.result}</strong> by {site.shown.nameOf(inspection.by)}
      {authority === undefined ? "" : `, ${authority}`}
      {mayReturn === undefined ? "" : `, may return it to service by ${mayReturn}`}
      {inspection.reference === undefined ? "" : `, reference ${inspection.reference}`}
      {inspection.remarks === undefined ? "." : `. ${inspection.remarks}`}
      {scan === undefined ? null : (
        <>
          {" "}
          <a href={relative(from, scan)}>Scan of the sign-off for {inspection.holdPoint}</a>
        </>
      )}
    </>
  );
}

/** What changed after a hold point was signed, in the order in which it happened. */
function Changes({ changes, site, from }: Where & { readonly changes: readonly ToldChange[] }): JSX.Element | null {
  if (changes.length === 0) return null;
  return (
    <div class="holdpoint__needs">
      <p class="label">Changed since it was signed</p>
      <ul class="lines bare">
        {changes.map(({ about, sentence }) => (
          <li>
            <Telling site={site} from={from} about={about} sentence={sentence} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function Needs({ needs, site, from }: Where & { readonly needs: readonly ToldNeed[] }): JSX.Element | null {
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

/** Lines to be filled in by hand, for paper. */
function SignOff({ id }: { readonly id: string }): JSX.Element {
  return (
    <div class="signoff" role="group" aria-label={`Sign-off block for ${id}, to be filled in on paper`}>
      <p class="signoff__line">
        <span>Looked at</span>
      </p>
      <p class="signoff__line">
        <span>Signed / not signed</span>
      </p>
      <p class="signoff__line">
        <span>Name and authority</span>
      </p>
      <p class="signoff__line">
        <span>Date</span>
      </p>
      <p class="signoff__line signoff__line--wide">
        <span>Remarks</span>
      </p>
    </div>
  );
}
