import type { JSX } from "preact";
import { anchor, relative } from "../../../src/pages/address.ts";
import { holdPoints } from "../../../src/pages/evidence/evidence-lists.ts";
import { NOT_LOOKED_AT } from "../../../src/pages/evidence/verdict-words.ts";
import { HoldPointCard } from "../../parts/hold-point.tsx";
import { To } from "../../shell/link.tsx";
import { Page } from "../../shell/page.tsx";
import { None, Title, type Where } from "../parts.tsx";
import { Looks } from "./looked.tsx";

/** The index of hold points: where each stands, and the way to its own page. */
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
        <p class="title__lead">
          Work stops here until someone has looked. Each has a page that can be printed and taken to the workshop.
        </p>
      </Title>
      {all.length === 0 ? <None>The record names no hold points.</None> : null}
      {all.map((file) => (
        <section class="holdpoint" id={anchor("hold point", file.holdPoint.id)} aria-label={file.holdPoint.title}>
          <HoldPointCard site={site} from={from} file={file} most={3} heading="h2" />
          <Looks file={file} site={site} from={from} />
          <p class="onward">
            <To site={site} from={from} to={{ kind: "hold point", id: file.holdPoint.id }}>
              Page and print for {file.holdPoint.id}
            </To>
          </p>
        </section>
      ))}
      {all.length === 0 ? null : <None>{NOT_LOOKED_AT}</None>}
    </Page>
  );
}
