/** Parts that pages of evidence are made of. */
import type { ComponentChildren, JSX } from "preact";
import { NOT_NOTED, type FactRow } from "../../src/pages/evidence/batch-page.ts";
import { asksRows } from "../../src/pages/evidence/glue-up.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateShort } from "../../src/words/dates.ts";
import { groupAnchor } from "../../src/pages/address.ts";
import { type Marked, severityRank } from "../../src/pages/evidence/marked.ts";
import type { Asks, Day, Quantity, Ref } from "../../src/facts/types.ts";
import { Mark } from "../parts/mark.tsx";
import { To } from "../shell/link.tsx";

/** What every part is told: whose site, and on which page it stands. */
export interface Where {
  readonly site: Site;
  readonly from: string;
}

/** Rank of the headings of what stands on a page of its own and as a part of the appendix. */
export type Level = "h2" | "h3";

export function Section({
  id,
  title,
  level: Heading = "h2",
  children,
}: {
  readonly id: string;
  readonly title: string;
  readonly level?: Level;
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <section class="section" aria-labelledby={id}>
      <Heading id={id}>{title}</Heading>
      {children}
    </section>
  );
}

export function Title({
  place,
  title,
  children,
}: {
  readonly place: ComponentChildren;
  readonly title: string;
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <header class="title">
      <p class="title__place">{place}</p>
      <h1>{title}</h1>
      {children}
    </header>
  );
}

/** Facts as noted, each with what it is held against. */
export function Facts({ rows }: { readonly rows: readonly FactRow[] }): JSX.Element {
  return (
    <dl class="facts facts--noted">
      {rows.map(({ word, noted, limit, by }) => (
        <>
          <dt>{word}</dt>
          <dd class={noted === NOT_NOTED ? "quiet" : undefined}>
            {noted}
            {by}
            {limit === undefined ? null : <span class="facts__limit"> limit {limit}</span>}
          </dd>
        </>
      ))}
    </dl>
  );
}

interface ListTableProps {
  readonly caption: string;
  readonly heads: readonly (string | Head)[];
  /** The name of a long list, by which addresses call it: the script adds a filter and lets columns be sorted. */
  readonly list?: string | undefined;
  /** False where the heading right above says the same: those who do not see it are told all the same. */
  readonly captioned?: boolean;
  readonly children?: ComponentChildren;
}

interface Head {
  readonly word: string;
  readonly number?: boolean;
}

/** A table that can be scrolled sideways by keyboard too, where it is wider than the page. */
export function ListTable({ caption, heads, list, captioned = true, children }: ListTableProps): JSX.Element {
  return (
    <section class="scroll" tabIndex={0} aria-label={caption}>
      <table class="list" data-list={list}>
        <caption class={captioned ? undefined : "unseen"}>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head) =>
              typeof head === "string" ? (
                <th scope="col">{head}</th>
              ) : (
                <th scope="col" class={head.number === true ? "number" : undefined}>
                  {head.word}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </section>
  );
}

/** How it stands, which sorts with the worst first. */
export function VerdictCell({
  of,
  children,
}: {
  readonly of: Marked;
  readonly children?: ComponentChildren;
}): JSX.Element {
  return <td data-sort={severityRank(of)}>{children ?? <Mark of={of} />}</td>;
}

/** A figure with its unit, which sorts by how much it is and not by how it is written. */
export function FigureCell({
  of,
  children,
}: {
  readonly of: Pick<Quantity, "value" | "unit"> | undefined;
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <td class="number" data-sort={of === undefined ? undefined : `${of.value} ${of.unit}`}>
      {children}
    </td>
  );
}

/** Where rows of a list are of several kinds: the kind, and on the first of each the anchor that leads to them. */
export function groupOf(
  list: string | undefined,
  groups: readonly string[],
  at: number,
): { readonly id?: string; readonly "data-group"?: string } {
  const group = groups[at];
  if (list === undefined || group === undefined) return {};
  const isFirst = groups.indexOf(group) === at;
  return { ...(isFirst ? { id: groupAnchor(list, group) } : {}), "data-group": group };
}

/** A day that sorts as itself. */
export function DayCell({ day }: { readonly day: Day }): JSX.Element {
  return (
    <td class="day" data-sort={day}>
      <time dateTime={day}>{dateShort(day)}</time>
    </td>
  );
}

/** A link to the entry of a day, or the words for one that is not shown. */
export function EntryLink({ site, from, id }: Where & { readonly id: string }): JSX.Element {
  const entry = { kind: "entry", id } as const;
  if (!site.shown.shows(entry)) return <span class="quiet">in an entry that this edition does not show</span>;
  return (
    <To site={site} from={from} to={entry} class="id">
      {dateShort(id.slice(0, 10))}
    </To>
  );
}

/** An id that is a link, never broken over lines. */
export function Id({
  site,
  from,
  kind,
  id,
}: Where & {
  readonly kind: "batch" | "joint" | "lot" | "piece" | "hold point" | "trial" | "departure" | "open item";
  readonly id: string;
}): JSX.Element {
  return <To site={site} from={from} to={{ kind, id }} class="id" />;
}

/** A sentence on a thing, in which its id, or else a link before it, leads to it. */
export function Telling({
  site,
  from,
  about,
  sentence,
}: Where & { readonly about: Ref; readonly sentence: string }): JSX.Element {
  const at = sentence.indexOf(about.id);
  if (about.kind === "hold point") return <>{sentence}</>;
  if (about.kind === "entry" && at < 0)
    return (
      <>
        {sentence} <EntryLink site={site} from={from} id={about.id} />
      </>
    );
  const link = <To site={site} from={from} to={about} class="id" />;
  return at < 0 ? (
    <>
      {link}: {sentence}
    </>
  ) : (
    <>
      {sentence.slice(0, at)}
      {link}
      {sentence.slice(at + about.id.length)}
    </>
  );
}

export function None({ children }: { readonly children?: ComponentChildren }): JSX.Element {
  return <p class="quiet">{children}</p>;
}

/** What the drawing of a joint asks of its glue-up. */
export function Asked({ asks }: { readonly asks: Asks | undefined }): JSX.Element | null {
  const rows = asksRows(asks).map(({ word, value }) => `${word}: ${value}`);
  return rows.length === 0 ? null : <p class="quiet">Its drawing asks: {rows.join("; ")}.</p>;
}
