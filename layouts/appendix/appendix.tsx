/** All of the evidence as one document, for paper or PDF. */
import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { type PaperFile, papersOf } from "../../src/pages/appendix/papers.ts";
import { TYPESETTER } from "../../src/pages/appendix/typesetter.ts";
import { type Sheet, sheetsOf } from "../../src/pages/appendix/sheets.ts";
import { assemblyPath } from "../../src/pages/evidence/trace-index.ts";
import type { Site } from "../../src/editions/shown.ts";
import { EDITION_WORDS } from "../shell/frame.tsx";
import { Page } from "../shell/page.tsx";
import { Opening } from "./opening.tsx";
import { type Part, partsOf } from "./parts.tsx";
import { runningHeads } from "../shell/running-heads.ts";

/** What a page of the appendix and its PDF are made of. */
export interface AppendixSheet {
  readonly title: string;
  readonly front: JSX.Element;
  readonly body: readonly JSX.Element[];
}

const TITLE = "Evidence of the glue lines";

export function appendixSheet(site: Site, sheet: Sheet): AppendixSheet {
  const { record } = site.shown;
  const parts = partsOf(site, sheet);
  const place = { site, from: sheet.path, sheet };
  return {
    title: sheet.assembly === undefined ? TITLE : `${TITLE}: ${assemblyPath(record, sheet.assembly)}`,
    front: <Front site={site} sheet={sheet} parts={parts} />,
    body: parts.map(({ id, title, make }, at) => (
      <section class="appendix__part" aria-labelledby={id}>
        <h2 id={id}>
          {at + 1} {title}
        </h2>
        {make(place)}
      </section>
    )),
  };
}

export function Appendix({ site, path }: { readonly site: Site; readonly path: string }): JSX.Element {
  const sheet = sheetsOf(site.shown).find((one) => one.path === path);
  if (sheet === undefined) throw new Error(`no sheet of the appendix is to stand at ${path}`);
  const { record, edition, seal } = site.shown;
  const { title, front, body } = appendixSheet(site, sheet);
  return (
    <Page
      site={site}
      path={sheet.path}
      kind="appendix"
      title={sheet.assembly === undefined ? "Appendix: all of the evidence" : title}
      styles={runningHeads(record.aircraft.name, EDITION_WORDS[edition], record.day, seal)}
      description="All of the evidence as one document, for paper or PDF."
    >
      <article class="appendix">
        {front}
        {body}
      </article>
    </Page>
  );
}

interface FrontProps {
  readonly site: Site;
  readonly sheet: Sheet;
  readonly parts: readonly Part[];
}

function Front({ site, sheet, parts }: FrontProps): JSX.Element {
  const of = sheet.assembly === undefined ? undefined : assemblyPath(site.shown.record, sheet.assembly);
  return (
    <Opening site={site} title={TITLE} {...(of === undefined ? {} : { of })}>
      <Contents site={site} sheet={sheet} parts={parts} />
      <Papers site={site} from={sheet.path} />
    </Opening>
  );
}

/** How to have it on paper. */
function Papers({ site, from }: { readonly site: Site; readonly from: string }): JSX.Element {
  const papers = papersOf(site.shown);
  return (
    <div class="screen-only small quiet">
      <p>Print this page, or save it as PDF, for numbered pages with running heads.</p>
      {papers.length === 0 ? null : site.hasPapers === true ? (
        <ul class="appendix__papers">
          {papers.map((paper) => (
            <li>
              <a href={relative(from, paper.path)}>{paperTitle(site, paper)} (PDF)</a>
            </li>
          ))}
        </ul>
      ) : (
        <p>
          Better set, with page numbers in its contents, it is a PDF made by <code>scarfline build --paper</code>, and
          so is one of each hold point. For that, Typst is installed once where Scarfline is:{" "}
          <code>npm install {TYPESETTER.join("@")}</code>
        </p>
      )}
    </div>
  );
}

function paperTitle({ shown }: Site, paper: PaperFile): string {
  if ("holdPoint" in paper) return `Hold point ${paper.holdPoint.holdPoint.id}: ${paper.holdPoint.holdPoint.title}`;
  return paper.sheet.assembly === undefined ? TITLE : `${TITLE}: ${assemblyPath(shown.record, paper.sheet.assembly)}`;
}

function Contents({ site, sheet, parts }: FrontProps): JSX.Element {
  const others = sheetsOf(site.shown).filter(({ path }) => path !== sheet.path);
  return (
    <nav aria-label="Contents">
      <h2>Contents</h2>
      <ol class="appendix__contents">
        {parts.map(({ id, title }) => (
          <li>
            <a href={`#${id}`}>{title}</a>
          </li>
        ))}
      </ol>
      {others.length === 0 ? null : (
        <>
          <p class="label">Other sheets of this appendix</p>
          <ul class="appendix__contents">
            {others.map(({ path, assembly }) => (
              <li>
                <a href={relative(sheet.path, path)}>
                  {assembly === undefined
                    ? "All but what is told by assembly"
                    : assemblyPath(site.shown.record, assembly)}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
    </nav>
  );
}
