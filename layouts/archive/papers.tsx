import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { PAGES } from "../../src/pages/archive/guide.ts";
import { drawingsOf, papersOf } from "../../src/pages/archive/papers.ts";
import type { Site } from "../../src/editions/shown.ts";
import { ListTable, None, Section, Title } from "../evidence/parts.tsx";
import { To } from "../shell/link.tsx";
import { Page } from "../shell/page.tsx";
import { StartPlace } from "./place.tsx";

const PATH = PAGES.papers;

/** Every paper and every drawing, with where the record names it. */
export function PapersPage({ site }: { readonly site: Site }): JSX.Element {
  const papers = papersOf(site.shown);
  const drawings = drawingsOf(site.shown);
  return (
    <Page
      site={site}
      path={PATH}
      kind="archive"
      title="Papers and drawings"
      description="Every paper and every drawing of the record, and where it is named."
    >
      <Title place={<StartPlace from={PATH} />} title="Papers and drawings">
        <p class="title__lead">Letters, certificates, data sheets and drawings, each with what names it.</p>
      </Title>
      <Section id="papers" title="Papers">
        {papers.length === 0 ? (
          <None>The record has no papers.</None>
        ) : (
          <Files site={site} files={papers} of="Papers" />
        )}
      </Section>
      <Section id="drawings" title="Drawings">
        {drawings.length === 0 ? (
          <None>The record has no drawings.</None>
        ) : (
          <Files site={site} files={drawings} of="Drawings" />
        )}
      </Section>
    </Page>
  );
}

function Files({
  site,
  files,
  of,
}: {
  readonly site: Site;
  readonly files: ReturnType<typeof papersOf>;
  readonly of: string;
}): JSX.Element {
  return (
    <ListTable caption={`${of}, and what names them`} heads={["What", "Named by"]}>
      {files.map(({ title, file, by }) => {
        const path = site.files.get(file);
        return (
          <tr>
            <th scope="row">{path === undefined ? title : <a href={relative(PATH, path)}>{title}</a>}</th>
            <td>
              <To site={site} from={PATH} to={by} />
            </td>
          </tr>
        );
      })}
    </ListTable>
  );
}
