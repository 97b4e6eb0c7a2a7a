import type { JSX } from "preact";
import { anchor, relative } from "../../../src/pages/address.ts";
import { acceptedWords, before, departures, openItems } from "../../../src/pages/evidence/evidence-lists.ts";
import type { Departure, OpenItem } from "../../../src/facts/types.ts";
import { ChangesOf } from "../../parts/amended.tsx";
import { To } from "../../shell/link.tsx";
import { Noted, Page } from "../../shell/page.tsx";
import { EntryLink, groupOf, Id, ListTable, None, Title, type Where } from "../parts.tsx";

export const LIST_SCRIPTS = ["lists.js"];

type OnlySite = Pick<Where, "site">;

export function AssemblyLink({ site, from, id }: Where & { readonly id: string }): JSX.Element {
  return (
    <To site={site} from={from} to={{ kind: "assembly", id }}>
      {site.shown.record.assemblies.get(id)?.title ?? id}
    </To>
  );
}

export function ListPlace({ from }: { readonly from: string }): JSX.Element {
  return <a href={relative(from, "evidence.html")}>Evidence</a>;
}

export function OpenItems({ site }: OnlySite): JSX.Element {
  const from = "open-items.html";
  return (
    <Page
      site={site}
      path={from}
      kind="open items"
      title="Open items"
      scripts={LIST_SCRIPTS}
      description="Work put off, and what it must be done before."
    >
      <Title place={<ListPlace from={from} />} title="Open items">
        <p class="title__lead">Work put off in one entry and closed in a later one.</p>
      </Title>
      <OpenItemTable items={openItems(site.shown)} site={site} from={from} anchors />
    </Page>
  );
}

export function OpenItemTable({
  items,
  anchors = false,
  site,
  from,
}: Where & { readonly items: readonly OpenItem[]; readonly anchors?: boolean }): JSX.Element {
  if (items.length === 0) return <None>No open items.</None>;
  const list = anchors ? "open-items" : undefined;
  const groups = items.map(({ closedIn }) => (closedIn === undefined ? "open" : "closed"));
  return (
    <ListTable
      list={list}
      caption="Open items, those still open first"
      heads={["Item", "What", "Assembly", "Before", "Raised", "Closed"]}
    >
      {items.map((item, at) => (
        <tr {...groupOf(list, groups, at)} id={anchors ? anchor("open item", item.id) : undefined}>
          <th scope="row" class="id">
            {item.id}
          </th>
          <td>
            {item.what}
            <Noted note={item.note} />
            <ChangesOf site={site} from={from} about={[{ kind: "open item", id: item.id }]} />
          </td>
          <td>
            <AssemblyLink site={site} from={from} id={item.assembly} />
          </td>
          <td>
            <Before site={site} from={from} item={item} />
          </td>
          <td data-sort={item.day}>
            <EntryLink site={site} from={from} id={item.entry} />
          </td>
          <td>
            {item.closedIn === undefined ? (
              <strong>open</strong>
            ) : (
              <EntryLink site={site} from={from} id={item.closedIn} />
            )}
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

function Before({ item, site, from }: Where & { readonly item: OpenItem }): JSX.Element {
  const what = before(site.shown, item);
  if (what === undefined) return <>not stated</>;
  return "words" in what ? <>{what.words}</> : <Id site={site} from={from} kind="hold point" id={what.holdPoint} />;
}

export function Departures({ site }: OnlySite): JSX.Element {
  const from = "departures.html";
  return (
    <Page
      site={site}
      path={from}
      kind="departures"
      title="Departures"
      scripts={LIST_SCRIPTS}
      description="Work that differs from the drawings, why, and who accepted it."
    >
      <Title place={<ListPlace from={from} />} title="Departures">
        <p class="title__lead">Work that differs from the drawing, its reason, and who accepted it.</p>
      </Title>
      <DepartureTable items={departures(site.shown)} site={site} from={from} anchors />
    </Page>
  );
}

export function DepartureTable({
  items,
  anchors = false,
  site,
  from,
}: Where & { readonly items: readonly Departure[]; readonly anchors?: boolean }): JSX.Element {
  if (items.length === 0) return <None>No departures.</None>;
  const list = anchors ? "departures" : undefined;
  const groups = items.map(({ id }) =>
    site.shown.evidence.standings.get(id) === "accepted" ? "accepted" : "not accepted",
  );
  return (
    <ListTable
      list={list}
      caption="Departures, those not yet accepted first"
      heads={["Departure", "What", "Why", "Assembly", "Noted", "Accepted"]}
    >
      {items.map((item, at) => (
        <tr {...groupOf(list, groups, at)} id={anchors ? anchor("departure", item.id) : undefined}>
          <th scope="row" class="id">
            {item.id}
          </th>
          <td>
            {item.what}
            <Noted note={item.note} />
            <ChangesOf site={site} from={from} about={[{ kind: "departure", id: item.id }]} />
          </td>
          <td>{item.why}</td>
          <td>
            <AssemblyLink site={site} from={from} id={item.assembly} />
          </td>
          <td data-sort={item.day}>
            <EntryLink site={site} from={from} id={item.entry} />
          </td>
          <td>
            <Accepted site={site} from={from} item={item} />
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

function Accepted({ site, from, item }: Where & { readonly item: Departure }): JSX.Element {
  if (item.acceptedBy === undefined) return <strong>not accepted</strong>;
  return (
    <>
      {acceptedWords(site.shown, item)}
      {item.acceptedIn === undefined || item.acceptedIn === item.entry ? null : (
        <>
          , <EntryLink site={site} from={from} id={item.acceptedIn} />
        </>
      )}
    </>
  );
}
