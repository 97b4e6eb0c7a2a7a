/** History of a part by date, from timber to signature: what whoever takes it over asks for. */
import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { PAGES } from "../../src/pages/archive/guide.ts";
import {
  assemblyHistory,
  type HistoryDay,
  historyPath,
  jointHistory,
  MOST_DAYS,
} from "../../src/pages/archive/history.ts";
import type { HistoryLine } from "../../src/pages/archive/history-lines.ts";
import type { PageFile, Site } from "../../src/editions/shown.ts";
import type { Entry, Lot, Ref } from "../../src/facts/types.ts";
import { assemblyPath } from "../../src/pages/evidence/trace-index.ts";
import { dateShort, dateWords } from "../../src/words/dates.ts";
import { Title, type Where } from "../evidence/parts.tsx";
import { Clip } from "../parts/clip.tsx";
import { Mark } from "../parts/mark.tsx";
import { Photo } from "../parts/picture.tsx";
import { To } from "../shell/link.tsx";
import { html, Page, Prose } from "../shell/page.tsx";
import { Standing } from "./history-standing.tsx";

interface Part {
  readonly ref: Ref;
  readonly title: string;
  readonly days: (site: Site) => readonly HistoryDay[];
}

/** The pages of the history of every assembly and every joint. */
export function historyPages(site: Site): PageFile[] {
  const { record, evidence } = site.shown;
  const parts: Part[] = [
    ...[...record.assemblies.values()].map(({ id, title }) => ({
      ref: { kind: "assembly" as const, id },
      title,
      days: ({ shown }: Site) => assemblyHistory(shown, id),
    })),
    ...[...evidence.joints.values()].map(({ joint: { id, title } }) => ({
      ref: { kind: "joint" as const, id },
      title: `Joint ${id}, ${title}`,
      days: ({ shown }: Site) => jointHistory(shown, id),
    })),
  ];
  return parts.flatMap((part) => pagesOfOne(site, part));
}

function pagesOfOne(site: Site, part: Part): PageFile[] {
  const of = part.ref.kind === "joint" ? 1 : Math.max(1, Math.ceil(part.days(site).length / MOST_DAYS));
  return Array.from({ length: of }, (_, at) => ({
    path: historyPath(part.ref, at + 1),
    make: () => html(<HistoryPage site={site} part={part} page={at + 1} of={of} />),
  }));
}

interface HistoryProps {
  readonly site: Site;
  readonly part: Part;
  readonly page: number;
  readonly of: number;
}

function HistoryPage({ site, part, page, of }: HistoryProps): JSX.Element {
  const { ref, title } = part;
  const from = historyPath(ref, page);
  const all = part.days(site);
  const days = of === 1 ? all : all.slice((page - 1) * MOST_DAYS, page * MOST_DAYS);
  const where = { site, from };
  const [first, last] = [all[0]?.day, all.at(-1)?.day];
  return (
    <Page
      site={site}
      path={from}
      kind="archive"
      title={`History: ${title}${page === 1 ? "" : `, page ${page}`}`}
      description={`What the record tells of ${title} by date, from timber to signature.`}
    >
      <Title place={<a href={relative(from, PAGES.histories)}>History of each part</a>} title={title}>
        <p class="title__lead">
          {ref.kind === "assembly" ? `${assemblyPath(site.shown.record, ref.id)}. ` : ""}
          {first === undefined || last === undefined
            ? "Nothing has been written of it yet."
            : `From ${dateWords(first)} to ${dateWords(last)}, as the record tells it.`}
        </p>
        <p>
          <To {...where} to={ref}>
            {ref.kind === "assembly"
              ? "The page of this assembly"
              : "The page of this joint, with its verdict and reasons"}
          </To>
        </p>
      </Title>
      {page === 1 ? <Standing {...where} of={ref} /> : null}
      <Turn {...where} of={of} page={page} about={ref} />
      <ol class="history bare">
        {days.map((day) => (
          <Day {...where} told={day} />
        ))}
      </ol>
      <Turn {...where} of={of} page={page} about={ref} />
    </Page>
  );
}

/** To the other pages of the same history. */
function Turn({
  from,
  about,
  page,
  of,
}: Where & { readonly about: Ref; readonly page: number; readonly of: number }): JSX.Element | null {
  if (of === 1) return null;
  return (
    <nav class="contents" aria-label="Pages of this history">
      <ul class="bare">
        {Array.from({ length: of }, (_, at) => at + 1).map((each) => (
          <li>
            <a href={relative(from, historyPath(about, each))} aria-current={each === page ? "page" : undefined}>
              Page {each} of {of}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function Day({
  told: { day, lots, entry, lines, isOwn },
  ...where
}: Where & { readonly told: HistoryDay }): JSX.Element {
  return (
    <li class="history__day">
      <p class="history__date">
        <time dateTime={day}>{dateShort(day)}</time>
      </p>
      <div class="history__told">
        {lots.map((lot) => (
          <Arrival {...where} lot={lot} />
        ))}
        {entry === undefined ? null : <Told {...where} entry={entry} lines={lines} isOwn={isOwn} />}
      </div>
    </li>
  );
}

function Arrival({ lot, ...where }: Where & { readonly lot: Lot }): JSX.Element {
  const { site, from } = where;
  const paper = lot.certificate === undefined ? undefined : site.files.get(lot.certificate);
  return (
    <p>
      <To {...where} to={{ kind: "lot", id: lot.id }}>
        Lot {lot.id}
      </To>{" "}
      came: {lot.title}
      {lot.amount === undefined ? "" : `, ${lot.amount.typed}`}
      {lot.supplier === undefined ? "" : `, from ${lot.supplier}`}
      {paper === undefined ? null : (
        <>
          , with <a href={relative(from, paper)}>its certificate</a>
        </>
      )}
      .
    </p>
  );
}

interface ToldProps extends Where {
  readonly entry: Entry;
  readonly lines: readonly HistoryLine[];
  readonly isOwn: boolean;
}

function Told({ entry, lines, isOwn, ...where }: ToldProps): JSX.Element {
  const { site, from } = where;
  const [passage] = entry.body;
  const words = isOwn && passage !== undefined ? site.prose(passage, from, "first paragraph") : "";
  return (
    <>
      <h2 class="history__title">
        <To {...where} to={{ kind: "entry", id: entry.id }}>
          {entry.title}
        </To>
      </h2>
      {words === "" ? null : <Prose site={site} html={words} />}
      {lines.length === 0 ? null : (
        <ul class="lines bare">
          {lines.map((line) => (
            <Line {...where} line={line} />
          ))}
        </ul>
      )}
      {isOwn ? <Pictures {...where} entry={entry} /> : null}
    </>
  );
}

function Line({
  line: { what, about, mark, word, says, scan },
  ...where
}: Where & { readonly line: HistoryLine }): JSX.Element {
  const paper = scan === undefined ? undefined : where.site.files.get(scan);
  return (
    <li>
      {about === undefined ? (
        what
      ) : (
        <To {...where} to={about}>
          {what}
        </To>
      )}
      {mark === undefined ? null : (
        <>
          {" "}
          <Mark of={mark} {...(word !== undefined && { word })} />
        </>
      )}
      {says === "" ? "" : `: ${says}`}
      {paper === undefined ? null : (
        <>
          , <a href={relative(where.from, paper)}>its scan</a>
        </>
      )}
    </li>
  );
}

function Pictures({ entry: { photos, clips }, ...where }: Where & { readonly entry: Entry }): JSX.Element | null {
  if (photos.length + clips.length === 0) return null;
  return (
    <div class="history__pictures">
      {photos.map((photo) => (
        <Photo {...where} photo={photo} sizes="(min-width: 46rem) 18rem, 100vw" />
      ))}
      {clips.map((clip) => (
        <Clip {...where} clip={clip} />
      ))}
    </div>
  );
}
