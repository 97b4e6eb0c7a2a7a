/** A hold point as a part of the appendix. */
import type { JSX } from "preact";
import type { HoldPointFile } from "../../../src/evidence/types.ts";
import { assemblyPath } from "../../../src/pages/evidence/trace-index.ts";
import { HOLD_KIND, HOLD_MEANS, NOT_LOOKED_AT } from "../../../src/pages/evidence/verdict-words.ts";
import { addressOf, relative } from "../../../src/pages/address.ts";
import { paperOfHoldPoint } from "../../../src/pages/appendix/papers.ts";
import { grouped } from "../../../src/words/numbers.ts";
import { counted } from "../../../src/words/lists.ts";
import { toldNeed } from "../../../src/words/findings/told.ts";
import { Mark } from "../../parts/mark.tsx";
import { To } from "../../shell/link.tsx";
import { Id, type Where } from "../parts.tsx";
import { Changes, Looks } from "./looked.tsx";
import { Needs } from "./needs.tsx";
import { SignOff } from "./sign-off.tsx";

interface HoldPointProps extends Where {
  readonly file: HoldPointFile;
  readonly id: string;
  readonly level: "h2" | "h3";
  /** It is one of several on a paper: what none of them looks at is said once, and only those that may be signed as they stand have a place for it. */
  readonly among?: boolean;
  /** More needs than these are told where the hold point stands alone. */
  readonly mostNeeds?: number;
}

export function HoldPoint(props: HoldPointProps): JSX.Element {
  const { file, site, from, id, level: Heading, among = false, mostNeeds = Infinity } = props;
  const { holdPoint, state, needs, joints } = file;
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
      <Looks file={file} site={site} from={from} />
      {file.remarks.map((remark) => (
        <p class="quiet">{site.shown.say(remark)}</p>
      ))}
      {among ? null : <p class="quiet">{NOT_LOOKED_AT}</p>}
      <Changes file={file} site={site} from={from} />
      {needs.length > mostNeeds ? (
        <NeedsElsewhere file={file} site={site} from={from} />
      ) : (
        <Needs needs={needs.map((one) => toldNeed(site.shown.say, one))} site={site} from={from} />
      )}
      {state === "passed" || (among && (state === "blocked" || state === "ahead")) ? null : (
        <SignOff id={holdPoint.id} />
      )}
    </section>
  );
}

/** How many they are, and where each stands with a box. */
function NeedsElsewhere({ file: { holdPoint, needs }, site, from }: Where & Pick<HoldPointProps, "file">): JSX.Element {
  const blocking = needs.filter(({ blocks }) => blocks).length;
  const paper = paperOfHoldPoint(site.shown, holdPoint.id);
  return (
    <p>
      To be put right: {grouped(blocking)}. Still to be done: {grouped(needs.length - blocking)}. Each stands on{" "}
      <a href={relative(from, addressOf({ kind: "hold point", id: holdPoint.id }) ?? "")}>
        the page of this hold point
      </a>
      {paper === undefined ? "" : `, and in its PDF, ${paper.path}`}.
    </p>
  );
}
