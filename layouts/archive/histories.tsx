import type { JSX } from "preact";
import { PAGES } from "../../src/pages/archive/guide.ts";
import { storyOf } from "../../src/pages/story/story.ts";
import type { Site } from "../../src/editions/shown.ts";
import { counted } from "../../src/words/lists.ts";
import { None, Title } from "../evidence/parts.tsx";
import { Page } from "../shell/page.tsx";
import { HistoryLink } from "./history-link.tsx";
import { StartPlace } from "./place.tsx";

const PATH = PAGES.histories;

/** Where the history of every part begins. */
export function HistoriesPage({ site }: { readonly site: Site }): JSX.Element {
  const { tree } = storyOf(site.shown);
  return (
    <Page
      site={site}
      path={PATH}
      kind="archive"
      title="History of each part"
      description="Every assembly and every joint, told by date from timber to signature."
    >
      <Title place={<StartPlace from={PATH} />} title="History of each part">
        <p class="title__lead">Every assembly and every joint, told by date from timber to signature.</p>
      </Title>
      {tree.length === 0 ? <None>The record has no assembly yet.</None> : null}
      <ul class="lines bare">
        {tree.map(({ assembly: { id, title, joints }, depth }) => (
          <li class={`depth-${Math.min(depth, 4)}`}>
            <HistoryLink site={site} from={PATH} of={{ kind: "assembly", id }} words={title} />
            {joints.length === 0 ? "" : `, ${counted(joints.length, "joint")}`}
          </li>
        ))}
      </ul>
    </Page>
  );
}
