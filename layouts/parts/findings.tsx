/** Findings: what was checked, what came of it, against which limit, and where that limit comes from. */
import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import type { Severity } from "../../src/evidence/types.ts";
import type { Site } from "../../src/editions/shown.ts";
import { gravestFirst, KNOWN } from "../../src/pages/evidence/verdict-words.ts";
import type { ToldFinding, ToldSource } from "../../src/words/findings/told.ts";
import type { Ref } from "../../src/facts/types.ts";
import { ToEach } from "../shell/link.tsx";
import { Mark } from "./mark.tsx";

export const SEVERITY: { readonly [severity in Severity]: string } = {
  meets: "met",
  caution: "look here",
  waits: "to come",
  unproven: "not shown",
  rejects: "not met",
};

/** The document and how it was known to us, which is part of what it is worth. */
export function SourceWords({ source }: { readonly source: ToldSource }): JSX.Element {
  return (
    <>
      {source.text} <i>({KNOWN[source.known]})</i>
    </>
  );
}

interface FindingsProps {
  readonly site: Site;
  readonly from: string;
  readonly findings: readonly ToldFinding[];
  /** What the page itself is about, and rests on altogether: not named again at each finding. */
  readonly about?: readonly Ref[];
}

export function Findings({ site, from, findings, about = [] }: FindingsProps): JSX.Element {
  if (findings.length === 0) return <p class="quiet">Nothing was checked here.</p>;
  return (
    <ol class="findings bare">
      {gravestFirst(findings).map((finding) => (
        <li>
          <Mark of={finding.severity} word={SEVERITY[finding.severity]} />
          <div>
            <p>{finding.sentence}</p>
            {finding.limit === undefined ? null : (
              <p>
                Limit: {finding.limit.text}. Source: <SourceWords source={finding.limit.from} />
              </p>
            )}
            <p>
              Rule: <a href={relative(from, `about.html#rule-${finding.rule}`)}>{finding.title}</a>
              <Rests site={site} from={from} finding={finding} about={about} />
            </p>
          </div>
        </li>
      ))}
    </ol>
  );
}

function Rests({
  site,
  from,
  finding,
  about,
}: {
  readonly site: Site;
  readonly from: string;
  readonly finding: ToldFinding;
  readonly about: readonly Ref[];
}): JSX.Element | null {
  const others = finding.restsOn.filter(
    ({ kind, id }) => kind !== "person" && !about.some((known) => kind === known.kind && id === known.id),
  );
  if (others.length === 0) return null;
  return (
    <>
      . Rests on <ToEach site={site} from={from} to={others} />
    </>
  );
}
